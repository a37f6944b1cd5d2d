import { matchAt } from '../../measure/read-number';
import { type AmountRead, readAmount } from './amount';
import { wordsOf } from './food-words';
import { guessFood } from './guess-food';
import { makeIngredient } from './ingredient';
import { isInBracket, type Slice } from './list-line';
import type { Habits, ReadIngredient } from './shape';

// Where a number or a number word stands by itself.
const mayBegin =
  /(?<![\p{L}\p{M}\p{N}.,/½⅓⅔¼¾⅕-⅞-])(?=[\d½⅓⅔¼¾⅕-⅞~≈]|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|half|third|quarter|about|around|roughly|approximately|some|few|pinch|dash|handful)(?!\p{L}))/giu;
const clauseEnd =
  /[,;:!?)\]](?= |$)| (?=[½⅓⅔¼¾⅕-⅞]|\d+(?![\d.]*%))|\.(?= |$)| - | (?:and|with|in|into|onto|to|until|for|then|over|on|at|from|per|by|while|which|that|so|plus|before|after|off|through|or)(?!\p{L})|$/giu;
const forSoaking = /^,? ?(?:for|to) (?:the )?(?:soak|cover|rins)/i;
// What is said to be made, filled or fed is no amount that goes in.
const sized =
  /(?:makes|yields?|yielding|gives|serves|for|into|fills?|holds?|per|every|each|to make|leaving|leaves) (?:(?:about|around|roughly|approximately|up to|almost|nearly|the|a) )*$/i;
const ofWhatIsMade = /^ ?(?:of )?(?:the|this|that|your|its|it|them)(?!\p{L})/iu;
const vessels =
  / ?-?(?:(?:of|large|small|big|wide|mouth|wide-mouth|glass|clean|empty|more|extra|mason|sterili[sz]ed|[\p{L}]+-top) ){0,4}(?:jars?|bottles?|bowls?|jugs?|pots?|containers?|pitchers?|blenders?|headspace|room|space|at a time)(?!\p{L})/iuy;
const action =
  /\b(soak|steep|cover|rins|blend|whizz|puré?e|process|grind|add|mix|combine|stir|pour|dissolv|sweeten|drain|strain|use|take|make|bring|heat|boil|simmer|top)\w*/gi;
const pouredAway = /^(?:soak|steep|cover|rins)/i;
const mostWords = 4;
// No sentence of a recipe has more; reading on would take the time of a hostile one.
const mostOnLine = 40;
const perUnit = / ?(?:per|for each|for every|to each|to every) (?:\d+ ?)?\p{L}+(?: of \p{L}+)?/iuy;
const closing = /[^()[\]]*[)\]]/y;
const lastWords = /(?:[\p{L}\p{M}'’-]+ ){0,4}[\p{L}\p{M}'’-]+ ?$/u;
// What leads to the name of a food: the last of these words, and all before it.
const leadIn =
  /^.*(?<!\p{L})(?:the|and|with|in|into|over|of|to|for|then|plus|your|some|add|blend|stir|mix|pour|combine|soak|take|use|put|place|dissolve|whisk|rinse|drain) /iu;

/**
 * The ingredients that a sentence names with their amounts, in order: "Blend 1 cup cashews with 3 cups water." Hours,
 * degrees, jars, and portions of what is being made are none. `slice` gives the pasted text between two places.
 */
export function readSentence(text: string, slice: Slice, habits: Habits): readonly ReadIngredient[] {
  const ingredients: ReadIngredient[] = [];
  let before = '';
  let done = 0;
  mayBegin.lastIndex = 0;
  for (
    let found = mayBegin.exec(text);
    found !== null && ingredients.length < mostOnLine;
    found = mayBegin.exec(text)
  ) {
    const at = found.index;
    mayBegin.lastIndex = at + 1;
    const read = readAmount(text, at, habits.decimalComma);
    if (!read?.ok) continue;
    const { amount } = read;
    mayBegin.lastIndex = Math.max(amount.end, at + 1);
    if (sized.test(text.slice(Math.max(0, at - 60), at))) continue;
    const bracketed = afterItsFood(text, at, amount.end);
    if (bracketed !== null) {
      const { from, name, to } = bracketed;
      if (!isVesselName(name) && guessFood(name, [], habits.ownFoods) !== null && from >= done)
        ingredients.push(pour(makeIngredient(slice(from, to), amount, name, habits), text.slice(0, from)));
      done = to;
      mayBegin.lastIndex = to;
      continue;
    }
    const end = endOfRate(text, endOfFood(text, amount.end));
    const said = text.slice(amount.end, end);
    const soaks = forSoaking.test(text.slice(amount.end));
    const words = soaks && before !== '' ? `${before} for soaking` : said;
    if (!namesFood(amount, words, text, habits)) continue;
    const ingredient = makeIngredient(slice(at, end), amount, words, habits);
    ingredients.push(soaks ? ingredient : pour(ingredient, text.slice(0, at)));
    before = said.trim();
    done = end;
    mayBegin.lastIndex = Math.max(end, at + 1);
  }
  return ingredients;
}

/** Where the name of the food ends: with the clause, or at what is done with it. A bracket within it belongs to it. */
function endOfFood(text: string, start: number): number {
  clauseEnd.lastIndex = start;
  for (let found = clauseEnd.exec(text); found !== null; found = clauseEnd.exec(text)) {
    if (found.index === text.length || !isInBracket(text, start, found.index)) return found.index;
    clauseEnd.lastIndex = found.index + 1;
  }
  return text.length;
}

function isVesselName(name: string): boolean {
  return /(?:^|\s)(?:jar|bottle|bowl|jug|pot|container|pitcher|blender)s? ?$/i.test(name);
}

/** "Per cup", "for each litre": such words belong to the amount, which is none without them. */
function endOfRate(text: string, end: number): number {
  const found = matchAt(perUnit, text, end);
  return found === null ? end : end + found[0].length;
}

/** An amount in brackets after its food, as in "the almonds (1 cup)": where the food begins, and the bracket ends. */
function afterItsFood(text: string, at: number, end: number) {
  const close = /[([]/.test(text.charAt(at - 1)) ? matchAt(closing, text, end) : null;
  if (close === null) return null;
  const before = text.slice(0, at - 1);
  const [words = ''] = lastWords.exec(before) ?? [];
  const name = words.replace(leadIn, '');
  return { from: before.length - name.length, name, to: end + close[0].length };
}

function namesFood(amount: AmountRead, words: string, text: string, habits: Habits): boolean {
  if (ofWhatIsMade.test(words) || matchAt(vessels, text, amount.end) !== null) return false;
  const guess = guessFood(words, [], habits.ownFoods);
  if (guess === null) return false;
  const hasUnit = amount.parts.some(({ unit }) => unit !== null);
  if (hasUnit || amount.vague !== null || amount.container !== null)
    return guess.key !== null || (!/^jars?$/i.test(amount.container ?? '') && wordsOf(words).length <= mostWords);
  return guess.sure && guess.key !== null;
}

/** Water of a clause that soaks, covers or rinses is poured away. */
function pour(ingredient: ReadIngredient, said: string): ReadIngredient {
  const { food } = ingredient;
  if (food?.role !== 'water' || food.soaking) return ingredient;
  const [last] = [...said.matchAll(action)].slice(-1);
  return last !== undefined && pouredAway.test(last[0])
    ? { ...ingredient, food: { ...food, soaking: true } }
    : ingredient;
}
