import { describe, expect, test } from 'vitest';
import { readVulgarFraction, vulgarFractions } from '../../src/measure/vulgar-fractions';

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
});
