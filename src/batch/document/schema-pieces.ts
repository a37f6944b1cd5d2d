import * as z from 'zod/mini';
import { baseUnits } from '../../measure/units';
import { sweeteners } from '../../reference/sweeteners';
import { largestShare, longestText } from './document-limits';
import { keysOf } from './table-keys';

// Checks made faster by building code from text would break the page's content security policy.
z.config({ jitless: true });

export const anything = z.unknown();

export type Fixed<T> = { readonly [K in keyof T]: Fixed<T[K]> };

/** Ids end up in the page's own ids, where a space would part them. */
export const batchId = z.string().check(z.regex(/^[A-Za-z][\w-]{0,63}$/));

export const cell = z.object({
  text: z.string().check(z.maxLength(longestText)),
  amount: z.nullable(z.number()),
  kind: z.enum(keysOf(baseUnits)),
});

/** The most sweeteners that a blend has. */
export const mostParts = 50;

export const sweetenerPart = z.object({
  id: z.enum(keysOf(sweeteners)),
  share: z.number().check(z.gte(0), z.lte(largestShare)),
});

/** A time on the wall of the kitchen, with no zone: 2026-11-28T08:00. */
export const localMinute = z
  .string()
  .check(z.regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d$/));

/**
 * When a batch is made: the soak begins at this time, or the first glass is wanted by it. No start before `from` could
 * be made any more when a glass was asked for; left out by earlier pages.
 */
export const when = z.object({ by: z.enum(['start', 'drink']), at: localMinute, from: z.exactOptional(localMinute) });
