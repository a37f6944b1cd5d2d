import { describeReadProblem } from '../../measure/read-problem-words';
import type { Settings } from '../document/document';
import { readText } from './read-cell';

export type WantedHours = { readonly ok: true; readonly hours: number } | { readonly ok: false; readonly why: string };

const most = 1000;

/**
 * In how many hours a batch is wanted, as typed: a bare number is hours, `1 day` and `90 min` count as well. Refused,
 * with a sentence that says what to do, where it can't be read, is not above 0, or is more than 1000 h.
 */
export function readWantedHours(text: string, settings: Settings): WantedHours {
  const read = readText('readyTime', text, settings);
  if (!read.ok) return { ok: false, why: describeReadProblem(read.problem) };
  const { amount } = read.reading;
  if (amount > 0 && amount <= most) return { ok: true, hours: amount };
  return { ok: false, why: 'Type a time of more than 0 and at most 1000 h, such as 10 h or 1 day.' };
}
