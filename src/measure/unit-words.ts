import { type CupStandardId, cupStandards, type KitchenMeasure } from './cup-standards';
import { matchAt } from './read-number';
import { kitchenWords, unitAliases } from './unit-aliases';
import { type Kind, type UnitId, unitList } from './units';

/** What a word means in one kind: a unit, a kitchen measure that the cook's cups decide, or degrees of the row's scale. */
type Meaning = { readonly unit: UnitId } | { readonly kitchen: KitchenMeasure } | { readonly degree: true };

export type UnitWord = {
  readonly from: number;
  readonly to: number;
  readonly meanings: ReadonlyMap<Kind, Meaning>;
  /** Written as a plain ounce, which is a weight or a volume by the row. */
  readonly plainOunce: boolean;
};

const degreeWords = ['°', 'deg', 'degs', 'degree', 'degrees'];
const plainOunces: readonly string[] = ['oz', 'ounce', 'ounces'];

type Entry = { readonly alias: string; readonly kind: Kind; readonly meaning: Meaning };

function listEntries(): readonly Entry[] {
  const entries: Entry[] = [];
  for (const unit of unitList) {
    for (const alias of unitAliases[unit.id]) entries.push({ alias, kind: unit.kind, meaning: { unit: unit.id } });
  }
  const kitchens: readonly KitchenMeasure[] = ['cup', 'tbsp', 'tsp', 'flOz'];
  for (const kitchen of kitchens) {
    for (const alias of kitchenWords[kitchen]) entries.push({ alias, kind: 'volume', meaning: { kitchen } });
  }
  for (const alias of degreeWords) {
    entries.push({ alias, kind: 'temperature', meaning: { degree: true } });
    entries.push({ alias, kind: 'temperatureDifference', meaning: { degree: true } });
  }
  return entries;
}

/** Every word that names a unit, with the kind it names it in. */
export const unitEntries: readonly Entry[] = listEntries();

/** A word without its dots and spaces, so that "fl. oz." and "floz" are one. */
export function squeezeWord(word: string): string {
  return word.replace(/[. ]/g, '');
}

function indexWords(keyOf: (alias: string) => string): ReadonlyMap<string, ReadonlyMap<Kind, Meaning>> {
  const index = new Map<string, Map<Kind, Meaning>>();
  for (const { alias, kind, meaning } of unitEntries) {
    const key = keyOf(squeezeWord(alias));
    const meanings = index.get(key) ?? new Map<Kind, Meaning>();
    // The first wins; only T and t fall together when case is ignored, and each is found with its case first.
    if (!meanings.has(kind)) meanings.set(kind, meaning);
    index.set(key, meanings);
  }
  return index;
}

const asWritten = indexWords((alias) => alias);
const anyCase = indexWords((alias) => alias.toLowerCase());

function makePattern(): RegExp {
  const words = [...new Set(unitEntries.map((entry) => entry.alias.toLowerCase()))];
  words.sort((a, b) => b.length - a.length);
  const escaped = words.map((word) => word.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&').replaceAll(' ', '\\.? ?'));
  const degrees = '° ?[cf]';
  return new RegExp(`(?:${degrees}|${escaped.join('|')})(?!\\p{L}|\\p{M})(?:\\.(?!\\d))?`, 'iuy');
}

const pattern = makePattern();

/** The longest unit word that stands at this place of a normalised text, or null. */
export function findUnitWord(text: string, at: number): UnitWord | null {
  const match = matchAt(pattern, text, at);
  if (match === null) return null;
  const written = squeezeWord(match[0]);
  const meanings = asWritten.get(written) ?? anyCase.get(written.toLowerCase());
  if (meanings === undefined) return null;
  return { from: at, to: at + match[0].length, meanings, plainOunce: plainOunces.includes(written.toLowerCase()) };
}

/** The unit that a meaning stands for: kitchen measures by the cook's cups, bare degrees by `degrees`. */
export function chooseUnit(meaning: Meaning, cups: CupStandardId, degrees: UnitId): UnitId {
  if ('unit' in meaning) return meaning.unit;
  return 'kitchen' in meaning ? cupStandards[cups][meaning.kitchen] : degrees;
}
