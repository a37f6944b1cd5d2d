import { describe, expect, test } from 'vitest';
import { type Habits, readRecipe } from '../../src/interchange/recipe-text';
import { weighIngredients } from '../../src/interchange/recipe-weigh';

const habits: Habits = { cups: 'us', decimalComma: false };

function weigh(text: string, how: Habits = habits) {
  const [first] = weighIngredients(readRecipe(text, how), how);
  if (first === undefined) throw new Error('no ingredient was read');
  return first;
}

describe('a weighed ingredient', () => {
  test('takes the published cup weight, with its origin and the error to expect', () => {
    const { grams, millilitres, by, error, weighedBy } = weigh('1 cup almonds');
    expect(grams?.likely).toBeCloseTo(143, 6);
    expect([grams?.low, grams?.high].map((each) => Math.round(each ?? 0))).toEqual([122, 164]);
    expect(millilitres?.likely).toBeCloseTo(236.588, 3);
    expect(by?.origin).toMatchObject({ kind: 'published', place: expect.stringContaining('12061') });
    expect(error).toMatchObject({ value: 0.15, origin: { kind: 'from memory' } });
    expect(weighedBy).toBe('cup');
  });

  test('weighs another cut by its own measure', () => {
    expect(weigh('1 cup sliced almonds').grams?.likely).toBeCloseTo(92, 6);
    expect(weigh('1 cup ground almonds').grams?.likely).toBeCloseTo(95, 6);
    expect(weigh('1 cup ground cashews')).toMatchObject({ formKnown: false });
  });

  test('takes a stated weight before a cup, and says how far the two differ', () => {
    const { grams, weighedBy, error, disagreement } = weigh('1 cup (160 g) hazelnuts');
    expect(grams).toEqual({ low: 160, likely: 160, high: 160 });
    expect({ weighedBy, error }).toEqual({ weighedBy: 'stated', error: null });
    expect(disagreement?.published.likely).toBeCloseTo(135, 6);
    expect(disagreement?.share).toBeCloseTo(0.1852, 4);
    expect(disagreement).toMatchObject({ stated: 160, beyond: true });
    expect(weigh('160 g (1 cup) hazelnuts').disagreement?.share).toBeCloseTo(0.1852, 4);
    expect(weigh('1 cup (135 g) hazelnuts').disagreement).toBeNull();
    expect(weigh('1 cup (140 g) hazelnuts').disagreement).toMatchObject({ beyond: false });
  });

  test('carries a range through', () => {
    const { grams } = weigh('1-2 tbsp honey');
    expect(grams?.low).toBeCloseTo(21 * 0.95, 6);
    // By the cup, 339 g; the tablespoon of the same record is a little lighter for its volume.
    expect(grams?.likely).toBeCloseTo((339 / 16) * 1.5, 6);
    expect(grams?.high).toBeCloseTo((339 / 8) * 1.05, 6);
  });

  test('covers packed and unpacked brown sugar where it is not said which', () => {
    expect(weigh('1 cup packed brown sugar').grams?.likely).toBeCloseTo(220, 6);
    expect(weigh('1 cup unpacked brown sugar').grams?.likely).toBeCloseTo(145, 6);
    const { low = 0, high = 0 } = weigh('1 cup brown sugar').grams ?? {};
    expect(low).toBeLessThan(145);
    expect(high).toBeGreaterThan(220);
  });

  test('lowers a scant cup by a judgement', () => {
    expect(weigh('1 scant cup almonds').grams?.likely).toBeCloseTo(143 * 0.95, 6);
  });

  test('does not convert a heaped spoon, but takes a weight beside it', () => {
    expect(weigh('1 heaped tbsp sugar')).toMatchObject({ grams: null, millilitres: null, problem: { code: 'heaped' } });
    expect(weigh('1 heaped tbsp (15 g) sugar')).toMatchObject({
      grams: { likely: 15 },
      problem: null,
      disagreement: null,
    });
  });

  test('weighs pieces where one is published', () => {
    expect(weigh('12 medjool dates')).toMatchObject({ grams: { likely: 288 }, weighedBy: 'piece' });
    expect(weigh('2 cashews')).toMatchObject({ grams: null, problem: { code: 'noPieceWeight' } });
  });

  test('weighs grains by their spoon, with its remembered range', () => {
    const { grams, error } = weigh('2 tbsp water kefir grains');
    expect(grams?.low).toBeCloseTo(30, 9);
    expect(grams?.likely).toBeCloseTo(35, 9);
    expect(grams?.high).toBeCloseTo(40, 9);
    expect(error).toBeNull();
  });

  test('gives a volume and no weight for what has no cup weight', () => {
    expect(weigh('1 cup almond milk')).toMatchObject({ grams: null, problem: { code: 'noCupWeight' } });
    expect(weigh('1 tbsp lemon juice')).toMatchObject({ grams: null, problem: { code: 'unknownFood' } });
    expect(weigh('1 tbsp lemon juice').millilitres?.likely).toBeCloseTo(14.787, 3);
  });

  test('weighs by the cook’s own cup', () => {
    const own = { ...habits, ownFoods: [{ name: 'Almonds', grams: 150, millilitres: 236.5882365 }] };
    const { grams, by } = weigh('1 cup almonds', own);
    expect(grams?.likely).toBeCloseTo(150, 6);
    expect(by?.origin).toEqual({ kind: 'yours', how: 'measured' });
  });
});
