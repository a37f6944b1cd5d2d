import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { normaliseTyped } from '../../src/measure/typed-text';

describe('normaliseTyped', () => {
  test.each([
    ['１７０ｇ', '170g'],
    ['  1\u00A0\u2009cup ', '1 cup'],
    ['1½', '1½'],
    ['1²', '1²'],
    ['3⁄4', '3/4'],
    ['−3', '-3'],
    ['20 ℃', '20 °C'],
    ['20 º', '20 °'],
    ['5 ㎖', '5 ml'],
    ['1\u200B2', '12'],
  ])('makes %j plain: %j', (typed, plain) => {
    expect(normaliseTyped(typed).text).toBe(plain);
  });

  test('knows where each character came from', () => {
    const { text, origin } = normaliseTyped('  5   ㎖ x');
    expect(text).toBe('5 ml x');
    expect(origin).toEqual([2, 3, 6, 6, 7, 8, 9]);
  });

  test('keeps a place for each character of any text, in order', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (typed) => {
        const { text, origin } = normaliseTyped(typed);
        expect(origin).toHaveLength(text.length + 1);
        for (const [index, place] of origin.entries()) {
          expect(place).toBeGreaterThanOrEqual(index === 0 ? 0 : (origin[index - 1] ?? 0));
          expect(place).toBeLessThanOrEqual(typed.length);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
