import {
  type Batch,
  type KeptClass,
  type Kitchen,
  longestName,
  mostBatches,
  type SheetDocument,
} from '../document/document';
import { mostClasses, mostCorrections, mostKitchens } from '../document/document-limits';
import { cleanName, cutText } from '../document/plain-text';
import { isPlannable } from '../reading/local-time';
import { addMade, renameBatch } from './batch-list';
import { kitchenBatch, taughtBy } from './class-batches';
import { shorten } from './shorten';

// Every edit is document to document, and gives back the same object where nothing changes: that is no step to undo.

type When = NonNullable<KeptClass['when']>;

/** Adds a class of a batch, with a name of its own. A sheet that has as many as it holds stays as it is. */
export function addClass(document: SheetDocument, of: string): SheetDocument {
  const { classes = [] } = document;
  if (classes.length >= mostClasses) return document;
  const name = free('Class', new Set(classes.map((one) => one.name)), ' ');
  const key = free('k', new Set(['k', ...classes.map((one) => one.key)]), '');
  return { ...document, classes: [...classes, { key, name, of, kitchens: [] }] };
}

function free(word: string, taken: ReadonlySet<string>, between: string): string {
  let one = word;
  for (let number = between === '' ? 1 : 2; taken.has(one); number += 1) one = `${word}${between}${number}`;
  return one;
}

/** Takes a class away; its recipe stays. */
export function removeClass(document: SheetDocument, key: string): SheetDocument {
  const { classes = [] } = document;
  const left = classes.filter((one) => one.key !== key);
  return left.length === classes.length ? document : { ...document, classes: left };
}

/** Renames a class. A name of which nothing can be seen changes nothing. */
export function renameClass(document: SheetDocument, key: string, name: string): SheetDocument {
  const kept = keptName(name);
  return changeClass(document, key, (one) => (kept === '' || kept === one.name ? one : { ...one, name: kept }));
}

/** Has a class make another batch. */
export function chooseRecipe(document: SheetDocument, key: string, of: string): SheetDocument {
  if (!document.batches.some(({ id }) => id === of)) return document;
  return changeClass(document, key, (one) => (one.of === of ? one : { ...one, of }));
}

/** Plans a class: all begin at a time, or all drink at one; null takes it out of the plan. No time changes nothing. */
export function planClass(document: SheetDocument, key: string, when: When | null): SheetDocument {
  if (when !== null && !isPlannable(when.at)) return document;
  return changeClass(document, key, (one) => {
    const { when: old, ...rest } = one;
    if (when === null) return old === undefined ? one : rest;
    return old?.by === when.by && old.at === when.at && old.from === when.from ? one : { ...rest, when };
  });
}

/** How many more kitchens a class takes. */
export function roomFor({ kitchens }: KeptClass): number {
  return Math.max(mostKitchens - kitchens.length, 0);
}

/** Adds kitchens at the end, as many of them as a class holds; their names are cut to what is saved. */
export function addKitchens(document: SheetDocument, key: string, kitchens: readonly Kitchen[]): SheetDocument {
  return changeClass(document, key, (one) => {
    const added = kitchens
      .map((kitchen) => ({ ...kitchen, name: keptName(kitchen.name) }))
      .filter(({ name }) => name !== '')
      .slice(0, roomFor(one));
    return added.length === 0 ? one : { ...one, kitchens: [...one.kitchens, ...added] };
  });
}

/** A kitchen like the recipe’s, with the first number for a name that no other of the class has. */
export function nextKitchen(
  { kitchens }: KeptClass,
  { vessel, grains }: Pick<Batch, 'vessel' | 'grains'>,
  leads: Kitchen['leads'],
): Kitchen {
  const names = new Set(kitchens.map(({ name }) => name));
  let number = kitchens.length + 1;
  while (names.has(`Kitchen ${number}`)) number += 1;
  return { name: `Kitchen ${number}`, vessel, temperature: null, leads, grains };
}

/** Changes one kitchen, by its place from 0. A name of which nothing can be seen, or no number of degrees, stays as it was. */
export function changeKitchen(
  document: SheetDocument,
  key: string,
  place: number,
  changes: Partial<Kitchen>,
): SheetDocument {
  return changeClass(document, key, (one) => {
    const old = one.kitchens[place];
    if (old === undefined) return one;
    const name = changes.name === undefined ? old.name : keptName(changes.name) || old.name;
    const { temperature = old.temperature } = changes;
    if (temperature !== null && !Number.isFinite(temperature)) return one;
    const next = { ...old, ...changes, name, temperature };
    const { vessel, leads, grains } = next;
    const isSame =
      name === old.name &&
      temperature === old.temperature &&
      vessel === old.vessel &&
      leads === old.leads &&
      grains === old.grains;
    return isSame ? one : { ...one, kitchens: one.kitchens.with(place, next) };
  });
}

/** Takes a kitchen out of a class, by its place from 0. */
export function removeKitchen(document: SheetDocument, key: string, place: number): SheetDocument {
  return changeClass(document, key, (one) =>
    one.kitchens[place] === undefined ? one : { ...one, kitchens: one.kitchens.toSpliced(place, 1) },
  );
}

/**
 * Makes each kitchen of a class a batch of its own, behind the recipe and in the order of the class. A sheet that can’t
 * take them all stays as it is, and so does one whose recipe is gone.
 */
export function makeBatches(document: SheetDocument, key: string): SheetDocument {
  const kept = document.classes?.find((one) => one.key === key);
  const taught = kept === undefined ? null : taughtBy(document, kept);
  if (kept === undefined || taught === null || !hasRoomFor(document, kept)) return document;
  let made = document;
  let after = taught.batch.id;
  for (const kitchen of kept.kitchens) {
    const old = new Set(made.batches.map(({ id }) => id));
    const { id: _, name, ...batch } = kitchenBatch(document, taught, kitchen, kept.when).batch;
    made = addMade(made, after, batch);
    after = made.batches.find(({ id }) => !old.has(id))?.id ?? after;
    made = renameBatch(made, after, name);
  }
  return Object.keys(made.yours).length > mostCorrections ? document : made;
}

/** Whether the sheet can take a batch for each kitchen. */
export function hasRoomFor({ batches }: SheetDocument, { kitchens }: KeptClass): boolean {
  return batches.length + kitchens.length <= mostBatches;
}

function keptName(name: string): string {
  return cutText(cleanName(name), longestName);
}

function changeClass(document: SheetDocument, key: string, change: (one: KeptClass) => KeptClass): SheetDocument {
  const { classes = [] } = document;
  const place = classes.findIndex((one) => one.key === key);
  const old = classes[place];
  const changed = old === undefined ? undefined : change(old);
  if (changed === undefined || changed === old) return document;
  return { ...document, classes: classes.with(place, changed) };
}

const count = (number: number, one: string, many: string): string => `${number} ${number === 1 ? one : many}`;

const told: Readonly<Record<Exclude<keyof Kitchen, 'name'>, string>> = {
  vessel: 'jar',
  temperature: 'room',
  leads: 'units',
  grains: 'culture',
};

/** The names of the steps for undo and redo. */
export const classSteps = {
  add: 'Add a class',
  remove: ({ name }: KeptClass) => `Remove ${shorten(name)}`,
  rename: (name: string) => `Rename the class to ${shorten(name)}`,
  recipe: ({ name }: KeptClass) => `Choose the recipe of ${shorten(name)}`,
  plan: ({ name }: KeptClass) => `Plan ${shorten(name)}`,
  addKitchens: (kitchens: number) =>
    kitchens === 1 ? 'Add a kitchen' : `Add ${count(kitchens, 'kitchen', 'kitchens')}`,
  renameKitchen: (name: string) => `Rename a kitchen to ${shorten(name)}`,
  changeKitchen: ({ name }: Kitchen, what: keyof typeof told) => `Change the ${told[what]} of ${shorten(name)}`,
  removeKitchen: ({ name }: Kitchen) => `Remove ${shorten(name)} from the class`,
  makeBatches: ({ kitchens }: KeptClass) => `Make ${count(kitchens.length, 'batch', 'batches')} of the class`,
};
