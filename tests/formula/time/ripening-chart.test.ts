import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { hoursInUsualRoom, ripeningAgainstRoom } from '../../../src/formula/time/ripening-chart';
import { recipeOf, sensibleRecipe, typed } from '../../batches';
import { agrees } from '../../results';

describe('the ready time against the temperature of the room', () => {
  test('covers all that the models do, in steps of a degree', () => {
    const points = ripeningAgainstRoom(formulate(recipeOf())) ?? [];
    expect(points.map(({ celsius }) => celsius)).toEqual(Array.from({ length: 15 }, (_, at) => 16 + at));
  });

  test('is what the sheet says when each of its temperatures is typed', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const points = ripeningAgainstRoom(formulate(recipe));
        const others = recipe.given.filter(({ row }) => row !== 'roomTemperature');
        for (const { celsius, soonest, likely, latest } of points ?? []) {
          const { rows } = formulate({ ...recipe, given: [...others, typed('roomTemperature', celsius)] });
          const { value, range } = rows.readyTime;
          expect(typeof value === 'number' && agrees(value, likely)).toBe(true);
          expect(range !== null && agrees(range.low, soonest) && agrees(range.high, latest)).toBe(true);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('is not drawn for a start below what the milk brings of its own', () => {
    expect(ripeningAgainstRoom(formulate(recipeOf({ given: [typed('startingSugar', 0.08)] })))).toBeNull();
  });

  test('falls with warmth, and the likely lies between the ends', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const points = ripeningAgainstRoom(formulate(recipe)) ?? [];
        points.forEach(({ soonest, likely, latest }, at) => {
          expect(soonest).toBeLessThanOrEqual(likely);
          expect(likely).toBeLessThanOrEqual(latest);
          const warmer = points[at + 1];
          if (warmer === undefined) return;
          expect(warmer.soonest).toBeLessThan(soonest);
          expect(warmer.likely).toBeLessThan(likely);
          expect(warmer.latest).toBeLessThan(latest);
        });
      }),
    );
  });

  test('is the same in whatever room the batch stands, also one outside the models', () => {
    const usual = ripeningAgainstRoom(formulate(recipeOf()));
    expect(ripeningAgainstRoom(formulate(recipeOf({ given: [typed('roomTemperature', 35)] })))).toEqual(usual);
    expect(ripeningAgainstRoom(formulate(recipeOf({ given: [typed('roomTemperature', null)] })))).toEqual(usual);
  });

  test('is none where nothing ripens or the batch can’t be worked out', () => {
    const nothing = recipeOf({ source: 'cartonPlain', given: [typed('sugarRate', 0)] });
    expect(ripeningAgainstRoom(formulate(nothing))).toBeNull();
    expect(ripeningAgainstRoom(formulate(recipeOf({ given: [typed('grainRate', null)] })))).toBeNull();
    expect(hoursInUsualRoom(formulate(recipeOf({ given: [typed('waterRatio', 0.2)] })))).toBeNull();
  });
});
