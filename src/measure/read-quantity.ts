import { doubleOf, type Exact, exactly } from './exact';
import { hedgeWords } from './number-words';
import { matchAt } from './read-number';
import type { Fault, ReadProblem } from './read-problem';
import { readProportion } from './read-proportion';
import { type Part, readTypedSum, type Term } from './typed-sum';
import { normaliseTyped, type TypedText } from './typed-text';
import { chooseUnit } from './unit-words';
import { type CupStandardId, type Kind, toBase, type UnitId, units } from './units';

export type { ReadProblem } from './read-problem';

export type ReadOptions = {
  readonly kind: Kind;
  /** The unit of a number that is typed without one. */
  readonly bareUnit: UnitId;
  /** Other kinds the row can convert, such as a volume typed for a solid. */
  readonly also?: readonly Kind[];
  readonly cups: CupStandardId;
  /** Whether the cook has said that 1,250 is one and a quarter; a comma that can only mean one thing needs no saying. */
  readonly decimalComma: boolean;
  /** The kind of which a plain ounce is, where it is not the row's own: a jar of water is weighed. */
  readonly plainOunce?: 'mass' | 'volume';
  /** The words of the units between which a number without one leaves a choice, so that it is asked for. */
  readonly askUnit?: readonly string[];
  /** What the amount can be, in the base unit: of two readings of a number, one beyond it was not meant. */
  readonly within?: { readonly least: number; readonly most: number };
};

export type Reading = {
  readonly kind: Kind;
  /** In the base unit of the kind; always finite, never negative zero. */
  readonly amount: number;
  /** The same before it became a double; exact wherever the decimals end within 30 places. */
  readonly exact: Exact;
  /** The last unit written, null when none was. */
  readonly unit: UnitId | null;
  /** What had to be taken for granted, so that the page can say so. */
  readonly assumed?: Assumption;
};

export type Assumption = 'fluidOunce' | 'weightOunce' | 'bareUnit' | 'proportion' | 'overnight';

export type ReadResult =
  | { readonly ok: true; readonly reading: Reading }
  | { readonly ok: false; readonly problem: ReadProblem };

type Settled = { readonly ok: true; readonly reading: Reading } | { readonly ok: false; readonly fault: Fault };

type WrongKind = Extract<Fault, { readonly code: 'wrongKind' }>;

const longest = 200;
const hedge = new RegExp(String.raw`(?:[~≈]|(?:${hedgeWords})(?!\p{L})\.?|level(?!\p{L})) ?`, 'iuy');
// What the page writes behind an amount; how far a measure is from what it stands for changes nothing of the measure.
const remark = /, ?(?:\d+ ?% (?:short|over|less|more)|[+-]\d+ ?%|weigh it)$/iu;
const heap = /(?<!\p{L})(?:heaped|heaping|rounded|scant|generous)(?!\p{L})/iu;
const sign = /([+-]) ?/y;
const acidityMark = /pH(?!\p{L}) ?(?:[=:] ?)?/iuy;

/**
 * Reads what a person types for an amount, such as "1 1/2 cups", "2 x 0.95 L", "1 lb 3 oz" or "68F".
 * Gives the amount in the base unit of its kind. Any text at all gives a reading or a problem; nothing throws. What
 * may be read several ways gives a problem with its `readings`, each a text that can only be read one way.
 * A negative number is read: whether it makes sense is for the row to say.
 */
export function readQuantity(text: string, options: ReadOptions): ReadResult {
  if (text.length > longest) {
    const typed = `${text.slice(0, 40)}…`;
    const place = { at: longest, text: typed, typed, wanted: options.kind };
    return { ok: false, problem: { code: 'tooLong', limit: longest, ...place } };
  }
  const typed = normaliseTyped(text);
  const settled = settleEither(typed.text, options);
  return settled.ok ? settled : { ok: false, problem: placeFault(settled.fault, text, typed, options.kind) };
}

/** A number that may be read two ways is asked for, unless just one of them can stand here. */
function settleEither(text: string, options: ReadOptions): Settled {
  const plain = settle(text, options);
  if (plain.ok || plain.fault.code !== 'eitherNumber') return plain;
  const { from, to, readings } = plain.fault;
  const possible = readings
    .map((_, at) => ({ text: textAs(at, text, options) }))
    .map((reading) => ({ ...reading, settled: settle(reading.text, options) }))
    .filter(({ settled }) => canStand(settled, options));
  const [only] = possible;
  if (only === undefined) return { ok: false, fault: { code: 'malformedNumber', from, to } };
  if (possible.length === 1) return only.settled;
  return { ok: false, fault: { code: 'eitherNumber', from, to, readings: possible.map((reading) => reading.text) } };
}

/** The text with each number that may be read two ways written as its reading at this place. */
function textAs(at: number, text: string, options: ReadOptions): string {
  const settled = settle(text, options);
  if (settled.ok || settled.fault.code !== 'eitherNumber') return text;
  const { from, to, readings } = settled.fault;
  return textAs(at, `${text.slice(0, from)}${readings[at] ?? ''}${text.slice(to)}`, options);
}

function canStand(settled: Settled, { kind, within }: ReadOptions): boolean {
  if (!settled.ok) return settled.fault.code === 'eitherUnit' || settled.fault.code === 'eitherWay';
  const { reading } = settled;
  return (
    within === undefined || reading.kind !== kind || (reading.amount >= within.least && reading.amount <= within.most)
  );
}

/** Hours and minutes as a clock or a timetable has them, 10:30 and 8h30, in the units that are read here. */
function spellOutClock(text: string): string {
  return text.replace(/^(\d{1,3})(?::| ?h ?)([0-5]\d)$/i, '$1 h $2 min');
}

function settle(written: string, options: ReadOptions): Settled {
  const plain = written.replace(remark, '');
  const text = options.bareUnit === 'h' ? spellOutClock(plain) : plain;
  if (text === '') return { ok: false, fault: { code: 'empty', from: 0, to: 0 } };
  if (text.startsWith('=')) return { ok: false, fault: { code: 'equalsSign', from: 0, to: 1 } };
  const heaped = heap.exec(text);
  if (heaped !== null) {
    return { ok: false, fault: { code: 'heaped', from: heaped.index, to: heaped.index + heaped[0].length } };
  }
  let at = matchAt(hedge, text, 0)?.[0].length ?? 0;
  if (options.kind === 'acidity') at += matchAt(acidityMark, text, at)?.[0].length ?? 0;
  const proportion = options.kind === 'ratio' ? readProportion(text, at, options.decimalComma) : null;
  if (proportion !== null) {
    if (!proportion.ok) return proportion;
    const { value, told } = proportion;
    return settleAmount(value, 'ratio', told ? 'g/g' : null, told ? null : 'proportion', text.length);
  }
  const signed = matchAt(sign, text, at);
  const sum = readTypedSum(text, at + (signed?.[0].length ?? 0), options.decimalComma);
  if (!sum.ok) return sum;
  return addTerms(sum.value, signed?.[1] === '-', text, options);
}

function settleAmount(exact: Exact, kind: Kind, unit: UnitId | null, assumed: Assumption | null, end: number): Settled {
  const amount = doubleOf(exact);
  if (!Number.isFinite(amount)) return { ok: false, fault: { code: 'beyondNumbers', from: 0, to: end } };
  const reading = { kind, amount, exact, unit };
  return { ok: true, reading: assumed === null ? reading : { ...reading, assumed } };
}

function addTerms(terms: readonly Term[], negative: boolean, text: string, options: ReadOptions): Settled {
  const end = text.length;
  const ounces = kindOfOunces(terms, options);
  let total = exactly(0);
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
      const found = resolveUnit(lender ?? part, ounces, options);
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
  if (last.unit === null && options.askUnit !== undefined) {
    const isMore = total.compare(toBase(exactly(1), options.bareUnit)) > 0;
    const readings = options.askUnit.map((word) => `${text} ${isMore && word === 'cup' ? 'cups' : word}`);
    return { ok: false, fault: { code: 'eitherUnit', from: 0, to: end, readings } };
  }
  const degrees = last.part.unit?.meanings.get(kind);
  const unit = degrees !== undefined && 'degree' in degrees ? null : last.unit;
  return settleAmount(total, kind, unit, findAssumption(last.part, kind, unit, ounces !== null), end);
}

/** Where another unit of the sum is a weight or a volume, its plain ounces are too: 2 lb 3 oz is a weight anywhere. */
function kindOfOunces(terms: readonly Term[], options: ReadOptions): 'mass' | 'volume' | null {
  for (const { unit } of terms.flatMap(({ parts }) => parts)) {
    if (unit === null || unit.plainOunce) continue;
    const [mass, volume] = [unit.meanings.has('mass'), unit.meanings.has('volume')];
    const kind = mass ? 'mass' : 'volume';
    if (mass !== volume && [options.kind, ...(options.also ?? [])].includes(kind)) return kind;
  }
  return null;
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
  ounces: 'mass' | 'volume' | null,
  options: ReadOptions,
): { readonly ok: true; readonly unit: UnitId } | { readonly ok: false; readonly fault: WrongKind } {
  const word = part.unit;
  if (word === null) return { ok: true, unit: options.bareUnit };
  const ounce = word.plainOunce ? (ounces ?? options.plainOunce ?? null) : null;
  for (const kind of [...(ounce === null ? [] : [ounce]), options.kind, ...(options.also ?? [])]) {
    const meaning = word.meanings.get(kind);
    if (meaning === undefined) continue;
    const step: UnitId = kind === 'temperatureDifference' ? 'Δ°C' : '°C';
    const degrees = units[options.bareUnit].kind === kind ? options.bareUnit : step;
    return { ok: true, unit: chooseUnit(meaning, options.cups, degrees) };
  }
  const found = [...word.meanings.keys()][0] ?? options.kind;
  return { ok: false, fault: { code: 'wrongKind', found, from: word.from, to: word.to } };
}

function scalePart(value: Exact, factors: readonly Exact[], negative: boolean, unit: UnitId): Exact {
  const scaled = factors.reduce((product, factor) => product.times(factor), value);
  return toBase(negative ? scaled.times(-1) : scaled, unit);
}

function findAssumption(last: Part, kind: Kind, unit: UnitId | null, isSettled: boolean): Assumption | null {
  if (last.unit === null || unit === null) return 'bareUnit';
  if (!last.unit.plainOunce || isSettled) return null;
  return kind === 'volume' ? 'fluidOunce' : 'weightOunce';
}

function placeFault(fault: Fault, text: string, typed: TypedText, wanted: Kind): ReadProblem {
  const { from, to, ...rest } = fault;
  const at = typed.origin[from] ?? text.length;
  return { ...rest, at, text: text.slice(at, typed.origin[to] ?? text.length).trimEnd(), typed: text.trim(), wanted };
}
