import { describe, expect, test } from 'vitest';
import { readVulgarFraction, vulgarFractions, writeFraction } from '../../src/measure/vulgar-fractions';

describe('fraction characters', () => {
  test('mean what Unicode says they mean', () => {
    for (const [character, [numerator, denominator]] of Object.entries(vulgarFractions)) {
      expect(character.normalize('NFKC')).toBe(`${numerator}⁄${denominator}`);
    }
  });

  test('are read one at a time', () => {
    expect(readVulgarFraction('⅝')).toEqual([5, 8]);
    expect(readVulgarFraction('')).toBeUndefined();
    expect(readVulgarFraction('½½')).toBeUndefined();
  });

  test('say parts in lowest terms, behind whole ones', () => {
    const eighths = [0, 1, 2, 3, 4, 5, 6, 7, 8, 12].map((count) => writeFraction(count, 8));
    expect(eighths).toEqual(['0', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞', '1', '1\u00A0½']);
    expect([2, 3, 5].map((count) => writeFraction(count, 3))).toEqual(['⅔', '1', '1\u00A0⅔']);
  });
});
