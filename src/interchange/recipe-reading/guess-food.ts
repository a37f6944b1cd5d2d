import { type FoodEntry, type FoodKey, findFood, type OwnFood } from '../../formula/foods/food-keys';
import { readForm } from '../../formula/foods/measure-words';
import { matchFood, wordsOf } from './food-words';
import type { FoodGuess } from './shape';

// Where the name of the food ends and what is done with it begins.
const nameEnd = /[,;:()[\]/]| - | or | for | in | until | then | to /i;
// "3 cups water, plus more for soaking": what goes beyond the amount is no part of what the amount is of.
const beyond =
  /[ ,;(]+(?:plus|and|\+|&|with) (?:(?:some|a (?:little|bit|few)) )?(?:more|extra|additional)(?!\p{L}).*$/iu;
const beyondFood = /[ ,;(]+(?:plus|and|\+|&) (?:more |extra )?(?:water|\p{L}+) (?:for|to) (?:soak|cover|rins).*$/iu;
// What kind it is, after its name: "sugar (brown)", "kefir grains, water".
const kindAfter = /^(.*?\S) ?[,([] ?([^,;:()[\]]{1,40})[)\]]?/;
const benign = new Set(
  'of the a an raw organic fresh whole plain natural unsalted unroasted cold warm hot lukewarm filtered clean pure good quality large small medium big shelled hulled peeled skinless dried dry unsweetened pitted soft runny liquid granulated fine coarse light dark sliced slivered ground chopped halves halved pieces shredded packed unpacked sifted unsifted level firmly lightly loosely drained rinsed active live extra more about organic soaking blending hydrated rehydrated activated overnight together well homemade home made washed strained fine finely roughly coarsely my your our some each heaped heaping rounded scant generous usda grade a of'.split(
    ' ',
  ),
);
const cuts: readonly (readonly [RegExp, string])[] = [
  [/\b(?:halved|halves)\b/i, 'halves'],
  [/\b(?:flaked|flakes)\b/i, 'sliced'],
  [/\b(?:desiccated|grated)\b/i, 'shredded'],
  [/\b(?:broken|pieces)\b/i, 'pieces'],
  [/\b(?:loosely|lightly)[ -]packed\b/i, ''],
];

const longestTail = 4;
// Beyond this nothing names the food, and looking for it would take time.
const longestWords = 160;

function formIn(text: string, modifiers: readonly string[]): string | null {
  const all = `${text} ${modifiers.join(' ')}`.toLowerCase();
  const cut = cuts.find(([pattern]) => pattern.test(all));
  return cut === undefined ? readForm(all) : cut[1] === '' ? null : cut[1];
}

/** The food that the words after an amount were taken for; null where there are no words. */
export function guessFood(text: string, modifiers: readonly string[], own: readonly OwnFood[] = []): FoodGuess | null {
  const cleaned = text
    .replace(/^[\s,.:;-]+/, '')
    .slice(0, longestWords)
    .replace(beyond, '')
    .replace(beyondFood, '');
  const end = nameEnd.exec(cleaned)?.index ?? cleaned.length;
  const named = wordsOf(end === 0 ? cleaned : cleaned.slice(0, end));
  if (named.length === 0) return null;
  const name = cleaned.slice(0, end).trim().replace(/^of /i, '');
  const form = formIn(cleaned, modifiers);
  // "almonds, blanched": a longer name may go on past the comma, but it must begin before it.
  const longer = matchFood(wordsOf(cleaned).slice(0, named.length + longestTail), own);
  const plain = longer !== null && longer.from < named.length ? longer : matchFood(named, own);
  const kind = matchKind(cleaned, own);
  const match =
    kind === null || (plain !== null && plain.to - plain.from >= kind.match.to - kind.match.from) ? plain : kind.match;
  if (match === null) return { role: 'other', key: null, name, form, sure: false, soaking: false };
  const { entry } = match;
  const all = match === kind?.match ? kind.words : named;
  const rest = all.filter((word, at) => (at < match.from || at >= match.to) && !benign.has(word));
  const sure = match.sure && rest.length === 0 && !/^(?: or |\/)/i.test(cleaned.slice(end, end + ' or '.length));
  const soaking = entry.part.role === 'water' && /\b(?:to|for|soak(?:ing)?)\b.*\bsoak|\bsoak/i.test(cleaned);
  return { ...entry.part, key: entry.key, name: entry.name, form: formOf(entry, form), sure, soaking };
}

/** A food named with its kind turned round, "sugar (brown)" or "grains, milk kefir"; null where that names none. */
function matchKind(text: string, own: readonly OwnFood[]) {
  const [, name = '', kind = ''] = kindAfter.exec(text) ?? [];
  const [of, called] = [wordsOf(kind), wordsOf(name)];
  const words = [...of, ...called];
  const match = of.length === 0 || called.length === 0 ? null : matchFood(words, own);
  // It must take words of both, or it is another food that is only mentioned.
  return match !== null && match.from < of.length && match.to > of.length ? { match, words } : null;
}

/** "Whole milk" is no cut of it. */
function formOf({ part }: FoodEntry, form: string | null): string | null {
  return part.role === 'water' || part.role === 'milk' ? null : form;
}

/** The guess that stands for a food the cook has chosen; null for a key that is no food. */
export function foodOf(key: FoodKey, form: string | null, own: readonly OwnFood[] = []): FoodGuess | null {
  const entry = findFood(key, own);
  return entry === null
    ? null
    : { ...entry.part, key: entry.key, name: entry.name, form: formOf(entry, form), sure: true, soaking: false };
}
