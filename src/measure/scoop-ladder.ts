import { doubleOf } from './exact';
import { type ScoopId, type ScoopPart, type ScoopSet, scoops } from './scoop-set';
import { scaleOf } from './unit-scale';
import { type CupStandardId, convertNumber, cupStandards } from './units';

/** One way to scoop, in whole ticks. */
export type Rung = { readonly ticks: number; readonly dips: number; readonly parts: readonly ScoopPart[] };

/** The ways to fill up what whole scoops of the largest kind leave, each list sorted by what they hold. */
export type Ladder = {
  readonly largest: ScoopId;
  readonly largestTicks: number;
  /** From which volume on cups are filled; beyond all where none is owned. */
  readonly smallestCup: number;
  /** One scoop, once or several times, and less than the largest holds. */
  readonly singles: readonly Rung[];
  /** One scoop or two. */
  readonly pairs: readonly Rung[];
  /** One part of the largest, which both are said by as one number: 2 ¾ cups. */
  readonly parts: readonly Rung[];
  /** One scoop that is worth taking beside the largest. */
  readonly beside: readonly Rung[];
};

// The largest count in which each scoop of each cup standard is whole (8 × 3), so that ½ + ⅓ cup compares exactly.
const ticksPerTeaspoon = 24;

/** A set of scoops by one cup standard. */
export type Drawer = {
  /** Largest first. */
  readonly owned: readonly Owned[];
  readonly smallest: Owned;
  /** What a tick holds, mL. */
  readonly tickVolume: number;
  /** By the smallest teaspoon that is used: a half, or a quarter and an eighth where that comes nowhere near. */
  readonly ladders: readonly Ladder[];
};

const drawers = new Map<string, Drawer | null>();
const finest = [2, 4, 8];

function ownsScoop(set: ScoopSet, id: ScoopId): boolean {
  if (id === '1 tbsp') return set.tablespoon;
  return set.cups.some((size) => `${size} cup` === id) || set.teaspoons.some((size) => `${size} tsp` === id);
}

function countTicks(id: ScoopId, cups: CupStandardId): number {
  const standard = cupStandards[cups];
  const { measure, part } = scoops[id];
  return Math.round((ticksPerTeaspoon * convertNumber(1, standard[measure], standard.tsp)) / part);
}

type Owned = (typeof scoops)[ScoopId] & { readonly ticks: number };

function buildDrawer(set: ScoopSet, cups: CupStandardId): Drawer | null {
  const owned = Object.values(scoops)
    .filter(({ id }) => ownsScoop(set, id))
    .map((scoop): Owned => ({ ...scoop, ticks: countTicks(scoop.id, cups) }));
  const smallest = owned.at(-1);
  if (smallest === undefined) return null;
  return {
    owned,
    smallest,
    tickVolume: doubleOf(scaleOf(cupStandards[cups].tsp).factor.div(ticksPerTeaspoon)),
    ladders: finest.flatMap((most) => {
      const [largest, ...others] = owned.filter(({ measure, part }) => measure !== 'tsp' || part <= most);
      return largest === undefined ? [] : [buildLadder(largest, others)];
    }),
  };
}

function buildLadder(largest: Owned, others: readonly Owned[]): Ladder {
  const dips = others.map((scoop, at) => ({ scoop, rungs: dip(scoop, [largest, ...others.slice(0, at)]) }));
  // Half a teaspoon is lost in what a cup is off.
  const fits = (one: Owned, { scoop }: { scoop: Owned }): boolean =>
    one.measure !== 'cup' || scoop.measure === 'cup' || scoop.part === 1;
  const singles = dips.flatMap(({ rungs }) => rungs);
  const beside = (scoop: Owned, smaller: typeof dips): readonly Rung[] =>
    smaller.filter((other) => fits(scoop, other)).flatMap(({ rungs }) => rungs);
  const pairs = dips.flatMap(({ scoop, rungs }, at) =>
    beside(scoop, dips.slice(at + 1)).flatMap((two) => rungs.map((one) => join(one, two))),
  );
  return {
    largest: largest.id,
    largestTicks: largest.ticks,
    smallestCup: [largest, ...others].findLast(({ measure }) => measure === 'cup')?.ticks ?? Number.POSITIVE_INFINITY,
    singles: sortRungs(singles),
    pairs: sortRungs([...singles, ...pairs].filter(({ ticks }) => ticks < largest.ticks)),
    parts: sortRungs(dips.filter(({ scoop }) => scoop.measure === largest.measure).flatMap(({ rungs }) => rungs)),
    beside: sortRungs(beside(largest, dips)),
  };
}

/**
 * A scoop as often as it does not fill what is measured in instead: three quarter cups, three tablespoons and, by the
 * half one, two and a half teaspoons.
 */
function dip({ id, measure, part, ticks }: Owned, larger: readonly [Owned, ...Owned[]]): readonly Rung[] {
  const [largest] = larger;
  const other = part > 2 ? larger.at(-1) : larger.findLast((one) => one.measure !== measure);
  const filled = ((measure !== 'cup' && other) || largest).ticks;
  return Array.from({ length: Math.ceil(filled / ticks) - 1 }, (_, at) => ({
    ticks: (at + 1) * ticks,
    dips: at + 1,
    parts: [{ scoop: id, count: at + 1 }],
  }));
}

function join(one: Rung, two: Rung): Rung {
  return { ticks: one.ticks + two.ticks, dips: one.dips + two.dips, parts: [...one.parts, ...two.parts] };
}

/** Sorted by volume; of those that hold the same, only the one with the fewest scoops and dips stays. */
function sortRungs(rungs: readonly Rung[]): readonly Rung[] {
  return rungs
    .toSorted((a, b) => a.ticks - b.ticks || a.parts.length - b.parts.length || a.dips - b.dips)
    .filter((rung, index, all) => rung.ticks !== all[index - 1]?.ticks);
}

/** The ways to scoop with a set, found once for each set; null for an empty one. */
export function findDrawer(set: ScoopSet, cups: CupStandardId): Drawer | null {
  // By content, not by identity: pages make new objects for equal sets, and there are few sets.
  const key = `${cups} ${set.cups.join()} ${set.tablespoon} ${set.teaspoons.join()}`;
  const known = drawers.get(key);
  if (known !== undefined) return known;
  const drawer = buildDrawer(set, cups);
  drawers.set(key, drawer);
  return drawer;
}

function findNearest(rungs: readonly Rung[], ticks: number): Rung | null {
  let low = 0;
  let high = rungs.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rungs[middle]?.ticks ?? 0) < ticks) low = middle + 1;
    else high = middle;
  }
  return pickNearer(rungs[low - 1] ?? null, rungs[low] ?? null, ticks);
}

function pickNearer(a: Rung | null, b: Rung | null, ticks: number): Rung | null {
  if (a === null || b === null) return a ?? b;
  const difference = Math.abs(a.ticks - ticks) - Math.abs(b.ticks - ticks);
  if (difference === 0) return a.dips <= b.dips ? a : b;
  return difference < 0 ? a : b;
}

/** The nearest to `ticks` of so many of the largest scoop, one more of it, and so many filled up by a rung. */
function fillUp({ largest, largestTicks }: Ladder, wholes: number, rungs: readonly Rung[], ticks: number): Rung {
  const whole = (count: number): Rung | null =>
    count === 0 ? null : { ticks: count * largestTicks, dips: count, parts: [{ scoop: largest, count }] };
  const rest = findNearest(rungs, ticks - wholes * largestTicks);
  const [less, more] = [whole(wholes), whole(wholes + 1)];
  const filled = rest === null || less === null ? rest : join(less, rest);
  return pickNearer(pickNearer(less, filled, ticks), more, ticks) ?? noRung;
}

const noRung: Rung = { ticks: 0, dips: 0, parts: [] };

/** The way to scoop so many ticks, by the rule of `measureInScoops`. Not for nothing at all: `ticks` is above zero. */
export function chooseRung(ladder: Ladder, ticks: number, enough: number): Rung {
  const wholes = Math.floor(ticks / ladder.largestTicks + 1e-9);
  if (ticks > ladder.smallestCup - 1e-9) {
    const one = fillUp(ladder, wholes, wholes > 0 ? ladder.parts : ladder.singles, ticks);
    if (Math.abs(one.ticks - ticks) <= enough * ticks) return one;
  }
  return fillUp(ladder, wholes, wholes > 0 ? ladder.beside : ladder.pairs, ticks);
}
