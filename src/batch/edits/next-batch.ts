import { formulate } from '../../formula/engine/formulate';
import type { LearnedPaces } from '../../formula/time/learn-pace';
import { type Look, makesOf } from '../../formula/time/looks';
import { type NextBatch, nextBatches } from '../../formula/time/next-batch';
import { paceKey } from '../../formula/time/pace-keys';
import { learning } from '../../reference/pace';
import { changeBatch } from '../document/change-batch';
import { type Batch, type Logged, longestName, recipeOf, type SheetDocument } from '../document/document';
import { cutText } from '../document/plain-text';
import { copyBatch, renameBatch } from './batch-list';
import { isOfCarton, looksOf } from './log-edits';
import { takeChanges } from './take-changes';

/** What the last result of a batch says for the next one. */
export interface Advice {
  readonly result: Logged;
  /** The best first. */
  readonly next: readonly NextBatch[];
  /** How long the sheet said that it would take, before that result; null where it said the same, or nothing. */
  readonly was: number | null;
}

/** What the log teaches, and the look that each entry of it is. */
export interface WhatIsTaught {
  readonly paces: LearnedPaces | null;
  readonly teachers: ReadonlyMap<Logged, Look>;
}

/**
 * What to do with the next batch after the last result of this one; null where nothing was found at it that says so, no
 * time can be told, or it is of a carton, of which some never turn whatever is changed.
 */
export function adviceFor(document: SheetDocument, batch: Batch, taught: WhatIsTaught): Advice | null {
  if (isOfCarton(batch)) return null;
  const entries = document.log.filter((entry) => entry.batch === batch.id && entry.leftOut !== true);
  const looks = looksOf(entries);
  const byLook = new Map(looks.map((look, at) => [look, entries[at]]));
  const make = makesOf(looks, learning.sameMake.value).at(-1) ?? [];
  const last = make.findLast(({ found }) => found !== 'looked');
  const result = last === undefined ? undefined : byLook.get(last);
  if (result === undefined || result.hours === null || result.found === 'looked') return null;
  const { found, hours } = result;
  const formulation = formulate(recipeOf(document, plannedAgain(batch)));
  const next = nextBatches(formulation, { found, hours }, document.settings);
  if (next === null) return null;
  const { value } = formulation.rows.readyTime;
  const entriesOfMake = make.flatMap((look) => byLook.get(look) ?? []);
  const faster = document.yours[paceKey]?.how === 'learned' ? fasterBy(entriesOfMake, taught) : null;
  return { result, next, was: typeof value === 'number' && faster !== null ? value * faster : null };
}

/** How many times faster batches like this one are since these entries; null where they taught nothing. */
function fasterBy(entries: readonly Logged[], { paces, teachers }: WhatIsTaught): number | null {
  const looks = entries.flatMap((entry) => teachers.get(entry) ?? []);
  const [first] = looks;
  const before = paces?.without(looks) ?? null;
  return paces === null || first === undefined || before === null ? null : paces.of(first).pace / before;
}

/** The sheet with the next batch after this one, one thing changed. A full sheet stays as it is. */
export function addNext(document: SheetDocument, batchId: string, next: NextBatch): SheetDocument {
  const copied = copyBatch(document, batchId);
  const made = copied.batches.find((one) => !document.batches.some(({ id }) => id === one.id));
  const batch = document.batches.find(({ id }) => id === batchId);
  if (made === undefined || batch === undefined) return document;
  const names = new Set(document.batches.map(({ name }) => name));
  const named = renameBatch(copied, made.id, nextName(batch.name, names));
  const planned = changeBatch(named, made.id, plannedAgain);
  return next.do === 'change' ? takeChanges(planned, made.id, next.way.changes) : planned;
}

/** The batch before anything of it is done: nothing measured, on no day. */
function plannedAgain(batch: Batch): Batch {
  const { when: _, opened: __, ...rest } = batch;
  return { ...rest, measured: {} };
}

const tail = /, next(?: \d+)?$/;
const longestTail = 12;

function nextName(name: string, taken: ReadonlySet<string>): string {
  const own = cutText(name.replace(tail, ''), longestName - longestTail);
  let free = `${own}, next`;
  for (let number = 2; taken.has(free); number += 1) free = `${own}, next ${number}`;
  return free;
}
