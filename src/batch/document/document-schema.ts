import * as z from 'zod/mini';
import { isRow } from '../../formula/engine/evaluate';
import { isOnHandRow, measuredRows, rowOrder, stockIds } from '../../formula/recipe/order';
import { usualScoopSet } from '../../measure/scoops';
import { cupStandards } from '../../measure/units';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import {
  longestCurrency,
  longestName,
  longestNote,
  longestText,
  mostBatches,
  mostCorrections,
  mostDaysWaiting,
  mostExtras,
  mostLogged,
} from './document-limits';
import { blend, carton, keptClass, ownFood, packaged, stock } from './kept-list-schema';
import { listWords } from './kept-lists';
import { currentVersion } from './migrations';
import { batchId, cell, type Fixed, localMinute, mostParts, sweetenerPart, when } from './schema-pieces';
import { keysOf } from './table-keys';

// Checks made faster by building code from text would break the page's content security policy.
z.config({ jitless: true });

const mostHours = 10000;

const givenCell = z
  .extend(cell, { row: z.enum(rowOrder.filter(isRow)), use: z.exactOptional(z.literal('onHand')) })
  .check(z.refine(({ row, use }) => use === undefined || isOnHandRow(row)));

const heatStep = z.object({
  what: z.enum(['source', 'milk']),
  // Earlier pages kept what no page lets be typed: the sheet opens, and its plan says what can't be planned.
  temperature: z.number(),
  minutes: z.number().check(z.gte(0)),
});

const timeOfDay = z.string().check(z.regex(/^([01]\d|2[0-3]):[0-5]\d$/));

export const batch = z.object({
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
  /** The name of the carton that its milk comes from. */
  carton: z.exactOptional(z.string().check(z.maxLength(longestName))),
});

/** What was found at a jar, so many hours after the grains went in. Outlives its batch, so its name goes with it. */
export const logged = z.object({
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
  /** Of one that was ready: whether it was just then, or had been for a while. */
  holds: z.exactOptional(z.enum(['just', 'while'])),
  /** Left out of what the log teaches. */
  leftOut: z.exactOptional(z.literal(true)),
  /** The batch was given up at this look. */
  gaveUp: z.exactOptional(z.literal(true)),
  /** The recipe as it was then; rates in g/L, null where the sheet had none. */
  was: z.exactOptional(
    z.object({
      source: z.enum(keysOf(sources)),
      grains: z.enum(keysOf(grains)),
      sweetener: z.array(sweetenerPart).check(z.minLength(1), z.maxLength(mostParts)),
      sugarRate: z.nullable(z.number().check(z.gte(0))),
      startingSugar: z.nullable(z.number().check(z.gte(0))),
      grainRate: z.nullable(z.number().check(z.gte(0))),
      carton: z.exactOptional(z.string().check(z.maxLength(longestName))),
    }),
  ),
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
  /** What stands beside a price, such as a sign or three letters. */
  currency: z.exactOptional(z.string().check(z.maxLength(longestCurrency))),
});

/** What is in each list of a sheet that not every sheet has. */
export const listed = {
  ownFoods: ownFood,
  stocks: stock,
  cartons: carton,
  packages: packaged,
  classes: keptClass,
  blends: blend,
};

/** A whole sheet whose lists hold what these check. */
export function sheetOf<
  B extends z.ZodMiniType<{ id: string }>,
  L extends z.ZodMiniType,
  I extends Readonly<Record<keyof typeof listed, z.ZodMiniType>>,
>(oneBatch: B, oneLogged: L, items: I) {
  const list = <T extends z.ZodMiniType>(one: T, most: number) =>
    z.exactOptional(z.array(one).check(z.maxLength(most)));
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
    ownFoods: list<I['ownFoods']>(items.ownFoods, listWords.ownFoods.most),
    log: z.array(oneLogged).check(z.maxLength(mostLogged)),
    stocks: list<I['stocks']>(items.stocks, listWords.stocks.most),
    cartons: list<I['cartons']>(items.cartons, listWords.cartons.most),
    packages: list<I['packages']>(items.packages, listWords.packages.most),
    classes: list<I['classes']>(items.classes, listWords.classes.most),
    blends: list<I['blends']>(items.blends, listWords.blends.most),
    /** Of a kilogram, as earlier pages kept them; packages of a kilogram once the sheet is opened. */
    prices: z.exactOptional(z.partialRecord(z.enum(keysOf(sweeteners)), z.number().check(z.gte(0)))),
  });
}

/** The check of a whole sheet; what it says of the parts is published as `sheet.schema.json`. */
export const sheetDocument = sheetOf(batch, logged, listed);

/** What was typed, as typed, and how it was read: in the base unit of its kind, null where it can't be read. */
export type Cell = Fixed<z.infer<typeof cell>>;
export type GivenCell = Fixed<z.infer<typeof givenCell>>;
/** One make. `given` is in the order of typing, which decides what a batch is sized from. */
export type Batch = Fixed<z.infer<typeof batch>>;
export type Logged = Fixed<z.infer<typeof logged>>;
export type Settings = Fixed<z.infer<typeof settings>>;
/** All that is saved. Corrections in `yours` are kept by coefficient key and hold for every batch. */
export type SheetDocument = Fixed<z.infer<typeof sheetDocument>>;

function areUnique(all: readonly string[]): boolean {
  return new Set(all).size === all.length;
}
