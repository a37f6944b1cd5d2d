import { writeTrimmed } from '../../measure/write-quantity';
import type { CartonRecord } from './carton-record';

/** How a carton did, such as `Turned 3 of 4 times, in 1.5–2 days. Likely 47–91 in 100 times.` */
export function describeRecord({ worked, refused, open, share, days, waited }: CartonRecord, comma: boolean): string {
  const over = worked + refused;
  const write = (value: number): string => writeTrimmed(value, 1, comma);
  if (over === 0 || share === null) return open === 0 ? 'Not tried yet.' : 'Tried, not over yet.';
  const inDays =
    days === null ? '' : `, in ${between(write(days.least), write(days.most))} ${dayWord(write(days.most))}`;
  const turned =
    worked === 0 && waited !== null
      ? `Never turned: tried ${times(refused)}, given up after ${write(waited)} ${dayWord(write(waited))}`
      : `Turned ${worked} of ${times(over)}${inDays}`;
  const more = open === 0 ? '' : ` ${open === 1 ? 'Another is' : `${open} others are`} not over yet.`;
  return `${turned}. Likely works ${between(percent(share.low, comma), percent(share.high, comma))} % of the time.${more}`;
}

/** What is said where such a carton is chosen again. */
export function warnOfCarton(name: string, { worked, refused }: CartonRecord): string {
  const over = worked + refused;
  return `“${name}” did not ferment ${howOften(refused, over)} it was tried. Take another carton, or a homemade milk.`;
}

/** What is asked where nobody said which carton it is, and one of its kind refused, or some. */
export function askWhichCarton([first = '', ...others]: readonly string[]): string {
  const more = others.length === 0 ? '' : ` and ${others.length} more`;
  return `Here “${first}”${more} did not ferment. Say in the log which carton this is.`;
}

function howOften(refused: number, over: number): string {
  if (over === 1) return 'the one time';
  if (refused < over) return `${refused} of the ${over} times`;
  return over === 2 ? 'either time' : `any of the ${over} times`;
}

function percent(share: number, comma: boolean): string {
  return writeTrimmed(100 * share, 0, comma);
}

function between(one: string, other: string): string {
  return one === other ? one : `${one}–${other}`;
}

function dayWord(number: string): string {
  return number === '1' ? 'day' : 'days';
}

function times(count: number): string {
  return count === 1 ? '1 time' : `${count} times`;
}
