import * as z from 'zod/mini';
import { measuredRows, rowOrder, stockIds } from '../../formula/recipe/order';
import { usualScoopSet } from '../../measure/scoops';
import { sweeteners } from '../../reference/sweeteners';
import { type DataFault, findDataFault } from './data-fault';
import { mostBatches, mostCorrections, mostLogged } from './document-limits';
import { batch, listed, logged, type SheetDocument, sheetOf } from './document-schema';
import { foldPrices } from './fold-prices';
import { listNames, listWords } from './kept-lists';
import { currentVersion, migrate } from './migrations';
import { withoutMisplacedUse } from './misplaced-use';
import { withOwnKeys } from './own-keys';
import { anything, batchId, mostParts } from './schema-pieces';
import { keysOf } from './table-keys';

/** Why data is no document; `at` is the path to what is wrong, such as `batches.0.vessel`. */
export type DocumentProblem =
  | DataFault
  | { readonly code: 'notADocument' }
  | { readonly code: 'newer'; readonly version: number }
  | { readonly code: 'wrongPart'; readonly at: string }
  | { readonly code: 'tooMany'; readonly at: string; readonly most: number };

export type DocumentRead =
  | { readonly ok: true; readonly document: SheetDocument }
  | { readonly ok: false; readonly why: DocumentProblem };

/**
 * The document in data of unknown origin, such as a saved text just parsed; an older version is brought up to this one.
 * What this version does not know is kept, so that a sheet that went through an older page loses nothing. Never throws
 * on what JSON can hold, and says what is wrong with far more of it than a sheet holds at once.
 */
export function readDocument(data: unknown): DocumentRead {
  const fault = findDataFault(data);
  if (fault !== null) return { ok: false, why: fault };
  const found = z.safeParse(z.object({ version: z.number() }), data);
  if (!found.success) return { ok: false, why: { code: 'notADocument' } };
  if (found.data.version > currentVersion) return { ok: false, why: { code: 'newer', version: found.data.version } };
  const tooMany = findTooMany(data);
  if (tooMany !== null) return { ok: false, why: tooMany };
  const migrated = withoutMisplacedUse(migrate(data));
  const wrong = findWrongPart(migrated);
  return isDocument(migrated, wrong)
    ? { ok: true, document: withOwnKeys(foldPrices(migrated)) }
    : { ok: false, why: { code: 'wrongPart', at: wrong ?? '' } };
}

/** The data itself passes, not zod's copy of it, which would lack what this version does not know. */
function isDocument(data: unknown, wrong: string | null): data is SheetDocument {
  return wrong === null && typeof data === 'object' && data !== null;
}

const looked: readonly (readonly [string, z.ZodMiniType])[] = [
  ['batches', batch],
  ['log', logged],
  ...listNames.map((name) => [name, listed[name]] as const),
];
const unlisted = {
  ...{ ownFoods: anything, stocks: anything, cartons: anything },
  ...{ packages: anything, classes: anything, blends: anything },
};
const frame = sheetOf(z.object({ id: batchId }), anything, unlisted);

/**
 * The path to the first part that is not as it should be; null where all is. Each part of a list is looked at by itself
 * and none after a wrong one: of all that is wrong with a large file, zod makes more than it can carry.
 */
function findWrongPart(data: unknown): string | null {
  for (const [key, part] of looked) {
    const list = partOf(data, key);
    if (!Array.isArray(list)) continue;
    for (const [at, one] of list.entries()) {
      const wrong = firstIssue(part, one);
      if (wrong !== null) return [key, at, ...wrong].join('.');
    }
  }
  return firstIssue(frame, data)?.join('.') ?? null;
}

function firstIssue(schema: z.ZodMiniType, data: unknown): readonly PropertyKey[] | null {
  const { success, error } = z.safeParse(schema, data);
  return success ? null : (error.issues[0]?.path ?? []);
}

/** What a sheet and a batch hold the most of, by path. */
const mostInSheet: Most = {
  batches: mostBatches,
  log: mostLogged,
  yours: mostCorrections,
  ...Object.fromEntries(listNames.map((name) => [name, listWords[name].most])),
  prices: keysOf(sweeteners).length,
  'settings.scoops.cups': usualScoopSet.cups.length,
  'settings.scoops.teaspoons': usualScoopSet.teaspoons.length,
};
const mostInBatch: Most = {
  sweetener: mostParts,
  given: rowOrder.length,
  measured: measuredRows.length,
  onHand: stockIds.length,
};
type Most = Readonly<Record<string, number>>;
type TooMany = Extract<DocumentProblem, { readonly code: 'tooMany' }>;

/** The first part that holds more than any sheet’s, found by counting alone; what is no sheet holds none. */
function findTooMany(data: unknown): TooMany | null {
  const found = findMore(data, mostInSheet, '');
  const batches = partOf(data, 'batches');
  if (found !== null || !Array.isArray(batches)) return found;
  for (const [at, one] of batches.entries()) {
    const inBatch = findMore(one, mostInBatch, `batches.${at}.`);
    if (inBatch !== null) return inBatch;
  }
  return null;
}

function findMore(data: unknown, limits: Most, within: string): TooMany | null {
  for (const [path, most] of Object.entries(limits)) {
    const part = path.split('.').reduce(partOf, data);
    if (typeof part !== 'object' || part === null) continue;
    const count = Array.isArray(part) ? part.length : Object.keys(part).length;
    if (count > most) return { code: 'tooMany', at: `${within}${path}`, most };
  }
  return null;
}

function partOf(data: unknown, key: string): unknown {
  if (typeof data !== 'object' || data === null) return undefined;
  return Object.getOwnPropertyDescriptor(data, key)?.value;
}
