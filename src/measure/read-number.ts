import { type Exact, exactly } from './exact';
import type { Fault } from './read-problem';
import { readVulgarFraction, vulgarCharacters } from './vulgar-fractions';
import { writeOneWay } from './write-one-way';

export type NumberRead =
  | { readonly ok: true; readonly value: Exact; readonly end: number }
  | { readonly ok: false; readonly fault: Fault };

// Beyond this the doubles end; a longer exponent would also make exact sums allocate without bound.
const largestExponent = 300;

const startsNumber = new RegExp(`[.,]?\\d|[${vulgarCharacters}]`, 'uy');
const plainFraction = /(\d+) ?\/ ?(\d+)/y;
// Groups of three parted by a space, unless the last group is the numerator of a fraction (1 250/1000).
const decimalToken = /(?:[1-9]\d{0,2}(?: \d{3})+(?!\d| ?\/)|\d+)(?:[.,]\d+)*|(?:[.,]\d+)+/y;
const exponentToken = /[eE]([+-]?\d+)/y;
const fractionAfterWhole = new RegExp(`(?: |-)(\\d+) ?/ ?(\\d+)|[ -]?([${vulgarCharacters}])`, 'uy');
// What makes the number just read a part of something that is no number.
const glued = new RegExp(`[.,]?\\d| ?/|[${vulgarCharacters}]`, 'uy');

/** Matches a sticky pattern at one place. */
export function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** Moves past a pattern, if it stands here. */
export function skip(pattern: RegExp, text: string, at: number): number {
  return at + (matchAt(pattern, text, at)?.[0].length ?? 0);
}

/** Whether a number without a sign starts at this place of a normalised text. */
export function isNumberAt(text: string, at: number): boolean {
  return matchAt(startsNumber, text, at) !== null;
}

/**
 * Reads an unsigned number: 12, 1.5, 1,000, 1 000, 1/2, 1 1/2, 1-1/2, ½, 1½, 1 ½, 1e3.
 * A comma or a point is read as what it can only be: 1,5 and 1.5 alike, 1.000,5 and 1,000.5. Where it may be either
 * (1,250), the fault `eitherNumber` asks, unless it is a comma and this cook writes decimals with one (`decimalComma`).
 * Faults: `noNumber`, `malformedNumber`, `divisionByZero`, `unclearComma`, `unclearPoint`, `eitherNumber`, `beyondNumbers`.
 */
export function readNumber(text: string, at: number, decimalComma: boolean): NumberRead {
  if (!isNumberAt(text, at)) return { ok: false, fault: { code: 'noNumber', from: at, to: text.length } };
  const read = readUnchecked(text, at, decimalComma);
  if (!read.ok || matchAt(glued, text, read.end) === null) return read;
  const rest = matchAt(/[^\p{L}]*/uy, text, read.end);
  const to = read.end + (rest?.[0].trimEnd().length ?? 0);
  return { ok: false, fault: { code: 'malformedNumber', from: at, to } };
}

function readUnchecked(text: string, at: number, decimalComma: boolean): NumberRead {
  const vulgar = readVulgarFraction(text.charAt(at));
  if (vulgar !== undefined) return makeFraction('0', String(vulgar[0]), String(vulgar[1]), at, at + 1);

  const fraction = matchAt(plainFraction, text, at);
  if (fraction !== null) {
    return makeFraction('0', fraction[1] ?? '', fraction[2] ?? '', at, at + fraction[0].length);
  }

  const token = matchAt(decimalToken, text, at)?.[0] ?? '';
  const plain = readMarks(token.replaceAll(' ', ''), decimalComma);
  const end = at + token.length;
  if ('code' in plain) return { ok: false, fault: { ...plain, from: at, to: end } };

  const exponent = matchAt(exponentToken, text, end);
  if (exponent !== null) return applyExponent(plain.digits, exponent[1] ?? '', at, end + exponent[0].length);

  const after = plain.digits.includes('.') ? null : matchAt(fractionAfterWhole, text, end);
  if (after === null) {
    return { ok: true, value: exactly(plain.digits), end };
  }
  const [numerator, denominator] = readVulgarFraction(after[3] ?? '') ?? [after[1] ?? '', after[2] ?? ''];
  return makeFraction(plain.digits, String(numerator), String(denominator), at, end + after[0].length);
}

function makeFraction(whole: string, over: string, under: string, from: number, end: number): NumberRead {
  const denominator = exactly(under);
  if (denominator.numerator === 0n) return { ok: false, fault: { code: 'divisionByZero', from, to: end } };
  return { ok: true, value: exactly(over).div(denominator).plus(whole), end };
}

function applyExponent(digits: string, exponent: string, from: number, end: number): NumberRead {
  const power = Number(exponent);
  if (Math.abs(power) > largestExponent) return { ok: false, fault: { code: 'beyondNumbers', from, to: end } };
  return { ok: true, value: exactly(`${digits}e${power}`), end };
}

type Marks =
  | { readonly digits: string }
  | { readonly code: 'unclearComma'; readonly decimalComma: boolean }
  | { readonly code: 'unclearPoint' }
  | { readonly code: 'eitherNumber'; readonly readings: readonly string[] };

/**
 * The digits with a plain decimal point, once the commas and points are told apart. A mark that could be either is
 * not guessed at, nor taken from where the browser is, since the two readings differ a thousandfold.
 */
function readMarks(token: string, decimalComma: boolean): Marks {
  if (/^\d+$/.test(token)) return { digits: token };
  const point = readWithPoint(token);
  const comma = readWithPoint(token.replaceAll(/[.,]/g, (mark) => (mark === ',' ? '.' : ',')));
  const hasComma = token.includes(',');
  if (point === null && comma === null)
    return hasComma ? { code: 'unclearComma', decimalComma } : { code: 'unclearPoint' };
  if (point === null || comma === null) return { digits: point ?? comma ?? '' };
  const [decimals, thousands] = hasComma ? [comma, point] : [point, comma];
  if (hasComma && decimalComma) return { digits: decimals };
  return { code: 'eitherNumber', readings: [writeOneWay(decimals, decimalComma), thousands] };
}

/** With a point before the decimals and commas between thousands; null where the marks are not so. */
function readWithPoint(token: string): string | null {
  if (/^\d*\.\d+$/.test(token)) return token.startsWith('.') ? `0${token}` : token;
  return /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(token) ? token.replaceAll(',', '') : null;
}
