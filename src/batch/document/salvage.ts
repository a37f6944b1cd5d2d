import { demo } from './demo';
import type { Batch, Settings, SheetDocument } from './document';
import { mostBatches, mostCorrections, mostLogged } from './document-limits';
import { describeDocumentProblem } from './document-problem-words';
import { type ListName, listWords } from './kept-lists';
import { currentVersion } from './migrations';
import { keyed } from './own-keys';
import { cutText } from './plain-text';
import { readDocument } from './read-document';
import { listsOf, type SheetLists } from './sheet-lists';

/** The parts of a sheet but its batches. */
export type PartName = 'log' | 'yours' | 'settings' | ListName;

/** What a file holds. */
export interface SheetParts extends SheetLists {
  readonly batches: readonly Batch[];
  readonly log: SheetDocument['log'];
  readonly yours: SheetDocument['yours'];
  /** Null where the file has none that can be read. */
  readonly settings: Settings | null;
}

/** What can be read of a file; a part of which nothing can is null, which is another thing than an empty one. */
export type ReadParts = {
  readonly [P in keyof SheetParts]: P extends 'batches' ? SheetParts[P] : SheetParts[P] | null;
};

/** A part that could not be read: which it is, and why, in plain words. */
export interface LostPart {
  readonly what: string;
  readonly why: string;
}

export interface Salvaged {
  readonly parts: ReadParts;
  readonly lost: readonly LostPart[];
}

/** The first version of the document that has a log. */
export const firstWithLog = 2;

/** Of each part of a damaged file; twice what a sheet holds, and little enough to be looked through at once. */
const mostLookedAt = {
  batches: 2 * mostBatches,
  log: 2 * mostLogged,
  yours: 2 * mostCorrections,
  ownFoods: 2 * listWords.ownFoods.most,
  stocks: 2 * listWords.stocks.most,
  cartons: 2 * listWords.cartons.most,
  packages: 2 * listWords.packages.most,
  classes: 2 * listWords.classes.most,
  blends: 2 * listWords.blends.most,
  prices: listWords.packages.most,
} as const;

/** The parts of a sheet that is whole. */
export function partsOf(document: SheetDocument): SheetParts {
  const { batches, log, yours, settings } = document;
  return { batches, log, yours, settings, ...listsOf(document) };
}

/**
 * Reads a damaged sheet part by part: each batch, each line of the log and each correction is kept or named by itself,
 * by the same check as a whole sheet’s. A sheet of a newer version is read as if it were of this one. `unread` are parts
 * that are missing and named already. Never throws on what JSON can hold.
 */
export function salvage(data: unknown, unread: ReadonlySet<PartName> = new Set()): Salvaged {
  const version = versionOf(data);
  const lost: LostPart[] = [];
  const kept = <T>(list: readonly T[], most: number, what: string): readonly T[] => {
    if (list.length > most) lost.push({ what: `All but the first ${most} ${what}`, why: 'A sheet holds no more.' });
    return list.slice(0, most);
  };
  const isMissing = (key: 'batches' | 'log' | 'yours' | 'settings', what: string): boolean => {
    if (key !== 'batches' && unread.has(key)) return true;
    if ((key === 'log' && version < firstWithLog) || own(data, key) !== undefined) return false;
    lost.push({ what, why: 'It is missing.' });
    return true;
  };
  /** The entries of a part that are as they should be, as `read` gives them; null where nothing of it can be read. */
  const entries = <T>(
    key: keyof typeof mostLookedAt,
    read: (one: unknown, key: string) => readonly T[],
  ): readonly T[] | null => {
    const part = own(data, key);
    if (typeof part !== 'object' || part === null) {
      if (part !== undefined) lost.push({ what: `The part “${key}”`, why: 'It is not as it should be.' });
      return part === undefined ? [] : null;
    }
    const keys = Array.isArray(part)
      ? Array.from(part.slice(0, mostLookedAt[key] + 1).keys(), String)
      : Object.keys(part);
    const looked = kept(keys, mostLookedAt[key], `entries of “${key}”`);
    const found = looked.flatMap((name) => read(own(part, name), name));
    return found.length === 0 && looked.length > 0 ? null : found;
  };
  const readOne = (changes: Data, what: string, within: string): SheetDocument | null => {
    const { document, why } = readPart(version, changes, within);
    if (document === null) lost.push({ what, why });
    return document;
  };
  const lacks = (one: unknown, key: string, kind: 'string' | 'number', what: string): boolean => {
    // By far the most of what is put in to be read at length lacks the very first of what it should have.
    const isLacking = typeof own(one, key) !== kind;
    if (isLacking) lost.push({ what, why: isRecord(one) ? `Wrong in it: ${key}.` : 'It is not as it should be.' });
    return isLacking;
  };

  isMissing('batches', 'The batches');
  const batches = entries('batches', (one, at) => {
    const name = nameOf('Batch', at, one);
    if (lacks(one, 'id', 'string', name)) return [];
    const { document, why, at: wrong } = readPart(version, { batches: [one] }, 'batches.0');
    if (document !== null) return document.batches;
    // Nothing else of a batch depends on its heat step.
    const heatless = wrong.startsWith('heat') ? readPart(version, { batches: [withoutHeat(one)] }, '').document : null;
    lost.push({ what: heatless === null ? name : `The heat step of ${name}`, why });
    return heatless?.batches ?? [];
  });
  const noLog = isMissing('log', 'The log');
  const log = entries('log', (one, at) => {
    const name = nameOf('Log', at, one);
    return lacks(one, 'batch', 'string', name) ? [] : (readOne({ log: [one] }, name, 'log.0')?.log ?? []);
  });
  const noYours = isMissing('yours', 'Your own figures');
  const yours = entries('yours', (one, key) => {
    const name = `Your figure “${shorten(key)}”`;
    if (lacks(one, 'value', 'number', name)) return [];
    return Object.entries(readOne({ yours: record(key, one) }, name, `yours.${key}`)?.yours ?? {});
  });
  /** What can be read of a list that not every sheet has; null where nothing can. */
  const listOf = <T>(
    key: ListName,
    has: 'name' | 'food',
    pick: (document: SheetDocument) => readonly T[] | undefined,
  ): readonly T[] | null => {
    const { one: single, many, most } = listWords[key];
    const found = entries(key, (one, at) => {
      const name = nameOf(capital(single), at, one);
      if (lacks(one, has, 'string', name)) return [];
      const document = readOne({ [key]: [one] }, name, `${key}.0`);
      return document === null ? [] : (pick(document) ?? []);
    });
    return unread.has(key) || found === null ? null : kept(found, most, many);
  };
  const packages = listOf('packages', 'food', (document) => document.packages);
  // As an earlier page kept them.
  const prices = entries('prices', (one, key) => {
    const name = `Price of “${shorten(key)}”`;
    return readOne({ prices: record(key, one) }, name, `prices.${key}`)?.packages ?? [];
  });
  const lists = {
    ownFoods: listOf('ownFoods', 'name', (document) => document.ownFoods),
    stocks: ownKeys(listOf('stocks', 'name', (document) => document.stocks)),
    cartons: listOf('cartons', 'name', (document) => document.cartons),
    packages: packages === null || prices === null ? null : [...packages, ...prices],
    classes: ownKeys(listOf('classes', 'name', (document) => document.classes)),
    blends: ownKeys(listOf('blends', 'name', (document) => document.blends)),
  };
  const noSettings = isMissing('settings', 'The settings');
  const settings = own(data, 'settings');
  return {
    parts: {
      batches: kept(withOwnIds(batches ?? [], log ?? []), mostBatches, 'batches'),
      log: noLog || log === null ? null : kept(log, mostLogged, 'lines of the log'),
      yours: noYours || yours === null ? null : Object.fromEntries(kept(yours, mostCorrections, 'figures of yours')),
      settings: noSettings ? null : (readOne({ settings }, 'The settings', 'settings')?.settings ?? null),
      ...lists,
    },
    lost,
  };
}

type Data = Readonly<Record<string, unknown>>;

function isRecord(data: unknown): boolean {
  return typeof data === 'object' && data !== null;
}

/** One part put into a sheet that is otherwise sound, so that whatever is wrong is wrong with it; `at` is where in it. */
function readPart(version: number, changes: Data, within: string) {
  const { batches, settings, log, yours } = demo;
  const read = readDocument({ batches, settings, log, yours, ...changes, version });
  if (read.ok) return { document: read.document, why: '', at: '' };
  const { why } = read;
  if (why.code !== 'wrongPart') return { document: null, why: describeDocumentProblem(why), at: '' };
  const at = why.at.startsWith(within) ? why.at.slice(within.length + 1) : why.at;
  return { document: null, why: at === '' ? 'It is not as it should be.' : `Wrong in it: ${shorten(at)}.`, at };
}

function withoutHeat(batch: unknown): unknown {
  return typeof batch === 'object' ? { ...batch, heat: null } : batch;
}

function versionOf(data: unknown): number {
  const version = own(data, 'version');
  const isKnown = typeof version === 'number' && Number.isInteger(version) && version >= 1 && version <= currentVersion;
  return isKnown ? version : currentVersion;
}

/** Each entry was read by itself, so that two may have one key. */
function ownKeys<T extends { readonly key: string }>(list: readonly T[] | null): readonly T[] | null {
  return list === null ? null : keyed(list);
}

/** Two batches of one id, which no sheet can hold: the later one gets an id that none has, nor a line of the log. */
function withOwnIds(batches: readonly Batch[], log: SheetDocument['log']): readonly Batch[] {
  const all = new Set([...batches.map(({ id }) => id), ...log.map(({ batch }) => batch)]);
  const taken = new Set<string>();
  let number = batches.length;
  return batches.map((batch) => {
    let { id } = batch;
    if (taken.has(id)) {
      do number += 1;
      while (all.has(`b${number}`));
      id = `b${number}`;
    }
    taken.add(id);
    return id === batch.id ? batch : { ...batch, id };
  });
}

function own(data: unknown, key: string): unknown {
  if (typeof data !== 'object' || data === null) return undefined;
  return Object.getOwnPropertyDescriptor(data, key)?.value;
}

/** An object with one key of its own, also where that key is one with a meaning to objects. */
function record(key: string, value: unknown): Data {
  return Object.fromEntries([[key, value]]);
}

function nameOf(what: string, at: string, part: unknown): string {
  const name = own(part, 'name');
  const number = Number(at) + 1;
  const place = Number.isInteger(number) ? `${what} ${number}` : what;
  return typeof name === 'string' && name !== '' ? `${place} (“${shorten(name)}”)` : place;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

const longest = 60;

function shorten(text: string): string {
  const plain = text.replaceAll(/\p{C}/gu, '');
  return plain.length > longest ? `${cutText(plain, longest)}…` : plain;
}
