import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import {
  cupWeights,
  findFood,
  findFoods,
  listFoods,
  measureMass,
  type OwnFood,
  ownKey,
  pieceWeight,
  weighVolume,
} from '../../../src/formula/foods/look-up';
import { readForm, readMeasureWords } from '../../../src/formula/foods/measure-words';
import { convertNumber } from '../../../src/measure/units';
import { sourceAliases, sweetenerAliases } from '../../../src/reference/aliases';
import { foodMeasures } from '../../../src/reference/food-measures';
import { grainAliases, otherFoodAliases, unclearGrains } from '../../../src/reference/other-aliases';
import { sources } from '../../../src/reference/sources';
import { sweeteners } from '../../../src/reference/sweeteners';
import { recipeOf, typed } from '../../batches';
import { numberIn } from '../../results';

const cup = convertNumber(1, 'cup', 'mL');
const mine: readonly OwnFood[] = [{ name: 'Sprouted oats', grams: 90, millilitres: 250 }];
const weighable = listFoods(mine).filter(({ key }) => cupWeights(key, mine).length > 0);

describe('the words of household measures', () => {
  test('are a volume or knowingly none, in every record', () => {
    for (const [record, { measures }] of Object.entries(foodMeasures))
      for (const { amount, unit } of measures)
        expect(readMeasureWords(amount, unit), `${record}: ${unit}`).not.toBeNull();
  });

  test.each([
    [1, 'cup', cup, null],
    [1, 'cup, sliced', cup, 'sliced'],
    [1, 'cup whole kernels', cup, 'whole'],
    [1, 'cup shelled (50 halves)', cup, 'halves'],
    [1, 'cup, whole or halves', cup, 'whole'],
    [1, 'cup unpacked', cup, 'unpacked'],
    [1, 'cup, with hulls, edible yield', cup, 'in shell'],
    [1, 'cup, in shell, edible yield (7 nuts)', cup, 'in shell'],
    [0.333, 'cup', cup * 0.333, null],
    [3, 'tbsp', (cup * 3) / 16, null],
    [1, 'serving 1/4 cup', cup / 4, null],
    [1, 'serving 8 fl oz', cup, null],
    [1, 'bottle 8 fl oz', cup, null],
    [1, '3 tsp', cup / 16, null],
    [1, 'quart', cup * 4, null],
    [60, 'milliliter', 60, null],
    [1, 'liter', 1000, null],
  ])('%s %s is a volume', (amount, unit, millilitres, form) => {
    const words = readMeasureWords(amount, unit);
    expect(words).toMatchObject({ is: 'volume', form });
    expect(words?.is === 'volume' ? words.millilitres : Number.NaN).toBeCloseTo(millilitres, 9);
  });

  test('are told apart where they are none', () => {
    expect(readMeasureWords(1, 'oz (23 whole kernels)')).toEqual({ is: 'mass' });
    expect(readMeasureWords(10, 'nuts')).toEqual({ is: 'piece' });
    expect(readMeasureWords(1, 'packet (0.5 oz)')).toEqual({ is: 'pack' });
    expect(readMeasureWords(1, 'firkin')).toBeNull();
    expect(readMeasureWords(1, 'cupboard')).toBeNull();
    expect(readForm('firmly packed')).toBe('packed');
    expect(readForm('rinsed')).toBeNull();
  });
});

describe('the foods', () => {
  test('have one key each, and cover every record, source and sweetener', () => {
    const keys = listFoods().map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const record of Object.keys(foodMeasures)) expect(findFood(record)?.record, record).toBe(record);
    const ids = listFoods().flatMap(({ part }) => ('id' in part ? [part.id] : []));
    for (const id of Object.keys(sources)) expect(ids).toContain(id);
    for (const id of Object.keys(sweeteners)) if (id !== 'none') expect(ids).toContain(id);
  });

  test('share no alias', () => {
    const aliases = [sourceAliases, sweetenerAliases, otherFoodAliases, grainAliases]
      .flatMap((table) => Object.values(table))
      .flat()
      .concat(unclearGrains);
    expect(aliases.filter((alias, at) => aliases.indexOf(alias) !== at)).toEqual([]);
    for (const alias of aliases) expect(alias).toBe(alias.toLowerCase().trim());
  });

  test('weigh by the cup first as the sheet weighs them', () => {
    for (const { key, part } of listFoods()) {
      const used =
        part.role === 'source' ? sources[part.id].cup : part.role === 'sweetener' ? sweeteners[part.id].spoon : null;
      if (used === null) continue;
      const [first] = cupWeights(key);
      expect((first?.grams ?? 0) / (first?.millilitres ?? 0), key).toBeCloseTo(used.grams / used.millilitres, 9);
    }
  });

  test('play no part that is not theirs', () => {
    expect(findFood('14411')?.part).toEqual({ role: 'water' });
    expect(findFood('01077')?.part).toEqual({ role: 'milk' });
    expect(findFood('20038')?.part).toEqual({ role: 'other' });
    expect(findFood('12061')?.part).toEqual({ role: 'source', id: 'almond' });
    expect(findFood('nothing')).toBeNull();
    expect(findFood('constructor')).toBeNull();
  });

  test('of the cook’s own are weighed as they weighed them', () => {
    const key = ownKey('Sprouted oats');
    expect(weighVolume(key, null, 500, mine)?.spread.likely).toBeCloseTo(180, 9);
    expect(weighVolume(key, null, 500, mine)?.by.origin).toEqual({ kind: 'yours', how: 'measured' });
    expect(weighVolume(key, null, 500)).toBeNull();
    expect(findFood(ownKey('Cashews'), [{ name: 'Cashews', grams: 130, millilitres: cup }])?.part).toEqual({
      role: 'source',
      id: 'cashew',
    });
    for (const grams of [0, -1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(cupWeights(ownKey('Bad'), [{ name: 'Bad', grams, millilitres: 250 }])).toEqual([]);
  });
});

describe('a look-up', () => {
  test('finds foods by name or alias, best first', () => {
    const first = (text: string) => findFoods(text, mine)[0]?.key;
    expect(first('almonds')).toBe('12061');
    expect(first('Sugar')).toBe('19335');
    expect(first('HONEY')).toBe('19296');
    expect(first('skim')).toBe('01085');
    expect(first('sprouted')).toBe('own.Sprouted oats');
    expect(findFoods('zebra')).toEqual([]);
    expect(findFoods('', mine)).toHaveLength(listFoods(mine).length);
    expect(findFoods('coconut dried').map(({ key }) => key)).toContain('12108');
  });

  test('weighs each form by its own measure, and the usual one where the form was not weighed', () => {
    const grams = (form: string | null) => weighVolume('12061', form, cup);
    expect(grams(null)?.spread.likely).toBeCloseTo(143, 9);
    expect(grams('sliced')?.spread.likely).toBeCloseTo(92, 9);
    expect(grams('slivered')?.spread.likely).toBeCloseTo(108, 9);
    expect(grams('ground')).toMatchObject({ error: { value: 0.2 }, formKnown: true });
    expect(grams('packed')).toMatchObject({ formKnown: false, by: { grams: 143 } });
  });

  test('weighs by one measure whatever the size, and takes the others of that form into its range', () => {
    const ofCup = weighVolume('19908', null, cup);
    expect(ofCup?.by.grams).toBe(202);
    expect(weighVolume('19908', null, cup / 48)?.by.grams).toBe(202);
    expect(ofCup?.spread.high).toBeCloseTo(4.6 * 48 * 1.075, 6);
  });

  test('of a third of a cup of maple syrup is 105 g, as in a cell', () => {
    expect(weighVolume('19353', null, cup / 3)?.spread.likely).toBeCloseTo(105, 9);
    const given = [typed('sweetenerMass', cup / 3, 'volume')];
    const cell = formulate(recipeOf({ sweetener: [{ id: 'mapleSyrup', share: 1 }], given }));
    expect(numberIn(cell, 'sweetenerMass')).toBeCloseTo(105, 9);
  });

  test('weighs every source and sweetener as its cell does', () => {
    for (const { key, part } of listFoods()) {
      if (part.role !== 'source' && part.role !== 'sweetener') continue;
      const looked = weighVolume(key, null, 1)?.spread.likely;
      if (looked === undefined) continue;
      const { evaluation } = formulate(
        recipeOf(part.role === 'source' ? { source: part.id } : { sweetener: [{ id: part.id, share: 1 }] }),
      );
      const weight = evaluation.of(part.role === 'source' ? 'sourceWeight' : 'sweetenerWeight');
      expect(looked, key).toBeCloseTo(weight, 9);
    }
  });

  test('never weighs by a measure that contradicts itself', () => {
    expect(weighVolume('19912', null, cup / 4)?.by).toMatchObject({ grams: 6.9, doubt: null });
    expect(cupWeights('19912').filter(({ doubt }) => doubt !== null)).toHaveLength(1);
  });

  test('gives nothing for an amount that is none and for a food without a cup', () => {
    for (const amount of [-1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(weighVolume('12061', null, amount)).toBeNull();
    expect(weighVolume('12061', null, 0)?.spread).toEqual({ low: 0, likely: 0, high: 0 });
    expect(weighVolume('source.cartonPlain', null, cup)).toBeNull();
    expect(weighVolume('no food', null, cup)).toBeNull();
  });

  test('weighs pieces where a record does', () => {
    expect(pieceWeight('09421')?.grams).toBe(24);
    expect(pieceWeight('12120')?.grams).toBeCloseTo(1.4, 12);
    expect(pieceWeight('12104')?.grams).toBe(397);
    expect(pieceWeight('19296')).toBeNull();
  });

  test('is proportional, holds its figure within its range, and comes back from grams within it', () => {
    const anyFood = fc.constantFrom(...weighable);
    const anyForm = fc.constantFrom(null, 'whole', 'packed', 'ground', 'sliced', 'no such form');
    fc.assert(
      fc.property(anyFood, anyForm, fc.double({ min: 0.01, max: 1e5, noNaN: true }), ({ key }, form, volume) => {
        const weighed = weighVolume(key, form, volume, mine);
        if (weighed === null) throw new Error(`${key} has a cup weight`);
        const { low, likely, high } = weighed.spread;
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
        expect(likely / volume).toBeCloseTo(weighed.by.grams / weighed.by.millilitres, 9);
        const back = measureMass(key, form, likely, mine)?.spread;
        expect(back?.low).toBeLessThanOrEqual(volume * (1 + 1e-9));
        expect(back?.high).toBeGreaterThanOrEqual(volume * (1 - 1e-9));
      }),
    );
  });
});
