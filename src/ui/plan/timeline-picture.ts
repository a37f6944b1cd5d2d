import { instantOf, wallOf } from '../../batch/reading/local-time';
import type { PlannedBatches } from '../../batch/store/plan-batches';
import type { PlannedStep, Schedule, WaitKind } from '../../formula/plan/schedule';
import type { Instant } from '../../formula/time/event';
import { dayMinutes, type Span, type WallClock } from '../../formula/time/span';
import { convertNumber } from '../../measure/units';
import { handwork } from '../../reference/handwork';
import { placeOn } from '../page/axis';

/** A place in the picture, in percent of its width. */
export interface Place {
  readonly left: number;
  readonly width: number;
}

export interface DrawnSpan extends Place {
  readonly kind: WaitKind | 'work' | 'ripe';
  /** Whether it goes on beyond the picture. */
  readonly isOpen: boolean;
}

export interface DrawnMark {
  readonly step: PlannedStep;
  readonly left: number;
}

export interface DrawnBatch {
  readonly batch: string;
  readonly name: string;
  readonly spans: readonly DrawnSpan[];
  readonly marks: readonly DrawnMark[];
  /** The last day to drink it, where its fridge goes on beyond the picture; else null. */
  readonly until: Instant | null;
}

/** A time of day; `isNamed` where the present is not so near that both names would meet. */
export interface DrawnHour {
  readonly at: Instant;
  readonly left: number;
  readonly isNamed: boolean;
}

/** All planned batches on one line of time, from the midnight before the first start to the last first glass. */
export interface Picture extends Span {
  readonly nights: readonly Place[];
  /** Each day with its beginning; `isNamed` where there is room for its name. */
  readonly days: readonly (Place & { readonly at: Instant; readonly isNamed: boolean })[];
  /** Times of day between midnights; none where they would stand too close. */
  readonly hours: readonly DrawnHour[];
  /** Where the present is, in percent; null where it is outside. */
  readonly present: number | null;
  readonly rows: readonly DrawnBatch[];
  /** Names of batches that begin too long after the first to be drawn on one line with it. */
  readonly leftOut: readonly string[];
}

/** How long after the first start another may be drawn, min. */
const mostAhead = convertNumber(handwork.drawn.value, 'day', 'min');
/** Names of days that fit side by side. */
const mostNamed = 10;
/** Percent of a narrow drawing, for the name of an hour and that of the present. */
const nameWidth = 7;
/** Days that are wide enough for the hours between. */
const mostHoured = 7;

/** What the drawing has to know beside the plans. */
export interface DrawnFor {
  readonly clock: WallClock;
  readonly present: Instant;
  /** The times of day to mark on the day that begins at a midnight. */
  readonly hoursOf: (midnight: Instant) => readonly Instant[];
}

/** Between midnight and midnight these are enough to read any hour by. */
const hoursDrawn = ['06:00', '12:00', '18:00'];

function hoursOf(midnight: Instant): readonly Instant[] {
  const day = wallOf(midnight).slice(0, 10);
  return hoursDrawn.map((time) => instantOf(`${day}T${time}`)).filter((at) => at !== null);
}

/** The drawing of all that is planned and still to come; null where that is nothing. */
export function drawPlanned({ plans, clock, present }: PlannedBatches): Picture | null {
  const drawn = plans.map(({ plan }) => plan.schedule).filter(({ steps }) => steps.length > 0);
  return drawTimeline(drawn, { clock, present, hoursOf });
}

/**
 * Where everything stands in the drawing. The fridge is only drawn as far as the last first glass, since days of
 * keeping would leave no room for the hours of making. What begins more than four weeks after the first is
 * left to the words. Null where nothing is planned.
 */
export function drawTimeline(schedules: readonly Schedule[], { clock, present, hoursOf }: DrawnFor): Picture | null {
  const starts = schedules.map(({ start }) => start);
  if (starts.length === 0) return null;
  const first = Math.min(...starts);
  const near = schedules.filter(({ start }) => start - first < mostAhead);
  const leftOut = schedules.filter((schedule) => !near.includes(schedule)).map(({ name }) => name);
  const end = Math.max(...near.map(endOf));
  const from = clock.midnights(first - 2 * dayMinutes, first + 1).at(-1) ?? first;
  const to = clock.midnights(end, end + 2 * dayMinutes)[0] ?? end;
  const place = (span: Span): Place => placeIn({ from, to }, span);
  const midnights = clock.midnights(from, to);
  const at = (instant: Instant): number => place({ from: instant, to: instant }).left;
  const shown = present < from || present >= to ? null : at(present);
  const hours = midnights.length > mostHoured ? [] : midnights.flatMap(hoursOf);
  const every = Math.ceil(midnights.length / mostNamed);
  return {
    from,
    to,
    nights: midnights.length > 2 * mostNamed ? [] : clock.nights(from, to).map(place),
    days: midnights.map((at, day) => {
      return { at, isNamed: day % every === 0, ...place({ from: at, to: midnights[day + 1] ?? to }) };
    }),
    hours: hours.map((hour) => {
      const left = at(hour);
      return { at: hour, left, isNamed: shown === null || Math.abs(left - shown) >= nameWidth };
    }),
    present: shown,
    leftOut,
    rows: near.map((schedule) => drawBatch(schedule, { from, to }, place)),
  };
}

/** When a plan is over: its first glass, or its last work where it stops before. */
function endOf({ drink, start, steps }: Schedule): Instant {
  return drink ?? Math.max(start, ...steps.map(({ at, minutes }) => at + minutes));
}

function drawBatch(schedule: Schedule, frame: Span, place: (span: Span) => Place): DrawnBatch {
  const { batch, name, waits, steps } = schedule;
  const shown = steps.filter(({ at }) => at <= frame.to);
  const last = steps.find(({ kind }) => kind === 'last')?.at ?? schedule.drink;
  const spans = waits.flatMap((wait): DrawnSpan[] => {
    if (wait.kind === 'fridge') {
      const to = Math.max(last ?? wait.to, wait.to);
      return [{ kind: 'fridge', isOpen: to > frame.to, ...place({ from: wait.from, to }) }];
    }
    const drawn: DrawnSpan = { kind: wait.kind, isOpen: false, ...place(wait) };
    if (wait.kind !== 'ferment') return [drawn];
    const ripe = { from: wait.from + wait.range.low, to: wait.from + wait.range.high };
    return [drawn, { kind: 'ripe', isOpen: ripe.to > frame.to, ...place(ripe) }];
  });
  const work = shown
    .filter(({ hands, kind }) => hands && kind !== 'check' && kind !== 'taste')
    .map((step): DrawnSpan => {
      return { kind: 'work', isOpen: false, ...place({ from: step.at, to: step.at + step.minutes }) };
    });
  const marks = shown.map((step): DrawnMark => ({ step, left: place({ from: step.at, to: step.at }).left }));
  const isOpen = spans.some(({ kind, isOpen }) => kind === 'fridge' && isOpen);
  return { batch, name, spans: [...spans, ...work], marks, until: isOpen ? (last ?? null) : null };
}

function placeIn(frame: Span, { from, to }: Span): Place {
  const clip = (at: Instant): number => Math.min(Math.max(at, frame.from), frame.to);
  const length = { from: 0, to: frame.to - frame.from };
  return { left: placeOn(frame, clip(from)), width: placeOn(length, clip(to) - clip(from)) };
}
