import { toBase } from './convert';
import { type Big, decimal, toDouble } from './decimal';
import { type Fraction, matchAt } from './read-number';
import type { Fault, ReadProblem } from './read-problem';
import { type Part, readTypedSum, type Term } from './typed-sum';
import { normaliseTyped, type TypedText } from './typed-text';
import { chooseUnit } from './unit-words';
import { type CupStandardId, type Kind, type UnitId, units } from './units';

export type { ReadProblem } from './read-problem';

export type ReadOptions = {
  readonly kind: Kind;
  /** The unit of a number that is typed without one. */
  readonly bareUnit: UnitId;
  /** Other kinds the row can convert, such as a volume typed for a solid. */
  readonly also?: readonly Kind[];
  readonly cups: CupStandardId;
  /** Whether the cook writes 1,5 for one and a half. */
  readonly decimalComma: boolean;
};

export type Reading = {
  readonly kind: Kind;
  /** In the base unit of the kind; always finite, never negative zero. */
  readonly amount: number;
  /** The same before it became a double; exact wherever the decimals end within 30 places. */
  readonly exact: Big;
  /** The last unit written, null when none was. */
  readonly unit: UnitId | null;
  /** What had to be taken for granted, so that the page can say so. */
  readonly assumed?: Assumption;
};

export type Assumption = 'fluidOunce' | 'weightOunce' | 'bareUnit';

export type ReadResult =
  | { readonly ok: true; readonly reading: Reading }
  | { readonly ok: false; readonly problem: ReadProblem };

type Settled =
  | { readonly ok: true; readonly amount: Big; readonly kind: Kind; readonly unit: UnitId | null; readonly last: Part }
  | { readonly ok: false; readonly fault: Fault };

type WrongKind = Extract<Fault, { readonly code: 'wrongKind' }>;

const longest = 200;
const hedge = /(?:[~≈]|(?:about|around|roughly|approximately|approx|circa|ca)(?!\p{L})\.?|level(?!\p{L})) ?/iuy;
const heap = /(?<!\p{L})(?:heaped|heaping|rounded|scant|generous)(?!\p{L})/iu;
const sign = /([+-]) ?/y;
const acidityMark = /pH(?!\p{L}) ?(?:[=:] ?)?/iuy;

/**
 * Reads what a person types for an amount, such as "1 1/2 cups", "2 x 0.95 L", "1 lb 3 oz" or "68F".
 * Gives the amount in the base unit of its kind. Any text at all gives a reading or a problem; nothing throws.
 * A negative number is read: whether it makes sense is for the row to say.
 */
export function readQuantity(text: string, options: ReadOptions): ReadResult {
  if (text.length > longest) {
    const typed = `${text.slice(0, 40)}…`;
    const place = { at: longest, text: typed, typed, wanted: options.kind };
    return { ok: false, problem: { code: 'tooLong', limit: longest, ...place } };
  }
  const typed = normaliseTyped(text);
  const settled = settle(options.bareUnit === 'h' ? spellOutClock(typed.text) : typed.text, options);
  if (!settled.ok) return { ok: false, problem: placeFault(settled.fault, text, typed, options.kind) };
  const { amount, kind, unit, last } = settled;
  const double = toDouble(amount);
  if (!Number.isFinite(double)) {
    const fault: Fault = { code: 'beyondNumbers', from: 0, to: typed.text.length };
    return { ok: false, problem: placeFault(fault, text, typed, options.kind) };
  }
  const reading = { kind, amount: double, exact: amount, unit };
  const assumed = findAssumption(last, kind, unit);
  return { ok: true, reading: assumed === null ? reading : { ...reading, assumed } };
}

/** Hours and minutes as a clock or a timetable has them, 10:30 and 8h30, in the units that are read here. */
function spellOutClock(text: string): string {
  return text.replace(/^(\d{1,3})(?::| ?h ?)([0-5]\d)$/i, '$1 h $2 min');
}

function settle(text: string, options: ReadOptions): Settled {
  if (text === '') return { ok: false, fault: { code: 'empty', from: 0, to: 0 } };
  if (text.startsWith('=')) return { ok: false, fault: { code: 'equalsSign', from: 0, to: 1 } };
  const heaped = heap.exec(text);
  if (heaped !== null) {
    return { ok: false, fault: { code: 'heaped', from: heaped.index, to: heaped.index + heaped[0].length } };
  }
  let at = matchAt(hedge, text, 0)?.[0].length ?? 0;
  if (options.kind === 'acidity') at += matchAt(acidityMark, text, at)?.[0].length ?? 0;
  const signed = matchAt(sign, text, at);
  const sum = readTypedSum(text, at + (signed?.[0].length ?? 0), options.decimalComma);
  if (!sum.ok) return sum;
  return addTerms(sum.value, signed?.[1] === '-', text.length, options);
}

function addTerms(terms: readonly Term[], negative: boolean, end: number, options: ReadOptions): Settled {
  let total = decimal(0);
  let kind: Kind | null = null;
  let last: { readonly part: Part; readonly unit: UnitId | null } | null = null;
  let first = true;
  let written = false;
  for (const [index, term] of terms.entries()) {
    const lender = term.parts[0]?.unit === null ? findUnitAfter(terms, index) : null;
    for (const part of term.parts) {
      if (part.unit === null && written) {
        return { ok: false, fault: { code: 'missingUnit', from: part.from, to: part.to } };
      }
      const found = resolveUnit(lender ?? part, options);
      if (!found.ok)
        return kind === null ? found : { ok: false, fault: { ...found.fault, code: 'mixedKinds', earlier: kind } };
      const partKind: Kind = units[found.unit].kind;
      const place = { from: part.from, to: (lender ?? part).to, found: partKind };
      if (kind !== null && kind !== partKind)
        return { ok: false, fault: { code: 'mixedKinds', earlier: kind, ...place } };
      const alone = first && term.factors.length === 0;
      if (!alone && (partKind === 'temperature' || partKind === 'acidity')) {
        return { ok: false, fault: { code: 'noArithmetic', found: partKind, from: 0, to: end } };
      }
      kind = partKind;
      // A sign in front belongs to the whole first term: -3 lb 2 oz is three pounds and two ounces less.
      total = total.plus(scalePart(part.value, term.factors, negative && index === 0, found.unit));
      last = { part: lender ?? part, unit: (lender ?? part).unit === null ? null : found.unit };
      first = false;
      if (part.unit !== null) written = true;
    }
  }
  if (kind === null || last === null) return { ok: false, fault: { code: 'noNumber', from: 0, to: end } };
  const degrees = last.part.unit?.meanings.get(kind);
  const unit = degrees !== undefined && 'degree' in degrees ? null : last.unit;
  return { ok: true, amount: decimal(total), kind, unit, last: last.part };
}

/** "1 + 1/2 cups" means one and a half cups: a bare number takes the unit of the next one that has a unit. */
function findUnitAfter(terms: readonly Term[], index: number): Part | null {
  for (const term of terms.slice(index + 1)) {
    const part = term.parts[0];
    if (part !== undefined && part.unit !== null) return part;
  }
  return null;
}

function resolveUnit(
  part: Part,
  options: ReadOptions,
): { readonly ok: true; readonly unit: UnitId } | { readonly ok: false; readonly fault: WrongKind } {
  const word = part.unit;
  if (word === null) return { ok: true, unit: options.bareUnit };
  for (const kind of [options.kind, ...(options.also ?? [])]) {
    const meaning = word.meanings.get(kind);
    if (meaning === undefined) continue;
    const step: UnitId = kind === 'temperatureDifference' ? 'Δ°C' : '°C';
    const degrees = units[options.bareUnit].kind === kind ? options.bareUnit : step;
    return { ok: true, unit: chooseUnit(meaning, options.cups, degrees) };
  }
  const found = [...word.meanings.keys()][0] ?? options.kind;
  return { ok: false, fault: { code: 'wrongKind', found, from: word.from, to: word.to } };
}

function scalePart(value: Fraction, factors: readonly Fraction[], negative: boolean, unit: UnitId): Big {
  let { numerator, denominator } = value;
  for (const factor of factors) {
    numerator = numerator.times(factor.numerator);
    denominator = denominator.times(factor.denominator);
  }
  if (negative) numerator = numerator.times(-1);
  // A scale with its zero elsewhere must be divided first; the others last, so that three times ⅓ stays exact.
  const affine = units[unit].kind === 'temperature';
  return affine ? toBase(numerator.div(denominator), unit) : toBase(numerator, unit).div(denominator);
}

function findAssumption(last: Part, kind: Kind, unit: UnitId | null): Assumption | null {
  if (last.unit === null || unit === null) return 'bareUnit';
  if (!last.unit.plainOunce) return null;
  return kind === 'volume' ? 'fluidOunce' : 'weightOunce';
}

function placeFault(fault: Fault, text: string, typed: TypedText, wanted: Kind): ReadProblem {
  const { from, to, ...rest } = fault;
  const at = typed.origin[from] ?? text.length;
  return { ...rest, at, text: text.slice(at, typed.origin[to] ?? text.length).trimEnd(), typed: text.trim(), wanted };
}
