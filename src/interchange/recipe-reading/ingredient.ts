import { pieceWeight } from '../../formula/foods/look-up';
import { sources } from '../../reference/sources';
import { type AmountPart, type AmountRead, readBracket, readSizes } from './amount';
import { foodOf, guessFood } from './guess-food';
import { type InBase, inBaseUnits } from './in-base-units';
import type { IngredientProblem } from './problem';
import type { Ends, FoodGuess, Habits, ReadIngredient } from './shape';

// An amount that ends the words and says the first once more: "1 cup almonds, 143 g", "1 cup almonds = 143 g".
const saidAgain = /(?: ?[,=/] ?| - )(?=[\d½⅓⅔¼¾⅕-⅞~])/gu;

const forLater =
  /\b(?:optional|(?:for|to) (?:serv|garnish|finish|decorat|flavou?r|bottl)\w*|(?:second|2nd) ferment\w*)\b/i;
// So much for every litre is no amount before the litres are known.
const rate = /(?:^| )(?:per|(?:for|to|in) (?:each|every)) (?:\d+ ?)?\p{L}/iu;

const heaping = ['heaped', 'heaping', 'rounded'];

function isLiquid(food: FoodGuess | null): boolean {
  if (food === null) return false;
  if (food.role === 'source') return sources[food.id].form === 'liquid';
  return food.role === 'water' || food.role === 'milk';
}

/**
 * An ingredient from its amount and the words that go with it; `text` is what was pasted of it. The food is guessed from
 * the words, unless the cook has said which it is.
 */
export function makeIngredient(
  text: string,
  amount: AmountRead | null,
  words: string,
  habits: Habits,
  told?: FoodGuess,
): ReadIngredient {
  const { others, bare } = takeBrackets(words, habits.decimalComma);
  const modifiers = [
    ...(amount?.modifiers ?? []),
    ...heaping.filter((word) => new RegExp(`\\b${word}\\b`, 'i').test(bare)),
  ];
  const food = told ?? someKefir(amount, bare) ?? guessFood(bare, modifiers, habits.ownFoods);
  const liquid = isLiquid(food);
  const counted = amount === null ? null : addParts(amount.parts, liquid, habits);
  const can = counted === null ? null : takeUsualCan(counted, amount, text, food);
  const sum = rate.test(bare) ? null : (can ?? counted);
  const said = [...(amount?.others ?? []), ...others].map((part) => inBaseUnits(part, liquid, habits.cups));
  const find = (kind: InBase['kind']) => endsOf(sum?.kind === kind ? null : said.find((each) => each?.kind === kind));
  const unit = amount?.parts.at(-1)?.unit;
  return {
    text,
    amount: endsOf(sum),
    kind: sum?.kind ?? 'count',
    unitText: amount?.unitText ?? '',
    modifiers: modifiers.map((word) => word.toLowerCase()),
    statedMass: find('mass'),
    statedVolume: find('volume'),
    food,
    assumed:
      can !== null ? 'usualCan' : unit?.plainOunce ? (sum?.kind === 'volume' ? 'fluidOunce' : 'weightOunce') : null,
    aside: forLater.test(text),
    dismissed: false,
    asRead: { amount, words },
    problem: findProblem(amount, sum, bare, modifiers, food),
  };
}

/** "2 tbsp kefir" is some of another batch; without an amount the word is what is made. */
function someKefir(amount: AmountRead | null, words: string): FoodGuess | null {
  const isKefir = amount !== null && /^(?:of )?kefir(?: \(.*| from .*|,.*)?$/i.test(words.trim());
  const found = isKefir ? foodOf('grains.kefir', null) : null;
  return found === null ? null : { ...found, sure: false };
}

/** Cans of a food that is sold in one usual size, in mL; null for any other, of which the size must be told. */
function takeUsualCan(counted: InBase, amount: AmountRead | null, text: string, food: FoodGuess | null): InBase | null {
  const isCan = /^(?:can|tin)s?$/i.test(amount?.container ?? '') && !/\b(?:small|mini|large|big)\b/i.test(text);
  if (!isCan || counted.kind !== 'count' || food?.role !== 'source') return null;
  const each = sources[food.id].can?.volume.value;
  if (each === undefined) return null;
  return { kind: 'volume', low: counted.low * each, high: counted.high * each };
}

function endsOf(of: InBase | null | undefined): Ends | null {
  return of ? { low: of.low, high: of.high } : null;
}

function addParts(parts: readonly AmountPart[], liquid: boolean, habits: Habits): InBase | null {
  let total: InBase | null = null;
  for (const part of parts) {
    const next = inBaseUnits(part, liquid, habits.cups);
    if (next === null || (total !== null && total.kind !== next.kind)) return null;
    total = total === null ? next : { kind: next.kind, low: total.low + next.low, high: total.high + next.high };
  }
  return total;
}

/** Takes out the brackets that hold amounts: "almonds (170 g), soaked". */
function takeBrackets(words: string, decimalComma: boolean) {
  const others: AmountPart[] = [];
  let bare = '';
  let from = 0;
  for (let at = 0; at < words.length; at += 1) {
    const character = words.charAt(at);
    if (character !== '(' && character !== '[') continue;
    const bracket = readBracket(words, at, decimalComma);
    if (bracket === null) continue;
    others.push(...bracket.parts);
    bare += words.slice(from, at);
    from = bracket.end;
    at = bracket.end - 1;
  }
  const rest = `${bare}${words.slice(from)}`.replaceAll(' ,', ',').trim();
  for (const mark of rest.matchAll(saidAgain)) {
    const again = readSizes(rest, mark.index + mark[0].length, decimalComma);
    if (again !== null && /^[\s.]*$/.test(rest.slice(again.end)))
      return { others: [...others, ...again.parts], bare: rest.slice(0, mark.index) };
  }
  return { others, bare: rest };
}

function findProblem(
  amount: AmountRead | null,
  sum: InBase | null,
  words: string,
  modifiers: readonly string[],
  food: FoodGuess | null,
): IngredientProblem | null {
  const toTaste = /\b(?:to taste|as needed|optional amount)\b/i.exec(words);
  if (amount === null && toTaste !== null) return { code: 'noMeasure', word: toTaste[0].toLowerCase() };
  if (amount !== null && amount.vague !== null) return { code: 'noMeasure', word: amount.vague };
  if (amount !== null && rate.test(words)) return { code: 'rate' };
  if (sum === null) return { code: 'noAmount' };
  const heap = modifiers.find((word) => heaping.includes(word.toLowerCase()));
  if (heap !== undefined) return { code: 'heaped', word: heap.toLowerCase() };
  const isPacket = food?.role === 'grains' && food.key !== null && pieceWeight(food.key) !== null;
  if (amount?.container && sum.kind === 'count' && !isPacket) return { code: 'noSize', container: amount.container };
  if (food?.key == null) return { code: 'unknownFood', name: food?.name ?? '' };
  return null;
}
