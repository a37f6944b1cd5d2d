import type { Exact } from './exact';
import { readNumberWord } from './number-words';
import { isNumberAt, matchAt, readNumber, skip } from './read-number';
import type { Fault } from './read-problem';
import { findUnitWord, type UnitWord } from './unit-words';

/** One number and the unit word after it, if any. */
export type Part = {
  readonly value: Exact;
  readonly unit: UnitWord | null;
  readonly from: number;
  readonly to: number;
};

/** Factors times the sum of the parts: "2 × 1 lb 3 oz" is one term with one factor and two parts. */
export type Term = { readonly factors: readonly Exact[]; readonly parts: readonly Part[] };

type Step<T> = { readonly ok: true; readonly value: T; readonly end: number } | { readonly ok: false; fault: Fault };

const plusSign = / ?(?:[+&]|plus(?!\p{L})|and(?!\p{L})) ?/iuy;
const timesSign = / ?(?:[x×*]|times(?!\p{L})) ?(?=[\d.,¼-¾⅐-⅞])/iuy;
const rangeSign = / ?(?:-|to(?!\p{L})|or(?!\p{L})) ?(?=[\d.,¼-¾⅐-⅞])/iuy;
const partGap = /,? ?(?:and )?/iuy;
// "½ a cup", "⅓ of a cup".
const article = / ?(?:of )?an?(?= )/iuy;
const level = / ?,? ?level(?!\p{L})/iuy;
const word = /[\p{L}\p{M}°%'"][\p{L}\p{M}\p{N}°%'"]*/uy;

/** Reads terms joined by plus signs, from `start` to the end of a normalised text. */
export function readTypedSum(text: string, start: number, decimalComma: boolean): Step<readonly Term[]> {
  const terms: Term[] = [];
  let at = start;
  for (;;) {
    const term = readTerm(text, at, decimalComma);
    if (!term.ok) return term;
    terms.push(term.value);
    at = term.end;
    if (at === text.length) return { ok: true, value: terms, end: at };
    const plus = matchAt(plusSign, text, at);
    if (plus === null) return { ok: false, fault: explainRest(text, at) };
    at += plus[0].length;
  }
}

function explainRest(text: string, at: number): Fault {
  if (matchAt(rangeSign, text, at) !== null) return { code: 'range', from: 0, to: text.length };
  const from = text.charAt(at) === ' ' ? at + 1 : at;
  return { code: 'unexpected', from, to: text.length };
}

function readTerm(text: string, start: number, decimalComma: boolean): Step<Term> {
  const factors: Exact[] = [];
  let at = start;
  for (;;) {
    const number = readFigure(text, at, decimalComma);
    if (!number.ok) return number;
    const times = matchAt(timesSign, text, number.end);
    if (times === null) return readParts(text, at, decimalComma, factors);
    factors.push(number.value);
    at = number.end + times[0].length;
  }
}

interface Figure {
  readonly ok: true;
  readonly value: Exact;
  readonly end: number;
  readonly isArticle: boolean;
}

/** A number in figures or in words. */
function readFigure(text: string, at: number, decimalComma: boolean): Figure | Extract<Step<never>, { ok: false }> {
  const word = isNumberAt(text, at) ? null : readNumberWord(text, at);
  if (word !== null) return { ok: true, ...word };
  const number = readNumber(text, at, decimalComma);
  return number.ok ? { ...number, isArticle: false } : number;
}

function isFigureAt(text: string, at: number): boolean {
  return isNumberAt(text, at) || readNumberWord(text, at) !== null;
}

function readParts(text: string, start: number, decimalComma: boolean, before: readonly Exact[]): Step<Term> {
  const parts: Part[] = [];
  let at = start;
  for (;;) {
    const part = readPart(text, at, decimalComma);
    if (!part.ok) return part;
    parts.push(part.value);
    const next = skip(partGap, text, part.end);
    if (part.value.unit === null) {
      if (isFigureAt(text, skip(/ ?/y, text, part.end)))
        return { ok: false, fault: { code: 'malformedNumber', from: at, to: text.length } };
      if (parts.length > 1) return { ok: false, fault: { code: 'missingUnit', from: at, to: part.end } };
      return { ok: true, value: { factors: before, parts }, end: part.end };
    }
    if (!isFigureAt(text, next)) return readFactorsAfter(text, part.end, decimalComma, { factors: before, parts });
    at = next;
  }
}

function readPart(text: string, from: number, decimalComma: boolean): Step<Part> {
  const number = readFigure(text, from, decimalComma);
  if (!number.ok) return number;
  let at = skip(level, text, skip(article, text, number.end));
  if (text.charAt(at) === ' ') at += 1;
  const unit = findUnitWord(text, at);
  if (unit !== null) {
    const end = skip(level, text, unit.to);
    return { ok: true, value: { value: number.value, unit, from, to: unit.to }, end };
  }
  const stray = matchAt(plusSign, text, number.end) ?? matchAt(rangeSign, text, number.end);
  const unknown = stray === null ? matchAt(word, text, at) : null;
  if (unknown !== null) {
    return { ok: false, fault: { code: 'unknownUnit', from: at, to: at + unknown[0].length } };
  }
  if (number.isArticle) return { ok: false, fault: { code: 'noNumber', from, to: text.length } };
  return { ok: true, value: { value: number.value, unit: null, from, to: number.end }, end: number.end };
}

function readFactorsAfter(text: string, start: number, decimalComma: boolean, term: Term): Step<Term> {
  const factors = [...term.factors];
  let at = start;
  for (;;) {
    const times = matchAt(timesSign, text, at);
    if (times === null) return { ok: true, value: { factors, parts: term.parts }, end: at };
    const from = at + times[0].length;
    const factor = readPart(text, from, decimalComma);
    if (!factor.ok) return factor;
    if (factor.value.unit !== null) return { ok: false, fault: { code: 'twoUnits', from, to: factor.value.to } };
    factors.push(factor.value.value);
    at = factor.end;
  }
}
