import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import {
  type Estimate,
  fateAfterBottle,
  fateOfFirst,
  productsOf,
  type SugarFate,
} from '../../../src/formula/fizz/sugar-fate';
import { coefficientInEffect } from '../../../src/formula/recipe/coefficients';
import { measuredRecipe, bottledRecipe as recipeOf, sensibleRecipe, typed } from '../../batches';
import { agrees } from '../../results';

const hexose = fc.double({ min: 0, max: 500, noNaN: true });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('what hexose turns into', () => {
  test('weighs what the hexose weighed, to 1e-9', () => {
    fc.assert(
      fc.property(hexose, share, (grams, throughYeast) => {
        const { lacticAcid, ethanol, carbonDioxide } = productsOf(grams, throughYeast);
        const sum = lacticAcid + ethanol + carbonDioxide;
        expect(Math.abs(sum - grams)).toBeLessThanOrEqual(1e-9 * grams);
        for (const part of [lacticAcid, ethanol, carbonDioxide]) expect(part).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test('is more alcohol and gas, and less acid, the more goes through yeast', () => {
    fc.assert(
      fc.property(hexose, share, share, (grams, one, other) => {
        const [less, more] = [productsOf(grams, Math.min(one, other)), productsOf(grams, Math.max(one, other))];
        expect(more.ethanol).toBeGreaterThanOrEqual(less.ethanol);
        expect(more.carbonDioxide).toBeGreaterThanOrEqual(less.carbonDioxide);
        expect(more.lacticAcid).toBeLessThanOrEqual(less.lacticAcid);
      }),
    );
  });

  test('grows with the hexose alone', () => {
    expect(productsOf(0, 0.4)).toEqual({ lacticAcid: 0, ethanol: 0, carbonDioxide: 0 });
    expect(productsOf(20, 0.4).ethanol).toBeCloseTo(2 * productsOf(10, 0.4).ethanol, 12);
  });
});

const estimates = ['start', 'used', 'left', 'lacticAcid', 'ethanol', 'alcohol', 'carbonDioxide'] as const;

/** Acid and alcohol that a starter brings into a litre, g; 0 with grains. */
function broughtBy({ evaluation, of }: Formulation): number {
  if (evaluation.choices.grain.starter === undefined) return 0;
  return (1000 * of('grainMass') * (evaluation.c('starterAcid') + evaluation.c('starterEthanol'))) / of('liquid');
}

function expectSound(fate: SugarFate, brought = 0): void {
  for (const id of estimates) {
    const { low, likely, high }: Estimate = fate[id];
    expect(low, id).toBeGreaterThanOrEqual(-1e-9);
    expect(likely, id).toBeGreaterThanOrEqual(low - 1e-9);
    expect(high, id).toBeGreaterThanOrEqual(likely - 1e-9);
    expect(Number.isFinite(high), id).toBe(true);
  }
  const { start, native, used, left } = fate;
  expect(agrees(used.likely + left.likely, start.likely)).toBe(true);
  expect(used.low + left.low).toBeLessThanOrEqual(start.low * (1 + 1e-9) + 1e-9);
  expect(used.high + left.high).toBeGreaterThanOrEqual(start.high * (1 - 1e-9) - 1e-9);
  expect(native).toBeLessThanOrEqual(start.likely * (1 + 1e-9) + 1e-9);
  const made = fate.lacticAcid.likely + fate.ethanol.likely + fate.carbonDioxide.likely;
  expect(agrees(made - brought, used.likely)).toBe(true);
  for (const taste of [fate.sweetness, fate.sweetnessEnds.least, fate.sweetnessEnds.most])
    expect(taste.length).toBeGreaterThan(3);
}

describe('the sugar of a batch', () => {
  test('is used or left, all of it, with the likely within its ends', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleRecipe, measuredRecipe), (recipe) => {
        const formulation = formulate(recipe);
        const brought = broughtBy(formulation);
        for (const fate of [fateOfFirst(formulation), fateAfterBottle(formulation)])
          if (fate) expectSound(fate, brought);
      }),
    );
  });

  test('until it is ready is worked by hand', () => {
    const formulation = formulate(recipeOf());
    const fate = fateOfFirst(formulation);
    if (fate === null) expect.fail('no account');
    const start = formulation.of('drinkSugar');
    const { low, likely, high } = fate.start;
    expect(likely).toBe(start);
    expect(fate.left.likely).toBeCloseTo(0.65 * start, 9);
    expect([fate.used.low, fate.used.high]).toEqual([0.2 * low, 0.5 * high]);
    // 2 × 46.069 ÷ 180.156 of what goes through yeast, over 0.78924 g/mL.
    expect(fate.ethanol.likely).toBeCloseTo(0.35 * start * 0.5 * 0.51143, 3);
    expect(fate.alcohol.likely).toBeCloseTo((0.35 * start * 0.5 * 0.51143) / 7.8924, 4);
    expect(fate.ethanol.high).toBeCloseTo(0.5 * start * 0.9 * 0.51143, 3);
    expect(fate.lacticAcid.likely).toBeCloseTo(0.35 * start * 0.5, 3);
    // The most acid goes with the most sugar and the least yeast.
    expect(fate.lacticAcid.high).toBeCloseTo(0.5 * start * 0.8, 3);
  });

  test('counts what is native, and the rest as added', () => {
    const formulation = formulate(recipeOf());
    const { native, start } = fateOfFirst(formulation) ?? expect.fail('no account');
    const added = (formulation.of('sugarRate') * formulation.of('milkVolume')) / formulation.of('liquid');
    expect(agrees(native + added, start.likely)).toBe(true);
  });

  test('measured when strained is one figure, and so is all that follows but the yeast', () => {
    const left = { kind: 'concentration', amount: 15 } as const;
    const formulation = formulate(recipeOf({ measured: { sugarLeft: left } }));
    const fate = fateOfFirst(formulation);
    expect(fate?.left.low).toBeCloseTo(15, 9);
    expect(fate?.left.high).toBeCloseTo(15, 9);
    expect(fate?.ethanol.low).toBeLessThan(fate?.ethanol.high ?? 0);
  });

  test('uses a share of one’s own without a range', () => {
    const yours = { 'water.usedWhenReady': { value: 0.6, how: 'typed' } } as const;
    const fate = fateOfFirst(formulate(recipeOf({ yours })));
    expect(fate?.used.high).toBeCloseTo(0.6 * (fate?.start.high ?? Number.NaN), 9);
    expect(fate?.used.low).toBeCloseTo(0.6 * (fate?.start.low ?? Number.NaN), 9);
    expect(fate?.used.likely).toBeCloseTo(0.6 * (fate?.start.likely ?? Number.NaN), 9);
  });

  test('can’t be told where the batch can’t be worked out', () => {
    expect(fateOfFirst(formulate(recipeOf({ given: [typed('waterRatio', 0.2)] })))).toBeNull();
  });
});

describe('the sugar that tables and labels leave open', () => {
  // Corn syrup is 0.26773 to 0.80810 g of hexose per g, 0.53790 likely.
  test('is in every high end: 26 g/L of corn syrup may pass the line of 0.5 %', () => {
    const sweetener = [{ id: 'cornSyrup', share: 1 }] as const;
    const formulation = formulate(recipeOf({ sweetener, given: [typed('startingSugar', 20)] }));
    const fate = fateOfFirst(formulation) ?? expect.fail('no account');
    expect(fate.start.high).toBeCloseTo(formulation.of('drinkSugarMost'), 9);
    expect(fate.alcohol.high).toBeCloseTo((0.5 * fate.start.high * 0.9 * 0.51143) / 7.8924, 4);
    expect(fate.line).toBe('may reach');
  });

  test('is what such labels say until the cook’s own is typed, also where the likely is none', () => {
    const open = fateOfFirst(formulate(recipeOf({ source: 'cartonPlain', sweetener: [{ id: 'none', share: 1 }] })));
    // 1 g in 240 mL, all double sugars, before the room of the grains.
    expect(open?.start.likely).toBe(0);
    expect(open?.start.high).toBeGreaterThan(4);
    const yours = { 'cartonPlain.labelSugar': { value: 0, how: 'typed' } } as const;
    const read = recipeOf({ source: 'cartonPlain', sweetener: [{ id: 'none', share: 1 }], yours });
    expect(fateOfFirst(formulate(read))?.start.high).toBe(0);
  });

  test('never lets a batch pass for one under the line', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleRecipe, measuredRecipe), (recipe) => {
        const formulation = formulate(recipe);
        const fate = fateOfFirst(formulation);
        if (fate === null || recipe.measured.sugarLeft !== undefined) return;
        const highOf = (id: 'usedWhenReady' | 'yeastShare'): number => {
          const { value, high = value } = coefficientInEffect(id, recipe, formulation.choices);
          return high;
        };
        const used = formulation.of('drinkSugarMost') * highOf('usedWhenReady');
        // An account at the line to rounding may stand on either side of it.
        const most = productsOf(used, highOf('yeastShare')).ethanol / 7.8924;
        if (most > 0.5001) expect(fate.line).not.toBe('under');
      }),
    );
  });
});

describe('the line for alcohol', () => {
  test.each([
    [3, 'under'],
    [30, 'may reach'],
  ] as const)('with %s g/L of sugar added the batch is %s', (rate, line) => {
    expect(fateOfFirst(formulate(recipeOf({ source: 'cartonPlain', given: [typed('sugarRate', rate)] })))?.line).toBe(
      line,
    );
  });

  test('is passed by all of the estimate where even its low end is over', () => {
    const yours = { 'water.yeastShare': { value: 0.9, how: 'typed' } } as const;
    const fate = fateOfFirst(formulate(recipeOf({ yours, given: [typed('sugarRate', 60)] })));
    expect(fate?.alcohol.low).toBeGreaterThanOrEqual(0.5);
    expect(fate?.line).toBe('over');
  });
});

describe('sweetness', () => {
  test.each([
    [4, 'dry'],
    [15, 'tart'],
    [30, 'balanced'],
    [80, 'clearly sweet'],
  ])('with %s g/L added to an unsweetened milk it is %s', (rate, words) => {
    const recipe = recipeOf({ source: 'cartonPlain', given: [typed('sugarRate', rate)] });
    expect(fateOfFirst(formulate(recipe))?.sweetness).toMatch(new RegExp(`^${words}`));
  });
});

describe('after the second ferment', () => {
  test('less sugar is left, and more made of it, the longer it lasts', () => {
    const bottled = (hours: number) => fateAfterBottle(formulate(recipeOf({ given: [typed('bottleTime', hours)] })));
    const first = fateOfFirst(formulate(recipeOf()));
    const [short, long] = [bottled(4), bottled(12)];
    if (first === null || short === null || long === null) expect.fail('no account');
    for (const end of ['low', 'likely', 'high'] as const) {
      expect(short.left[end]).toBeLessThan(first.left[end]);
      expect(long.left[end]).toBeLessThan(short.left[end]);
      expect(long.alcohol[end]).toBeGreaterThan(short.alcohol[end]);
    }
  });

  test('the likely left is what the bottle’s own row of sugar and its share used make of it', () => {
    const formulation = formulate(recipeOf({ given: [typed('bottleSugar', 6)] }));
    const fate = fateAfterBottle(formulation);
    const left = (formulation.of('sugarLeft') + 6) * (1 - formulation.of('bottleUsed'));
    expect(fate?.left.likely).toBeCloseTo(left, 9);
    expect(fate?.start.likely).toBeCloseTo(formulation.of('drinkSugar') + 6, 9);
  });

  test('is none without one, and none outside the temperatures of the models', () => {
    const bottled = (given: ReturnType<typeof typed>) => fateAfterBottle(formulate(recipeOf({ given: [given] })));
    expect(bottled(typed('bottleTime', 0))).toBeNull();
    expect(bottled(typed('roomTemperature', 35))).toBeNull();
    for (const celsius of [4, 15, 31, 38]) expect(bottled(typed('bottleTemperature', celsius))).toBeNull();
    expect(bottled(typed('bottleTemperature', 25))).not.toBeNull();
  });
});
