import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { culturesToBring, inKitchen, type KitchenAtHand, lessonOf } from '../../../src/formula/lesson/lesson';
import { describeLeft, describeLesson, tellCulture, tellKitchen } from '../../../src/formula/lesson/lesson-words';
import type { Given, Recipe } from '../../../src/formula/recipe/recipe';
import { usualScoopSet } from '../../../src/measure/scoops';
import { grains } from '../../../src/reference/grains';
import { grainIds, jarIds, sourceIds } from '../../batches';
import '../../seed';

const plain: Recipe = {
  vessel: 'quartWide',
  source: 'almond',
  sweetener: [{ id: 'caneWhite', share: 1 }],
  grains: 'water',
  given: [],
  measured: {},
  yours: {},
};
const cook = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false } as const;
const g = (row: Given['row'], amount: number | null, kind: Given['kind'] = 'mass'): Given => ({ row, amount, kind });
const at = (changes: Partial<KitchenAtHand>): KitchenAtHand => ({
  vessel: 'quartWide',
  temperature: null,
  grains: 'water',
  ...changes,
});
const rateRows = ['waterRatio', 'sugarRate', 'grainRate'] as const;

const anyKitchen = fc.record({
  vessel: fc.constantFrom(...jarIds.filter((id) => id !== 'own')),
  temperature: fc.option(fc.double({ min: 16, max: 30, noNaN: true })),
  grains: fc.constantFrom(...grainIds),
});
/** Recipes sized and changed in the ways that come to another rate. */
const anyRecipe = fc
  .record({
    source: fc.constantFrom(...sourceIds),
    grains: fc.constantFrom(...grainIds),
    sweetener: fc.constantFrom('caneWhite', 'honey', 'mapleSyrup'),
    given: fc.uniqueArray(
      fc.oneof(
        fc.double({ min: 60, max: 150, noNaN: true }).map((mass) => g('sourceMass', mass)),
        fc.double({ min: 500, max: 900, noNaN: true }).map((mL) => g('blendWater', mL, 'volume')),
        fc.double({ min: 5, max: 40, noNaN: true }).map((mass) => g('sweetenerMass', mass)),
        fc.double({ min: 20, max: 80, noNaN: true }).map((mass) => g('grainMass', mass)),
        fc.double({ min: 3, max: 9, noNaN: true }).map((ratio) => g('waterRatio', ratio, 'ratio')),
        fc.double({ min: 40, max: 80, noNaN: true }).map((sugar) => g('startingSugar', sugar, 'concentration')),
      ),
      { maxLength: 3, selector: ({ row }) => row },
    ),
  })
  .map(({ sweetener, ...rest }): Recipe => ({ ...plain, ...rest, sweetener: [{ id: sweetener, share: 1 }] }));

describe('a recipe in another kitchen', () => {
  test('has the rates of the recipe in any jar and room, whatever they were typed as', () => {
    fc.assert(
      fc.property(anyRecipe, anyKitchen, (recipe, kitchen) => {
        const planned = formulate(recipe);
        const there = formulate(inKitchen(lessonOf(recipe), kitchen).recipe);
        for (const row of rateRows) {
          const [wanted, found] = [planned.rows[row].value, there.rows[row].value];
          if (typeof wanted !== 'number' || (row === 'grainRate' && kitchen.grains !== recipe.grains)) continue;
          expect(found, row).toBeCloseTo(wanted, 6);
        }
        expect(there.sizedFrom).toBe('jar');
        expect(there.rows.vesselCount.value).toBe(1);
      }),
    );
  });

  test('has the usual dose of another culture', () => {
    const lesson = lessonOf({ ...plain, given: [g('grainRate', 80, 'concentration')] });
    for (const id of grainIds) {
      const { rows } = formulate(inKitchen(lesson, at({ grains: id })).recipe);
      expect(rows.grainRate.value).toBe(id === 'water' ? 80 : grains[id].dose.value);
    }
  });

  test('fills a jar of twice the size with about twice as much, by the same ratio', () => {
    const lesson = lessonOf({ ...plain, given: [g('sourceMass', 90), g('blendWater', 450, 'volume')] });
    const small = formulate(inKitchen(lesson, at({ vessel: 'litre' })).recipe);
    const large = formulate(inKitchen(lesson, at({ vessel: 'twoLitre' })).recipe);
    const times = large.of('sourceMass') / small.of('sourceMass');
    expect(times).toBeGreaterThan(1.9);
    expect(times).toBeLessThan(2.1);
    expect(small.of('waterRatio')).toBeCloseTo(large.of('waterRatio'), 9);
    expect(small.of('sourceMass')).not.toBeCloseTo(90, 0);
  });

  test('takes the room of the recipe where it says none of its own', () => {
    const lesson = lessonOf({ ...plain, given: [g('roomTemperature', 26, 'temperature')] });
    expect(formulate(inKitchen(lesson, at({})).recipe).rows.roomTemperature.value).toBe(26);
    const cold = formulate(inKitchen(lesson, at({ temperature: 18 })).recipe);
    expect(cold.rows.roomTemperature.value).toBe(18);
    expect(cold.of('readyTime')).toBeGreaterThan(formulate(plain).of('readyTime'));
  });

  test('types nothing of a recipe in which nothing is typed', () => {
    expect(inKitchen(lessonOf(plain), at({ vessel: 'gallon' })).recipe.given).toEqual([]);
  });

  test('leaves out what was measured and what is on hand', () => {
    const recipe: Recipe = { ...plain, measured: { milkVolume: { kind: 'volume', amount: 500 } } };
    const { recipe: there } = inKitchen(lessonOf(recipe), at({}));
    expect(formulate(there).of('grainMass')).toBeCloseTo(formulate(plain).of('grainMass'), 9);
  });
});

describe('what is not carried over', () => {
  test('is said in a sentence', () => {
    const recipe: Recipe = {
      ...plain,
      given: [
        g('grainRate', 80, 'concentration'),
        g('brimful', 980, 'volume'),
        g('sourceMass', 90),
        g('waterRatio', null, 'ratio'),
      ],
      measured: { pulpMass: { kind: 'mass', amount: 100 } },
    };
    const lesson = lessonOf(recipe);
    expect(describeLesson(lesson)).toHaveLength(3);
    expect(describeLesson(lesson)[2]).toContain('of water');
    const { left } = inKitchen(lesson, at({ vessel: 'own', grains: 'milk' }));
    expect(left.map(({ what }) => what)).toEqual(['dose', 'jar', 'ownJar']);
    expect(describeLeft(left, cook)[0]).toMatch(
      /80\.0\sg\/L is for water kefir grains; milk kefir grains take their usual/,
    );
    expect(inKitchen(lesson, at({})).left).toEqual([]);
  });
});

describe('the words of a kitchen', () => {
  test('lead with the unit of that kitchen', () => {
    const formulation = formulate(plain);
    const metric = tellKitchen(formulation, cook);
    expect(metric.takes[0]).toMatch(/^\d+\sg almonds$/);
    expect(metric.ready).toMatch(/^ready in \d+\sh \(\d+–\d+\sh\)$/);
    const us = tellKitchen(formulation, { ...cook, leads: 'us' });
    expect(us.takes[0]).toMatch(/(?:cup|oz)/);
  });

  test('say why there is no time where there is none', () => {
    const { recipe } = inKitchen(lessonOf(plain), at({ temperature: 8 }));
    const told = tellKitchen(formulate(recipe), cook);
    expect(told.isTimed).toBe(false);
    expect(told.ready.length).toBeGreaterThan(20);
  });

  test('add up the culture to bring, each kind once', () => {
    const lesson = lessonOf(plain);
    const kitchens = [at({}), at({ grains: 'milk' }), at({ vessel: 'gallon' })];
    const formulations = kitchens.map((one) => formulate(inKitchen(lesson, one).recipe));
    const [water, milk] = culturesToBring(formulations);
    const sum = (formulations[0]?.of('grainMass') ?? 0) + (formulations[2]?.of('grainMass') ?? 0);
    expect(water).toEqual({ grains: 'water', grams: expect.closeTo(sum, 9), kitchens: 2 });
    expect(milk?.kitchens).toBe(1);
    expect(tellCulture({ grains: 'water', grams: 213, kitchens: 4 }, cook)).toEqual({
      food: 'grains.water',
      name: 'Water kefir grains',
      take: '213\u00A0g',
      aside: 'to bring, for 4 kitchens',
      cost: null,
    });
  });
});
