import { describe, expect, test } from 'vitest';
import type { AdditionId } from '../../src/formula/bottle-additions';
import { formulate } from '../../src/formula/formulate';
import { readAddition } from '../../src/interchange/bottle-addition';
import { readQuantity } from '../../src/measure/read-quantity';
import { recipeOf, typed } from '../batches';

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
    // 4.2 g of sugar in a teaspoon: 4.2 × 1.05052 ÷ 0.475 = 9.289 g/L.
    expect(read('caneWhite', '1 tsp')).toMatchObject({ ok: true, text: '9.3 g/L' });
    expect(read('caneWhite', '4.2')).toMatchObject({ ok: true, grams: 4.2, text: '9.3 g/L' });
    expect(read('caneWhite', '4.2 g')).toMatchObject({ ok: true, text: '9.3 g/L' });
  });

  test('by a label counts with the higher end: 50 g at 10 g in 100 g is 11.1 g/L at most', () => {
    expect(read('byLabel', '50 g', '10')).toMatchObject({ ok: true, text: '11.1 g/L' });
  });

  test('of nothing is nothing', () => {
    expect(read('caneWhite', '0 g')).toMatchObject({ ok: true, text: '0 g/L' });
  });

  test('is written so that the sheet reads it, with a comma too', () => {
    const found = readAddition(
      plain,
      { id: 'honey', amount: '7,3 g', labelSugar: '' },
      { cups: 'us', decimalComma: true },
    );
    const text = found.ok ? found.text : expect.fail(found.why);
    const again = readQuantity(text, { kind: 'concentration', bareUnit: 'g/L', cups: 'us', decimalComma: true });
    expect(again).toMatchObject({ ok: true, reading: { kind: 'concentration' } });
    expect(text).toMatch(/^\d+,\d g\/L$/);
  });

  test.each([
    ['caneWhite', 'some', '', /./],
    ['caneWhite', '-5 g', '', /minus sign/],
    ['caneWhite', '5 kg', '', /over 300 g\/L/],
    ['dates', '1 tbsp', '', /weight, such as 20 g/],
    ['byLabel', '2 tbsp', '10', /weight, such as 20 g/],
    ['byLabel', '20 g', '', /from the label/],
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
