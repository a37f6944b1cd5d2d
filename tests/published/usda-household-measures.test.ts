// US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database
// for Standard Reference, Release 28. Version Current: September 2015. Household measures, copied by hand from the
// records named. 1 US cup is 231/16 cubic inches, 236.588 mL; a tablespoon is a sixteenth of it, a teaspoon a 48th.
import { describe, expect, it } from 'vitest';
import { cupWeights, measureMass, weighVolume } from '../../src/formula/foods/look-up';
import { readMeasureWords } from '../../src/formula/foods/measure-words';
import { foodMeasures } from '../../src/reference/food-measures';
import { measureErrors } from '../../src/reference/measure-error';

const cup = 236.5882365;
const tbsp = cup / 16;
const tsp = cup / 48;

const printed = [
  ['12061', 'almonds', 'whole', cup, 143],
  ['12061', 'almonds', 'sliced', cup, 92],
  ['12061', 'almonds', 'slivered', cup, 108],
  ['12061', 'almonds', 'ground', cup, 95],
  ['12120', 'hazelnuts', 'whole', cup, 135],
  ['12120', 'hazelnuts', 'chopped', cup, 115],
  ['12120', 'hazelnuts', 'ground', cup, 75],
  ['12142', 'pecans', 'halves', cup, 99],
  ['12142', 'pecans', 'chopped', cup, 109],
  ['12155', 'walnuts', 'chopped', cup, 117],
  ['12155', 'walnuts', 'ground', cup, 80],
  ['12155', 'walnuts', 'halves', cup, 100],
  ['19334', 'brown sugar', 'packed', cup, 220],
  ['19334', 'brown sugar', 'unpacked', cup, 145],
  ['19334', 'brown sugar', 'packed', tsp, 4.6],
  ['19334', 'brown sugar', 'unpacked', tsp, 3],
  ['19335', 'granulated sugar', null, cup, 200],
  ['19335', 'granulated sugar', null, tsp, 4.2],
  ['19336', 'powdered sugar', 'sifted', cup, 100],
  ['19336', 'powdered sugar', 'unsifted', cup, 120],
  ['19296', 'honey', null, cup, 339],
  ['19296', 'honey', null, tbsp, 21],
  ['19304', 'molasses', null, cup, 337],
  ['19353', 'maple syrup', null, cup, 315],
  ['19908', 'turbinado sugar', null, cup, 202],
  ['12220', 'flax seed', 'whole', cup, 168],
  ['12220', 'flax seed', 'whole', tbsp, 10.3],
  ['12220', 'flax seed', 'ground', tbsp, 7],
  ['12036', 'sunflower kernels', null, cup, 140],
  ['12036', 'sunflower seeds with hulls', 'in shell', cup, 46],
  ['12023', 'sesame', null, tbsp, 9],
  ['12118', 'canned coconut milk', null, cup, 226],
  ['01077', 'whole milk', null, cup, 244],
  ['08120', 'oats', null, cup, 81],
  ['12147', 'pine nuts', null, cup, 135],
  ['09087', 'dates', 'chopped', cup, 147],
] as const;

// Measures of one form that differ in density by more than a rounding to the last digit printed, as the release has them.
const atOdds = ['12118', '12201', '12220', '19304', '19350', '19353', '19908', '19912'];

// Poured sources, weighed by what is in them, as the milk they become is.
const byComposition = ['12115', '12118', '12119'];

/** Whether a food is weighed by a figure that need not come out at each printed one. */
function weighsOtherwise(record: string): boolean {
  return atOdds.includes(record) || byComposition.includes(record);
}

/** Half of the last digit printed. */
function roundingOf(grams: number): number {
  return (Number.isInteger(grams) ? 0.5 : 0.05) + 1e-9;
}

describe('published household measures', () => {
  it('cover at least fifteen foods', () => {
    expect(new Set(printed.map(([record]) => record)).size).toBeGreaterThanOrEqual(15);
  });

  it.each(printed)('%s, %s, %s: %f mL weighs %f g', (record, _, form, millilitres, grams) => {
    const weighed = weighVolume(record, form, millilitres);
    const off = Math.abs((weighed?.spread.likely ?? Number.NaN) - grams);
    // A food is weighed by one measure, so a smaller one comes out within the rounding of its last digit.
    if (!weighsOtherwise(record)) expect(off).toBeLessThanOrEqual(roundingOf(grams));
    expect(weighed?.by.origin).toMatchObject({
      kind: 'published',
      work: 'usda-sr',
      place: expect.stringContaining(record),
    });
    expect(weighed?.spread.low).toBeLessThan(grams);
    expect(weighed?.spread.high).toBeGreaterThan(grams);
  });

  it('of every food, and every volume among them, weigh what is printed', () => {
    for (const [record, { measures }] of Object.entries(foodMeasures)) {
      for (const { amount, unit, grams } of measures) {
        const words = readMeasureWords(amount, unit);
        if (words?.is !== 'volume') continue;
        const weights = cupWeights(record).filter(({ form }) => form === words.form);
        const density = grams / words.millilitres;
        const matches = weights.filter((weight) => Math.abs(weight.grams / weight.millilitres / density - 1) < 1e-9);
        expect(matches.length, `${record}: ${unit}`).toBe(1);
        if (matches[0]?.doubt !== null || weighsOtherwise(record)) continue;
        const used = weighVolume(record, words.form, words.millilitres);
        const off = Math.abs((used?.spread.likely ?? 0) - grams);
        expect(off, `${record}: ${unit}`).toBeLessThanOrEqual(roundingOf(grams));
        expect(used?.spread.low).toBeLessThanOrEqual(grams);
        expect(used?.spread.high).toBeGreaterThanOrEqual(grams);
        const volume = measureMass(record, words.form, grams)?.spread;
        expect(volume?.low, `${record}: ${unit}`).toBeLessThanOrEqual(words.millilitres * (1 + 1e-9));
        expect(volume?.high, `${record}: ${unit}`).toBeGreaterThanOrEqual(words.millilitres * (1 - 1e-9));
      }
    }
  });

  it('of one form agree within the rounding of the smallest, but where the release contradicts itself', () => {
    const odd = Object.entries(foodMeasures).flatMap(([record, { measures }]) => {
      const volumes = measures.flatMap(({ amount, unit, grams }) => {
        const words = readMeasureWords(amount, unit);
        return words?.is === 'volume' ? [{ ...words, grams }] : [];
      });
      const differ = volumes.some((a) =>
        volumes.some((b) => {
          if (a.form !== b.form || a.grams <= b.grams) return false;
          return Math.abs((a.grams * b.millilitres) / a.millilitres - b.grams) > roundingOf(b.grams);
        }),
      );
      return differ ? [record] : [];
    });
    expect(odd.sort()).toEqual(atOdds);
  });

  it('show the cut of a nut to matter more than the spoon: almonds whole to sliced are 1.55 to 1', () => {
    const [whole, sliced] = ['whole', 'sliced'].map(
      (form) => weighVolume('12061', form, cup)?.spread.likely ?? Number.NaN,
    );
    expect((whole ?? 0) / (sliced ?? 1)).toBeCloseTo(1.55, 2);
    expect(measureErrors.pieces.value).toBeLessThan(0.55);
  });
});
