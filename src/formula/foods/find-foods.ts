import { type FoodEntry, listFoods, type OwnFood } from './food-keys';

function squeeze(text: string): string {
  return text
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}%]+/gu, ' ')
    .trim();
}

/** How well a name answers: 0 the same, 1 its start, 2 the start of a word in it, 100 all words somewhere; null not at all. */
function rate(name: string, wanted: string): number | null {
  const plain = squeeze(name);
  if (plain === wanted) return 0;
  if (plain.startsWith(wanted)) return 1;
  if (` ${plain}`.includes(` ${wanted}`)) return 2;
  return wanted.split(' ').every((word) => plain.includes(word)) ? 100 : null;
}

/**
 * The foods that a text may mean, by name or alias, best first; the cook’s own before others that answer as well.
 * All of them, in their order, for a text with nothing in it.
 */
export function findFoods(text: string, own: readonly OwnFood[] = []): readonly FoodEntry[] {
  const wanted = squeeze(text);
  const all = listFoods(own);
  if (wanted === '') return all;
  return all
    .flatMap((entry, order) => {
      const rates = [entry.name, ...entry.aliases].flatMap((name) => {
        const rated = rate(name, wanted);
        return rated === null ? [] : [{ rated, length: name.length }];
      });
      rates.sort((a, b) => a.rated - b.rated || a.length - b.length);
      const [best] = rates;
      return best === undefined ? [] : [{ entry, order, ...best }];
    })
    .sort((a, b) => a.rated - b.rated || a.length - b.length || a.order - b.order)
    .map(({ entry }) => entry);
}
