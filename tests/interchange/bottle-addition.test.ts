import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import { readCell } from '../../src/batch/reading/read-cell';
import { formulate } from '../../src/formula/engine/formulate';
import type { AdditionId } from '../../src/formula/fizz/bottle-additions';
import type { Recipe } from '../../src/formula/recipe/recipe';
import { readAddition } from '../../src/interchange/bottle-addition';
import { bottledRecipe as recipeOf, typed } from '../batches';
import { codesAt } from '../results';

const plain = formulate(recipeOf());
const habits = { cups: 'us', decimalComma: false } as const;
const read = (id: AdditionId, amount: string, labelSugar = '') =>
  readAddition(plain, { id, amount, labelSugar }, habits);
const why = (id: AdditionId, amount: string, labelSugar = ''): string => {
  const found = read(id, amount, labelSugar);
  return found.ok ? expect.fail(`it came to ${found.text}`) : found.why;
};

describe('what goes into a bottle', () => {
  test('is typed in grams, or bare, or by the spoon', () => {
    // A 48th of 200 g of sugar in a teaspoon: 4.1667 × 1.05052 ÷ 0.475 = 9.215 g/L, or 4.377 g in the bottle.
    expect(read('caneWhite', '1 tsp')).toMatchObject({ ok: true, text: '4.38 g' });
    expect(read('caneWhite', '4.2')).toMatchObject({ ok: true, grams: 4.2, text: '4.41 g' });
    expect(read('caneWhite', '4.2 g')).toMatchObject({ ok: true, text: '4.41 g' });
  });

  test('by a label counts with the higher end: 50 g at 10 g in 100 g is 5.26 g at most', () => {
    expect(read('byLabel', '50 g', '10')).toMatchObject({ ok: true, text: '5.26 g' });
  });

  test('of nothing is nothing', () => {
    expect(read('caneWhite', '0 g')).toMatchObject({ ok: true, text: '0 g' });
  });

  test('is written so that the sheet reads it, with a comma too', () => {
    const found = readAddition(
      plain,
      { id: 'honey', amount: '7,4 g', labelSugar: '' },
      { cups: 'us', decimalComma: true },
    );
    const text = found.ok ? found.text : expect.fail(found.why);
    const cell = readCell('bottleSugar', text, { ...demo.settings, decimalComma: true });
    expect(cell).toMatchObject({ kind: 'mass', amount: expect.closeTo(found.ok ? found.added.hexose.high : 0, 2) });
    expect(text).toMatch(/^\d+,\d\d? g$/);
  });

  test('stays the same in a bottle of another size', () => {
    const each = { row: 'bottleSugar', amount: 8.82, kind: 'mass' } as const;
    const sugar = (...cells: Recipe['given']) => formulate(recipeOf({ given: [each, ...cells] })).of('bottleSugar');
    expect(sugar()).toBeCloseTo(8.82 / 0.475, 9);
    expect(sugar(typed('bottleVolume', 250))).toBeCloseTo(8.82 / 0.2375, 9);
    expect(sugar(typed('bottleHeadspace', 159))).toBeCloseTo(8.82 / 0.341, 9);
    expect(sugar(typed('bottleTime', 0))).toBe(0);
    expect(codesAt(formulate(recipeOf({ given: [each, typed('bottleVolume', -1)] })), 'bottleSugar')).toEqual([
      'waits',
    ]);
  });

  test('of juice is read by the spoon too, heavier than water', () => {
    expect(read('byLabel', '50 mL', '10')).toMatchObject({ ok: true, grams: 52.5 });
  });

  test('must leave the kefir its room', () => {
    expect(why('byLabel', '400 g', '10')).toMatch(/too little room/);
  });

  test.each([
    ['caneWhite', 'some', '', /./],
    ['caneWhite', '-5 g', '', /minus sign/],
    ['caneWhite', '5 kg', '', /over 300 g\/L/],
    ['dates', '1 tbsp', '', /weight, such as 20 g/],
    ['byLabel', '20 g', '', /from a label or a food table/],
    ['byLabel', '20 g', '140', /from 0 to 100/],
  ] as const)('of %s, %j, label %j is refused in words', (id, amount, label, words) => {
    expect(why(id, amount, label)).toMatch(words);
  });

  test('in a bottle that has no size says what to mend', () => {
    const unsized = formulate(recipeOf({ given: [typed('bottleVolume', -1)] }));
    expect(readAddition(unsized, { id: 'caneWhite', amount: '5 g', labelSugar: '' }, habits)).toMatchObject({
      ok: false,
      why: expect.stringContaining('mend its rows'),
    });
  });
});

describe('fruit in a bottle', () => {
  test('is counted by gram, cup and piece: 30 g of raspberries are 1.33 g of sugar', () => {
    expect(read('raspberries', '30 g')).toMatchObject({ ok: true, grams: 30, text: '1.33 g' });
    expect(read('raspberries', '¼ cup')).toMatchObject({ ok: true, grams: expect.closeTo(30.75, 6) });
    expect(read('strawberries', '3 pieces')).toMatchObject({ ok: true, grams: 36, text: '1.77 g' });
    expect(read('dates', '1 piece')).toMatchObject({ ok: true, grams: 24 });
  });

  test('comes to a litre of what fills the bottle, as published: 50 mL of grape juice in half a litre, 15.2 g/L', () => {
    const half = formulate(recipeOf({ given: [typed('bottleVolume', 530), typed('bottleHeadspace', 30)] }));
    const found = readAddition(half, { id: 'grapeJuice', amount: '53.47 g', labelSugar: '' }, habits);
    expect(found.ok ? found.added.perLitre.value : null).toBeCloseTo(15.2, 1);
  });

  test('that no table weighs by the cup or piece is asked for in grams', () => {
    expect(why('apple', '1 cup')).toContain('Type its weight');
    expect(why('grapeJuice', '2 pieces')).toContain('Type its weight');
  });

  test('leaves the kefir room', () => {
    expect(why('mango', '300 g')).toContain('too little room');
  });
});
