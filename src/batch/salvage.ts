import { demo } from './demo';
import type { Batch, Settings, SheetDocument } from './document';
import { mostBatches, mostCorrections, mostLogged, mostOwnFoods } from './document-limits';
import { describeDocumentProblem } from './document-problem-words';
import { readDocument } from './document-schema';
import { currentVersion } from './migrations';

/** What a file holds that can be read: any part of a sheet may be missing. */
export interface SheetParts {
  readonly batches: readonly Batch[];
  readonly log: SheetDocument['log'];
  readonly yours: SheetDocument['yours'];
  /** Null where the file has none that can be read. */
  readonly settings: Settings | null;
  readonly ownFoods: NonNullable<SheetDocument['ownFoods']>;
  readonly prices: NonNullable<SheetDocument['prices']>;
}

/** A part that could not be read: which it is, and why, in plain words. */
export interface LostPart {
  readonly what: string;
  readonly why: string;
}

export interface Salvaged {
  readonly parts: SheetParts;
  readonly lost: readonly LostPart[];
}

/** Of each part of a damaged file; far more than a sheet holds, and little enough to be looked through at once. */
const mostLookedAt = 10_000;

/** The parts of a sheet that is whole. */
export function partsOf({ batches, log, yours, settings, ownFoods = [], prices = {} }: SheetDocument): SheetParts {
  return { batches, log, yours, settings, ownFoods, prices };
}

/**
 * Reads a damaged sheet part by part: each batch, each line of the log and each correction is kept or named by itself,
 * by the same check as a whole sheet’s. A sheet of a newer version is read as if it were of this one. Never throws on
 * what JSON can hold.
 */
export function salvage(data: unknown): Salvaged {
  const version = versionOf(data);
  const lost: LostPart[] = [];
  const read = (changes: Readonly<Record<string, unknown>>, what: string, within: string): SheetDocument | null => {
    const { document, why } = readPart(version, changes, within);
    if (document === null) lost.push({ what, why });
    return document;
  };
  const kept = <T>(list: readonly T[], most: number, what: string): readonly T[] => {
    if (list.length > most) lost.push({ what: `All but the first ${most} ${what}`, why: 'A sheet holds no more.' });
    return list.slice(0, most);
  };

  const entries = (key: string): readonly (readonly [key: string, value: unknown])[] => {
    const part = own(data, key);
    if (typeof part !== 'object' || part === null) {
      if (part !== undefined) lost.push({ what: `The part “${key}”`, why: 'It is not as it should be.' });
      return [];
    }
    return kept(Object.entries(part), mostLookedAt, `entries of “${key}”`);
  };

  const batches = entries('batches').flatMap(([at, one]) => {
    const name = nameOf('Batch', at, one);
    const { document, why, at: wrong } = readPart(version, { batches: [one] }, 'batches.0');
    if (document !== null) return document.batches;
    // Nothing else of a batch depends on its heat step.
    const heatless = wrong.startsWith('heat') ? readPart(version, { batches: [withoutHeat(one)] }, '').document : null;
    lost.push({ what: heatless === null ? name : `The heat step of ${name}`, why });
    return heatless?.batches ?? [];
  });
  const log = entries('log').flatMap(([at, one]) => read({ log: [one] }, nameOf('Log', at, one), 'log.0')?.log ?? []);
  const yours = entries('yours').map(([key, one]) =>
    Object.entries(read({ yours: record(key, one) }, `Your figure “${shorten(key)}”`, `yours.${key}`)?.yours ?? {}),
  );
  const ownFoods = entries('ownFoods').flatMap(
    ([at, one]) => read({ ownFoods: [one] }, nameOf('Own food', at, one), 'ownFoods.0')?.ownFoods ?? [],
  );
  const prices = entries('prices').map(([key, one]) =>
    Object.entries(read({ prices: record(key, one) }, `Price of “${shorten(key)}”`, `prices.${key}`)?.prices ?? {}),
  );
  const settings = own(data, 'settings');
  return {
    parts: {
      batches: kept(withOwnIds(batches, log), mostBatches, 'batches'),
      log: kept(log, mostLogged, 'lines of the log'),
      yours: Object.fromEntries(kept(yours.flat(), mostCorrections, 'figures of yours')),
      settings: settings === undefined ? null : (read({ settings }, 'The settings', 'settings')?.settings ?? null),
      ownFoods: kept(ownFoods, mostOwnFoods, 'own foods'),
      prices: Object.fromEntries(prices.flat()),
    },
    lost,
  };
}

/** One part put into a sheet that is otherwise sound, so that whatever is wrong is wrong with it; `at` is where in it. */
function readPart(version: number, changes: Readonly<Record<string, unknown>>, within: string) {
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
  if (typeof data !== 'object' || data === null || !Object.hasOwn(data, key)) return undefined;
  return Object.entries(data).find(([name]) => name === key)?.[1];
}

/** An object with one key of its own, also where that key is one with a meaning to objects. */
function record(key: string, value: unknown): Readonly<Record<string, unknown>> {
  return Object.fromEntries([[key, value]]);
}

function nameOf(what: string, at: string, part: unknown): string {
  const name = own(part, 'name');
  const number = Number(at) + 1;
  const place = Number.isInteger(number) ? `${what} ${number}` : what;
  return typeof name === 'string' && name !== '' ? `${place} (“${shorten(name)}”)` : place;
}

const longest = 60;

function shorten(text: string): string {
  const plain = text.replaceAll(/\p{C}/gu, '');
  return plain.length > longest ? `${plain.slice(0, longest)}…` : plain;
}
