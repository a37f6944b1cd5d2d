import { stockEvents } from '../../formula/stock/stock-events';
import type { TimelineEvent } from '../../formula/time/event';
import type { SheetDocument } from '../document/document';
import { now, wallClock } from '../reading/local-time';
import { ledgerFor } from '../reading/stock-ledger';

/** What is to be done for every jar of grains, the soonest first. */
export function stockDates({ stocks = [], settings }: SheetDocument): readonly TimelineEvent[] {
  const around = { clock: wallClock(settings.quiet), present: now(), kitchen: settings };
  const all = stocks.flatMap((stock) => stockEvents(stock, ledgerFor(stock).ledger, around));
  return all.sort((one, other) => one.at - other.at);
}
