import { expect, test } from 'vitest';
import type { StockLine } from '../../src/batch/document/document';
import { ledgerFor } from '../../src/batch/reading/stock-ledger';
import { writeStocksCsv } from '../../src/interchange/stock-csv';

test('has a line for each thing written down, with what there was after it, guarded against formulas', () => {
  const lines: readonly StockLine[] = [
    { at: '2026-11-02T08:00', did: 'out', grams: 54.3, batch: 'b1', name: '=1+1', source: 'almond' },
    { at: '2026-11-01T08:00', did: 'got', grams: 60, place: 'fridge', medium: 'sugarWater' },
    { at: '2026-11-03T08:00', did: 'back', grams: null, batch: 'b1' },
  ];
  const { points } = ledgerFor({ lines }).ledger;
  const written = writeStocksCsv([{ stock: { name: 'Blue, jar', grains: 'water' }, points }]);
  expect(written.split('\r\n')).toEqual([
    '\uFEFFJar,Kind,At,What,Weight (g),Batch,Milk,Place,In,At rest after (g),In all after (g)',
    '"Blue, jar",Water kefir grains,2026-11-01 08:00,Got,60,,,in the fridge,sugar water,60,60',
    `"Blue, jar",Water kefir grains,2026-11-02 08:00,Out,54.3,'=1+1,"Almonds, whole",,,5.7,60`,
    '"Blue, jar",Water kefir grains,2026-11-03 08:00,Back,,,,,,60,60',
    '',
  ]);
});
