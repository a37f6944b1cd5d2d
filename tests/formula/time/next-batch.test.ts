import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { type NextBatch, nextBatches, type Result } from '../../../src/formula/time/next-batch';
import { describeNext, describeNextTime } from '../../../src/formula/time/next-batch-words';
import { grains } from '../../../src/reference/grains';
import { plainRecipe, recipeOf, typed } from '../../batches';
import { numberIn } from '../../results';

const kitchen = demo.settings;
const plain = (text: string | null) => (text ?? '').replaceAll('\u00A0', ' ');

function after(recipe: Recipe, result: Result): readonly NextBatch[] {
  return nextBatches(formulate(recipe), result, kitchen) ?? [];
}

const first = (recipe: Recipe, result: Result) => after(recipe, result)[0];
const paced = (pace: number): Recipe => recipeOf({ yours: { 'kitchen.pace': { value: pace, how: 'learned' } } });

describe('the next batch', () => {
  test('after one that was right is as it is, and after a look before its time too', () => {
    expect(first(recipeOf(), { found: 'ready', hours: 12 })?.do).toBe('asItIs');
    expect(first(recipeOf(), { found: 'flat', hours: 6 })?.do).toBe('wait');
  });

  test('after one too sour or not sour yet has other hours, where those are usual', () => {
    expect(first(paced(1.3), { found: 'sour', hours: 14 })?.do).toBe('sooner');
    expect(first(paced(0.85), { found: 'flat', hours: 12 })?.do).toBe('longer');
  });

  test('has another place where the hours would not be usual any more', () => {
    const slow = first(paced(0.6), { found: 'flat', hours: 14 });
    expect(slow).toMatchObject({ do: 'change', row: 'roomTemperature' });
    expect(plain(slow === undefined ? '' : describeNext(slow, kitchen))).toMatch(
      /^A warmer place: 2[\d.]+ °C instead of 21 °C\.$/,
    );
    const fast = first(paced(2), { found: 'sour', hours: 12 });
    expect(plain(fast === undefined ? '' : describeNext(fast, kitchen))).toMatch(/^A cooler place: 1[\d.]+ °C/);
  });

  test('changes first what lies beyond its usual range and explains it', () => {
    const few = first(recipeOf({ given: [typed('grainRate', 20)] }), { found: 'flat', hours: 18 });
    expect(few).toMatchObject({ do: 'change', row: 'grainRate' });
    expect(plain(few === undefined ? '' : describeNext(few, kitchen))).toMatch(
      /^More grains: [\d.]+ g\/L instead of 20 g\/L, so [\d.]+ g of grains\.$/,
    );
    const sweetless = first(recipeOf({ given: [typed('startingSugar', 9)] }), { found: 'flat', hours: 18 });
    expect(sweetless).toMatchObject({ do: 'change', row: 'startingSugar' });
    const many = first(recipeOf({ given: [typed('grainRate', 120)] }), { found: 'sour', hours: 10 });
    expect(many).toMatchObject({ do: 'change', row: 'grainRate' });
    expect(plain(many === undefined ? '' : describeNext(many, kitchen))).toMatch(/^Fewer grains: /);
  });

  test('says from when to taste, what is likely, and what it was', () => {
    const { after: next } = first(recipeOf(), { found: 'ready', hours: 12 }) ?? { after: formulate(recipeOf()) };
    expect(plain(describeNextTime(next, 14, kitchen))).toBe('Next time taste from 8 h, likely 12 h; it was 14 h.');
    expect(plain(describeNextTime(next, 12, kitchen))).toBe('Next time taste from 8 h, likely 12 h.');
  });

  test('is none where no time can be told', () => {
    const cold = formulate(recipeOf({ given: [typed('roomTemperature', 4)] }));
    expect(nextBatches(cold, { found: 'flat', hours: 20 }, kitchen)).toBeNull();
    expect(describeNextTime(cold, null, kitchen)).toBeNull();
  });

  test('of whatever recipe changes one thing, the right way, within what is usual, and reads as words', () => {
    fc.assert(
      fc.property(
        plainRecipe,
        fc.constantFrom<Result['found']>('flat', 'sour'),
        fc.double({ min: 2, max: 60, noNaN: true }),
        (recipe, found, hours) => {
          const formulation = formulate(recipe);
          const before = numberIn(formulation, 'readyTime');
          for (const next of nextBatches(formulation, { found, hours }, kitchen) ?? []) {
            expect(describeNext(next, kitchen)).not.toMatch(/NaN|null|undefined/);
            if (next.do !== 'change') continue;
            const then = numberIn(next.after, 'readyTime');
            if (found === 'flat') expect(then).toBeLessThan(before);
            else expect(then).toBeGreaterThan(before);
            const typings = next.way.changes.filter((change) => change.do === 'type');
            expect(typings.map(({ row }) => row)).toEqual([next.row]);
            if (next.row === 'roomTemperature') continue;
            const { value, low = value, high = value } = grains[recipe.grains].dose;
            const to = numberIn(next.after, next.row);
            if (next.row === 'grainRate') {
              expect(to).toBeGreaterThanOrEqual(Math.min(low - 0.1, to));
              expect(to).toBeLessThanOrEqual(Math.max(high + 0.1, next.now));
            }
          }
        },
      ),
      { numRuns: 80 },
    );
  });
});
