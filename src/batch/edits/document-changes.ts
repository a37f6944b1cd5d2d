import { coefficientNames } from '../../formula/words/coefficient-names';
import type { Settings, SheetDocument } from '../document/document';
import { type ListName, listNames, listWords } from '../document/kept-lists';
import { isSameData } from '../document/same-data';
import { coefficientAt } from './edits';
import { namePackage } from './larder';
import { isTaught } from './log-edits';
import type { LeftOut } from './merge';

/** One thing that would be other than it is: what happens, and the names of what it happens to. */
export interface DocumentChange {
  readonly what: string;
  readonly names: readonly string[];
}

/** What lies between two documents, settings apart, in words; none where they hold the same. */
export function changesBetween(before: SheetDocument, after: SheetDocument): readonly DocumentChange[] {
  const old = new Map(before.batches.map((batch) => [batch.id, batch]));
  const now = new Map(after.batches.map((batch) => [batch.id, batch]));
  const named = (one: { readonly name: string }) => one.name;
  const isNew = lineFinder(before.log);
  const isGone = lineFinder(after.log);
  const figures = compareKeyed(ownFigures(before), ownFigures(after));
  const taught = compareKeyed(taughtFigures(before), taughtFigures(after));
  return [
    change('added', 'batch', after.batches.filter(({ id }) => !old.has(id)).map(named)),
    change(
      'changed',
      'batch',
      before.batches.filter((one) => now.has(one.id) && !isSameData(one, now.get(one.id))).map(named),
    ),
    change('removed', 'batch', before.batches.filter(({ id }) => !now.has(id)).map(named)),
    change('added', 'line of the log', after.log.filter(isNew).map(lineName)),
    change('removed', 'line of the log', before.log.filter(isGone).map(lineName)),
    ...changesOfKeys('figure of yours', figures, figureName),
    ...changesOfKeys('figure learned from the log', taught, figureName),
    ...listNames.flatMap((list) => changesOfList(list, before, after)),
  ].filter(({ names }) => names.length > 0);
}

/** What a merge has no room for, in words; none where all of it went in. */
export function describeLeftOut({ batches, log, yours, ...lists }: LeftOut): readonly DocumentChange[] {
  return [
    { what: count(batches, 'batch'), names: batches },
    { what: count(log, 'line of the log'), names: log.map(lineName) },
    { what: count(yours, 'figure of yours'), names: yours.map(figureName) },
    ...listNames.map((list) => ({ what: count(lists[list], listWords[list].one), names: lists[list] })),
  ].filter(({ names }) => names.length > 0);
}

/** Which settings differ, in words; none where they are alike. */
export function settingsThatDiffer(one: Settings, other: Settings): readonly string[] {
  return settingNames.filter(([key]) => !isSameData(one[key] ?? null, other[key] ?? null)).map(([, name]) => name);
}

const settingNames: readonly (readonly [keyof Settings, string])[] = [
  ['leads', 'the unit that leads'],
  ['cups', 'the cup'],
  ['scoops', 'your spoons and cups'],
  ['decimalComma', 'the decimal mark'],
  ['scale', 'the scale'],
  ['quiet', 'the night'],
  ['currency', 'the currency'],
];

function change(done: string, thing: string, names: readonly string[]): DocumentChange {
  return { what: `${count(names, thing)} ${done}`, names };
}

function count({ length }: readonly unknown[], thing: string): string {
  return `${length} ${length === 1 ? thing : plurals[thing]}`;
}

function lineName({ name, at }: SheetDocument['log'][number]): string {
  return `${name}, ${at.replace('T', ' ')}`;
}

const plurals: Readonly<Record<string, string>> = {
  batch: 'batches',
  'line of the log': 'lines of the log',
  'figure of yours': 'figures of yours',
  'figure learned from the log': 'figures learned from the log',
  ...Object.fromEntries(listNames.map((list) => [listWords[list].one, listWords[list].many])),
};

type Keyed = Readonly<Record<string, unknown>>;
interface KeyChanges {
  readonly added: readonly string[];
  readonly changed: readonly string[];
  readonly removed: readonly string[];
}

function compareKeyed(before: Keyed, after: Keyed): KeyChanges {
  const shared = Object.keys(before).filter((key) => Object.hasOwn(after, key));
  return {
    added: Object.keys(after).filter((key) => !Object.hasOwn(before, key)),
    changed: shared.filter((key) => !isSameData(before[key], after[key])),
    removed: Object.keys(before).filter((key) => !Object.hasOwn(after, key)),
  };
}

function changesOfKeys(thing: string, keys: KeyChanges, name: (key: string) => string): readonly DocumentChange[] {
  return (['added', 'changed', 'removed'] as const).map((done) => change(done, thing, keys[done].map(name)));
}

/** Whether a line of a log is not among these. */
function lineFinder(log: SheetDocument['log']): (line: SheetDocument['log'][number]) => boolean {
  const there = new Set(log.map((line) => JSON.stringify(line)));
  return (line) => !there.has(JSON.stringify(line));
}

function ownFigures({ yours }: SheetDocument): SheetDocument['yours'] {
  return Object.fromEntries(Object.entries(yours).filter(([key, { how }]) => !isTaught(key, how)));
}

function taughtFigures({ yours }: SheetDocument): SheetDocument['yours'] {
  return Object.fromEntries(Object.entries(yours).filter(([key, { how }]) => isTaught(key, how)));
}

function changesOfList(list: ListName, before: SheetDocument, after: SheetDocument): readonly DocumentChange[] {
  const old = namedIn(list, before);
  const now = namedIn(list, after);
  const names = new Map([...old, ...now].map(({ key, name }) => [key, name]));
  const found = compareKeyed(keyed(old), keyed(now));
  return changesOfKeys(listWords[list].one, found, (key) => names.get(key) ?? key);
}

interface NamedEntry {
  readonly key: string;
  readonly name: string;
  readonly entry: unknown;
}

function keyed(entries: readonly NamedEntry[]): Keyed {
  return Object.fromEntries(entries.map(({ key, entry }) => [key, entry]));
}

/** What is in a list, by what tells its entries apart, and what each is called. */
function namedIn(list: ListName, document: SheetDocument): readonly NamedEntry[] {
  const byName = (entry: { readonly name: string }) => ({ key: entry.name, name: entry.name, entry });
  const byKey = (entry: { readonly key: string; readonly name: string }) => ({ ...entry, entry });
  const { ownFoods = [], stocks = [], cartons = [], packages = [], classes = [], blends = [] } = document;
  switch (list) {
    case 'ownFoods':
      return ownFoods.map(byName);
    case 'cartons':
      return cartons.map(byName);
    case 'packages':
      return packages.map((entry) => ({ key: entry.food, name: namePackage(entry), entry }));
    case 'stocks':
      return stocks.map(byKey);
    case 'classes':
      return classes.map(byKey);
    case 'blends':
      return blends.map(byKey);
  }
}

function figureName(key: string): string {
  const id = coefficientAt(key);
  const [owner = ''] = key.split('.', 1);
  return id === null ? key : `${coefficientNames[id].label} (${owner})`;
}
