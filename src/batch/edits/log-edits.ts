import { changeRecipe } from '../../formula/advice/typed-change';
import { formulate } from '../../formula/engine/formulate';
import { coefficients } from '../../formula/recipe/coefficients';
import type { Yours } from '../../formula/recipe/recipe';
import type { Instant } from '../../formula/time/event';
import { type LearnedPaces, learnPaces } from '../../formula/time/learn-pace';
import type { Look } from '../../formula/time/looks';
import { isPaceKey, paceKey } from '../../formula/time/pace-keys';
import { sources } from '../../reference/sources';
import { changeBatch } from '../document/change-batch';
import { type Batch, type Logged, recipeOf, type SheetDocument } from '../document/document';
import { longestName, longestNote, mostDaysWaiting, mostLogged } from '../document/document-limits';
import { cutText } from '../document/plain-text';
import { instantOf } from '../reading/local-time';
import { correct, giveBack } from './edits';

const minutesOfHour = 60;

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

/** Leaves an entry out of what the log teaches, or counts it again; a place that is not there changes nothing. */
export function leaveOut(document: SheetDocument, place: number, isLeftOut: boolean): SheetDocument {
  const entry = document.log[place];
  if (entry === undefined || (entry.leftOut === true) === isLeftOut) return document;
  const { leftOut: _, ...rest } = entry;
  return learn({ ...document, log: document.log.with(place, isLeftOut ? { ...rest, leftOut: true } : rest) });
}

/** Goes back to the usual pace; the entries stay, and the next one teaches again. */
export function forgetPace(document: SheetDocument): SheetDocument {
  return withoutFactors(document, isTaught);
}

/** The document at the usual pace, whatever the cook has typed for it or the log has taught. */
function atUsualPace(document: SheetDocument): SheetDocument {
  return withoutFactors(document, isPaceKey);
}

function withoutFactors(document: SheetDocument, isGone: (key: string, how: Yours['how']) => boolean): SheetDocument {
  const kept = Object.entries(document.yours).filter(([key, { how }]) => !isGone(key, how));
  if (kept.length === Object.keys(document.yours).length) return document;
  return { ...document, yours: Object.fromEntries(kept) };
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

/** The looks that teach the pace of the kitchen: some cartons never turn, and that is no fault of the kitchen’s. */
export function teachersOf(document: Pick<SheetDocument, 'batches' | 'log'>): readonly Look[] {
  return [...teachersByEntry(document).values()];
}

/** The same by the entry that each look is. */
export function teachersByEntry(document: Pick<SheetDocument, 'batches' | 'log'>): ReadonlyMap<Logged, Look> {
  const isCarton = cartonFinder(document);
  const taught = document.log.filter((entry) => entry.leftOut !== true && !isCarton(entry));
  const looks = looksOf(taught, document.batches);
  return new Map(taught.flatMap((entry, at) => (looks[at] === undefined ? [] : [[entry, looks[at]] as const])));
}

/** What the log teaches beside what the cook has typed; null where nothing does, or the cook has typed the pace. */
export function whatLogTeaches(document: SheetDocument): LearnedPaces | null {
  return learnPaces([...teachersByEntry(document).values()], typedFactors(document.yours));
}

/** The factors of the pace that the cook has typed, but the one for the whole kitchen. */
export function typedFactors(yours: SheetDocument['yours']): Readonly<Record<string, number>> {
  const typed = Object.entries(yours).filter(
    ([key, { how }]) => isPaceKey(key) && key !== paceKey && how !== 'learned',
  );
  return Object.fromEntries(typed.map(([key, { value }]) => [key, value]));
}

/**
 * Keeps what the whole log teaches as the cook’s own pace, each factor within what may be typed for it. A pace that the
 * cook typed stays, and nothing is learned beside it; where nothing teaches any more, what was learned goes.
 */
export function learn(document: SheetDocument): SheetDocument {
  const old = document.yours[paceKey];
  const isTyped = old !== undefined && !isTaught(paceKey, old.how);
  const factors = isTyped ? undefined : whatLogTeaches(document)?.factors;
  const isStale = (key: string, how: Yours['how']) => isTaught(key, how) && !(isPaceKey(key) && factors?.has(key));
  let next = withoutFactors(document, isStale);
  const { least, most } = coefficients.pace;
  for (const [key, pace] of factors ?? []) {
    next = correct(next, key, Math.min(most, Math.max(least, pace)), 'learned');
  }
  return next;
}

/** Whether a figure is what the log teaches, and so none of the cook’s own. */
export function isTaught(key: string, how: Yours['how']): boolean {
  return isPaceKey(key) && how === 'learned';
}

/**
 * The entries as the engine reads them. One that does not say of what it was, from an earlier page, is taken for what its
 * batch is of now, of these.
 */
export function looksOf(log: readonly Logged[], batches: readonly Batch[] = []): readonly Look[] {
  const byId = new Map(batches.map((batch) => [batch.id, batch]));
  return log.map(({ batch, found, at, hours, expected, acidity, holds, was }) => {
    const { grains, source } = was ?? byId.get(batch) ?? {};
    return {
      ...{ batch, found, hours, expected, acidity, at: hoursOf(instantOf(at)) },
      ...(holds === undefined ? {} : { holds }),
      ...(grains === undefined ? {} : { grains }),
      // A source of the cook’s own is another one in each batch.
      ...(source === undefined || source === 'own' ? {} : { source }),
    };
  });
}

/** The recipe of a batch as it is written down with what was found at its jar. */
export function recipeThen(document: SheetDocument, batch: Batch): NonNullable<Logged['was']> {
  const { rows } = formulate(recipeOf(document, batch));
  const rate = (id: 'sugarRate' | 'startingSugar' | 'grainRate'): number | null => {
    const { value } = rows[id];
    return typeof value === 'number' && value >= 0 ? value : null;
  };
  const { source, grains, sweetener, carton } = batch;
  return {
    ...{ source, grains, sweetener },
    ...{ sugarRate: rate('sugarRate'), startingSugar: rate('startingSugar'), grainRate: rate('grainRate') },
    ...(carton === undefined ? {} : { carton }),
  };
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
  const recipe = recipeOf(atUsualPace(document), batch);
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
