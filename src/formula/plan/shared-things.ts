import { overlaps, type Span } from '../time/span';
import type { Held } from './making';
import type { Placed } from './placed';

/** What a batch keeps busy while it ferments. */
export const holds = ['grains', 'jars'] as const;
export type Hold = (typeof holds)[number];

/** Batches that hold the same kind of thing at once, with how much they need in all and what is known to be there. */
export interface Shared<P extends Placed> extends Span {
  readonly kind: Hold;
  /** In the order of the sheet. */
  readonly group: readonly P[];
  readonly thing: string;
  readonly need: number;
  readonly have: number | null;
}

/**
 * Batches that hold the same kind of thing at once where it is not known to be enough, in order of time. A group that
 * is a part of a larger one is not told beside it.
 */
export function sharedThings<P extends Placed>(all: readonly P[], kind: Hold): readonly Shared<P>[] {
  const kinds = new Set(all.flatMap(({ making }) => making[kind]?.kind ?? []));
  return [...kinds]
    .flatMap((thing) => {
      const alike = all.filter(({ making }) => making[kind]?.kind === thing);
      return groupsOf(alike).map((group) => sharedBy(group, kind));
    })
    .filter(({ need, have }) => have === null || have < need)
    .sort((one, other) => one.from - other.from);
}

interface Holder<P> extends Span {
  readonly one: P;
  readonly at: number;
}

/** The largest groups that are busy at one time: nobody else comes before the first of them is over. */
function groupsOf<P extends Placed>(all: readonly P[]): readonly (readonly Holder<P>[])[] {
  const holders = all
    .flatMap((one, at): Holder<P>[] => (one.busy === null ? [] : [{ one, at, ...one.busy }]))
    .sort((one, other) => one.from - other.from);
  const groups: (readonly Holder<P>[])[] = [];
  let active: readonly Holder<P>[] = [];
  holders.forEach((holder, place) => {
    active = [...active.filter(({ to }) => to > holder.from), holder];
    const next = holders[place + 1]?.from ?? Number.POSITIVE_INFINITY;
    if (active.length > 1 && next >= Math.min(...active.map(({ to }) => to))) groups.push(active);
  });
  return groups;
}

function sharedBy<P extends Placed>(holders: readonly Holder<P>[], kind: Hold): Shared<P> {
  const group = [...holders].sort((one, other) => one.at - other.at).map(({ one }) => one);
  const things = thingsOf(group, kind);
  const known = things.map(({ have }) => have).filter((have) => have !== null);
  return {
    kind,
    group,
    thing: things[0]?.name ?? '',
    need: things.reduce((sum, thing) => sum + thing.need, 0),
    have: known.length === 0 ? null : Math.max(...known),
    from: Math.max(...holders.map(({ from }) => from)),
    to: Math.min(...holders.map(({ to }) => to)),
  };
}

/** What batches hold of a kind; nothing of those that hold none. */
function thingsOf(placed: readonly Placed[], kind: Hold): readonly Held<string>[] {
  return placed.map(({ making }): Held<string> | null => making[kind]).filter((thing) => thing !== null);
}

/** Whether all that want the same kind of thing while a batch does have enough of it, even all at once. */
export function hasEnough(moved: Placed, others: readonly Placed[], kind: Hold): boolean {
  const own = moved.busy;
  const thing = moved.making[kind]?.kind;
  if (own === null || thing === undefined) return true;
  const meeting = others.filter(({ making, busy }) => {
    return busy !== null && making[kind]?.kind === thing && overlaps(busy, own);
  });
  const things = thingsOf([moved, ...meeting], kind);
  const known = Math.max(...things.map(({ have }) => have ?? 0));
  return meeting.length === 0 || known >= things.reduce((sum, { need }) => sum + need, 0);
}
