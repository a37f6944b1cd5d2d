// What cooks commonly do with a wide-mouth quart jar filled to two inches under the rim. Common practice: no source. The
// tolerances are as wide as practice is; a change that leaves them needs a reason.
import { describe, expect, test } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import type { Recipe } from '../../src/formula/recipe/recipe';
import { fermenting } from '../../src/reference/fermenting';
import { sources } from '../../src/reference/sources';
import { recipeOf, typed } from '../batches';
import { codesAt, numberIn, worked } from '../results';

const cup = 236.5882365;
const tablespoon = 14.78676478125;
const quart = (changes: Partial<Recipe> = {}): Recipe =>
  recipeOf({ vessel: 'quartWide', ...changes, given: [typed('headspaceDepth', 5), ...(changes.given ?? [])] });

function expectWithin(value: number, middle: number, share: number): void {
  expect(value).toBeGreaterThanOrEqual(middle * (1 - share));
  expect(value).toBeLessThanOrEqual(middle * (1 + share));
}

function expectBetween(value: number, low: number, high: number): void {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
}

describe('a quart of almond milk kefir', () => {
  test('takes 36 to 40 g of water kefir grains, about 2 tablespoons', () => {
    const grams = worked(quart(), 'grainMass');
    expectBetween(grams, 36, 40);
    const spoons = grams / worked(quart({ given: [typed('grainMass', tablespoon, 'volume')] }), 'grainMass');
    expectBetween(spoons, 1.75, 2.5);
  });

  test('takes 20 to 25 g of milk kefir grains, about 1 tablespoon', () => {
    const grams = worked(quart({ grains: 'milk' }), 'grainMass');
    expectBetween(grams, 20, 25);
    const spoon = worked(quart({ grains: 'milk', given: [typed('grainMass', tablespoon, 'volume')] }), 'grainMass');
    expectBetween(grams / spoon, 0.8, 1.25);
  });

  test('takes 18 g of cane sugar, give or take a tenth', () => {
    expectWithin(worked(quart(), 'sweetenerMass'), 18, 0.1);
  });

  test('is filled by 170 g of almonds and 3 1/4 cups of water, as bags and hands go', () => {
    const given = [typed('sourceMass', 170), typed('blendWater', 3.25 * cup)];
    const { range } = formulate(recipeOf({ given })).rows.milkVolume;
    expectBetween(worked(quart(), 'milkVolume'), range?.low ?? Number.NaN, range?.high ?? Number.NaN);
  });

  test('of a cup of almonds and four of water comes to 3 3/4 to 4 1/2 cups', () => {
    const given = [typed('sourceMass', cup, 'volume'), typed('blendWater', 4 * cup)];
    const { range } = formulate(recipeOf({ given })).rows.milkVolume;
    for (const cups of [3.75, 4, 4.5]) expectBetween(cups * cup, range?.low ?? Number.NaN, range?.high ?? Number.NaN);
  });

  test('has its almonds soaked overnight', () => {
    const { low = 0, high = 0 } = sources.almond.soak?.hours ?? {};
    expect(low).toBeLessThanOrEqual(12);
    expect(high).toBeGreaterThanOrEqual(8);
    expectBetween(worked(quart(), 'soakTime'), 8, 12);
  });
});

describe('water for a cup or so of source', () => {
  const water = (source: Recipe['source'], cups: number): number =>
    worked(recipeOf({ source, given: [typed('sourceMass', cups * cup, 'volume')] }), 'blendWater') / cup;

  test('half a cup of hemp hearts takes 3 1/2 cups', () => {
    expectWithin(water('hemp', 0.5), 3.5, 0.1);
  });

  test('a cup of hulled sunflower kernels takes 3 1/2 cups', () => {
    expectWithin(water('sunflower', 1), 3.5, 0.1);
  });

  test('a third of a cup of flax takes 3 1/4 to 4 cups', () => {
    expectBetween(water('flax', 1 / 3), 3.25, 4);
  });

  test('3 1/2 cups go with 1 1/2 to 2 cups of dried coconut, warm, ten minutes', () => {
    const formulation = formulate(recipeOf({ source: 'coconutDried', given: [typed('blendWater', 3.5 * cup)] }));
    const weight = formulation.of('sourceWeight');
    expectBetween(numberIn(formulation, 'sourceMass') / weight / cup, 1.5, 2);
    expect(numberIn(formulation, 'soakTime')).toBeCloseTo(10 / 60, 9);
    expect(sources.coconutDried.blendWater?.words).toBe('warm');
  });
});

describe('nuts', () => {
  test.each(['almond', 'hazelnut', 'walnut', 'almondBlanched', 'pecan', 'peanut', 'pistachio'] as const)(
    '%s may soak overnight: somewhere in 8 to 12 h',
    (id) => {
      const { low = Number.NaN, high = Number.NaN } = sources[id].soak?.hours ?? {};
      expect(low <= 12 && high >= 8).toBe(true);
    },
  );
});

describe('a 400 mL can of coconut milk', () => {
  test('is about half of what the jar is filled with; water, grains and sugar are the rest', () => {
    const fill = worked(quart({ source: 'coconutMilk' }), 'fillVolume');
    expectBetween(400 / fill, 0.45, 0.6);
    // The can by its density, 0.98 g/mL or so, lets down to a quart’s fill with the usual water within a tenth.
    const poured = worked(quart({ source: 'coconutMilk' }), 'sourceMass');
    expectWithin(poured, 400 * 0.98, 0.1);
  });
});

describe('from the jar to the glass', () => {
  test('a second ferment takes 6 to 10 hours', () => {
    expectBetween(fermenting.bottleTime.value, 6, 10);
    // Nobody seals a bottle without wishing for fizz.
    expect(worked(quart(), 'bottleTime')).toBe(0);
    for (const hours of [6, 10]) {
      expect(codesAt(formulate(quart({ given: [typed('bottleTime', hours)] })), 'bottleTime')).toEqual([]);
    }
  });

  test.each(['almond', 'peanut', 'hemp', 'sunflower'] as const)(
    '%s kefir keeps about a week in the fridge',
    (source) => {
      const { keepDays } = formulate(quart({ source })).rows;
      expectBetween(worked(quart({ source }), 'keepDays'), 6, 8);
      expectBetween(keepDays.range?.low ?? Number.NaN, 5, 7);
      expectBetween(keepDays.range?.high ?? Number.NaN, 7, 9);
    },
  );

  test.each(['coconutFresh', 'coconutDried', 'coconutMilk'] as const)('%s kefir keeps seven to ten days', (source) => {
    const { range } = formulate(quart({ source })).rows.keepDays;
    expect(range?.low).toBeCloseTo(7, 9);
    expect(range?.high).toBeCloseTo(10, 9);
  });
});

describe('ready at room temperature', () => {
  const time = (...given: Recipe['given']) => {
    const { value, range } = formulate(quart({ given })).rows.readyTime;
    return { low: range?.low ?? Number.NaN, likely: Number(value), high: range?.high ?? Number.NaN };
  };

  test.each([20, 21, 22])('a homemade milk takes one night at %s °C', (celsius) => {
    const { low, likely, high } = time(typed('roomTemperature', celsius));
    expectBetween(likely, 10, 14);
    expectBetween(low, 6, 10);
    expectBetween(high, 14, 20);
  });

  test.each([
    ['warmer', typed('roomTemperature', 24)],
    ['with more sugar', typed('startingSugar', 45)],
    ['with more grains', typed('grainRate', 65)],
  ] as const)('%s it is faster', (_, cell) => {
    const [usual, faster] = [time(), time(cell)];
    for (const end of ['low', 'likely', 'high'] as const) expect(faster[end]).toBeLessThan(usual[end]);
  });
});
