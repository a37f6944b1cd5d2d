import * as z from 'zod/mini';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import {
  heaviestStock,
  longestFood,
  longestName,
  longestNote,
  longestPrice,
  longestText,
  mostBlended,
  mostKitchens,
  mostStockLines,
} from './document-limits';
import { batchId, cell, type Fixed, localMinute, when } from './schema-pieces';
import { keysOf } from './table-keys';

// What has a life beside the batches. None begins with an id, nor with a batch: a text that is cut off is searched for
// batches and for lines of the log by how those begin.

const name = z.string().check(z.minLength(1), z.maxLength(longestName));
const text = z.string().check(z.maxLength(longestText));
const note = z.exactOptional(z.string().check(z.maxLength(longestNote)));

/** A measure of a food of the cook's own: so much of it in so many mL. */
export const ownFood = z.object({
  name,
  grams: z.number().check(z.gt(0)),
  millilitres: z.number().check(z.gt(0)),
});

/** What was done with a jar of grains: weighed, out for a batch and back, given away, got, fed, moved, gone bad. */
const stockLine = z.object({
  at: localMinute,
  did: z.enum(['weighed', 'out', 'back', 'given', 'got', 'fed', 'moved', 'failed']),
  grams: z.nullable(z.number().check(z.gte(0), z.lte(heaviestStock))),
  /** The batch that it was about; it may be gone, so its name and source go with it. */
  batch: z.exactOptional(batchId),
  name: z.exactOptional(z.string().check(z.maxLength(longestName))),
  source: z.exactOptional(z.enum(keysOf(sources))),
  place: z.exactOptional(z.enum(['room', 'fridge', 'freezer', 'dried'])),
  medium: z.exactOptional(z.enum(['sugarWater', 'dairy', 'plantMilk'])),
  note,
});

/** Grains that live together in one jar. */
export const stock = z.object({
  key: batchId,
  name,
  grains: z.enum(['water', 'milk']),
  /** Sugar to the water of its resting jar, g/L; the usual where it is left out. */
  strength: z.exactOptional(z.number().check(z.gt(0))),
  lines: z.array(stockLine).check(z.maxLength(mostStockLines)),
});

/** A carton by its name, with what its label says as typed. */
export const carton = z.object({
  name,
  kind: z.exactOptional(text),
  sugar: z.exactOptional(text),
  serving: z.exactOptional(text),
  note,
});

/** What a package of a food costs. A price is a decimal number as text, so that no cent is lost. */
export const packaged = z.object({
  food: z.string().check(z.minLength(1), z.maxLength(longestFood)),
  name: z.exactOptional(z.string().check(z.maxLength(longestName))),
  amount: cell,
  price: z.string().check(z.regex(/^\d+(\.\d+)?$/), z.maxLength(longestPrice)),
});

const kitchen = z.object({
  name,
  vessel: z.enum(keysOf(jars)),
  /** °C; null for the room of the recipe. */
  temperature: z.nullable(z.number()),
  leads: z.enum(['metric', 'us']),
  grains: z.enum(keysOf(grains)),
});

/** One recipe for many kitchens: the batch that it is `of`. */
export const keptClass = z.object({
  key: batchId,
  name,
  of: batchId,
  kitchens: z.array(kitchen).check(z.maxLength(mostKitchens)),
  when: z.exactOptional(when),
});

/** Finished drinks poured together. */
export const blend = z.object({
  key: batchId,
  name,
  parts: z
    .array(z.object({ of: batchId, name: z.string().check(z.maxLength(longestName)), volume: cell }))
    .check(z.maxLength(mostBlended)),
});

export type StockLine = Fixed<z.infer<typeof stockLine>>;
export type Stock = Fixed<z.infer<typeof stock>>;
export type Carton = Fixed<z.infer<typeof carton>>;
export type Packaged = Fixed<z.infer<typeof packaged>>;
export type Kitchen = Fixed<z.infer<typeof kitchen>>;
export type KeptClass = Fixed<z.infer<typeof keptClass>>;
export type KeptBlend = Fixed<z.infer<typeof blend>>;
