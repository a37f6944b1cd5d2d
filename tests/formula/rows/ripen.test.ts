import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { describeProblem } from '../../../src/formula/words/words';
import { plainRecipe, recipeOf, sensibleRecipe, typed } from '../../batches';
import { agrees, codesAt, numberIn, problemAt, worked } from '../../results';

const at = (celsius: number, changes: Partial<Recipe> = {}): Recipe =>
  recipeOf({ ...changes, given: [...(changes.given ?? []), typed('roomTemperature', celsius)] });

/** The ready time with its ends, for a recipe that has one. */
function ready(formulation: Formulation) {
  const { value, range } = formulation.rows.readyTime;
  if (typeof value !== 'number' || range === null) return null;
  return { low: range.low, likely: value, high: range.high };
}

function expectNoLonger(faster: Formulation, slower: Formulation): void {
  const [one, other] = [ready(faster), ready(slower)];
  expect(one).not.toBeNull();
  expect(other).not.toBeNull();
  if (one === null || other === null) return;
  for (const end of ['low', 'likely', 'high'] as const) expect(one[end]).toBeLessThanOrEqual(other[end] * (1 + 1e-9));
}

describe('the room', () => {
  test('is the usual one unless it is typed', () => {
    expect(worked(recipeOf(), 'roomTemperature')).toBe(21);
    expect(worked(at(25), 'roomTemperature')).toBe(25);
  });

  test('outside the usual rooms is remarked, and taken', () => {
    expect(codesAt(formulate(at(26)), 'roomTemperature')).toContain('outsideUsual');
    expect(codesAt(formulate(at(20)), 'roomTemperature')).not.toContain('outsideUsual');
  });
});

describe('the ready time', () => {
  test.each([
    ['water', 12, 8, 16],
    ['milk', 11, 7, 16],
    ['kefir', 16, 8, 24],
  ] as const)('with %s at the usual dose and sugar at 21 °C is %i h, %i to %i h', (grains, likely, low, high) => {
    const { value, range } = formulate(recipeOf({ grains })).rows.readyTime;
    expect(value).toBeCloseTo(likely, 9);
    expect(range?.low).toBeCloseTo(low, 9);
    expect(range?.high).toBeCloseTo(high, 9);
  });

  test('with a packet of starter is that of its own warmer room, and longer at 21 °C', () => {
    const warm = formulate(recipeOf({ grains: 'powder', given: [typed('roomTemperature', 23.5)] })).rows.readyTime;
    expect([warm.value, warm.range?.low, warm.range?.high]).toEqual([20, 16, 24]);
    expect(Number(formulate(recipeOf({ grains: 'powder' })).rows.readyTime.value)).toBeGreaterThan(24);
  });

  test('that may pass the 24 h of a homemade milk says so, and a carton’s does not', () => {
    const cold = problemAt(formulate(at(17)), 'readyTime', 'slowerThanLine');
    expect(describeProblem(cold, demo.settings).replaceAll('\u00A0', ' ')).toBe(
      'At this warmth a homemade milk has 24 h to reach pH 4.6, and this may take longer. Find a warmer place, or use more culture.',
    );
    expect(codesAt(formulate(at(18)), 'readyTime')).toEqual([]);
    const warm = problemAt(formulate(at(28, { given: [typed('grainRate', 20)] })), 'readyTime', 'slowerThanLine');
    expect(warm).toMatchObject({ hours: 11 });
    expect(describeProblem(warm, demo.settings)).toMatch(/has 11.h to reach.*longer\. Use more culture\.$/);
    expect(codesAt(formulate(at(17, { source: 'cartonPlain' })), 'readyTime')).toEqual([]);
  });

  test('waits for a start that is less than the milk brings of its own', () => {
    const formulation = formulate(recipeOf({ given: [typed('startingSugar', 1e-300)] }));
    expect(problemAt(formulation, 'readyTime', 'waits')).toMatchObject({ for: 'startingSugar' });
  });

  test('of a batch in another room is worked by hand: 24 °C with 40 g/L of grains and 30 g/L of sugar at the start', () => {
    const given = [typed('grainRate', 40), typed('startingSugar', 30)];
    const formulation = formulate(at(24, { given }));
    const usual = formulation.of('usualStart');
    // Growth of the bacterium by its cardinal temperatures 5.4, 34.2 and 41.4 °C.
    const growth = (t: number): number =>
      ((t - 41.4) * (t - 5.4) ** 2) / (28.8 * (28.8 * (t - 34.2) + 7.2 * (39.6 - 2 * t)));
    const byHand = 12 * (growth(21) / growth(24)) * (54 / 40) ** 0.75 * (usual / 30) ** 0.15;
    expect(agrees(numberIn(formulation, 'readyTime'), byHand)).toBe(true);
  });

  test('goes as one over how fast this kitchen is', () => {
    const yours = { 'kitchen.pace': { value: 1.5, how: 'learned' } } as const;
    expect(worked(recipeOf({ yours }), 'readyTime')).toBeCloseTo(8, 9);
  });

  test.each([15, 31, 35, 4, -10])('is no number at %s °C, and the reason names where it can be told', (celsius) => {
    const formulation = formulate(at(celsius));
    expect(formulation.rows.readyTime.value).toBeNull();
    expect(formulation.rows.readyTime.range).toBeNull();
    const problem = problemAt(formulation, 'readyTime', 'outsideModels');
    const said = describeProblem(problem, demo.settings).replaceAll('\u00A0', ' ');
    expect(said).toContain('16 °C (61 °F) to 30 °C (86 °F)');
    expect(said).toContain(celsius < 16 ? 'warmer place' : 'cooler place');
  });

  test.each([16, 30])('is a number at %s °C still', (celsius) => {
    expect(worked(at(celsius), 'readyTime')).toBeGreaterThan(0);
  });

  test('is none without sugar, and says that nothing ripens', () => {
    const formulation = formulate(recipeOf({ source: 'cartonPlain', given: [typed('sugarRate', 0)] }));
    expect(codesAt(formulation, 'readyTime')).toEqual(['nothingToRipen']);
    expect(formulation.rows.readyTime.value).toBeNull();
    const trace = formulate(recipeOf({ given: [typed('startingSugar', 5e-324)], source: 'cartonPlain' }));
    expect(codesAt(trace, 'readyTime')).toEqual(['nothingToRipen']);
  });

  test('can’t be typed', () => {
    const formulation = formulate(recipeOf({ given: [typed('readyTime', 5)] }));
    expect(codesAt(formulation, 'readyTime')).toEqual(['notTyped']);
    expect(formulation.of('readyTime')).toBeCloseTo(12, 9);
  });

  test('lies within its ends, whatever is typed', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const time = ready(formulate(recipe));
        if (time === null) return;
        expect(time.low).toBeGreaterThan(0);
        expect(time.low).toBeLessThanOrEqual(time.likely * (1 + 1e-9));
        expect(time.likely).toBeLessThanOrEqual(time.high * (1 + 1e-9));
        expect(Number.isFinite(time.high)).toBe(true);
      }),
    );
  });
});

describe('never takes longer, nor may it', () => {
  const room = fc.integer({ min: 160, max: 300 }).map((tenth) => tenth / 10);
  const dose = fc.integer({ min: 50, max: 1500 }).map((tenth) => tenth / 10);
  const sugar = fc.integer({ min: 0, max: 400 }).map((tenth) => tenth / 10);

  test('in a warmer room', () => {
    fc.assert(
      fc.property(plainRecipe, room, room, (recipe, one, other) => {
        const make = (celsius: number) => formulate({ ...recipe, given: [typed('roomTemperature', celsius)] });
        if (ready(make(one)) === null) return;
        expectNoLonger(make(Math.max(one, other)), make(Math.min(one, other)));
      }),
    );
  });

  test('with more grains', () => {
    fc.assert(
      fc.property(plainRecipe, room, dose, dose, (recipe, celsius, one, other) => {
        const make = (rate: number) =>
          formulate({ ...recipe, given: [typed('roomTemperature', celsius), typed('grainRate', rate)] });
        if (ready(make(one)) === null) return;
        expectNoLonger(make(Math.max(one, other)), make(Math.min(one, other)));
      }),
    );
  });

  test('with more sugar', () => {
    fc.assert(
      fc.property(plainRecipe, room, sugar, sugar, (recipe, celsius, one, other) => {
        const make = (rate: number) =>
          formulate({ ...recipe, given: [typed('roomTemperature', celsius), typed('sugarRate', rate)] });
        const slower = make(Math.min(one, other));
        if (ready(slower) === null) return;
        expectNoLonger(make(Math.max(one, other)), slower);
      }),
    );
  });

  test('with more grains or sugar by weight, on top of whatever else is typed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<'grainMass' | 'sweetenerMass'>('grainMass', 'sweetenerMass'),
        fc.integer({ min: 10, max: 80 }),
        fc.integer({ min: 10, max: 80 }),
        (row, one, other) => {
          const make = (grams: number) => formulate(recipeOf({ given: [typed('milkVolume', 900), typed(row, grams)] }));
          expectNoLonger(make(Math.max(one, other)), make(Math.min(one, other)));
        },
      ),
    );
  });
});
