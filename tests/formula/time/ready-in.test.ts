import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { type ReadyIn, readyIn } from '../../../src/formula/time/ready-in';
import { plainRecipe, recipeOf, typed } from '../../batches';
import { agrees } from '../../results';

const offersFor = (recipe: Recipe, hours: number): readonly ReadyIn[] => readyIn(formulate(recipe), hours) ?? [];

/** The likely hours once a value is typed in the row of an offer, in place of what was typed there. */
function hoursWith(recipe: Recipe, row: ReadyIn['row'], value: number): number {
  const others = recipe.given.filter((cell) => cell.row !== row);
  return formulate({ ...recipe, given: [...others, typed(row, value)] }).of('readyTime');
}

const hoursAsked = fc.integer({ min: 10, max: 600 }).map((tenth) => tenth / 10);
const room = fc.integer({ min: 160, max: 300 }).map((tenth) => typed('roomTemperature', tenth / 10));
const dose = fc.integer({ min: 20, max: 90 }).map((rate) => typed('grainRate', rate));
const someRecipe: fc.Arbitrary<Recipe> = fc
  .tuple(plainRecipe, fc.subarray([room, dose]))
  .chain(([recipe, cells]) => fc.tuple(...cells).map((given) => ({ ...recipe, given })));

describe('to have it ready in so many hours', () => {
  test('each offer, typed, really gives that time, and is usual', () => {
    fc.assert(
      fc.property(someRecipe, hoursAsked, (recipe, hours) => {
        for (const { row, value, usual } of offersFor(recipe, hours)) {
          if (value === null) continue;
          expect(value).toBeGreaterThanOrEqual(usual.low);
          expect(value).toBeLessThanOrEqual(usual.high);
          const off = Math.abs(hoursWith(recipe, row, value) / hours - 1);
          expect(off, `${row} ${value}`).toBeLessThan(1e-6);
        }
      }),
    );
  });

  test('where nothing usual does it, the nearest end really gives its time, and gets nearer than now', () => {
    fc.assert(
      fc.property(someRecipe, hoursAsked, (recipe, hours) => {
        const now = formulate(recipe).of('readyTime');
        for (const { row, value, usual, nearest } of offersFor(recipe, hours)) {
          if (nearest === null) continue;
          expect(value).toBeNull();
          expect([usual.low, usual.high]).toContain(nearest.value);
          expect(agrees(hoursWith(recipe, row, nearest.value), nearest.hours)).toBe(true);
          const off = (time: number) => Math.abs(Math.log(time / hours));
          if (Number.isFinite(now)) expect(off(nearest.hours)).toBeLessThan(off(now));
        }
      }),
    );
  });

  test('what the usual range does comes first, then the room, the grains and the sugar', () => {
    const order = ['roomTemperature', 'grainRate', 'startingSugar'];
    fc.assert(
      fc.property(someRecipe, hoursAsked, (recipe, hours) => {
        const offers = offersFor(recipe, hours);
        const does = offers.map(({ value }) => value !== null);
        expect(does).toEqual([...does].sort((one, other) => Number(other) - Number(one)));
        for (const part of [true, false]) {
          const rows = offers.filter(({ value }) => (value !== null) === part).map(({ row }) => order.indexOf(row));
          expect(rows).toEqual([...rows].sort((one, other) => one - other));
        }
      }),
    );
  });

  test('as long as it takes already is offered as it is', () => {
    const offers = offersFor(recipeOf(), 12);
    expect(offers.map(({ row }) => row)).toEqual(['roomTemperature', 'grainRate', 'startingSugar']);
    for (const { value, now } of offers) expect(value).toBeCloseTo(now, 5);
  });

  test('faster by a tenth takes a warmer room or more grains: worked by hand for the dose', () => {
    const [warmer, more, sugar] = offersFor(recipeOf({ grains: 'milk' }), 10);
    expect(warmer?.row).toBe('roomTemperature');
    expect(warmer?.value).toBeGreaterThan(21);
    // 31 g/L × (11 ÷ 10)^(1 ÷ 0.75)
    expect(more?.value).toBeCloseTo(31 * 1.1 ** (4 / 3), 9);
    expect(sugar?.value).toBeNull();
  });

  test('beyond what is usual says how far it gets', () => {
    for (const { value, nearest } of offersFor(recipeOf(), 3)) {
      expect(value).toBeNull();
      expect(nearest?.hours).toBeGreaterThan(3);
      expect(nearest?.hours).toBeLessThan(12);
    }
  });

  test('an unusually warm room is not called a way to be faster still', () => {
    const [first, ...others] = offersFor(recipeOf({ given: [typed('roomTemperature', 28)] }), 4);
    expect(others).toHaveLength(2);
    const byRoom = [first, ...others].find((offer) => offer?.row === 'roomTemperature');
    expect(byRoom).toMatchObject({ value: null, nearest: null, now: 28 });
  });

  test('outside the models only the room is offered, since there is no time to change the rest from', () => {
    const offers = offersFor(recipeOf({ given: [typed('roomTemperature', 35)] }), 9);
    expect(offers.map(({ row }) => row)).toEqual(['roomTemperature']);
    expect(hoursWith(recipeOf(), 'roomTemperature', offers[0]?.value ?? Number.NaN)).toBeCloseTo(9, 5);
  });

  test('without a sweetener that feeds the grains no sugar is offered', () => {
    const offers = offersFor(recipeOf({ source: 'cartonSweetened', sweetener: [{ id: 'erythritol', share: 1 }] }), 9);
    expect(offers.map(({ row }) => row)).not.toContain('startingSugar');
    expect(offers).toHaveLength(2);
  });

  test('the usual sugar is lowered by what is native, as the addition is', () => {
    const formulation = formulate(recipeOf({ source: 'coconutWater' }));
    const sugar = readyIn(formulation, 12)?.find(({ row }) => row === 'startingSugar');
    const native = formulation.of('nativeSugar');
    expect(native).toBeGreaterThan(10);
    expect(sugar?.usual.high).toBeCloseTo(native + Math.max(40 - (native - 10), 0), 9);
    expect(sugar?.usual.low).toBeCloseTo(native + Math.max(15 - (native - 10), 0), 9);
  });

  test('dose and sugar of no effect in this kitchen offer nothing nearer', () => {
    const yours = { 'kitchen.doseExponent': { value: 0, how: 'typed' } } as const;
    const dose = offersFor(recipeOf({ yours }), 6).find(({ row }) => row === 'grainRate');
    expect(dose).toMatchObject({ value: null, nearest: null });
  });

  test.each([0, -1, Number.NaN, Number.POSITIVE_INFINITY])('%s hours are none', (hours) => {
    expect(readyIn(formulate(recipeOf()), hours)).toBeNull();
  });

  test('a batch that has no time has no way to another', () => {
    for (const given of [[typed('roomTemperature', null)], [typed('grainRate', null)]])
      expect(readyIn(formulate(recipeOf({ given })), 9)).toBeNull();
    expect(readyIn(formulate(recipeOf({ source: 'cartonPlain', given: [typed('sugarRate', 0)] })), 9)).toBeNull();
  });
});
