import { describe, expect, test } from 'vitest';
import { answerSwap } from '../../../src/formula/advice/swap-answer';

const exactly = (grams: number) => ({ low: grams, likely: grams, high: grams });

function answer(...asked: Parameters<typeof answerSwap>) {
  const found = answerSwap(...asked);
  if (!found.ok) throw new Error(found.why);
  return found.answer;
}

describe('an amount of a sweetener in another', () => {
  test('holds the same fermentable sugar', () => {
    // 18 g × 0.998 × 1.05263 = 18.909 g of hexose; honey 19296 holds 82.243 g in 100 g (USDA SR Release 28).
    const { mass, hexose, parts } = answer(exactly(18), 'caneWhite', [{ id: 'honey', share: 1 }]);
    expect(hexose).toBeCloseTo(18.909, 3);
    expect(mass.likely).toBeCloseTo(22.99, 2);
    expect(mass.high).toBeCloseTo(mass.low, 9);
    expect(parts.map(({ id }) => id)).toEqual(['honey']);
  });

  test('is the same both ways', () => {
    const there = answer(exactly(25), 'caneWhite', [{ id: 'mapleSyrup', share: 1 }]).mass.likely;
    expect(answer(exactly(there), 'mapleSyrup', [{ id: 'caneWhite', share: 1 }]).mass.likely).toBeCloseTo(25, 9);
  });

  test('is as much of itself, however little its label tells', () => {
    expect(answer(exactly(20), 'coconutSugar', [{ id: 'coconutSugar', share: 1 }]).mass).toEqual(exactly(20));
  });

  test('carries the range of a measure, and that of sugars no table gives', () => {
    const spoon = { low: 23, likely: 25, high: 27 };
    const { mass } = answer(spoon, 'caneWhite', [{ id: 'honey', share: 1 }]);
    expect(mass.low / mass.likely).toBeCloseTo(23 / 25, 9);
    const open = answer(spoon, 'caneWhite', [{ id: 'coconutSugar', share: 1 }]).mass;
    expect(open.low / open.likely).toBeLessThan(23 / 25);
    expect(open.high / open.likely).toBeGreaterThan(27 / 25);
  });

  test('is a blend by weight in any share, given in proportion', () => {
    const { mass, parts } = answer(exactly(18), 'caneWhite', [
      { id: 'caneWhite', share: 3 },
      { id: 'honey', share: 1 },
    ]);
    // 18.909 ÷ (0.75 × 1.05053 + 0.25 × 0.82243) g.
    expect(mass.likely).toBeCloseTo(19.035, 2);
    expect(parts.map(({ grams }) => grams.likely / mass.likely)).toEqual([0.75, 0.25]);
  });

  test('says what to beware of', () => {
    expect(answer(exactly(18), 'caneWhite', [{ id: 'honey', share: 1 }]).cautions.join(' ')).toMatch(/12 months/);
    // In the answer it is honey that matters, not what it stands for.
    expect(answer(exactly(18), 'honey', [{ id: 'caneWhite', share: 1 }]).cautions).toEqual([]);
  });

  test.each(['stevia', 'erythritol', 'none'] as const)('is refused for %s, either way, with the reason', (id) => {
    for (const found of [
      answerSwap(exactly(18), 'caneWhite', [{ id, share: 1 }]),
      answerSwap(exactly(18), id, [{ id: 'honey', share: 1 }]),
    ])
      expect(found.ok ? '' : found.why).toMatch(/ferment/);
  });

  test('is refused for shares that add up to nothing', () => {
    expect(answerSwap(exactly(18), 'caneWhite', [{ id: 'honey', share: 0 }]).ok).toBe(false);
    expect(answerSwap(exactly(18), 'caneWhite', []).ok).toBe(false);
  });
});
