import { acidTime } from '../../reference/acid-time';
import { cartonWaiting } from '../../reference/carton-waiting';
import { type CautionId, cautions } from '../../reference/cautions';
import { kitchen } from '../../reference/kitchen';
import { learning } from '../../reference/pace';
import { isFromItsMaker } from '../advice/caution-conditions';
import type { BatchCaution } from '../advice/cautions';
import type { Formulation } from '../engine/formulate';
import { type Look, makesOf, startOf, type TimedLook } from './looks';
import { type TurnTime, turnTimeOf } from './turn-time';

export type Verdict = 'wait' | 'ready' | 'throwOut' | 'cannotTell';

/** Why the verdict is what it is; each has its sentence in `waiting-words.ts`. */
export type WaitingReason =
  | 'acidEnough'
  | 'notYet'
  | 'stillFalling'
  | 'notInTime'
  | 'noReading'
  | 'measureNow'
  | 'noReadingInTime'
  | 'readingTooLate'
  | 'undatedReading'
  | 'undatedAfter'
  | 'tasteOnly'
  | 'noSign';

export interface Waiting {
  /** Whether it may be waited for longer than a homemade milk. */
  readonly allowed: boolean;
  /** Why it may or may not: only a carton, and only one opened for this batch, may. */
  readonly milk: 'homemade' | 'cartonNotOpened' | 'cartonOpened';
  /** The cautions that this rests on. */
  readonly cautions: readonly BatchCaution[];
  /** After how many days of 24 h it is given up. */
  readonly days: number;
  /** How long a homemade milk has in this room, h. */
  readonly turn: TurnTime;
  /** When the grains of the latest make went in, on the clock of the looks; null where no look says. */
  readonly start: number | null;
  /** For how many hours it has stood; null where no look says when it began. */
  readonly elapsed: number | null;
  /** What was found on each day that is waited for, from 1 on, and on days after the last where anything was. */
  readonly lines: readonly { readonly day: number; readonly looks: readonly TimedLook[] }[];
  readonly verdict: Verdict;
  readonly reason: WaitingReason;
}

/**
 * Whether there is still waiting for this batch, by what was found at its latest make: `looks` are those at this batch,
 * `opened` says that a heat-treated carton was opened for it, `now` is on the clock of the looks, null to leave it out.
 *
 * Only a strip or a meter says that it is acid enough: the last reading at the usual line or below, and one such within
 * the time. A milk that is not a carton opened for this batch has what its room leaves it (`turnTimeOf`): a
 * while more once it was seen to fall by then. Without a reading nobody can tell, nor
 * from one of which nobody says when it was taken; but a carton that neither was read acid nor tasted ready in its days
 * is thrown out.
 */
export function waitingOf(
  formulation: Formulation,
  looks: readonly Look[],
  opened: { readonly days: number } | null,
  now: number | null,
): Waiting {
  const { rows } = formulation;
  const isCarton = isFromItsMaker(formulation);
  const allowed = isCarton && opened !== null;
  const slack = allowed ? cartonWaiting.sameCarton.value : learning.sameMake.value;
  const day = kitchen.acidityTime.value;
  const days = allowed ? opened.days : 1;
  const make = datedMake(looks, slack);
  const [first] = make;
  const start = first === undefined ? null : startOf(first);
  const elapsed = Math.max(make.at(-1)?.hours ?? 0, start === null || now === null ? 0 : now - start);
  const turn = turnTimeOf(formulation);
  const { value } = rows.finalPH;
  const measured = typeof value === 'number' ? value : null;
  const undated = make.length === 0 ? latestAcidity(looks) : null;
  const { verdict, reason } = judge(make, higher(undated, measured), {
    limit: allowed ? days * day : turn.plain,
    falling: allowed ? days * day : turn.falling,
    elapsed,
    day,
    mayTaste: allowed,
  });
  // Only these days, since a look that is dated millennia on would else have a line for every day until then.
  const numbers = new Set([...Array.from({ length: days }, (_, n) => n + 1), ...make.map(({ hours }) => dayOf(hours))]);
  const lines = [...numbers]
    .sort((one, other) => one - other)
    .map((number) => ({ day: number, looks: make.filter(({ hours }) => dayOf(hours) === number) }));
  const milk = allowed ? 'cartonOpened' : isCarton ? 'cartonNotOpened' : 'homemade';
  const ids: readonly CautionId[] = isCarton
    ? ['howToTest', 'waitOnlyCartons']
    : ['acidityLine', 'howToTest', 'waitOnlyCartons'];
  return {
    allowed,
    milk,
    cautions: ids.flatMap(findText),
    days,
    turn,
    start,
    elapsed: start === null ? null : elapsed,
    lines,
    verdict,
    reason,
  };
}

/** After how many days a carton may be given up, to choose from; more, from an older sheet, only where it is set so. */
export function daysOffered(set: number): readonly number[] {
  const offered = Array.from({ length: cartonWaiting.mostDaysOffered.value }, (_, n) => n + 1);
  return offered.includes(set) ? offered : [...offered, set];
}

/** The latest make, those of its looks that have no hours dated by when the grains went in. */
function datedMake(looks: readonly Look[], slack: number): readonly TimedLook[] {
  const make = makesOf(looks, slack).at(-1) ?? [];
  const [first] = make;
  if (first === undefined) return make;
  const start = startOf(first);
  const undated = looks.filter(({ hours, at }) => hours === null && at >= start);
  const dated = undated.map((look) => ({ ...look, hours: look.at - start }));
  return [...make, ...dated].sort((one, other) => one.hours - other.hours);
}

/** The pH of the latest look that has one, the higher of two at one time; null where none has. */
function latestAcidity(looks: readonly Look[]): number | null {
  const read = looks.flatMap(({ at, acidity }) => (acidity === null ? [] : [{ at, acidity }]));
  const latest = Math.max(...read.map(({ at }) => at));
  const found = read.filter(({ at }) => at === latest).map(({ acidity }) => acidity);
  return found.length === 0 ? null : Math.max(...found);
}

/** Of two readings that nobody dated the more careful one. */
function higher(one: number | null, other: number | null): number | null {
  return one === null || other === null ? (one ?? other) : Math.max(one, other);
}

/** A look at 24 h is of the first day still. */
function dayOf(hours: number): number {
  return Math.max(1, Math.ceil(hours / kitchen.acidityTime.value));
}

interface Terms {
  readonly limit: number;
  /** Until when it may stand once its pH was seen to fall by the limit. */
  readonly falling: number;
  readonly elapsed: number;
  readonly day: number;
  readonly mayTaste: boolean;
}

function judge(
  make: readonly TimedLook[],
  undated: number | null,
  { limit, falling, elapsed, day, mayTaste }: Terms,
): Pick<Waiting, 'verdict' | 'reason'> {
  const line = kitchen.acidityLine.value;
  const isOver = elapsed > limit;
  const readings = make.flatMap(({ hours, acidity }) => (acidity === null ? [] : [{ hours, acidity }]));
  // What stands in the sheet has no hour of its own, and counts where the log has no reading. Still above the line it
  // says that the line was not reached before now, however old it is; at the line it says nothing of when.
  if (readings.length === 0 && undated !== null) {
    if (undated <= line) return { verdict: 'cannotTell', reason: isOver ? 'undatedAfter' : 'undatedReading' };
    readings.push({ hours: elapsed, acidity: undated });
  }
  const last = readings.at(-1);
  if (last === undefined) {
    const tastedReady = make.some(({ found, hours }) => found === 'ready' && hours <= limit);
    if (mayTaste && tastedReady) return { verdict: 'cannotTell', reason: 'tasteOnly' };
    if (mayTaste && isOver) return { verdict: 'throwOut', reason: 'noSign' };
    if (isOver) return { verdict: 'cannotTell', reason: 'noReadingInTime' };
    return { verdict: 'cannotTell', reason: elapsed > day ? 'measureNow' : 'noReading' };
  }
  const most = isFalling(readings, limit) ? falling : limit;
  if (last.acidity > line) {
    if (elapsed > most || last.hours >= most) return { verdict: 'throwOut', reason: 'notInTime' };
    return { verdict: 'wait', reason: isOver || last.hours >= limit ? 'stillFalling' : 'notYet' };
  }
  return readings.some(({ hours, acidity }) => acidity <= line && hours <= most)
    ? { verdict: 'ready', reason: 'acidEnough' }
    : { verdict: 'cannotTell', reason: 'readingTooLate' };
}

/** Whether by a time its last reading was well on its way, lower than one before, and none since was higher. */
function isFalling(readings: readonly { readonly hours: number; readonly acidity: number }[], by: number): boolean {
  const inTime = readings.filter(({ hours }) => hours <= by);
  const last = inTime.at(-1);
  if (last === undefined || last.acidity > acidTime.onItsWay.value) return false;
  const later = readings.slice(inTime.length);
  return inTime.some(({ acidity }) => acidity > last.acidity) && later.every(({ acidity }) => acidity <= last.acidity);
}

/** The words of the table, whether or not they hold for this source: why there is no waiting is said to whom it hits. */
function findText(id: CautionId): readonly BatchCaution[] {
  return cautions.filter((caution) => caution.id === id).map(({ text, origin }) => ({ id, text, origin }));
}
