import { type Exact, exactly } from '../../measure/exact';
import { hedgeWords } from '../../measure/number-words';
import { isNumberAt, matchAt, skip } from '../../measure/read-number';
import type { Fault } from '../../measure/read-problem';
import { findUnitWord, type UnitWord } from '../../measure/unit-words';
import { readCount } from './count';

/** One number or range with its unit, not yet turned into g or mL: that an ounce is fluid depends on the food. */
export interface AmountPart {
  readonly low: Exact;
  readonly high: Exact;
  readonly unit: UnitWord | null;
  /** Of the upper end, where it has a unit of its own, as in "2 tbsp to ¼ cup". */
  readonly highUnit?: UnitWord | null;
}

export interface AmountRead {
  /** Parts that add up, as in "1 lb 3 oz". */
  readonly parts: readonly AmountPart[];
  /** The same amount said otherwise, in brackets or after "or". */
  readonly others: readonly AmountPart[];
  readonly container: string | null;
  readonly modifiers: readonly string[];
  /** "pinch", "handful": a word for no amount at all. */
  readonly vague: string | null;
  readonly unitText: string;
  readonly inWords: boolean;
  readonly end: number;
}

export type AmountResult =
  | { readonly ok: true; readonly amount: AmountRead }
  | { readonly ok: false; readonly fault: Fault }
  /** A number of hours, degrees or inches, which is no amount of food. */
  | { readonly ok: false; readonly fault: null };

const hedge = new RegExp(String.raw`(?:[~≈]|(?:${hedgeWords}|up to|at least)(?!\p{L})\.?) ?`, 'iuy');
const vagueWords =
  /(?:(?:\d+|an?|one|two|a few|few|some|generous|good|heaped|scant|big|small|large) ){0,3}(pinch(?:es)?|handfuls?|dash(?:es)?|splash(?:es)?|drizzles?|glugs?|sprinkles?|sprinklings?|knobs?|drops?|(?:dessert|soup) ?spoons?(?:fuls?)?|spoonfuls?|mugs?|scoops?|ladles?)(?!\p{L})(?: of(?!\p{L}))?/iuy;
const modifier =
  /[ ,-]{0,2}(level|(?:firmly |tightly |well )?packed|(?:lightly|loosely)[ -]packed|scant|generous|heaped|heaping|rounded|unsifted|sifted|unpacked|large|big|medium|small|full)(?![\p{L}-])/iuy;
const container =
  / ?-?(cans?|tins?|cartons?|bottles?|jars?|packages?|packets?|packs?|bags?|boxe?s?|sachets?)(?!\p{L})/iuy;
const sizes = ['large', 'big', 'medium', 'small', 'full'];
const gap = / ?-? ?/y;
const times = / ?[x×] ?(?=\d)/iuy;
const joins =
  /(?:, ?(?:and )?| )(?=[\d½⅓⅔¼¾⅕-⅞])| ?(?:\+|plus(?!\p{L})|and(?!\p{L})|&) ?(?=[\d½⅓⅔¼¾⅕-⅞]|(?:an?|one|two|three|half|quarter)(?!\p{L}))/iuy;
// "A cup and a half": half of the unit that stands before it, unless another unit follows.
const andPart = / (?:and|&) (?:an? |one )?(half|quarter|third)(?!\p{L})/iuy;
const partsOfUnit: Readonly<Record<string, readonly [over: number, under: number]>> = {
  half: [1, 2],
  quarter: [1, 4],
  third: [1, 3],
};
const otherwise = / ?(?:\/|=|or(?!\p{L})|,) ?/iuy;
const secondEnd = / ?(?:-|to(?!\p{L})) ?(?=[\d½⅓⅔¼¾⅕-⅞])/iuy;

function readModifiers(text: string, start: number): { readonly words: readonly string[]; readonly end: number } {
  const found: string[] = [];
  let at = start;
  for (let match = matchAt(modifier, text, at); match !== null; match = matchAt(modifier, text, at)) {
    const word = (match[1] ?? '').toLowerCase();
    if (!sizes.includes(word)) found.push(word);
    at += match[0].length;
  }
  return { words: found, end: at };
}

interface Measured {
  readonly part: AmountPart;
  readonly modifiers: readonly string[];
  readonly unitText: string;
  readonly inWords: boolean;
  readonly end: number;
  readonly container: string | null;
}

type MeasuredResult = { readonly ok: true; readonly read: Measured } | Extract<AmountResult, { ok: false }>;

function measuresFood(unit: UnitWord): boolean {
  return unit.meanings.has('mass') || unit.meanings.has('volume');
}

function readSize(text: string, at: number, decimalComma: boolean): { part: AmountPart; end: number } | null {
  const count = readCount(text, skip(hedge, text, at), decimalComma);
  if (count === null || !count.ok || count.count.inWords) return null;
  const unit = findUnitWord(text, skip(gap, text, count.count.end));
  return unit === null || !measuresFood(unit) ? null : { part: { ...count.count, unit }, end: unit.to };
}

/** A number, how it is measured and its unit, or so many containers of a size. */
function readMeasured(text: string, start: number, decimalComma: boolean): MeasuredResult | null {
  const counted = readCount(text, start, decimalComma);
  if (counted === null || !counted.ok) return counted;
  const { count } = counted;
  const { inWords } = count;
  const sized = readContainer(text, count.end, decimalComma);
  if (sized !== null) {
    const { low, high } = count;
    const size = sized.size;
    const part = size
      ? { low: low.times(size.low), high: high.times(size.high), unit: size.unit }
      : { low, high, unit: null };
    return {
      ok: true,
      read: { part, modifiers: [], unitText: sized.word, inWords, end: sized.end, container: sized.word },
    };
  }
  const before = readModifiers(text, count.end);
  const from = skip(gap, text, before.end);
  const unit = findUnitWord(text, from);
  const bare = { modifiers: before.words, inWords, container: null };
  if (unit === null || (unit.meanings.has('count') && !measuresFood(unit)))
    return { ok: true, read: { ...bare, part: { ...count, unit: null }, unitText: '', end: before.end } };
  if (!measuresFood(unit)) return { ok: false, fault: null };
  const part = matchAt(andPart, text, unit.to);
  const rest = part === null || findUnitWord(text, skip(/ ?/y, text, unit.to + part[0].length)) !== null ? null : part;
  const [over, under] = partsOfUnit[rest?.[1]?.toLowerCase() ?? ''] ?? [0, 1];
  const more = exactly(over).div(under);
  const after = readModifiers(text, unit.to + (rest?.[0].length ?? 0));
  const unitText = text.slice(unit.from, unit.to);
  const amount = { low: count.low.plus(more), high: count.high.plus(more), unit };
  const read = { ...bare, part: amount, modifiers: [...before.words, ...after.words], unitText };
  const can = matchAt(container, text, after.end);
  return { ok: true, read: { ...read, end: can ? after.end + can[0].length : after.end, container: can?.[1] ?? null } };
}

interface Container {
  readonly word: string;
  readonly size: AmountPart | null;
  readonly end: number;
}

/** "(400 mL) can", "14-oz can", "x 400 ml cans", "can (400 mL)", "can". */
function readContainer(text: string, start: number, decimalComma: boolean): Container | null {
  const times400 = matchAt(times, text, start);
  let at = times400 ? start + times400[0].length : skip(/ ?/y, text, readModifiers(text, start).end);
  const bracketed = text.charAt(at) === '(';
  if (bracketed) at += 1;
  const size = readSize(text, at, decimalComma);
  if (size !== null) {
    const close = bracketed ? text.indexOf(')', size.end) + 1 : size.end;
    const can = close === 0 ? null : matchAt(container, text, close);
    if (can !== null) return { word: can[1] ?? '', size: size.part, end: close + can[0].length };
    return times400 === null ? null : { word: '', size: size.part, end: size.end };
  }
  if (bracketed) return null;
  const can = matchAt(container, text, at);
  if (can === null) return null;
  const end = at + can[0].length;
  const open = / ?\(/y;
  const inside = skip(open, text, end);
  const after = inside > end ? readSize(text, inside, decimalComma) : null;
  const close = after === null ? 0 : text.indexOf(')', after.end) + 1;
  return { word: can[1] ?? '', size: close > 0 ? (after?.part ?? null) : null, end: close > 0 ? close : end };
}

/**
 * Reads an amount of food that starts here, in any of the ways recipes write one. Null where none starts here; a fault
 * where a number does that can’t be read, or one that measures no food.
 */
export function readAmount(text: string, start: number, decimalComma: boolean): AmountResult | null {
  const at = skip(hedge, text, start);
  const vague = matchAt(vagueWords, text, at);
  if (vague !== null) {
    const said = (vague[1] ?? '').toLowerCase();
    const nothing = { parts: [], others: [], container: null, modifiers: [], unitText: said, inWords: false };
    return { ok: true, amount: { ...nothing, vague: said, end: at + vague[0].length } };
  }
  const first = readMeasured(text, at, decimalComma);
  if (first === null || !first.ok) return first;
  const { modifiers, unitText, inWords } = first.read;
  let { end, part } = first.read;
  let { container: held } = first.read;
  const to = part.unit === null ? null : matchAt(secondEnd, text, end);
  const upper = to === null ? null : readMeasured(text, end + to[0].length, decimalComma);
  if (upper?.ok && upper.read.part.unit !== null && sharesKind(part, upper.read.part)) {
    part = { ...part, high: upper.read.part.high, highUnit: upper.read.part.unit };
    end = upper.read.end;
    held ??= upper.read.container;
  }
  const parts: AmountPart[] = [part];
  const others: AmountPart[] = [];
  while (part.unit !== null) {
    const plus = matchAt(joins, text, end);
    const next = plus === null ? null : readMeasured(text, end + plus[0].length, decimalComma);
    if (!next?.ok || next.read.part.unit === null) break;
    // "170 g, 1 cup almonds" says the same twice; "1 cup, 2 tbsp almonds" adds up.
    (sharesKind(part, next.read.part) ? parts : others).push(next.read.part);
    end = next.read.end;
  }
  for (;;) {
    const or = matchAt(otherwise, text, end);
    const next = or === null || part.unit === null ? null : readSize(text, end + or[0].length, decimalComma);
    if (next === null) break;
    others.push(next.part);
    end = next.end;
  }
  const bracket = readBracket(text, skip(/ ?/y, text, end), decimalComma);
  if (bracket !== null) {
    others.push(...bracket.parts);
    ({ end } = bracket);
  }
  const later = readModifiers(text, end);
  const all = [...modifiers, ...later.words];
  return {
    ok: true,
    amount: { parts, others, container: held, modifiers: all, vague: null, unitText, inWords, end: later.end },
  };
}

function sharesKind(a: AmountPart, b: AmountPart): boolean {
  return (['mass', 'volume'] as const).some((kind) => a.unit?.meanings.has(kind) && b.unit?.meanings.has(kind));
}

/** The amounts in a bracket that opens here, such as "(170 g / 6 oz)"; null where it holds none or does not open. */
export function readBracket(
  text: string,
  at: number,
  decimalComma: boolean,
): { readonly parts: readonly AmountPart[]; readonly end: number } | null {
  const open = text.charAt(at);
  if (open !== '(' && open !== '[') return null;
  const close = text.indexOf(open === '(' ? ')' : ']', at);
  if (close < 0) return null;
  const inside = text.slice(at + 1, close);
  // What it weighs or fills once soaked is no amount to weigh out.
  if (/soak|after|drained/i.test(inside)) return null;
  const sizes = readSizes(inside, skip(/ ?(?:or |= ?)?/iy, inside, 0), decimalComma);
  return sizes === null ? null : { parts: sizes.parts, end: close + 1 };
}

/** Amounts that say one thing in several units, as in "170 g / 6 oz"; null where none starts here. */
export function readSizes(
  text: string,
  start: number,
  decimalComma: boolean,
): { readonly parts: readonly AmountPart[]; readonly end: number } | null {
  const parts: AmountPart[] = [];
  let end = start;
  for (let from = start; ; ) {
    const size = readSize(text, from, decimalComma);
    if (size === null) break;
    parts.push(size.part);
    ({ end } = size);
    from = skip(otherwise, text, end);
    if (from === end) break;
  }
  return parts.length === 0 ? null : { parts, end };
}

/** Whether an amount could start here, without reading it. */
export function mayStartAmount(text: string, at: number): boolean {
  return isNumberAt(text, at) || /[~≈\p{L}]/u.test(text.charAt(at));
}
