import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { recipeOf, type Settings } from '../../../src/batch/document/document';
import { cellProblem, cellRemark, cellWaysOut } from '../../../src/batch/reading/cell-problem';
import { bareUnitOf, isBlank, readCell } from '../../../src/batch/reading/read-cell';
import { formulate } from '../../../src/formula/engine/formulate';
import type { NumericRowId } from '../../../src/formula/recipe/order';
import { numericRows } from '../../../src/formula/rows/sheet';
import { numericRowIds } from '../../batches';
import { anySettings, anyText } from '../any-edit';

const metric = demo.settings;
const us: Settings = { ...metric, leads: 'us' };

describe('readCell', () => {
  test.each<[NumericRowId, string, Settings, object]>([
    ['sourceMass', '300 g', metric, { amount: 300, kind: 'mass' }],
    ['sourceMass', '300', metric, { amount: 300, kind: 'mass' }],
    ['sourceMass', '6', us, { amount: null, kind: 'mass' }],
    ['sourceMass', '6 oz', us, { amount: 170.09713875, kind: 'mass' }],
    ['pulpMass', '6', us, { amount: 170.09713875, kind: 'mass' }],
    ['brimful', '35.3 oz', metric, { amount: 1000.7381663125, kind: 'mass' }],
    ['brimful', '2 lb 3.3 oz', us, { amount: 1000.7381663125, kind: 'mass' }],
    ['brimful', '1 qt', us, { amount: 946.352946, kind: 'volume' }],
    ['blendWater', '2 lb 3.3 oz', us, { amount: 1000.7381663125, kind: 'mass' }],
    ['soakTime', 'overnight', metric, { amount: 10, kind: 'time' }],
    ['soakTime', 'Over night', us, { amount: 10, kind: 'time' }],
    ['waterRatio', '1:5', us, { amount: 5, kind: 'ratio' }],
    ['waterRatio', '4,500', metric, { amount: 4.5, kind: 'ratio' }],
    ['roomTemperature', '21.500', metric, { amount: 21.5, kind: 'temperature' }],
    ['milkVolume', '1,5 L', metric, { amount: 1500, kind: 'volume' }],
    ['milkVolume', '1.500 mL', metric, { amount: null, kind: 'volume' }],
    ['sourceMass', '1½ c', metric, { amount: 354.88235475, kind: 'volume' }],
    ['milkVolume', '2', us, { amount: 473.176473, kind: 'volume' }],
    ['milkVolume', '2', { ...us, cups: 'metric' }, { amount: 500, kind: 'volume' }],
    ['milkVolume', '8 oz', metric, { amount: 236.5882365, kind: 'volume' }],
    ['milkVolume', '1 kg', metric, { amount: 1000, kind: 'mass' }],
    ['headspaceVolume', '26 %', metric, { amount: 26, kind: 'share' }],
    ['headspaceVolume', '260', metric, { amount: 260, kind: 'volume' }],
    ['fillVolume', '26 %', metric, { amount: null, kind: 'volume' }],
    ['headspaceDepth', '2', us, { amount: 5.08, kind: 'length' }],
    ['waterRatio', '4.5', us, { amount: 4.5, kind: 'ratio' }],
    ['finalPH', '4.4', us, { amount: 4.4, kind: 'acidity' }],
    ['sourceMass', '1,5 kg', { ...metric, decimalComma: true }, { amount: 1500, kind: 'mass' }],
  ])('%s: %s', (row, text, settings, read) => {
    expect(readCell(row, text, settings)).toEqual({ text, ...read });
  });

  test('keeps a text that it can’t read, with no amount', () => {
    expect(readCell('sourceMass', 'some almonds', metric)).toEqual({
      text: 'some almonds',
      amount: null,
      kind: 'mass',
    });
  });

  test('takes no volume for a row that is neither weighed nor poured', () => {
    expect(readCell('soakTime', '2 cups', metric).amount).toBeNull();
  });

  test('never reads an overlong text for less than it says', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...numericRowIds),
        anyText,
        fc.integer({ min: 201, max: 400 }),
        (row, text, length) => {
          const long = text.padEnd(length, '1 g + ');
          const cell = readCell(row, long, metric);
          expect(cell.amount).toBeNull();
          expect(cell.text.length).toBe(200);
          expect(cellProblem(row, cell, metric)).toMatch(/\p{L}/u);
        },
      ),
    );
  });

  test('reads any text without throwing: an amount to count with, or a sentence', () => {
    fc.assert(
      fc.property(fc.constantFrom(...numericRowIds), anyText, anySettings, (row, text, changes) => {
        const settings = { ...metric, ...changes };
        const cell = readCell(row, text, settings);
        if (cell.amount === null) expect(cellProblem(row, cell, settings)).toMatch(/\.$/);
        else expect(Number.isFinite(cell.amount)).toBe(true);
        if (text.length <= 200) expect(cell.text).toBe(text);
      }),
      { numRuns: 1000 },
    );
  });
});

describe('cellProblem', () => {
  test('says what is wrong with the text', () => {
    const cell = readCell('sourceMass', '3 hours', metric);
    expect(cellProblem('sourceMass', cell, metric)).toContain('“hours” measures a time');
  });

  test('has nothing to say about a cell that was read', () => {
    expect(cellProblem('sourceMass', readCell('sourceMass', '3 g', metric), metric)).toBeNull();
  });
});

describe('bareUnitOf', () => {
  test('is the unit that leads', () => {
    const pairs = (settings: Settings) =>
      new Map(numericRowIds.map((row) => [numericRows[row].kind, bareUnitOf(row, settings)]));
    const common = { count: '', time: 'h', ratio: 'g/g', share: '%', concentration: 'g/L', acidity: 'pH' };
    expect(Object.fromEntries(pairs(metric))).toEqual({
      ...{ ...common, mass: 'g', volume: 'mL', length: 'cm' },
      ...{ temperature: '°C', pressure: 'bar' },
    });
    expect(Object.fromEntries(pairs(us))).toEqual({
      ...{ ...common, mass: 'oz', volume: 'cup', length: 'in' },
      ...{ temperature: '°F', pressure: 'psi' },
    });
  });

  test('follows the cook’s own cup', () => {
    expect(bareUnitOf('milkVolume', { ...us, cups: 'us-label' })).toBe('labelCup');
  });
});

test('a text is blank if there is nothing to see in it', () => {
  expect(['', ' ', '\t\n', '\u00A0', '\u200B'].map(isBlank)).toEqual([true, true, true, true, true]);
  expect(isBlank('0')).toBe(false);
});

describe('what a text may stand for', () => {
  const document = demo;
  const [batch] = document.batches;
  const meant = (row: NumericRowId, text: string, settings: Settings) => {
    if (batch === undefined) throw new Error('the demo has no batch');
    const recipe = recipeOf(document, batch);
    const given = [{ row, ...readCell(row, text, settings) }];
    return cellWaysOut(row, readCell(row, text, settings), settings, formulate({ ...recipe, given }));
  };
  const labels = (...asked: Parameters<typeof meant>) => meant(...asked).map(({ label }) => label);

  test('is offered as one press each', () => {
    expect(labels('sourceMass', '1,500 kg', metric)).toEqual(['Make it 1.5 kg', 'Make it 1500 kg']);
    expect(labels('milkVolume', '1.500 mL', metric)).toEqual(['Make it 1.5 mL', 'Make it 1500 mL']);
    expect(labels('sourceMass', '2', us)).toEqual(['Make it 2 cups', 'Make it 2 oz']);
    expect(labels('sweetenerMass', '2', us)).toEqual(['Make it 2 tbsp', 'Make it 2 cups', 'Make it 2 oz']);
    expect(labels('brimful', '35.3', us)).toEqual(['Make it 35.3 cups', 'Make it 35.3 oz']);
    expect(labels('sourceMass', '2', metric)).toEqual([]);
    expect(labels('sourceMass', 'some', metric)).toEqual([]);
  });

  test('is what is then typed and read', () => {
    const [cups, ounces] = meant('sourceMass', '2', us);
    expect(cups?.changes).toEqual([
      { do: 'type', row: 'sourceMass', text: '2 cups', amount: 473.176473, kind: 'volume' },
    ]);
    expect(ounces?.changes).toEqual([
      { do: 'type', row: 'sourceMass', text: '2 oz', amount: 56.69904625, kind: 'mass' },
    ]);
  });
});

describe('cellRemark', () => {
  test.each<[NumericRowId, string, Settings, string | null]>([
    ['sourceMass', '300', metric, 'taken as g'],
    ['milkVolume', '2', us, 'taken as cups'],
    ['roomTemperature', '70°', us, 'taken as °F'],
    ['soakTime', '8', metric, 'taken as h'],
    ['waterRatio', '4.5', metric, 'taken as parts'],
    ['vesselCount', '2', metric, null],
    ['sourceMass', '300 g', metric, null],
    ['soakTime', 'overnight', metric, 'taken as 10\u00A0h'],
    ['waterRatio', '1:5', metric, 'taken as nut or seed to water, by weight'],
    ['brimful', '35.3 oz', metric, 'oz read by weight'],
  ])('says what %s of %j was taken for', (row, text, settings, remark) => {
    expect(cellRemark(row, readCell(row, text, settings), settings)).toBe(remark);
  });

  test('says what a bare number was taken for when it was typed, whichever unit leads now', () => {
    expect(cellRemark('sourceMass', readCell('sourceMass', '300', metric), us)).toBe('taken as g');
    expect(cellRemark('milkVolume', readCell('milkVolume', '2', us), metric)).toBe('taken as cups');
    const ounces = { text: '6', amount: 170.09713875, kind: 'mass' } as const;
    expect(cellRemark('sourceMass', ounces, us)).toBe('taken as oz');
  });

  test('says which ounce an ounce was read as', () => {
    expect(cellRemark('sourceMass', readCell('sourceMass', '6 oz', metric), metric)).toContain('by weight');
    expect(cellRemark('blendWater', readCell('blendWater', '6 oz', metric), metric)).toContain('fluid ounces');
    expect(cellRemark('blendWater', readCell('blendWater', '6 fl oz', metric), metric)).toBeNull();
    expect(cellRemark('blendWater', readCell('blendWater', '170 mL', metric), metric)).toBeNull();
  });
});

describe('cans', () => {
  test('are counted of the source alone', () => {
    expect(readCell('sourceMass', '1 can', metric)).toMatchObject({ amount: 1, kind: 'count' });
    expect(readCell('sourceMass', '1 ½ tins', metric)).toMatchObject({ amount: 1.5, kind: 'count' });
    expect(readCell('blendWater', '1 can', metric).amount).toBeNull();
    expect(readCell('sourceMass', '3 pieces', metric).amount).toBeNull();
  });
});
