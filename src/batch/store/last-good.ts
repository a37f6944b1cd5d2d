import type { Formulation } from '../../formula/engine/formulate';
import type { Batch } from '../document/document';
import type { History } from '../document/recorded';

/** So many steps are looked back; a slip is mended long before. */
const mostSteps = 30;

const found = new WeakMap<Formulation, Formulation | null>();

/**
 * The figures that stand in for those that wait for a refused cell: those of the newest step back in which this batch
 * could be worked out, else of the batch without what is refused. Null where nothing waits, or nothing can stand in.
 */
export function lastGood(
  batch: Batch,
  { past }: History,
  formulationOf: (batch: Batch) => Formulation,
): Formulation | null {
  const now = formulationOf(batch);
  const known = found.get(now);
  if (known !== undefined) return known;
  const good = hasWaiting(now) ? lookBack(batch, past, formulationOf) : null;
  found.set(now, good);
  return good;
}

function lookBack(batch: Batch, past: History['past'], formulationOf: (batch: Batch) => Formulation) {
  for (const { document } of past.slice(-mostSteps).toReversed()) {
    const old = document.batches.find(({ id }) => id === batch.id);
    if (old === undefined) break;
    const before = formulationOf(old);
    if (!hasWaiting(before)) return before;
  }
  const { rows } = formulationOf(batch);
  const without = formulationOf({ ...batch, given: batch.given.filter(({ row }) => rows[row].status !== 'refused') });
  return hasWaiting(without) ? null : without;
}

/** Whether a row has no figure because another is refused. */
function hasWaiting({ rows }: Formulation): boolean {
  return Object.values(rows).some(({ problems }) => problems.some(({ code }) => code === 'waits'));
}
