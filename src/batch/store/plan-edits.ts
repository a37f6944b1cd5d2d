import type { Instant } from '../../formula/time/event';
import { changeBatch } from '../document/change-batch';
import type { Batch, Settings, SheetDocument } from '../document/document';
import { isPlannable, wallOf } from '../reading/local-time';
import { changeSettings } from '../reading/settings';

/** When a batch is made, as it is saved: begun at a wall time, or ready to drink at one. */
export type When = NonNullable<Batch['when']>;

const time = /^([01]\d|2[0-3]):[0-5]\d$/;

/** Plans a batch; the same plan, or a text that is no time, changes nothing. */
export function setWhen(document: SheetDocument, batchId: string, when: When): SheetDocument {
  if (!isPlannable(when.at)) return document;
  return changeBatch(document, batchId, (batch) => (isSame(batch.when, when) ? batch : { ...batch, when }));
}

function isSame(one: When | undefined, other: When): boolean {
  return one?.by === other.by && one.at === other.at && one.from === other.from;
}

/** Plans a batch to begin at an instant, as the clock on the wall shows it. */
export function startAt(document: SheetDocument, batchId: string, at: Instant): SheetDocument {
  return setWhen(document, batchId, { by: 'start', at: wallOf(at) });
}

/** Plans a batch to be ready to drink at an instant, and to begin no earlier than another where that can be had. */
export function drinkAt(document: SheetDocument, batchId: string, at: Instant, from: Instant): SheetDocument {
  return setWhen(document, batchId, { by: 'drink', at: wallOf(at), from: wallOf(from) });
}

/** Takes a batch out of the plan. */
export function clearWhen(document: SheetDocument, batchId: string): SheetDocument {
  return changeBatch(document, batchId, (batch) => {
    if (batch.when === undefined) return batch;
    const { when: _, ...rest } = batch;
    return rest;
  });
}

/** Changes when the night begins or ends; a text that is no time of day, such as 22:00, changes nothing. */
export function setQuiet(document: SheetDocument, changes: Partial<Settings['quiet']>): SheetDocument {
  if (!Object.values(changes).every((text) => time.test(text))) return document;
  return changeSettings(document, { quiet: { ...document.settings.quiet, ...changes } });
}
