import { describe, expect, test } from 'vitest';
import { planFromRecipe } from '../../src/interchange/recipe-batch';
import {
  type ByHand,
  type Habits,
  isMeaning,
  keepByHand,
  type Meaning,
  readRecipe,
  takeByHand,
  tell,
} from '../../src/interchange/recipe-text';
import { weighIngredients } from '../../src/interchange/recipe-weigh';

const habits: Habits = { cups: 'us', decimalComma: false };

function told(line: number, meaning: Meaning | null, amount = '', at = 0): ByHand {
  return { line, at, meaning, amount };
}

function change(text: string, ...said: readonly ByHand[]) {
  const read = takeByHand(readRecipe(text, habits), said, habits);
  return { read, weighed: weighIngredients(read, habits), plan: planFromRecipe(read, habits) };
}

describe('what is told of a line', () => {
  test('is the food it is of, and its problem goes', () => {
    const { read, weighed } = change('1 tsp almond extract\n1 cup rice milk', told(1, 'source.cartonPlain'));
    expect(read.lines[1]?.ingredients[0]).toMatchObject({ problem: null, food: { id: 'cartonPlain', sure: true } });
    // A cup is 236.6 mL.
    expect(weighed[1]?.millilitres?.likely).toBeCloseTo(236.588, 3);
    expect(read.lines[0]?.ingredients[0]?.food?.key).toBeNull();
  });

  test('makes an ounce of a liquid a fluid one', () => {
    const { read } = change('8 oz something clear', told(0, '14411'));
    expect(read.lines[0]?.ingredients[0]).toMatchObject({ kind: 'volume', assumed: 'fluidOunce' });
  });

  test('is another amount, which counts in place of the one that was read', () => {
    const { weighed } = change('1 cup almonds', told(0, null, '150 g'));
    expect(weighed[0]?.grams?.likely).toBe(150);
    expect(weighed[0]?.weighedBy).toBe('stated');
  });

  test('is an amount that can’t be read, and says so without losing what was typed', () => {
    const { weighed, plan } = change('1 cup almonds', told(0, null, 'lots'));
    expect(weighed[0]).toMatchObject({ grams: null, problem: { code: 'amountUnread', text: 'lots' } });
    expect(plan.cells).toEqual([]);
  });

  test.each([
    ['a step', 'Rinse and dry well.'],
    ['a heading', 'Notes:'],
    ['a line with a number that can’t be read', '½/0 cups of it'],
    ['a line of which nothing was known', 'Grandmother’s secret'],
  ])('makes an ingredient of %s', (_, text) => {
    const { weighed, plan } = change(`Kefir\n${text}`, told(1, '12061', '1 cup'));
    expect(weighed).toHaveLength(1);
    // USDA 12061: 143 g a cup.
    expect(weighed[0]?.grams?.likely).toBeCloseTo(143, 6);
    expect(plan.choices.source).toBe('almond');
  });

  test('asks for the amount of a line that has none', () => {
    const { weighed } = change('Kefir\nGrandmother’s secret', told(1, '12061'));
    expect(weighed[0]).toMatchObject({ grams: null, problem: { code: 'noAmount' } });
  });

  test('takes an ingredient out, which can be put back', () => {
    const text = '1 cup almonds\n1 cup cashews';
    const { plan, read } = change(text, told(1, 'none'));
    expect(plan.remarks.map(({ code }) => code)).not.toContain('severalSources');
    expect(plan.extras).toEqual([]);
    expect(read.lines[1]?.ingredients).toHaveLength(1);
    expect(takeByHand(readRecipe(text, habits), [], habits)).toEqual(readRecipe(text, habits));
  });

  test('is that water soaks, or does not', () => {
    expect(change('3 cups water', told(0, 'soaking')).plan.cells).toEqual([]);
    expect(change('3 cups water for soaking', told(0, '14411')).plan.cells).toMatchObject([{ row: 'blendWater' }]);
  });

  test('is that it is something to remember', () => {
    const { plan, weighed } = change('1 tsp almond extract', told(0, 'extra'));
    expect(plan.extras).toEqual(['1 tsp almond extract']);
    expect(weighed[0]?.problem).toBeNull();
  });

  test('brings back what was set aside', () => {
    const text = '1 tbsp honey (optional)';
    expect(change(text).plan.cells).toEqual([]);
    expect(change(text, told(0, '19296')).plan.cells).toMatchObject([{ row: 'sweetenerMass' }]);
  });

  test('is the jar, by the size in the line or the one typed', () => {
    expect(change('1 cup almonds\n2 L', told(1, 'jar')).plan.choices.vessel).toBe('twoLitre');
    expect(change('1 cup almonds\nGrandmother’s crock', told(1, 'jar', '1 qt')).plan.choices.vessel).toBe('quartWide');
    expect(change('1 cup almonds\nGrandmother’s crock', told(1, 'jar')).plan.choices.vessel).toBeUndefined();
  });

  test('is kept for each ingredient of a line by itself', () => {
    const { weighed } = change('1 cup almonds and 1 cup water', told(0, '12087', '', 0), told(0, null, '2 cups', 1));
    expect(weighed.map(({ ingredient }) => ingredient.food?.key)).toEqual(['12087', '14411']);
    expect(weighed[1]?.millilitres?.likely).toBeCloseTo(473.18, 2);
  });

  test('leaves the text as it was', () => {
    const text = 'Kefir\n1 cup almonds\nBlend well.';
    const { read } = change(text, told(1, '12087'), told(2, '12061', '1 cup'), told(9, '12061'));
    expect(read.lines.map((line) => line.text).join('\n')).toBe(text);
  });
});

describe('telling', () => {
  test('adds to what was told of that line, and is forgotten where all is as it was read', () => {
    const once = tell([], 1, 0, { meaning: '12061' });
    const twice = tell(once, 1, 0, { amount: '1 cup' });
    expect(twice).toEqual([told(1, '12061', '1 cup')]);
    expect(tell(tell(twice, 1, 0, { amount: '' }), 1, 0, { meaning: null })).toEqual([]);
  });

  test('knows meanings and foods, and nothing else', () => {
    for (const meaning of ['none', 'jar', 'soaking', 'extra', '12061', 'grains.milk'])
      expect(isMeaning(meaning), meaning).toBe(true);
    for (const text of ['', 'almonds', 'own.Gone', 'toString']) expect(isMeaning(text), text).toBe(false);
  });
});

test('what was told stays with its line when the text around it changes', () => {
  const before = readRecipe('1 cup mix\n1 cup mix\n1 cup almonds', habits);
  const now = readRecipe('Kefir\n1 cup mix\n3 cups water\n1 cup mix', habits);
  expect(keepByHand([told(1, '12061'), told(2, '12087')], before, now)).toEqual([told(3, '12061')]);
});
