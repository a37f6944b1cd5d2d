import { changeRecipe } from '../../formula/advice/typed-change';
import { formulate } from '../../formula/engine/formulate';
import { coefficients } from '../../formula/recipe/coefficients';
import type { Yours } from '../../formula/recipe/recipe';
import type { Instant } from '../../formula/time/event';
import { learnPace } from '../../formula/time/learn-pace';
import type { Look } from '../../formula/time/looks';
import { sources } from '../../reference/sources';
import { changeBatch } from '../document/change-batch';
import { type Batch, type Logged, recipeOf, type SheetDocument } from '../document/document';
import { longestName, longestNote, mostCorrections, mostDaysWaiting, mostLogged } from '../document/document-limits';
import { cutText } from '../document/plain-text';
import { instantOf } from '../reading/local-time';
import { correct, giveBack } from './edits';

const minutesOfHour = 60;

/** Under which key the pace of this kitchen is kept. */
export const paceKey = 'kitchen.pace';

/** Writes down what was found at a jar, and learns from it. A log that is full, or an entry with a NaN, changes nothing. */
export function addEntry(document: SheetDocument, entry: Logged): SheetDocument {
  if (document.log.length >= mostLogged || !isSound(entry)) return document;
  return learn({ ...document, log: [...document.log, tidy(entry)] });
}

/** Puts another entry in the place of one, counted from 0; a place that is not there changes nothing. */
export function changeEntry(document: SheetDocument, place: number, entry: Logged): SheetDocument {
  if (document.log[place] === undefined || !isSound(entry)) return document;
  return learn({ ...document, log: document.log.with(place, tidy(entry)) });
}

/** Takes an entry away, and what it taught; a place that is not there changes nothing. */
export function removeEntry(document: SheetDocument, place: number): SheetDocument {
  if (document.log[place] === undefined) return document;
  return learn({ ...document, log: document.log.toSpliced(place, 1) });
}

/** Goes back to the usual pace; the entries stay, and the next one teaches again. */
export function forgetPace(document: SheetDocument): SheetDocument {
  return giveBack(document, paceKey);
}

/** Takes what the log teaches, also in place of a figure that was typed. */
export function takeLearnedPace(document: SheetDocument): SheetDocument {
  return learn(giveBack(document, paceKey));
}

/** Whether the milk of a batch comes out of a carton. */
export function isOfCarton({ source }: Pick<Batch, 'source'>): boolean {
  return sources[source].slower !== undefined;
}

/**
 * Finds out whether an entry is about a carton. One that does not say so, from an earlier page, is taken for what its
 * batch is of now, and for homemade where that is gone.
 */
export function cartonFinder({ batches }: Pick<SheetDocument, 'batches'>): (entry: Logged) => boolean {
  const cartons = new Set(batches.filter(isOfCarton).map(({ id }) => id));
  return ({ batch, carton }) => carton ?? cartons.has(batch);
}

/** The looks that may teach the pace of the kitchen: some cartons never turn, and that is no fault of the kitchen’s. */
export function teachersOf(document: Pick<SheetDocument, 'batches' | 'log'>): readonly Look[] {
  const isCarton = cartonFinder(document);
  return looksOf(document.log.filter((entry) => !isCarton(entry)));
}

/**
 * Keeps what the whole log teaches as the cook’s own pace, within what may be typed for it. A pace that the cook typed
 * stays; where nothing teaches any more, the learned one goes.
 */
export function learn(document: SheetDocument): SheetDocument {
  const old = document.yours[paceKey];
  if (old !== undefined && !isTaught(paceKey, old.how)) return document;
  if (old === undefined && Object.keys(document.yours).length >= mostCorrections) return document;
  const learned = learnPace(teachersOf(document));
  if (learned === null) return giveBack(document, paceKey);
  const { least, most } = coefficients.pace;
  return correct(document, paceKey, Math.min(most, Math.max(least, learned.pace)), 'learned');
}

/** Whether a figure is what the log teaches, and so none of the cook’s own. */
export function isTaught(key: string, how: Yours['how']): boolean {
  return key === paceKey && how === 'learned';
}

/** The entries as the engine reads them. */
export function looksOf(log: readonly Logged[]): readonly Look[] {
  return log.map(({ batch, found, at, hours, expected, acidity }) => ({
    batch,
    found,
    hours,
    expected,
    acidity,
    at: hoursOf(instantOf(at)),
  }));
}

/** The order of a log, the latest look first; of those written down in the same minute, the one after more hours. */
export function latestFirst(one: Logged, other: Logged): number {
  const byTime = other.at.localeCompare(one.at);
  return byTime === 0 ? (other.hours ?? 0) - (one.hours ?? 0) : byTime;
}

/** An instant as hours, on the clock of the looks; no number where there is no such time. */
export function hoursOf(at: Instant | null): number {
  return at === null ? Number.NaN : at / minutesOfHour;
}

/**
 * The hours after which the sheet would have this batch ready at the usual pace, in a room of this temperature (°C, null
 * for the one in the sheet); null where it has no number, as outside the temperatures of its models.
 */
export function expectedHours(document: SheetDocument, batch: Batch, temperature: number | null): number | null {
  const recipe = recipeOf(forgetPace(document), batch);
  const room = { row: 'roomTemperature', text: '', amount: temperature, kind: 'temperature' } as const;
  const changed = temperature === null ? recipe : changeRecipe(recipe, [{ do: 'type', ...room }]);
  const { value } = formulate(changed).rows.readyTime;
  return typeof value === 'number' && value > 0 ? value : null;
}

/** Says that a heat-treated carton was opened for this batch, to be given up after so many days; null takes it back. */
export function openCarton(document: SheetDocument, batchId: string, days: number | null): SheetDocument {
  if (days !== null && !(Number.isInteger(days) && days >= 1 && days <= mostDaysWaiting)) return document;
  return changeBatch(document, batchId, (batch) => {
    if ((batch.opened?.days ?? null) === days) return batch;
    const { opened: _, ...rest } = batch;
    return days === null ? rest : { ...rest, opened: { days } };
  });
}

function isSound({ hours, expected, temperature, acidity }: Logged): boolean {
  return [hours, expected, temperature, acidity].every((value) => value === null || Number.isFinite(value));
}

/** What would not be saved is cut; a negative zero would come back as another document. */
function tidy(entry: Logged): Logged {
  return {
    ...entry,
    name: cutText(entry.name, longestName),
    note: cutText(entry.note, longestNote),
    hours: entry.hours === null ? null : entry.hours + 0,
    temperature: entry.temperature === null ? null : entry.temperature + 0,
    acidity: entry.acidity === null ? null : entry.acidity + 0,
  };
}
