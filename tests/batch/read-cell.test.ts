import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellProblem, cellRemark } from '../../src/batch/cell-problem';
import { demo } from '../../src/batch/demo';
import type { Settings } from '../../src/batch/document';
import { bareUnitOf, isBlank, readCell } from '../../src/batch/read-cell';
import type { NumericRowId } from '../../src/formula/order';
import { numericRows } from '../../src/formula/sheet';
import { numericRowIds } from '../batches';
import { anySettings, anyText } from './any-edit';

const metric = demo.settings;
const us: Settings = { ...metric, leads: 'us' };

describe('readCell', () => {
  test.each<[NumericRowId, string, Settings, object]>([
    ['sourceMass', '300 g', metric, { amount: 300, kind: 'mass' }],
    ['sourceMass', '300', metric, { amount: 300, kind: 'mass' }],
    ['sourceMass', '6', us, { amount: 170.09713875, kind: 'mass' }],
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

describe('cellRemark', () => {
  test('says which ounce an ounce was read as', () => {
    expect(cellRemark('sourceMass', readCell('sourceMass', '6 oz', metric), metric)).toContain('by weight');
    expect(cellRemark('blendWater', readCell('blendWater', '6 oz', metric), metric)).toContain('fluid ounces');
    expect(cellRemark('blendWater', readCell('blendWater', '6 fl oz', metric), metric)).toBeNull();
    expect(cellRemark('blendWater', readCell('blendWater', '170 mL', metric), metric)).toBeNull();
  });
});
