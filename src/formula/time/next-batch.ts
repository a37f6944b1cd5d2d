import { learning } from '../../reference/pace';
import type { Formulation } from '../engine/formulate';
import type { Kitchen } from '../words/write-row';
import { type HasteRowId, type ReadyIn, readyIn } from './ready-in';
import { type ReadyInWay, wayToBeReady } from './ready-in-way';

/** What the last look at a jar said. */
export interface Result {
  readonly found: 'flat' | 'ready' | 'sour';
  readonly hours: number;
}

/** What to do with the next batch: as it is, look later or sooner, or one thing changed. */
export type NextBatch =
  | { readonly do: 'asItIs' | 'wait' | 'longer' | 'sooner'; readonly after: Formulation }
  | {
      readonly do: 'change';
      readonly row: HasteRowId;
      /** What it is now, in the unit of that row. */
      readonly now: number;
      readonly way: ReadyInWay;
      readonly after: Formulation;
    };

/** What is usual for how long such grains take, h. */
interface Usual {
  readonly low: number;
  readonly high: number;
}

/**
 * What to do with the next batch after what was found at this one, the best first; null where the batch has no time.
 * `formulation` is the next batch as it would be without a change, at the pace that the log has taught.
 *
 * Right is left as it is, and so is what was only looked at before its time. Else one thing is changed: what lies beyond
 * its usual range on the side that explains it; else the hours, where those that the sheet now says are usual and on the
 * right side of when it was looked at; else what has the batch in the middle of its ripe hours when it is looked at then,
 * within what is usual: the place, the grains, the sugar.
 */
export function nextBatches(
  formulation: Formulation,
  { found, hours }: Result,
  kitchen: Kitchen,
): readonly NextBatch[] | null {
  const { value: likely, range } = formulation.rows.readyTime;
  if (typeof likely !== 'number' || range === null) return null;
  if (found === 'ready') return [{ do: 'asItIs', after: formulation }];
  if (found === 'flat' && hours < range.low) return [{ do: 'wait', after: formulation }];
  const usual = usualHours(formulation);
  const isFaster = found === 'flat';
  const middle = Math.sqrt(learning.ripeSpan.value);
  // What the log says leans on other batches: a jar that was off all the same is moved from where the sheet has it.
  const wanted = isFaster ? Math.min(hours, likely) / middle : Math.max(hours / middle, likely * middle);
  const offers = readyIn(formulation, Math.min(usual.high, Math.max(usual.low, wanted))) ?? [];
  const changes = offers.flatMap((offer) => changeBy(offer, formulation, isFaster, kitchen));
  const isRightSide = isFaster ? likely > hours : likely < hours;
  const look: NextBatch = { do: isFaster ? 'longer' : 'sooner', after: formulation };
  const first = isRightSide && likely >= usual.low && likely <= usual.high ? [look] : [];
  const causes = changes.filter(({ isCause }) => isCause);
  const others = changes.filter(({ isCause }) => !isCause);
  const all = [...causes.map(({ next }) => next), ...first, ...others.map(({ next }) => next)];
  return all.length > 0 ? all : [look];
}

function usualHours({ choices }: Formulation): Usual {
  const { value, low = value, high = value } = choices.grain.readyTime;
  return { low, high };
}

/** The offer as one change, if it goes the right way, and whether what it changes explains what was found. */
function changeBy(
  offer: ReadyIn,
  formulation: Formulation,
  isFaster: boolean,
  kitchen: Kitchen,
): readonly { readonly next: NextBatch; readonly isCause: boolean }[] {
  const { row, now, usual } = offer;
  const isCause = isFaster ? now < usual.low : now > usual.high;
  // What lies beyond its range goes to the near end of it where less than that would do.
  const end = { value: isFaster ? usual.low : usual.high, hours: Number.NaN };
  const way = wayToBeReady(isCause && offer.value === null ? { ...offer, nearest: end } : offer, formulation, kitchen);
  const [before, after] = [formulation.rows.readyTime.value, way?.after.rows.readyTime.value];
  if (way === null || way.changes.length === 0 || typeof before !== 'number' || typeof after !== 'number') return [];
  if (isFaster ? after >= before : after <= before) return [];
  return [{ next: { do: 'change', row, now, way, after: way.after }, isCause }];
}
