import type { Stock } from '../batch/document/document';
import { wallOf } from '../batch/reading/local-time';
import type { Point } from '../formula/stock/ledger';
import { didWords, mediumWords, placeWords } from '../formula/stock/line-words';
import { roundNumber } from '../measure/rounding';
import { grains as kinds } from '../reference/grains';
import { sources } from '../reference/sources';
import { writeTable } from './csv-file';

/** A jar of grains with what there was after each of its lines. */
export interface StockToWrite {
  readonly stock: Pick<Stock, 'name' | 'grains'>;
  readonly points: readonly Point[];
}

const headings = [
  ...['Jar', 'Kind', 'At', 'What', 'Weight (g)', 'Batch', 'Milk', 'Place', 'In'],
  ...['At rest after (g)', 'In all after (g)'],
];

/** Every line of every jar of grains as CSV, in order of time; weights are plain numbers in g, what is unknown is empty. */
export function writeStocksCsv(stocks: readonly StockToWrite[]): string {
  const lines = stocks.flatMap(({ stock, points }) =>
    points.map(({ entry, rest, total }) => [
      ...[
        stock.name,
        kinds[stock.grains].name,
        wallOf(entry.at).replace('T', ' '),
        didWords[entry.did],
        inGrams(entry.grams),
      ],
      ...[entry.name ?? null, entry.source === undefined ? null : sources[entry.source].name],
      entry.place === undefined ? null : placeWords[entry.place],
      entry.medium === undefined ? null : mediumWords[entry.medium],
      ...[rest, total].map(inGrams),
    ]),
  );
  return writeTable(headings, lines);
}

/** No scale of a kitchen reads to a milligram, and behind it doubles are noise. */
const places = 3;

function inGrams(grams: number | null): number | null {
  return grams === null ? null : roundNumber(grams, places);
}
