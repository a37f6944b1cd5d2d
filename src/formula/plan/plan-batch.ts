import { convertNumber } from '../../measure/units';
import { handwork } from '../../reference/handwork';
import type { Instant } from '../time/event';
import { dayMinutes, endOfDay, type Span, type WallClock } from '../time/span';
import { withKeeping } from './keep-marks';
import type { Making } from './making';
import { drinkAt, nightWork, planForwards, type Schedule } from './schedule';
import { whyTooLong } from './too-long';

/** When a batch is wanted: begun at a time, or ready to drink at one. */
export interface Wanted {
  readonly by: 'start' | 'drink';
  readonly at: Instant;
  /** The earliest start that could still be made when it was asked to be ready at a time; left out where nobody knows. */
  readonly from?: Instant;
}

export interface BatchPlan {
  readonly making: Making;
  readonly wanted: Wanted;
  readonly schedule: Schedule;
  /** Starts near the planned one that leave the night alone: the nearest before and the nearest after it. */
  readonly offers: readonly Instant[];
}

/**
 * One batch in time, from its start on or back from its first glass. Backwards, it is the latest start from which
 * nothing falls into the quiet hours and the glass is there in time; where there is none, the latest start that is in
 * time at all. A start that could still be made goes before any that was past when it was asked for, so what planning
 * forwards finds, planning back from there accepts. A batch whose first ferment has no time is only planned up to it, from its wanted time on; one that is
 * too long to be placed has no steps, and says why.
 */
export function planBatch(making: Making, wanted: Wanted, clock: WallClock): BatchPlan {
  const why = whyTooLong(making);
  if (why !== null) return { making, wanted, schedule: unplanned(making, wanted.at, why), offers: [] };
  const nights = nightsAbout(making, wanted.at, clock);
  const planned =
    wanted.by === 'start' ? planForwards(making, wanted.at, nights) : planBackwards(making, wanted, nights);
  const schedule = withKeeping(planned, making.keep, clock);
  const offers =
    nightWork(schedule).length === 0 ? [] : [-1, 1].flatMap((way) => searchStarts(making, schedule, nights, way));
  return { making, wanted, schedule, offers };
}

/**
 * The end of the last day to drink a batch: from then on it needs neither hands nor room. One that is planned no
 * further than its jar counts so long from its last work.
 */
export function overAt({ making, schedule }: BatchPlan, clock: WallClock): Instant {
  const { steps, start } = schedule;
  const last = steps.find(({ kind }) => kind === 'last')?.at;
  const worked = Math.max(start, ...steps.map(({ at, minutes }) => at + minutes));
  const day = last ?? worked + (making.keep === null ? reach : making.keep.last * dayMinutes);
  return endOfDay(day, clock);
}

/** Plans the same batch begun at another time, up to so many minutes later. The nights are only asked for once. */
export function replanner(
  { making, schedule }: BatchPlan,
  later: number,
  clock: WallClock,
): (start: Instant) => Schedule {
  const nights = nightsAbout(making, schedule.start, clock, later);
  return (start) => planForwards(making, start, nights);
}

/** The latest plan whose first glass is cold at the wanted time, of those that could still be begun where there is one. */
function planBackwards(making: Making, wanted: Wanted, nights: readonly Span[]): Schedule {
  const { ferment, chill } = making;
  const { at, from = Number.POSITIVE_INFINITY } = wanted;
  if ('why' in ferment) return unplanned(making, at, ferment.why);
  const { least, most } = reachOf(making);
  let inTime: Schedule | null = null;
  for (let start = at - least; start >= at - most; start -= 1) {
    if (start < from && inTime !== null && inTime.start >= from) break;
    const schedule = planForwards(making, start, nights);
    if (schedule.cold === null) continue;
    const isCold = schedule.cold + chill.low <= at;
    const keeps = schedule.cold + chill.high >= at;
    if (!isCold || !keeps) continue;
    if (nightWork(schedule).length === 0) return drinkAt(schedule, at);
    inTime ??= schedule;
  }
  return inTime === null ? planForwards(making, at - most, nights) : drinkAt(inTime, at);
}

/** The first time from a present on that is easy to remember, and far enough off to be read, thought about and made. */
export function soonestStart(present: Instant): Instant {
  const { search, step } = handwork;
  return Math.ceil((present + step.value) / search.value) * search.value;
}

/** A start and the first glass that comes of it. */
export interface FirstGlass {
  readonly start: Instant;
  readonly at: Instant;
}

/**
 * The first glass that can be had of a batch begun at a time or, where that one would come too late to be drunk, of
 * the next start near that has one. Asked for from that start on, it is planned. Null where no start near has any.
 */
export function firstGlassFrom(making: Making, from: Instant, clock: WallClock): FirstGlass | null {
  if (whyTooLong(making) !== null || 'why' in making.ferment) return null;
  const nights = nightsAbout(making, from, clock, reach);
  for (let start = from; start <= from + reach; start += handwork.search.value) {
    const { drink: at } = withKeeping(planForwards(making, start, nights), making.keep, clock);
    if (at !== null) return { start, at };
  }
  return null;
}

function unplanned({ batch, name }: Making, start: Instant, stopped: string): Schedule {
  return { batch, name, start, steps: [], waits: [], cold: null, drink: null, stopped };
}

function searchStarts(making: Making, schedule: Schedule, nights: readonly Span[], way: number): readonly Instant[] {
  const { start } = schedule;
  for (let away = handwork.search.value; away <= reach; away += handwork.search.value) {
    const at = start + way * away;
    if (nightWork(planForwards(making, at, nights)).length === 0) return [at];
  }
  return [];
}

/** How far from a planned time another is looked for, min. */
export const reach = convertNumber(handwork.reach.value, 'day', 'min');

/**
 * From a start to its first glass at least, and as far back as a start is looked for, in minutes. Nights move each wait
 * by less than a day, so two days for each of two waits about the likely time are enough, however slow the ferment.
 */
function reachOf({ soak, make, ferment, strain, second, chill }: Making): { least: number; most: number } {
  const work = (soak?.minutes ?? 0) + make + strain + (second === null ? 0 : second.bottle + second.fridge);
  const waits = [soak?.wait, 'wait' in ferment ? ferment.wait : undefined, second?.wait, chill];
  const sum = (end: 'low' | 'likely'): number => waits.reduce((total, wait) => total + (wait?.[end] ?? 0), work);
  return { least: Math.max(sum('low'), sum('likely') - 2 * reach), most: sum('likely') + 2 * reach };
}

/** Enough nights about a time for every plan that can come of it, also of one so many minutes later. */
function nightsAbout(making: Making, at: Instant, clock: WallClock, later = 0): readonly Span[] {
  const { most } = reachOf(making);
  const far = most + reach + making.chill.high + ((making.checks ?? 0) + 1) * dayMinutes;
  return clock.nights(at - far, at + far + later);
}

/** How much later a start is than the planned one, in elapsed minutes; negative for an earlier one. */
export function shiftTo({ schedule }: BatchPlan, start: Instant): number {
  return start - schedule.start;
}
