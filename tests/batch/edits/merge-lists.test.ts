import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { SheetDocument, Stock, StockLine } from '../../../src/batch/document/document';
import { mostStockLines, mostStocks } from '../../../src/batch/document/document-limits';
import { listNames } from '../../../src/batch/document/kept-lists';
import { readDocument } from '../../../src/batch/document/read-document';
import { partsOf } from '../../../src/batch/document/salvage';
import { changesBetween, describeLeftOut } from '../../../src/batch/edits/document-changes';
import { mergeInto, replaceWith } from '../../../src/batch/edits/merge';
import { anyLists, withLists } from '../../kept-lists';
import { first, freeze } from '../any-edit';

const weighed = (grams: number, at = '2026-11-20T08:00'): StockLine => ({ at, did: 'weighed', grams });
const stock = (lines: readonly StockLine[], changes: Partial<Stock> = {}): Stock => ({
  key: 's1',
  name: 'Window sill',
  grains: 'water',
  lines,
  ...changes,
});
const sheet = (changes: Partial<SheetDocument>): SheetDocument => freeze({ ...demo, ...changes });
const merge = (mine: SheetDocument, theirs: SheetDocument) => mergeInto(mine, partsOf(theirs)).document;

describe('joining lists', () => {
  test('gives a sheet that can be saved, with all of yours, and once more changes nothing', () => {
    fc.assert(
      fc.property(anyLists, anyLists, (mine, theirs) => {
        const before = freeze(withLists(demo, mine));
        const file = freeze(withLists(demo, theirs));
        const joined = merge(before, file);
        expect(readDocument(joined).ok).toBe(true);
        expect(merge(joined, file)).toEqual(joined);
        for (const list of listNames) {
          if (list === 'stocks') continue;
          const after: readonly unknown[] = joined[list] ?? [];
          expect(after).toEqual(expect.arrayContaining([...(before[list] ?? [])]));
        }
        for (const { key, lines } of before.stocks ?? []) {
          expect(joined.stocks?.find((one) => one.key === key)?.lines).toEqual(expect.arrayContaining([...lines]));
        }
      }),
    );
  });

  test('joins what was done with one jar of grains on two devices', () => {
    const joined = merge(
      sheet({ stocks: [stock([weighed(50), weighed(54, '2026-11-21T08:00')])] }),
      sheet({ stocks: [stock([weighed(50), weighed(57, '2026-11-22T08:00')])] }),
    );
    expect(joined.stocks).toHaveLength(1);
    expect(joined.stocks?.[0]?.lines.map(({ grams }) => grams)).toEqual([50, 54, 57]);
  });

  test('never pours water grains and milk grains into one jar', () => {
    const joined = merge(
      sheet({ stocks: [stock([weighed(50)])] }),
      sheet({ stocks: [stock([weighed(30)], { grains: 'milk' })] }),
    );
    expect(joined.stocks?.map(({ key, grains, lines }) => [key, grains, lines.length])).toEqual([
      ['s1', 'water', 1],
      ['k2', 'milk', 1],
    ]);
  });

  test('leaves the jars of two cooks apart, though the first jar of each has one key', () => {
    const mine = sheet({ stocks: [stock([weighed(50)])] });
    const theirs = sheet({ stocks: [stock([weighed(80)], { name: 'Kitchen' })] });
    const joined = merge(mine, theirs);
    expect(joined.stocks?.map(({ key, name, lines }) => [key, name, lines.length])).toEqual([
      ['s1', 'Window sill', 1],
      ['k2', 'Kitchen', 1],
    ]);
    expect(merge(joined, theirs)).toBe(joined);
    const later = sheet({ stocks: [stock([weighed(80), weighed(90, '2026-11-22T08:00')], { name: 'Kitchen' })] });
    expect(merge(joined, later).stocks?.map(({ lines }) => lines.length)).toEqual([1, 2]);
  });

  test('goes by the key for a jar without a line, and does not add it twice', () => {
    const empty = sheet({ stocks: [stock([])] });
    const mine = sheet({ stocks: [stock([weighed(50)])] });
    expect(merge(mine, empty)).toBe(mine);
    expect(merge(empty, mine).stocks).toEqual(mine.stocks);
    const milk = sheet({ stocks: [stock([], { grains: 'milk' })] });
    const joined = merge(milk, empty);
    expect(joined.stocks?.map(({ key, grains }) => [key, grains])).toEqual([
      ['s1', 'milk'],
      ['k2', 'water'],
    ]);
    expect(merge(joined, empty)).toBe(joined);
  });

  test('finds a jar again by its lines, beside an empty one that came in under its key', () => {
    const mine = sheet({ stocks: [stock([weighed(50)], { key: 'k2', name: 'Mine' })] });
    const theirs = sheet({
      stocks: [
        stock([], { key: 'k2', name: 'Empty', grains: 'milk' }),
        stock([weighed(30)], { key: 'k3', name: 'Full', grains: 'milk' }),
      ],
    });
    const joined = merge(mine, theirs);
    expect(joined.stocks?.map(({ name, lines }) => [name, lines.length])).toEqual([
      ['Mine', 1],
      ['Empty', 0],
      ['Full', 1],
    ]);
    expect(merge(joined, theirs)).toEqual(joined);
  });

  test('leaves a line with its batch under the id that goes here', () => {
    const out: StockLine = { at: '2026-11-21T08:00', did: 'out', grams: 54, batch: 'b1', name: 'Sunday hemp' };
    const theirs = sheet({ batches: [startBatch('b1', 'Sunday hemp')], stocks: [stock([out])] });
    const mine = sheet({ batches: [{ ...first(demo), id: 'b1' }] });
    const joined = merge(mine, theirs);
    const there = joined.batches.find(({ name }) => name.startsWith('Sunday hemp'));
    expect(there?.id).not.toBe('b1');
    expect(joined.stocks?.[0]?.lines[0]?.batch).toBe(there?.id);
  });

  test('tells what there is no room for', () => {
    const many = Array.from({ length: mostStocks }, (_, at) => stock([], { key: `m${at}`, name: `Jar ${at}` }));
    const full = stock(Array.from({ length: mostStockLines }, (_, at) => weighed(at)));
    const { document, leftOut } = mergeInto(
      sheet({ stocks: [full, ...many.slice(1)] }),
      partsOf(
        sheet({
          stocks: [stock([weighed(1), weighed(0.5)], { name: 'More' }), stock([], { key: 'z', name: 'One more' })],
        }),
      ),
    );
    expect(document.stocks).toHaveLength(mostStocks);
    expect(document.stocks?.[0]).toBe(full);
    expect(leftOut.stocks).toEqual(['One more', 'More']);
    expect(describeLeftOut(leftOut)).toEqual([{ what: '2 jars of grains', names: ['One more', 'More'] }]);
  });

  test('is told in words, and so is replacing', () => {
    const file = sheet({ stocks: [stock([weighed(50)])], cartons: [{ name: 'Oat, blue' }] });
    const mine = sheet({ cartons: [{ name: 'Soy' }] });
    expect(changesBetween(mine, merge(mine, file))).toEqual([
      { what: '1 jar of grains added', names: ['Window sill'] },
      { what: '1 carton added', names: ['Oat, blue'] },
    ]);
    const replaced = replaceWith(mine, partsOf(file));
    expect([replaced.stocks, replaced.cartons]).toEqual([file.stocks, file.cartons]);
    expect(replaceWith(mine, partsOf(demo)).cartons).toBeUndefined();
  });
});
