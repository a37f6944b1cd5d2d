import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cleanName, cutText } from '../../../src/batch/document/plain-text';

describe('a text that is cut', () => {
  test('never ends in half a character', () => {
    expect(cutText('a🥥b', 2)).toBe('a');
    expect(cutText('a🥥b', 3)).toBe('a🥥');
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.nat(20), (text, most) => {
        const cut = cutText(text, most);
        expect(cut.length).toBeLessThanOrEqual(most);
        expect(text.startsWith(cut)).toBe(true);
        expect(cut).not.toMatch(/\p{Cs}/u);
      }),
    );
  });
});

describe('a name', () => {
  test('loses what turns or breaks its line, and what surrounds it', () => {
    expect(cleanName('  Satur\u202Eday\n oat\u0000s ')).toBe('Saturday oats');
    expect(cleanName('👩‍🍳 मूँगफली')).toBe('👩‍🍳 मूँगफली');
  });

  test('of which nothing can be seen is none', () => {
    for (const name of ['', '  ', '\u200B\u200B', '\u202E', '\u00A0\u2060']) expect(cleanName(name)).toBe('');
  });
});

test('a name of blanks alone is soon cleaned', () => {
  const begin = performance.now();
  expect(cleanName(`a \t b${' '.repeat(200_000)}c`).slice(0, 4)).toBe('a b ');
  expect(performance.now() - begin).toBeLessThan(10_000);
});
