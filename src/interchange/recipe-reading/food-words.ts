import { type FoodEntry, listFoods, type OwnFood } from '../../formula/foods/food-keys';
import { unclearGrains } from '../../reference/other-aliases';

/** Words in lower case, without marks: "Cow’s milk, 2%" is "cows milk 2%". */
export function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(/['’]/g, '')
    .split(/[^\p{L}\p{M}\p{N}%]+/u)
    .filter((word) => word !== '');
}

export interface FoodMatch {
  readonly entry: FoodEntry;
  readonly from: number;
  readonly to: number;
  readonly sure: boolean;
}

type Index = ReadonlyMap<string, { readonly entry: FoodEntry; readonly sure: boolean }>;

function makeIndex(foods: readonly FoodEntry[]): Index {
  const index = new Map<string, { entry: FoodEntry; sure: boolean }>();
  const add = (name: string, entry: FoodEntry, sure: boolean) => {
    const key = wordsOf(name).join(' ');
    if (key !== '' && !index.has(key)) index.set(key, { entry, sure });
  };
  for (const entry of foods) for (const name of [entry.name, ...entry.aliases]) add(name, entry, true);
  const grains = foods.find(({ key }) => key === 'grains.water');
  if (grains !== undefined) for (const name of unclearGrains) add(name, grains, false);
  return index;
}

const usual = makeIndex(listFoods());
const longestName = 8;

// A nut or sugar before one of these is in another food altogether.
const products = new Set(
  'butter oil extract flour essence paste meal juice vinegar bread cake cakes chip chips liqueur bark cookies mustard snap snaps yogurt yoghurt cream cheese cube cubes milk kefir drops syrup crackers chestnut chestnuts melon pudding granola brittle powder pulp flavour flavor flavoured flavored flavouring flavoring vinegar free bean beans pod pods stick sticks bark'.split(
    ' ',
  ),
);
const notWater = new Set('rose blossom flower barley tonic soda orange lemon'.split(' '));
const dairyWords = new Set(
  'whole fresh dairy cow cows full fat raw warm cold low skim pasteurised pasteurized of'.split(' '),
);

/**
 * The food that the longest run of words names, the first of equals; null where none does, or where the words go on to
 * another product, as in "almond extract". The cook’s own foods come first.
 */
export function matchFood(words: readonly string[], own: readonly OwnFood[] = []): FoodMatch | null {
  const mine = own.length === 0 ? null : makeIndex(listFoods(own));
  const index = mine ?? usual;
  for (let length = Math.min(longestName, words.length); length > 0; length -= 1) {
    for (let from = 0; from + length <= words.length; from += 1) {
      const found = index.get(words.slice(from, from + length).join(' '));
      if (found === undefined || isOtherProduct(words, from, from + length, found.entry)) continue;
      return { ...found, from, to: from + length };
    }
  }
  return null;
}

function isOtherProduct(words: readonly string[], from: number, to: number, { part, own }: FoodEntry): boolean {
  if (own !== null) return false;
  const before = words[from - 1] ?? '';
  if (part.role === 'water') return notWater.has(before) || products.has(words[to] ?? '');
  if (part.role === 'milk') return before !== '' && !dairyWords.has(before);
  if (part.role === 'grains') return false;
  return products.has(words[to] ?? '');
}
