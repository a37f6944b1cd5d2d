import { sourceAliases, sweetenerAliases } from '../../reference/aliases';
import { type FlavourId, flavours } from '../../reference/flavours';
import { type FoodId, foods } from '../../reference/foods';
import { type CultureId, grains } from '../../reference/grains';
import { dairyRecords, grainAliases, otherFoodAliases, waterRecord } from '../../reference/other-aliases';
import { type OtherFoodId, otherFoods } from '../../reference/other-foods';
import { type SourceId, sources } from '../../reference/sources';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';

/** A food that can be weighed by the cup: a record by its number, what has no record of its own, or the cook’s own. */
export type FoodKey =
  | FoodId
  | OtherFoodId
  | `source.${SourceId}`
  | `sweetener.${SweetenerId}`
  | `grains.${CultureId}`
  | `flavour.${FlavourId}`
  | `own.${string}`;

/** A food the cook has weighed once: `grams` in `millilitres` of it. */
export interface OwnFood {
  readonly name: string;
  readonly grams: number;
  readonly millilitres: number;
}

/** What a food is to a batch of kefir. */
export type FoodPart =
  | { readonly role: 'source'; readonly id: SourceId }
  | { readonly role: 'sweetener'; readonly id: SweetenerId }
  | { readonly role: 'grains'; readonly id: CultureId }
  | { readonly role: 'water' | 'milk' | 'other'; readonly flavour?: FlavourId };

export interface FoodEntry {
  readonly key: FoodKey;
  readonly name: string;
  /** Lower case, besides the name. */
  readonly aliases: readonly string[];
  readonly record: FoodId | OtherFoodId | null;
  readonly part: FoodPart;
  readonly own: OwnFood | null;
}

function keysIn<K extends string>(table: Readonly<Record<K, unknown>>): readonly K[] {
  return Object.keys(table).filter((key): key is K => Object.hasOwn(table, key));
}

function listEntries(): readonly FoodEntry[] {
  const entries: FoodEntry[] = [];
  const taken = new Set<string>();
  const add = (
    record: FoodId | null,
    named: FoodKey,
    rest: { readonly name: string; readonly aliases: readonly string[]; readonly part: FoodPart },
  ) => {
    // A record that stands behind two entries belongs to the first; the other has a key of its own.
    const key = record !== null && !taken.has(record) ? record : named;
    taken.add(key);
    entries.push({ key, record, own: null, ...rest });
  };
  for (const id of keysIn(sources)) {
    const { name, food } = sources[id];
    add(food, `source.${id}`, { name, aliases: sourceAliases[id] ?? [], part: { role: 'source', id } });
  }
  for (const id of keysIn(sweeteners)) {
    if (id === 'none') continue;
    const { name, food } = sweeteners[id];
    add(food, `sweetener.${id}`, { name, aliases: sweetenerAliases[id] ?? [], part: { role: 'sweetener', id } });
  }
  for (const id of keysIn(grains)) {
    add(null, `grains.${id}`, { name: grains[id].name, aliases: grainAliases[id], part: { role: 'grains', id } });
  }
  for (const id of keysIn(flavours)) {
    const { name, aliases } = flavours[id];
    add(null, `flavour.${id}`, { name, aliases, part: { role: 'other', flavour: id } });
  }
  for (const record of [...keysIn(otherFoods), ...keysIn(foods)]) {
    if (taken.has(record)) continue;
    const { name: printed } = isOther(record) ? otherFoods[record] : foods[record];
    const [plain, ...others] = isOther(record) ? (otherFoodAliases[record] ?? []) : [];
    // The wording of the record is for filing; cooks are shown the plain word where there is one.
    const name = plain === undefined ? printed : `${plain.charAt(0).toUpperCase()}${plain.slice(1)}`;
    const aliases = plain === undefined ? [] : [...others, printed.toLowerCase()];
    entries.push({ key: record, record, name, aliases, part: partOf(record), own: null });
  }
  return entries;
}

function isOther(record: FoodId | OtherFoodId): record is OtherFoodId {
  return Object.hasOwn(otherFoods, record);
}

function partOf(record: FoodId | OtherFoodId): FoodPart {
  if (record === waterRecord) return { role: 'water' };
  return { role: dairyRecords.some((dairy) => dairy === record) ? 'milk' : 'other' };
}

/** Every food that can be looked up, sources first, each under one key. */
export const foodEntries: readonly FoodEntry[] = listEntries();

const byKey = new Map<string, FoodEntry>(foodEntries.map((entry) => [entry.key, entry]));

/** The key of a food of the cook’s own. */
export function ownKey(name: string): FoodKey {
  return `own.${name}`;
}

function entryOfOwn(own: OwnFood): FoodEntry {
  const name = own.name.trim().toLowerCase();
  // A cup of one's own almonds still is of almonds: it plays their part in a batch.
  const known = foodEntries.find((entry) => entry.name.toLowerCase() === name || entry.aliases.includes(name));
  const part = known?.part ?? { role: 'other' };
  return { key: ownKey(own.name), name: own.name, aliases: [], record: null, part, own };
}

/** All foods, the cook’s own first. */
export function listFoods(own: readonly OwnFood[] = []): readonly FoodEntry[] {
  return own.length === 0 ? foodEntries : [...own.map(entryOfOwn), ...foodEntries];
}

/** The entry of a key, or null where there is none, such as an own food that was taken away. */
export function findFood(key: string, own: readonly OwnFood[] = []): FoodEntry | null {
  const known = byKey.get(key);
  if (known !== undefined) return known;
  const mine = own.find(({ name }) => ownKey(name) === key);
  return mine === undefined ? null : entryOfOwn(mine);
}

/** Whether a text is the key of a food there is. */
export function isFoodKey(key: string, own: readonly OwnFood[] = []): key is FoodKey {
  return findFood(key, own) !== null;
}
