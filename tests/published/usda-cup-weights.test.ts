// US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database
// for Standard Reference, Release 28. Version Current: September 2015. Household measures, copied by hand from the
// records named. 1 US cup is 231/16 cubic inches, 236.588 mL; 1 tablespoon is a sixteenth of that.
// Record 12085 (cashews, dry roasted) was read at second hand.
import { describe, expect, it } from 'vitest';
import { foodMeasures } from '../../src/reference/food-measures';
import { sources } from '../../src/reference/sources';
import { sweeteners } from '../../src/reference/sweeteners';

const cups = {
  almond: ['12061', 'cup, whole', 143, 236.588],
  almondBlanched: ['12062', 'cup whole kernels', 145, 236.588],
  cashew: ['12085', 'cup, halves and whole', 137, 236.588],
  hazelnut: ['12120', 'cup, whole', 135, 236.588],
  walnut: ['12155', 'cup shelled (50 halves)', 100, 236.588],
  pecan: ['12142', 'cup, halves', 99, 236.588],
  macadamia: ['12131', 'cup, whole or halves', 134, 236.588],
  brazilNut: ['12078', 'cup, whole', 133, 236.588],
  pistachio: ['12151', 'cup', 123, 236.588],
  pineNut: ['12147', 'cup', 135, 236.588],
  almondGround: ['12061', 'cup, ground', 95, 236.588],
  hazelnutGround: ['12120', 'cup, ground', 75, 236.588],
  almondButter: ['12195', 'cup', 250, 236.588],
  peanutButter: ['16398', 'cup', 258, 236.588],
  tahini: ['12166', 'tbsp', 15, 14.787],
  peanut: ['16087', 'cup', 146, 236.588],
  soy: ['16108', 'cup', 186, 236.588],
  hemp: ['12012', '3 tbsp', 30, 44.36],
  sunflower: ['12036', 'cup', 140, 236.588],
  pumpkin: ['12014', 'cup', 129, 236.588],
  sesame: ['12023', 'cup', 144, 236.588],
  sesameHulled: ['12201', 'cup', 150, 236.588],
  flax: ['12220', 'cup, whole', 168, 236.588],
  chia: ['12220', 'cup, whole', 168, 236.588],
  oats: ['08120', 'cup', 81, 236.588],
  rice: ['20444', 'cup', 185, 236.588],
  coconutDried: ['12179', 'cup, shredded', 93, 236.588],
  coconutDriedSweetened: ['12179', 'cup, shredded', 93, 236.588],
  coconutFresh: ['12104', 'cup, shredded', 80, 236.588],
  coconutFreshWhole: ['12104', 'cup, shredded', 80, 236.588],
} as const;

const spoons = {
  caneWhite: ['19335', 200, 236.588],
  caneRaw: ['19908', 202, 236.588],
  brown: ['19334', 220, 236.588],
  mapleSyrup: ['19353', 315, 236.588],
  mapleSugar: ['19340', 3, 4.929],
  honey: ['19296', 339, 236.588],
  molasses: ['19304', 337, 236.588],
  agave: ['19912', 6.9, 4.929],
  cornSyrup: ['19350', 341, 236.588],
  sorghumSyrup: ['19355', 330, 236.588],
  caneSyrup: ['19355', 330, 236.588],
} as const;

// Records whose cup stands in for a food that has none of its own.
const standIns = ['cashew', 'almondGround', 'chia', 'coconutDried'];

function placeOf(origin: { kind: string; place?: string; note?: string } | undefined): string {
  return origin?.kind === 'published' ? (origin.place ?? '') : '';
}

describe('published cup weights', () => {
  it.each(Object.entries(cups))('%s weighs what the record says', (id, [record, measure, grams, millilitres]) => {
    const cup = Object.entries(sources).find(([key]) => key === id)?.[1].cup;
    expect(cup).toMatchObject({ grams, measure });
    expect(cup?.millilitres).toBeCloseTo(millilitres, 2);
    expect(placeOf(cup?.origin)).toContain(`record ${record}`);
  });

  it('cover every source but tiger nuts, which have no record, and what is poured, which is weighed by what is in it', () => {
    const weighed = Object.entries(sources).filter(([, { cup }]) => cup?.origin.kind === 'published');
    expect(weighed.map(([id]) => id)).toEqual(Object.keys(cups));
    expect(
      Object.values(sources)
        .filter(({ cup }) => cup === null)
        .every(({ form, ownLabel }) => form === 'liquid' || ownLabel !== undefined),
    ).toBe(true);
  });

  it('come from the food’s own record, or say that they do not', () => {
    for (const [id, { cup, food }] of Object.entries(sources)) {
      if (cup === null || food === null) continue;
      const own = placeOf(cup.origin).includes(`record ${food}`);
      expect(own, id).toBe(!standIns.includes(id));
      if (!own) expect(cup.origin, id).toMatchObject({ note: expect.stringContaining(food) });
    }
  });

  it('agree with the measures kept in the table of foods', () => {
    for (const [id, [record, measure, grams]] of Object.entries(cups)) {
      const food = Object.entries(foodMeasures).find(([ndb]) => ndb === record)?.[1];
      if (record === '12085') expect(food, id).toBeUndefined();
      else if (id === 'hemp') expect(food?.measures, id).toContainEqual({ amount: 3, unit: 'tbsp', grams });
      else expect(food?.measures, id).toContainEqual({ amount: 1, unit: measure, grams });
    }
  });

  it('keep the cuts of one food apart: almonds whole, sliced, slivered, ground', () => {
    expect(foodMeasures['12061'].measures.slice(0, 4).map(({ grams }) => grams)).toEqual([143, 92, 108, 95]);
  });
});

describe('published spoon weights', () => {
  it.each(Object.entries(spoons))('%s weighs what the record says', (id, [record, grams, millilitres]) => {
    const spoon = Object.entries(sweeteners).find(([key]) => key === id)?.[1].spoon;
    expect(spoon?.grams).toBe(grams);
    expect(spoon?.millilitres).toBeCloseTo(millilitres, 3);
    expect(placeOf(spoon?.origin)).toContain(`record ${record}`);
  });

  it('cover every sweetener whose spoon is published', () => {
    const weighed = Object.entries(sweeteners).filter(([, { spoon }]) => spoon?.origin.kind === 'published');
    expect(weighed.map(([id]) => id)).toEqual(Object.keys(spoons));
  });

  it('agree with the measures kept in the table of foods', () => {
    for (const [id, [record, grams]] of Object.entries(spoons)) {
      const food = Object.entries(foodMeasures).find(([ndb]) => ndb === record)?.[1];
      expect(
        food?.measures.map((each) => each.grams),
        id,
      ).toContain(grams);
    }
  });
});
