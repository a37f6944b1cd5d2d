import * as z from 'zod/mini';
import { isRow } from '../../formula/engine/evaluate';
import { isOnHandRow, measuredRows, rowOrder, stockIds } from '../../formula/recipe/order';
import { usualScoopSet } from '../../measure/scoops';
import { baseUnits, cupStandards } from '../../measure/units';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import { type DataFault, findDataFault } from './data-fault';
import {
  largestShare,
  longestName,
  longestNote,
  longestText,
  mostBatches,
  mostCorrections,
  mostDaysWaiting,
  mostExtras,
  mostLogged,
  mostOwnFoods,
} from './document-limits';
import { currentVersion, migrate } from './migrations';
import { withoutMisplacedUse } from './misplaced-use';
import { keysOf } from './table-keys';

// Checks made faster by building code from text would break the page's content security policy.
z.config({ jitless: true });

const mostParts = 50;
const mostHours = 10000;

/** Ids end up in the page's own ids, where a space would part them. */
const batchId = z.string().check(z.regex(/^[A-Za-z][\w-]{0,63}$/));

const cell = z.object({
  text: z.string().check(z.maxLength(longestText)),
  amount: z.nullable(z.number()),
  kind: z.enum(keysOf(baseUnits)),
});

const givenCell = z
  .extend(cell, { row: z.enum(rowOrder.filter(isRow)), use: z.exactOptional(z.literal('onHand')) })
  .check(z.refine(({ row, use }) => use === undefined || isOnHandRow(row)));

const sweetenerPart = z.object({
  id: z.enum(keysOf(sweeteners)),
  share: z.number().check(z.gte(0), z.lte(largestShare)),
});

const heatStep = z.object({
  what: z.enum(['source', 'milk']),
  // Earlier pages kept what no page lets be typed: the sheet opens, and its plan says what can't be planned.
  temperature: z.number(),
  minutes: z.number().check(z.gte(0)),
});

/** A time on the wall of the kitchen, with no zone: 2026-11-28T08:00. */
const localMinute = z.string().check(z.regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d$/));
const timeOfDay = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));

/**
 * When a batch is made: the soak begins at this time, or the first glass is wanted by it. No start before `from` could
 * be made any more when a glass was asked for; left out by earlier pages.
 */
const when = z.object({ by: z.enum(['start', 'drink']), at: localMinute, from: z.exactOptional(localMinute) });

const batch = z.object({
  id: batchId,
  name: z.string().check(z.maxLength(longestName)),
  vessel: z.enum(keysOf(jars)),
  source: z.enum(keysOf(sources)),
  sweetener: z.array(sweetenerPart).check(z.minLength(1), z.maxLength(mostParts)),
  grains: z.enum(keysOf(grains)),
  given: z.array(givenCell).check(z.refine((cells) => areUnique(cells.map(({ row }) => row)))),
  measured: z.partialRecord(z.enum(measuredRows), cell),
  heat: z.nullable(heatStep),
  onHand: z.exactOptional(z.partialRecord(z.enum(stockIds), cell)),
  when: z.exactOptional(when),
  /** What a recipe has for the glass or besides, as written. */
  extras: z.exactOptional(z.array(z.string().check(z.maxLength(longestText))).check(z.maxLength(mostExtras))),
  /** The fruit or juice that goes into each bottle, and the text of the sugar that it was counted as. */
  fruit: z.exactOptional(
    z.object({
      name: z.string().check(z.maxLength(longestName)),
      amount: z.string().check(z.maxLength(longestText)),
      grams: z.number().check(z.gte(0)),
      sugar: z.string().check(z.maxLength(longestText)),
    }),
  ),
  /** A heat-treated carton opened for this batch, and after how many days of waiting it is given up. */
  opened: z.exactOptional(z.object({ days: z.number().check(z.int(), z.gte(1), z.lte(mostDaysWaiting)) })),
});

/** What was found at a jar, so many hours after the grains went in. Outlives its batch, so its name goes with it. */
const logged = z.object({
  batch: batchId,
  name: z.string().check(z.maxLength(longestName)),
  at: localMinute,
  found: z.enum(['flat', 'ready', 'sour', 'looked']),
  hours: z.nullable(z.number().check(z.gte(0), z.lte(mostHours))),
  /** The sheet’s own likely time then, without what this kitchen has taught it. */
  expected: z.nullable(z.number().check(z.gt(0))),
  temperature: z.nullable(z.number()),
  acidity: z.nullable(z.number().check(z.gte(0), z.lte(14))),
  note: z.string().check(z.maxLength(longestNote)),
  /** Whether the milk was of a carton, which teaches nothing of the kitchen; left out by earlier pages. */
  carton: z.exactOptional(z.boolean()),
});

const yours = z.object({ value: z.number(), how: z.enum(['typed', 'measured', 'learned']) });

function scoopsOf<S extends string>(all: readonly S[]) {
  return z.array(z.enum(all)).check(z.maxLength(all.length));
}

const settings = z.object({
  leads: z.enum(['metric', 'us']),
  cups: z.enum(keysOf(cupStandards)),
  scoops: z.object({
    cups: scoopsOf(usualScoopSet.cups),
    tablespoon: z.boolean(),
    teaspoons: scoopsOf(usualScoopSet.teaspoons),
  }),
  decimalComma: z.boolean(),
  scale: z.exactOptional(z.union([z.literal(0.1), z.literal(1), z.literal(5)])),
  /** The hours of the night in which nothing is to be done by hand. */
  quiet: z.object({ from: timeOfDay, to: timeOfDay }),
});

const ownFood = z.object({
  name: z.string().check(z.minLength(1), z.maxLength(longestName)),
  grams: z.number().check(z.gt(0)),
  millilitres: z.number().check(z.gt(0)),
});

/** A whole sheet whose lists hold what these check. */
function sheetOf<B extends z.ZodMiniType<{ id: string }>, L extends z.ZodMiniType, F extends z.ZodMiniType>(
  oneBatch: B,
  oneLogged: L,
  oneFood: F,
) {
  return z.object({
    version: z.literal(currentVersion),
    batches: z.array(oneBatch).check(
      z.minLength(1),
      z.maxLength(mostBatches),
      z.refine((all) => areUnique(all.map(({ id }) => id))),
    ),
    yours: z
      .record(z.string().check(z.maxLength(longestText)), yours)
      .check(z.refine((all) => Object.keys(all).length <= mostCorrections)),
    settings,
    ownFoods: z.exactOptional(z.array(oneFood).check(z.maxLength(mostOwnFoods))),
    log: z.array(oneLogged).check(z.maxLength(mostLogged)),
    prices: z.exactOptional(z.partialRecord(z.enum(keysOf(sweeteners)), z.number().check(z.gte(0)))),
  });
}

/** The check of a whole sheet; what it says of the parts is published as `sheet.schema.json`. */
export const sheetDocument = sheetOf(batch, logged, ownFood);

type Fixed<T> = { readonly [K in keyof T]: Fixed<T[K]> };

/** What was typed, as typed, and how it was read: in the base unit of its kind, null where it can't be read. */
export type Cell = Fixed<z.infer<typeof cell>>;
export type GivenCell = Fixed<z.infer<typeof givenCell>>;
/** One make. `given` is in the order of typing, which decides what a batch is sized from. */
export type Batch = Fixed<z.infer<typeof batch>>;
export type Logged = Fixed<z.infer<typeof logged>>;
export type Settings = Fixed<z.infer<typeof settings>>;
/** All that is saved. Corrections in `yours` are kept by coefficient key and hold for every batch. */
export type SheetDocument = Fixed<z.infer<typeof sheetDocument>>;

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
    ? { ok: true, document: migrated }
    : { ok: false, why: { code: 'wrongPart', at: wrong ?? '' } };
}

/** The data itself passes, not zod's copy of it, which would lack what this version does not know. */
function isDocument(data: unknown, wrong: string | null): data is SheetDocument {
  return wrong === null && typeof data === 'object' && data !== null;
}

const listed = [
  ['batches', batch],
  ['log', logged],
  ['ownFoods', ownFood],
] as const;
const frame = sheetOf(z.object({ id: batchId }), z.unknown(), z.unknown());

/**
 * The path to the first part that is not as it should be; null where all is. Each part of a list is looked at by itself
 * and none after a wrong one: of all that is wrong with a large file, zod makes more than it can carry.
 */
function findWrongPart(data: unknown): string | null {
  for (const [key, part] of listed) {
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
  ownFoods: mostOwnFoods,
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

function areUnique(all: readonly string[]): boolean {
  return new Set(all).size === all.length;
}
