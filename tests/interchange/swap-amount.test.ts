import { describe, expect, test } from 'vitest';
import { swapAmount } from '../../src/interchange/swap-amount';

const habits = { cups: 'us', decimalComma: false } as const;
const honey = [{ id: 'honey', share: 1 }] as const;

describe('a typed amount of a sweetener', () => {
  test('in spoons is weighed by their published weight, with its range', () => {
    const found = swapAmount('2 tbsp', 'caneWhite', honey, habits);
    if (!found.ok) throw new Error(found.why);
    expect(found.typed.kind).toBe('volume');
    // USDA 19335 weighs a cup at 200 g: 25 g of sugar, as much as 31.93 g of honey.
    expect(found.answer.mass.likely).toBeCloseTo(31.93, 2);
    expect(found.answer.mass.low).toBeLessThan(found.answer.mass.likely);
    expect(found.answer.mass.high).toBeGreaterThan(found.answer.mass.likely);
  });

  test('in grams is exact, and so is a bare number', () => {
    for (const text of ['18 g', '18']) {
      const found = swapAmount(text, 'caneWhite', honey, habits);
      if (!found.ok) throw new Error(found.why);
      expect(found.typed).toEqual({ kind: 'mass', amount: 18 });
      expect(found.answer.mass.likely).toBeCloseTo(22.99, 2);
    }
  });

  test.each(['', 'a bit', '-2 tbsp', '1/0 cup', '20 °C'])('that is “%s” is refused with what to do', (text) => {
    const found = swapAmount(text, 'caneWhite', honey, habits);
    expect(found.ok ? '' : found.why).toMatch(/\.$/);
  });

  test('is refused where the grains can’t ferment it', () => {
    expect(swapAmount('2 tbsp', 'caneWhite', [{ id: 'xylitol', share: 1 }], habits).ok).toBe(false);
  });
});
