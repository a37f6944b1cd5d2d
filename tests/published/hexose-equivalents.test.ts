// Sugars by kind, g per 100 g: US Department of Agriculture, Agricultural Research Service, USDA National Nutrient
// Database for Standard Reference, Release 26 (individual sugars), copied by hand from the records named.
// C₁₂H₂₂O₁₁ + H₂O → 2 C₆H₁₂O₆: 360.312/342.297 = 1.05263 by molar mass (standard atomic weights).
// Equal fermentable sugar is equal mass of hexose, so m₂ = m₁ × f₁ ÷ f₂. Each sum was worked by hand.
import { describe, expect, it } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { fermentableOfOne } from '../../src/formula/models/blend';
import { nativeHexose } from '../../src/formula/models/strain';
import { grains } from '../../src/reference/grains';
import { otherFoods } from '../../src/reference/other-foods';
import { type SweetenerId, sweeteners } from '../../src/reference/sweeteners';
import { recipeOf, typed } from '../batches';
import { numberIn } from '../results';

const water = grains.water.takes;
const milk = grains.milk.takes;

/** By sweetener: hexose per gram, to five places. */
const byHand = {
  // 19335: sucrose 99.8. 99.8 × 1.05263 = 105.0525.
  caneWhite: 1.05052,
  // 19908: sucrose 99.19. 99.19 × 1.05263 = 104.4104.
  caneRaw: 1.0441,
  // 19334: sucrose 94.56, glucose 1.35, fructose 1.11. 94.56 × 1.05263 + 2.46 = 101.9967.
  brown: 1.01997,
  // 19353: sucrose 58.32, glucose 1.6, fructose 0.52. 58.32 × 1.05263 + 2.12 = 63.5094.
  mapleSyrup: 0.63509,
  // 19296: sucrose 0.89, glucose 35.75, fructose 40.94, maltose 1.44, galactose 3.1. 2.33 × 1.05263 + 79.79 = 82.2426.
  honey: 0.82243,
  // 19304: sucrose 29.4, glucose 11.92, fructose 12.79. 29.4 × 1.05263 + 24.71 = 55.6573.
  molasses: 0.55657,
  // 19912: glucose 12.43, fructose 55.6. 68.03.
  agave: 0.6803,
  // 09421: sucrose 0.53, glucose 33.68, fructose 31.95, maltose 0.3. 0.83 × 1.05263 + 65.63 = 66.5037.
  dates: 0.66504,
  // Not of USDA: glucose 90.91, the monohydrate by molar mass.
  dextrose: 0.9091,
} as const satisfies Partial<Record<SweetenerId, number>>;

/** Records with a total alone: least as single sugars, most as double, × 1.05263. */
const ranges = {
  // 19340: total 84.87. 84.87 × 1.05263 = 89.3367.
  mapleSugar: [0.8487, 0.89337],
  // 19350: total 26.77 in Release 24, 76.77 in Legacy. 76.77 × 1.05263 = 80.8104.
  cornSyrup: [0.2677, 0.8081],
  // 19355: 60 from memory, total 74.9. 74.9 × 1.05263 = 78.8420.
  sorghumSyrup: [0.6, 0.78842],
  // 90480: 60 from memory, total 73.2. 73.2 × 1.05263 = 77.0525.
  caneSyrup: [0.6, 0.77053],
} as const satisfies Partial<Record<SweetenerId, readonly [number, number]>>;

describe('hexose of a gram', () => {
  it.each(Object.entries(byHand))('of %s is %s g', (id, hexose) => {
    const entry = Object.entries(sweeteners).find(([key]) => key === id)?.[1] ?? sweeteners.none;
    const { value, low, high } = fermentableOfOne(entry, water);
    expect(value).toBeCloseTo(hexose, 5);
    expect([low, high]).toEqual([value, value]);
  });

  it.each(Object.entries(ranges))('of %s lies between %s', (id, [least, most]) => {
    const entry = Object.entries(sweeteners).find(([key]) => key === id)?.[1] ?? sweeteners.none;
    const { value, low, high } = fermentableOfOne(entry, water);
    expect(low).toBeCloseTo(least, 5);
    expect(high).toBeCloseTo(most, 4);
    expect(value).toBeCloseTo((low + high) / 2, 12);
  });

  it('is worked by hand for every sweetener that has a record', () => {
    const recorded = Object.entries(sweeteners).filter(([, { food }]) => food !== null);
    const worked = Object.keys({ ...byHand, ...ranges }).filter((id) => id !== 'dextrose');
    expect(recorded.map(([id]) => id).sort()).toEqual(worked.sort());
  });

  it('is none of what the grains cannot ferment', () => {
    const refused = Object.values(sweeteners).filter((entry) => entry.refused !== undefined);
    expect(refused.map((entry) => fermentableOfOne(entry, milk).value)).toEqual(refused.map(() => 0));
  });

  it('is the same for both kinds of grains where there is no lactose', () => {
    for (const entry of Object.values(sweeteners)) {
      expect(fermentableOfOne(entry, water).value).toBe(fermentableOfOne(entry, milk).value);
    }
  });
});

describe('lactose and galactose', () => {
  it('of whole milk (01077, lactose 5.05) are 5.3158 g for milk grains and none named for water grains', () => {
    const record = { ...otherFoods['01077'], origin: sweeteners.caneWhite.sugars.origin };
    expect(nativeHexose(record, milk).value).toBeCloseTo(0.053158, 6);
    expect(nativeHexose(record, water).value).toBe(0);
  });

  it('of honey: the 3.1 g of galactose count with either kind', () => {
    const without = { ...sweeteners.honey, sugars: { ...sweeteners.honey.sugars, galactose: 0 } };
    for (const takes of [water, milk]) {
      const lost = fermentableOfOne(sweeteners.honey, takes).value - fermentableOfOne(without, takes).value;
      expect(lost).toBeCloseTo(0.031, 12);
    }
  });
});

describe('18 g of cane sugar swapped at equal fermentable sugar', () => {
  it.each([
    // 18 × 1.050525 ÷ f
    ['honey', 22.992],
    ['mapleSyrup', 29.774],
    ['caneRaw', 18.111],
    ['brown', 18.539],
    ['molasses', 33.975],
    ['agave', 27.796],
    ['dextrose', 20.8],
    ['dates', 28.434],
  ] as const)('for %s is %s g', (id, grams) => {
    const swapped = formulate(recipeOf({ sweetener: [{ id, share: 1 }], given: [typed('caneEquivalent', 18)] }));
    expect(numberIn(swapped, 'sweetenerMass')).toBeCloseTo(grams, 2);
  });

  it('and back is 18 g', () => {
    const back = formulate(
      recipeOf({ sweetener: [{ id: 'honey', share: 1 }], given: [typed('sweetenerMass', 22.992)] }),
    );
    expect(numberIn(back, 'caneEquivalent')).toBeCloseTo(18, 2);
  });
});
