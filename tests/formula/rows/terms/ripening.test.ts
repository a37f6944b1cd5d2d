import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../../src/formula/engine/formulate';
import { workingOf } from '../../../../src/formula/working/working';
import { plainRecipe, recipeOf, typed } from '../../../batches';
import { worked } from '../../../results';
import { originsWithin } from '../../origins-within';

describe('the usual sugar at the start', () => {
  test('is what the batch starts with where nothing is typed', () => {
    fc.assert(
      fc.property(plainRecipe, (recipe) => {
        const formulation = formulate(recipe);
        const { value } = formulation.rows.startingSugar;
        // A sweetener that the grains can’t ferment adds nothing, and so starts below what is usual.
        if (typeof value !== 'number' || !(formulation.of('fermentable') > 0)) return;
        expect(formulation.of('usualStart')).toBeCloseTo(value, 9);
      }),
    );
  });

  test('stays when other sugar is typed', () => {
    const usual = formulate(recipeOf()).of('usualStart');
    expect(formulate(recipeOf({ given: [typed('sugarRate', 5)] })).of('usualStart')).toBeCloseTo(usual, 9);
  });
});

describe('the ends of the ready time', () => {
  test('are the usual ones times the least and the most of the models: worked by hand at 26 °C', () => {
    const { rows, of } = formulate(recipeOf({ given: [typed('roomTemperature', 26)] }));
    const growth = (t: number, [least, best, most]: readonly [number, number, number]): number =>
      ((t - most) * (t - least) ** 2) /
      ((best - least) * ((best - least) * (t - best) - (best - most) * (best + least - 2 * t)));
    const models = [
      [5.4, 34.2, 41.4],
      [4, 38.3, 49.6],
      [2.8, 32.3, 45.4],
    ] as const;
    const times = models.map((cardinals) => growth(21, cardinals) / growth(26, cardinals));
    times.push(Math.exp((64300 / 8.314462618) * (1 / 299.15 - 1 / 294.15)));
    expect(of('asLong')).toBeCloseTo(times[0] ?? Number.NaN, 9);
    expect(of('readySoonest')).toBeCloseTo(8 * Math.min(...times), 6);
    expect(of('readyLatest')).toBeCloseTo(16 * Math.max(...times), 6);
    expect(rows.readyTime.range).toEqual({ low: of('readySoonest'), high: of('readyLatest') });
  });

  test('move with a usual time of one’s own', () => {
    const yours = { 'water.readyUsual': { value: 18, how: 'typed' } } as const;
    const { range, value } = formulate(recipeOf({ yours })).rows.readyTime;
    expect([range?.low, value, range?.high].map((time) => Number(time).toFixed(6))).toEqual(
      [12, 18, 24].map((time) => time.toFixed(6)),
    );
  });

  test('say in their working whose models they are', () => {
    const { evaluation } = formulate(recipeOf());
    for (const id of ['readySoonest', 'readyLatest', 'asLong'] as const) {
      expect(originsWithin(workingOf(id, evaluation), evaluation).join(' '), id).toContain('Published: ');
    }
  });

  test('are none where the room is outside the models', () => {
    const { of } = formulate(recipeOf({ given: [typed('roomTemperature', 33)] }));
    expect(of('readySoonest')).toBeNaN();
    expect(of('readyLatest')).toBeNaN();
  });
});

test('twice the pace is half the time', () => {
  const yours = { 'kitchen.pace': { value: 2, how: 'typed' } } as const;
  expect(worked(recipeOf({ yours }), 'readyTime') * 2).toBeCloseTo(worked(recipeOf(), 'readyTime'), 9);
});
