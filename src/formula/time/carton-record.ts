import { cartonWaiting } from '../../reference/carton-waiting';
import { kitchen } from '../../reference/kitchen';
import { type Share, shareRange } from '../models/share';
import { type Look, makesOf, type TimedLook } from './looks';

/** What was found at a jar of milk from a carton. */
export interface CartonLook extends Look {
  /** Given up at this look: it did not turn. */
  readonly gaveUp?: boolean;
}

/** How a carton did, of all times that it was tried. */
export interface CartonRecord {
  readonly worked: number;
  readonly refused: number;
  /** Tries of which nobody can tell yet. */
  readonly open: number;
  /** In what share of tries it is likely to work; null where none is over. */
  readonly share: Share | null;
  /** After how many days of 24 h it had turned, the soonest and the latest found; null where it never did. */
  readonly days: { readonly least: number; readonly most: number } | null;
  /** How many days it was waited for where it refused, the longest; null where it never did. */
  readonly waited: number | null;
}

type Outcome = { readonly how: 'worked' | 'refused' | 'open'; readonly hours: number };

/**
 * What all looks at jars of one carton come to. A make worked where it tasted ready or too sour, or was read at the usual
 * pH or below; it refused where it was given up or had not turned by the last day that is ever waited for.
 */
export function recordOf(looks: readonly CartonLook[]): CartonRecord {
  const outcomes = makesOf(looks, cartonWaiting.sameCarton.value).map(outcomeOf);
  const hoursOf = (how: Outcome['how']) => outcomes.filter((one) => one.how === how).map(({ hours }) => hours);
  const [worked, refused] = [hoursOf('worked'), hoursOf('refused')];
  const over = worked.length + refused.length;
  const day = kitchen.acidityTime.value;
  return {
    worked: worked.length,
    refused: refused.length,
    open: outcomes.length - over,
    share: over === 0 ? null : shareRange(worked.length, over, cartonWaiting.shareWidth.value),
    days: worked.length === 0 ? null : { least: Math.min(...worked) / day, most: Math.max(...worked) / day },
    waited: refused.length === 0 ? null : Math.max(...refused) / day,
  };
}

/** Whether a carton is to be warned of: it refused more often than it worked. */
export function isToBeWarnedOf({ worked, refused }: CartonRecord): boolean {
  return refused > worked;
}

function outcomeOf(make: readonly (TimedLook & CartonLook)[]): Outcome {
  const first = make.find(hasTurned);
  const last = make.at(-1);
  const hours = last?.hours ?? 0;
  if (make.some(({ gaveUp }) => gaveUp === true)) return { how: 'refused', hours };
  if (first !== undefined) return { how: 'worked', hours: first.hours };
  const stop = cartonWaiting.mostDaysOffered.value * kitchen.acidityTime.value;
  return { how: hours >= stop ? 'refused' : 'open', hours };
}

function hasTurned({ found, acidity }: Look): boolean {
  return found === 'ready' || found === 'sour' || (acidity !== null && acidity <= kitchen.acidityLine.value);
}
