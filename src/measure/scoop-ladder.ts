import { doubleOf } from './exact';
import { type ScoopId, type ScoopPart, type ScoopSet, scoops } from './scoop-set';
import { scaleOf } from './unit-scale';
import { type CupStandardId, convertNumber, cupStandards } from './units';

/** One way to scoop, in whole ticks. */
type Rung = { readonly ticks: number; readonly dips: number; readonly parts: readonly ScoopPart[] };

/** The ways to fill up what whole scoops of the largest kind leave, grouped by how many different scoops they take. */
type Ladder = {
  readonly largest: ScoopId;
  readonly largestTicks: number;
  readonly smallest: ScoopId;
  readonly smallestTicks: number;
  readonly tickVolume: number;
  readonly byTools: readonly (readonly Rung[])[];
};

// A judgement: a level spoon is hardly truer than that, and a second tool is not worth less.
const tolerance = 0.01;
// The largest count in which each scoop of each cup standard is whole (8 × 3), so that ½ + ⅓ cup compares exactly.
const ticksPerTeaspoon = 24;

const ladders = new Map<string, Ladder | null>();

function ownsScoop(set: ScoopSet, id: ScoopId): boolean {
  if (id === '1 tbsp') return set.tablespoon;
  return set.cups.some((size) => `${size} cup` === id) || set.teaspoons.some((size) => `${size} tsp` === id);
}

function countTicks(id: ScoopId, cups: CupStandardId): number {
  const standard = cupStandards[cups];
  const { measure, part } = scoops[id];
  return Math.round((ticksPerTeaspoon * convertNumber(1, standard[measure], standard.tsp)) / part);
}

/** How often a scoop below the largest may be used: a part once, a whole spoon while it does not fill the next scoop up. */
function limitCount(id: ScoopId, ticks: number, next: number): number {
  return scoops[id].part > 1 ? 1 : Math.ceil(next / ticks) - 1;
}

function buildLadder(set: ScoopSet, cups: CupStandardId): Ladder | null {
  const owned = Object.values(scoops)
    .filter(({ id }) => ownsScoop(set, id))
    .map(({ id }) => ({ id, ticks: countTicks(id, cups) }));
  const [largest, ...others] = owned;
  const smallest = owned.at(-1);
  if (largest === undefined || smallest === undefined) return null;
  let rungs: Rung[] = [{ ticks: 0, dips: 0, parts: [] }];
  let next = largest.ticks;
  for (const { id, ticks } of others) {
    const limit = limitCount(id, ticks, next);
    rungs = rungs.flatMap((rung) =>
      Array.from({ length: limit + 1 }, (_, count) =>
        count === 0
          ? rung
          : {
              ticks: rung.ticks + count * ticks,
              dips: rung.dips + count,
              parts: [...rung.parts, { scoop: id, count }],
            },
      ),
    );
    next = ticks;
  }
  const { numerator, denominator } = scaleOf(cupStandards[cups].tsp);
  return {
    largest: largest.id,
    largestTicks: largest.ticks,
    smallest: smallest.id,
    smallestTicks: smallest.ticks,
    tickVolume: doubleOf({ numerator, denominator: denominator * BigInt(ticksPerTeaspoon) }),
    byTools: groupByTools(rungs, owned.length),
  };
}

/** Sorted by volume; of two that hold the same, only the one with fewer dips stays. */
function groupByTools(rungs: readonly Rung[], most: number): readonly (readonly Rung[])[] {
  return Array.from({ length: most }, (_, tools) => {
    const group = rungs.filter((rung) => rung.parts.length === tools);
    group.sort((a, b) => a.ticks - b.ticks || a.dips - b.dips);
    return group.filter((rung, index) => rung.ticks !== group[index - 1]?.ticks);
  });
}

/** The ladder of a set of scoops, built once for each set; null for an empty set. */
export function findLadder(set: ScoopSet, cups: CupStandardId): Ladder | null {
  // By content, not by identity: pages make new objects for equal sets, and there are few sets.
  const key = `${cups} ${set.cups.join()} ${set.tablespoon} ${set.teaspoons.join()}`;
  const known = ladders.get(key);
  if (known !== undefined) return known;
  const ladder = buildLadder(set, cups);
  ladders.set(key, ladder);
  return ladder;
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

function putLargestFirst(ladder: Ladder, count: number, rest: Rung): Rung {
  if (count === 0) return rest;
  return {
    ticks: rest.ticks + count * ladder.largestTicks,
    dips: rest.dips + count,
    parts: [{ scoop: ladder.largest, count }, ...rest.parts],
  };
}

const noRung: Rung = { ticks: 0, dips: 0, parts: [] };

/** The way to scoop so many ticks, by the rule of `measureInScoops`. Not for nothing at all: `ticks` is above zero. */
export function chooseRung(ladder: Ladder, ticks: number): Rung {
  const wholes = Math.floor(ticks / ladder.largestTicks + 1e-9);
  const left = ticks - wholes * ladder.largestTicks;
  const oneMore = putLargestFirst(ladder, wholes + 1, noRung);
  let best: Rung | null = null;
  for (let tools = 1; tools <= ladder.byTools.length; tools += 1) {
    const rest = findNearest(ladder.byTools[wholes > 0 ? tools - 1 : tools] ?? [], left);
    const filled = rest === null ? null : putLargestFirst(ladder, wholes, rest);
    const candidate = tools === 1 ? pickNearer(filled, oneMore, ticks) : filled;
    if (candidate === null) continue;
    if (Math.abs(candidate.ticks - ticks) <= tolerance * ticks) return candidate;
    if (best === null || Math.abs(candidate.ticks - ticks) < Math.abs(best.ticks - ticks)) best = candidate;
  }
  return best ?? noRung;
}
