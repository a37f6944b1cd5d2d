import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { SheetDocument, Stock, StockLine } from '../../../src/batch/document/document';
import { mostStockLines, mostStocks } from '../../../src/batch/document/document-limits';
import { removeBatch } from '../../../src/batch/edits/batch-list';
import {
  addStock,
  addStockLine,
  changeStockLine,
  removeStock,
  removeStockLine,
  renameStock,
  setRestSugar,
  stockSteps,
} from '../../../src/batch/edits/stock-edits';
import { ledgerFor, stockOf } from '../../../src/batch/reading/stock-ledger';

const got: StockLine = { at: '2026-11-01T08:00', did: 'got', grams: 60, place: 'fridge', medium: 'sugarWater' };
const out: StockLine = { at: '2026-11-02T08:00', did: 'out', grams: 54, batch: 'b1', name: 'Almond', source: 'almond' };
const kept = addStock(demo, 'water', 'Blue jar', got);

function only(document: SheetDocument): Stock {
  const [stock] = document.stocks ?? [];
  if (stock === undefined) throw new Error('there is no jar of grains');
  return stock;
}

const { key } = only(kept);

describe('a jar of grains', () => {
  test('is kept with its first line, under a name of its own', () => {
    expect(only(kept)).toEqual({ key: 'g1', name: 'Blue jar', grains: 'water', lines: [got] });
    const two = addStock(kept, 'milk', 'Blue jar', got);
    expect(two.stocks?.map((stock) => [stock.key, stock.name])).toEqual([
      ['g1', 'Blue jar'],
      ['g2', 'Blue jar 2'],
    ]);
    expect(addStock(demo, 'milk', '  ', got).stocks?.[0]?.name).toBe('Milk kefir grains');
  });

  test('is not added where the sheet holds as many as it can', () => {
    let full = demo;
    for (let count = 0; count < mostStocks; count += 1) full = addStock(full, 'water', '', got);
    expect(full.stocks).toHaveLength(mostStocks);
    expect(addStock(full, 'water', '', got)).toBe(full);
  });

  test('is renamed and removed; without a name, or another’s key, nothing changes', () => {
    expect(only(renameStock(kept, key, 'Red jar')).name).toBe('Red jar');
    expect(renameStock(kept, key, ' ')).toBe(kept);
    expect(renameStock(kept, 'g9', 'Red jar')).toBe(kept);
    expect(removeStock(kept, key).stocks).toEqual([]);
    expect(removeStock(kept, 'g9')).toBe(kept);
  });

  test('has a strength of its resting jar within bounds, and gives it back', () => {
    const strong = setRestSugar(kept, key, 80);
    expect(only(strong).strength).toBe(80);
    expect(setRestSugar(strong, key, 500)).toBe(strong);
    expect(setRestSugar(strong, key, null)).toEqual(kept);
    expect(setRestSugar(kept, key, null)).toBe(kept);
  });
});

describe('a line', () => {
  const two = addStockLine(kept, key, out);

  test('is added, changed and removed', () => {
    expect(only(two).lines).toEqual([got, out]);
    const changed = changeStockLine(two, key, 1, { ...out, grams: 50 });
    expect(only(changed).lines[1]?.grams).toBe(50);
    expect(removeStockLine(changed, key, 1)).toEqual(kept);
  });

  test('that can’t be saved, or stands nowhere, changes nothing', () => {
    expect(addStockLine(kept, key, { ...out, grams: Number.NaN })).toBe(kept);
    expect(addStockLine(kept, key, { ...out, grams: -1 })).toBe(kept);
    expect(changeStockLine(two, key, 7, out)).toBe(two);
    expect(removeStockLine(two, key, 7)).toBe(two);
    const full = { ...kept, stocks: [{ ...only(kept), lines: Array.from({ length: mostStockLines }, () => got) }] };
    expect(addStockLine(full, key, out)).toBe(full);
  });

  test('keeps the name of a batch that is removed', () => {
    const [batch] = demo.batches;
    const line = { ...out, batch: batch?.id ?? '', name: batch?.name ?? '' };
    const left = removeBatch(addStockLine(kept, key, line), line.batch);
    expect(only(left).lines[1]).toEqual(line);
  });

  test('keeps its weight to the last digit', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 100_000, noNaN: true }), (grams) => {
        const saved = addStockLine(kept, key, { ...out, grams });
        expect(only(saved).lines[1]?.grams).toBe(grams + 0);
        expect(ledgerFor(only(saved)).ledger.away[0]?.grams).toBe(grams + 0);
      }),
    );
  });

  test('names its step', () => {
    expect(stockSteps.add(out, demo.settings).replaceAll('\u00A0', ' ')).toBe('Grains: Out 54 g for Almond');
  });
});

test('the jar of a batch is the one its grains are out of, else the last of its kind', () => {
  const [batch] = demo.batches;
  if (batch === undefined) throw new Error('the demo has a batch');
  const three = addStock(addStock(addStock(demo, 'water', 'A', got), 'water', 'B', got), 'milk', 'C', got);
  expect(stockOf({ id: batch.id, grains: 'water' }, three.stocks ?? [])?.name).toBe('B');
  expect(stockOf({ id: batch.id, grains: 'milk' }, three.stocks ?? [])?.name).toBe('C');
  const away = addStockLine(three, 'g1', { ...out, batch: batch.id });
  expect(stockOf(batch, away.stocks ?? [])?.name).toBe('A');
  expect(stockOf(batch, [])).toBeUndefined();
});

test('twenty jars of a thousand lines are worked out quickly, once', () => {
  const at = (place: number) =>
    `20${String(10 + Math.floor(place / 336)).padStart(2, '0')}-${String(1 + (Math.floor(place / 28) % 12)).padStart(2, '0')}-${String(1 + (place % 28)).padStart(2, '0')}T08:00`;
  const lines = Array.from(
    { length: 1000 },
    (_, place): StockLine => ({ ...out, did: place % 2 ? 'back' : 'out', at: at(place) }),
  );
  const stocks = Array.from({ length: 20 }, () => ({ ...only(kept), lines: [...lines] }));
  const ledgers = stocks.map((stock) => ledgerFor(stock).ledger);
  expect(ledgers.map(({ rounds }) => rounds.length)).toEqual(stocks.map(() => 500));
  expect(ledgerFor(stocks[0] ?? only(kept)).ledger).toBe(ledgers[0]);
});
