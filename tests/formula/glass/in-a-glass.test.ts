import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { glassLines, tellAlcohol, tellKilojoules } from '../../../src/formula/glass/glass-words';
import { glassWorking } from '../../../src/formula/glass/glass-working';
import { type Contents, inKefir, inSoMuch } from '../../../src/formula/glass/in-a-glass';
import { inMilk, pulpOf } from '../../../src/formula/glass/in-the-bag';
import {
  besideMeasured,
  describeKeeping,
  describePulp,
  describePulpAllergens,
  usesOfPulp,
} from '../../../src/formula/glass/pulp-words';
import { sumOfSolids } from '../../../src/formula/models/milk';
import { anyRecipe, bottledRecipe, recipeOf, sourceIds, typed } from '../../batches';
import { agrees } from '../../results';

const kitchen = {
  leads: 'metric',
  cups: 'us',
  scoops: { cups: ['1'], tablespoon: true, teaspoons: ['1'] },
  decimalComma: false,
} as const;

function kefirOf(changes: Parameters<typeof recipeOf>[0] = {}) {
  const formulation = formulate(recipeOf(changes));
  const kefir = inKefir(formulation);
  if (kefir === null) throw new Error('there is no kefir');
  return { formulation, kefir, hundred: inSoMuch(kefir, 100) };
}

const ids = ['energy', 'fat', 'protein', 'carbohydrate', 'sugars', 'fibre', 'alcohol', 'acid'] as const;

describe('what comes to the bag', () => {
  test.each(sourceIds)('of %s is in the milk, in the pulp or on the bag, to rounding', (source) => {
    const formulation = formulate(recipeOf({ source }));
    const { evaluation, of } = formulation;
    const { strain } = evaluation.reduced();
    const milk = inMilk(formulation, 'likely');
    const pulp = pulpOf(formulation);
    const loss = 1 - evaluation.c('handlingLoss');
    for (const part of ['protein', 'fat', 'fibre'] as const) {
      const own = (formulation.choices.source.ownWater?.composition[part] ?? 0) > 0;
      // The own water of a coconut brings a little of each besides.
      if (own) continue;
      const inAll = (milk?.[part] ?? Number.NaN) / loss + (pulp?.parts[part] ?? 0);
      expect(agrees(inAll, strain.solids[part] * of('sourceMass')), part).toBe(true);
    }
    const parts = pulp === null ? 0 : Object.values(pulp.parts).reduce((sum, part) => sum + part, 0);
    expect(agrees(parts, pulp?.dry ?? 0)).toBe(true);
    expect(sumOfSolids(strain.solids)).toBeGreaterThan(0);
  });

  test('of almonds leaves a third of its dry weight behind, worked by hand', () => {
    const formulation = formulate(recipeOf({ given: [typed('sourceMass', 200)] }));
    const pulp = pulpOf(formulation);
    // N = 1 − 0.0441 − 0.0435 = 0.9124 g of other solids; 0.33 of them and q of the sugar stay.
    const held = 0.33 * 0.9124 * 200;
    expect(pulp?.dry).toBeGreaterThan(held);
    expect(pulp?.dry).toBeLessThan(held + 0.0435 * 200 * 0.2);
    expect(pulp?.share).toBeGreaterThan(pulp?.shareLeast ?? 1);
    expect(pulp?.share).toBeLessThan(pulp?.shareMost ?? 0);
    expect(pulp === null ? '' : describePulp(pulp, kitchen)).toMatch(/of it dry: fat/);
  });

  test('is all drunk where nothing is strained', () => {
    expect(pulpOf(formulate(recipeOf({ source: 'cartonPlain' })))).toBeNull();
    expect(pulpOf(formulate(recipeOf({ source: 'almondButter' })))).toBeNull();
    // Weighed where what it is of can't be told.
    const measured = { pulpMass: { text: '100 g', amount: 100, kind: 'mass' as const } };
    expect(pulpOf(formulate(recipeOf({ given: [typed('sourceMass', -1)], measured })))).toBeNull();
  });
});

describe('what is in the kefir', () => {
  test('of cow-like simplicity, a carton by hand', () => {
    const given = [typed('sweetenerMass', 0), typed('sugarLeft', 0)].slice(0, 1);
    const { kefir, formulation } = kefirOf({ source: 'coconutMilk', given });
    // Two parts of can to 1.7 of water by weight: fat 21.33/1.85 in 100 g.
    const grams = formulation.of('milkMass');
    expect((100 * kefir.milk.fat) / grams).toBeCloseTo(21.33 / 1.85, 1);
  });

  test('has the sugar that the grains leave, and the alcohol and acid of the rest', () => {
    const { kefir, hundred } = kefirOf();
    const brought = kefir.milk.sugars + kefir.sweetener.sugars;
    const { start, left } = kefir.fate;
    expect(kefir.all.sugars.likely).toBeCloseTo((brought * left.likely) / start.likely, 9);
    expect(hundred.alcohol.likely).toBeCloseTo(kefir.fate.ethanol.likely / 10, 9);
    expect(hundred.acid.likely).toBeCloseTo(kefir.fate.lacticAcid.likely / 10, 9);
    const { fat, protein, carbohydrate, alcohol, acid, energy } = hundred;
    const expected =
      9 * fat.likely + 4 * protein.likely + 4 * carbohydrate.likely + 7 * alcohol.likely + 3 * acid.likely;
    expect(energy.likely).toBeCloseTo(expected, 9);
  });

  test('counts what is measured as left as no range', () => {
    const measured = { sugarLeft: { kind: 'concentration' as const, amount: 10 } };
    const { kefir } = kefirOf({ source: 'almondButter', measured });
    expect(kefir.fate.left.low).toBeCloseTo(kefir.fate.left.high, 9);
  });

  test('counts a second ferment with what goes into the bottles', () => {
    const given = [typed('bottleSugar', 10)];
    const fruit = { name: 'raspberries', amount: '30 g', grams: 30 };
    const plain = inKefir(formulate(bottledRecipe({ given })));
    const berries = inKefir(formulate(bottledRecipe({ given, fruit })));
    expect(plain?.isBottled).toBe(true);
    // As much for the grains: the sugars of raspberries are mostly single, and weigh more for as much hexose.
    expect(berries?.bottle.sugars).toBeGreaterThan(plain?.bottle.sugars ?? Number.NaN);
    expect(berries?.bottle.sugars).toBeCloseTo((plain?.bottle.sugars ?? 0) * 1.05, 0);
  });

  test('counts honey and dates with what else is in them', () => {
    const dates = kefirOf({ sweetener: [{ id: 'dates', share: 1 }], given: [typed('sweetenerMass', 100)] }).kefir;
    expect(dates.sweetener).toMatchObject({ protein: 1.81, fibre: 6.7 });
    expect(dates.sweetener.sugars).toBeCloseTo(0.53 + 33.68 + 31.95 + 0.3, 9);
    const sugarless = kefirOf({ sweetener: [{ id: 'none', share: 1 }] }).kefir;
    expect(sugarless.sweetener.sugars).toBe(0);
  });

  test('is in order, and in proportion to the glass, whatever is made', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const kefir = inKefir(formulate(recipe));
        if (kefir === null) return;
        const one: Contents = inSoMuch(kefir, 100);
        const two: Contents = inSoMuch(kefir, 200);
        for (const id of ids) {
          const { low, likely, high } = one[id];
          expect(Number.isFinite(low + likely + high), id).toBe(true);
          expect(low, id).toBeGreaterThanOrEqual(0);
          expect(low, id).toBeLessThanOrEqual(likely + 1e-9);
          expect(likely, id).toBeLessThanOrEqual(high + 1e-9);
          expect(agrees(two[id].likely, 2 * likely), id).toBe(true);
        }
      }),
      { numRuns: 150 },
    );
  });

  test('can’t be told where the batch can’t be worked out', () => {
    expect(inKefir(formulate(recipeOf({ given: [typed('sourceMass', -1)] })))).toBeNull();
  });
});

describe('the words', () => {
  test('tell a glass and 100 mL, with ranges, and no more digits than the estimate is good for', () => {
    const { kefir, formulation } = kefirOf();
    const lines = glassLines(kefir, 250, kitchen);
    expect(lines.map(({ id }) => id)).toEqual(ids);
    for (const { glass, hundred } of lines) {
      for (const told of [glass, hundred]) expect(told.likely).toMatch(/^\d+(\.\d)?\u00A0(g|kcal)$/);
    }
    expect(lines[0]?.hundred.range).toMatch(/^\d+ to \d+$/);
    expect(tellAlcohol(kefir, kitchen)).toMatch(/^0\.\d to \d\.\d\u00A0% by volume$/);
    const kilojoules = Number.parseInt(tellKilojoules(inSoMuch(kefir, 250).energy, kitchen), 10);
    expect(kilojoules / 4.184).toBeCloseTo(inSoMuch(kefir, 250).energy.likely, -1);
    const working = glassWorking(formulation, kefir, 250, kitchen);
    for (const { text, origins } of working) {
      expect(text).not.toMatch(/NaN|undefined|–/);
      expect(origins.length).toBeGreaterThan(0);
    }
    expect(working[1]?.text).toMatch(/of almonds hold .* passes the bag/);
  });

  test.each(sourceIds)('say what the pulp of %s is good for, if there is any', (source) => {
    const formulation = formulate(recipeOf({ source }));
    const pulp = pulpOf(formulation);
    expect(usesOfPulp(formulation).length > 0 || pulp === null).toBe(true);
    expect(describePulpAllergens(formulation)).toMatch(/allergen stays|can’t have/);
    expect(describeKeeping(kitchen)).toMatch(/2 to 3 days/);
    if (pulp !== null && source.startsWith('almond')) {
      expect(besideMeasured(formulation, pulp, kitchen)?.text).toMatch(/Measured in almond pulp: 42, 14 and 41\.$/);
    }
    if (pulp !== null && source === 'cashew') expect(besideMeasured(formulation, pulp, kitchen)).toBeNull();
  });
});
