import { describeReadProblem } from '../../measure/read-problem-words';
import { readQuantity } from '../../measure/read-quantity';
import { stockRest } from '../../reference/stock-rest';
import type { Settings } from '../document/document';
import { heaviestStock } from '../document/document-limits';
import { isBlank } from './read-cell';

export type GramsRead =
  | { readonly ok: true; readonly grams: number | null }
  | { readonly ok: false; readonly why: string };

const most = heaviestStock;

/**
 * Drained grains as typed, in g; a bare number is grams, which every scale for grains reads. Nothing typed is null where
 * that will do, else refused; so is what can’t be read, nothing or less, or more than any jar holds.
 */
export function readGrains(text: string, isNeeded: boolean, settings: Settings): GramsRead {
  if (isBlank(text)) return isNeeded ? refuse('Type what they weigh, such as 54 g.') : { ok: true, grams: null };
  const { cups, decimalComma } = settings;
  const read = readQuantity(text, { kind: 'mass', bareUnit: 'g', cups, decimalComma, within: { least: 0, most } });
  if (!read.ok) return refuse(describeReadProblem(read.problem));
  const { amount } = read.reading;
  if (!(amount > 0)) return refuse('Type a weight above 0, or leave it out.');
  return amount <= most
    ? { ok: true, grams: amount }
    : refuse('That is more than any jar of grains weighs. Check the unit.');
}

/** When something was done, as the field for a time gives it; empty is now. Refused where it is still to come. */
export function readDone(
  typed: string,
  now: string,
): { readonly ok: true; readonly at: string } | { readonly ok: false; readonly why: string } {
  const at = typed === '' ? now : typed.slice(0, now.length);
  if (!/^\d{4}-\d\d-\d\dT\d\d:\d\d$/.test(at)) return refuse('Choose a date and a time, or leave it empty for now.');
  return at > now ? refuse('That is still to come. Choose when it was, or leave it empty for now.') : { ok: true, at };
}

/** The sugar of a resting jar as typed, g/L; nothing typed is the usual. */
export function readRestSugar(text: string, settings: Settings): GramsRead {
  if (isBlank(text)) return { ok: true, grams: null };
  const { cups, decimalComma } = settings;
  const [least, most] = [stockRest.weakest.value, stockRest.strongest.value];
  const read = readQuantity(text, {
    kind: 'concentration',
    bareUnit: 'g/L',
    cups,
    decimalComma,
    within: { least, most },
  });
  if (!read.ok) return refuse(describeReadProblem(read.problem));
  const { amount } = read.reading;
  return amount >= least && amount <= most
    ? { ok: true, grams: amount }
    : refuse(`Type ${least} to ${most} g to a litre.`);
}

function refuse(why: string): { readonly ok: false; readonly why: string } {
  return { ok: false, why };
}
