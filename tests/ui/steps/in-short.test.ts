import { describe, expect, test } from 'vitest';
import { cautions } from '../../../src/reference/cautions';
import { inShort } from '../../../src/ui/steps/in-short';

describe('a remark in short', () => {
  test('is as many whole sentences as a line holds', () => {
    expect(inShort('Sweet almonds only. Never use bitter almonds: they release cyanide.')).toEqual({
      short: 'Sweet almonds only. Never use bitter almonds: they release cyanide.',
      rest: '',
    });
    expect(inShort('Keep it at pH 4.6 or less. Throw it out else. A strip is enough.').short).toMatch(
      /^Keep.+enough\.$/,
    );
  });

  test('is its first sentence, however long, and loses nothing of the rest', () => {
    for (const { text } of cautions) {
      const { short, rest } = inShort(text);
      expect(short).toMatch(/[.!?]$/);
      expect(rest === '' ? short : `${short} ${rest}`).toBe(text);
    }
  });
});
