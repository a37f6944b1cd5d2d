import { type Entry, type Ledger, ledgerOf } from '../../formula/stock/ledger';
import type { Batch, Stock, StockLine } from '../document/document';
import { instantOf } from './local-time';

interface ReadLedger {
  readonly ledger: Ledger;
  /** Where each entry stands in the stock’s own lines. */
  readonly placeOf: ReadonlyMap<Entry, number>;
}

// The lines of a stock stay the same object until one of them is edited, and a thousand are read for each.
const known = new WeakMap<Stock['lines'], ReadLedger>();

/** What a stock has come to, its lines read on the clock of this kitchen. */
export function ledgerFor({ lines }: Pick<Stock, 'lines'>): ReadLedger {
  const old = known.get(lines);
  if (old !== undefined) return old;
  const placeOf = new Map<Entry, number>();
  const entries = lines.map((line, place): Entry => {
    const entry = entryOf(line);
    placeOf.set(entry, place);
    return entry;
  });
  const found = { ledger: ledgerOf(entries), placeOf };
  known.set(lines, found);
  return found;
}

/** A line as it is worked with; a time that no clock shows, such as a 30 February, comes first of all. */
export function entryOf({ at, note: _, ...line }: StockLine): Entry {
  return { ...line, at: instantOf(at) ?? 0 };
}

/**
 * The jar of grains that a batch is about: the one its grains are out of, else the last of its kind, else the last; none
 * where there are none.
 */
export function stockOf(batch: Pick<Batch, 'id' | 'grains'>, stocks: readonly Stock[]): Stock | undefined {
  // Lines are looked through before they are read on the clock, which takes its time for twenty jars.
  const isAway = (stock: Stock) =>
    stock.lines.some(({ did, batch: of }) => did === 'out' && of === batch.id) &&
    ledgerFor(stock).ledger.away.some(({ out }) => out.batch === batch.id);
  return stocks.find(isAway) ?? stocks.findLast(({ grains }) => grains === batch.grains) ?? stocks.at(-1);
}
