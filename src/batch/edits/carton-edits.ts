import { coefficientKey } from '../../formula/recipe/coefficients';
import { type CartonLook, type CartonRecord, isToBeWarnedOf, recordOf } from '../../formula/time/carton-record';
import { askWhichCarton, warnOfCarton } from '../../formula/time/carton-words';
import { changeBatch } from '../document/change-batch';
import { type Batch, type Logged, longestName, longestText, recipeOf, type SheetDocument } from '../document/document';
import { longestNote, mostCartons } from '../document/document-limits';
import { cleanName, cutText } from '../document/plain-text';
import { readCoefficient } from '../reading/read-coefficient';
import { correct } from './edits';
import { cartonFinder, isOfCarton, looksOf } from './log-edits';

export type Carton = NonNullable<SheetDocument['cartons']>[number];

/** What may be written of a carton beside its name. */
export type CartonNotes = Omit<Carton, 'name'>;

/**
 * Says which carton a batch is made of, known by this name or new; a blank name takes it back. The sugar and the serving
 * of a known one’s label become the sheet’s figures for cartons of this kind.
 */
export function nameCarton(document: SheetDocument, batchId: string, text: string): SheetDocument {
  const name = cutText(cleanName(text), longestName);
  const named = changeBatch(document, batchId, (batch) => {
    if ((batch.carton ?? '') === name) return batch;
    const { carton: _, ...rest } = batch;
    return name === '' ? rest : { ...rest, carton: name };
  });
  if (name === '') return named;
  const { cartons = [] } = named;
  const known = cartons.find((one) => one.name === name);
  if (known === undefined) return cartons.length >= mostCartons ? named : { ...named, cartons: [...cartons, { name }] };
  const batch = named.batches.find(({ id }) => id === batchId);
  return batch === undefined ? named : withLabel(named, batch, known);
}

/** Writes down what a carton is and what its label says; what is blank is left out. Batches of it follow. */
export function noteCarton(document: SheetDocument, name: string, notes: CartonNotes): SheetDocument {
  const { cartons = [] } = document;
  const place = cartons.findIndex((one) => one.name === name);
  if (place < 0) return document;
  const kept = Object.entries({
    kind: cutText(notes.kind?.trim() ?? '', longestText),
    sugar: cutText(notes.sugar?.trim() ?? '', longestText),
    serving: cutText(notes.serving?.trim() ?? '', longestText),
    note: cutText(notes.note?.trim() ?? '', longestNote),
  }).filter(([, text]) => text !== '');
  const carton: Carton = { name, ...Object.fromEntries(kept) };
  const noted: SheetDocument = { ...document, cartons: cartons.with(place, carton) };
  return document.batches
    .filter((batch) => batch.carton === name)
    .reduce<SheetDocument>((all, batch) => withLabel(all, batch, carton), noted);
}

/** Takes a carton out of the register; what was found at jars of it stays in the log. */
export function removeCarton(document: SheetDocument, name: string): SheetDocument {
  const { cartons = [] } = document;
  const left = cartons.filter((one) => one.name !== name);
  if (left.length === cartons.length) return document;
  const { cartons: _, ...rest } = document;
  return left.length === 0 ? rest : { ...rest, cartons: left };
}

/** Why what was typed of a label can’t be read; null where it can, or is blank. */
export function labelProblem(id: 'labelSugar' | 'labelServing', text: string, decimalComma: boolean): string | null {
  if (text.trim() === '') return null;
  const read = readCoefficient(id, text, unitOf[id], decimalComma);
  return read.ok ? null : read.why;
}

/** The carton that an entry was about, by its name; null where it was about none, or nobody said which. */
export function cartonOf(document: Pick<SheetDocument, 'batches'>): (entry: Logged) => string | null {
  const isCarton = cartonFinder(document);
  const names = new Map(document.batches.map(({ id, carton }) => [id, carton]));
  return (entry) => (isCarton(entry) ? (entry.was?.carton ?? names.get(entry.batch) ?? null) : null);
}

/** How each carton did, by its name: of all in the register and in the log. Homemade milks are never counted. */
export function cartonRecords(document: SheetDocument): ReadonlyMap<string, CartonRecord> {
  const nameOf = cartonOf(document);
  const byName = new Map<string, Logged[]>((document.cartons ?? []).map(({ name }) => [name, []]));
  for (const entry of document.log) {
    const name = nameOf(entry);
    if (name !== null) byName.set(name, [...(byName.get(name) ?? []), entry]);
  }
  return new Map([...byName].map(([name, entries]) => [name, recordOf(cartonLooks(entries))]));
}

/**
 * What is to be said of the carton that a batch is made of; null where it did well enough, or was never tried. Where
 * nobody said which one it is, those of its kind that refused are named.
 */
export function cartonWarning(document: SheetDocument, batch: Batch): string | null {
  if (!isOfCarton(batch)) return null;
  const { carton, source } = batch;
  const nameOf = cartonOf(document);
  const record = (name: string) => recordOf(cartonLooks(document.log.filter((entry) => nameOf(entry) === name)));
  if (carton !== undefined) return isToBeWarnedOf(record(carton)) ? warnOfCarton(carton, record(carton)) : null;
  const alike = document.log.filter(({ was }) => was?.source === source).map(nameOf);
  const refused = [...new Set(alike)].filter((name) => name !== null).filter((name) => isToBeWarnedOf(record(name)));
  return refused.length === 0 ? null : askWhichCarton(refused);
}

/** The names of the steps for undo and redo. */
export const cartonSteps = {
  name: (name: string) =>
    name.trim() === '' ? 'No longer say which carton' : `Make it of “${cutText(name.trim(), 40)}”`,
  note: (name: string) => `Note the carton “${cutText(name, 40)}”`,
  remove: (name: string) => `Remove the carton “${cutText(name, 40)}”`,
} as const;

const unitOf = { labelSugar: 'g', labelServing: 'mL' } as const;

function cartonLooks(entries: readonly Logged[]): readonly CartonLook[] {
  return looksOf(entries).map((look, at) => ({ ...look, gaveUp: entries[at]?.gaveUp === true }));
}

function withLabel(document: SheetDocument, batch: Batch, { sugar, serving }: Carton): SheetDocument {
  if (!isOfCarton(batch)) return document;
  const recipe = recipeOf(document, batch);
  const take = (all: SheetDocument, id: keyof typeof unitOf, text: string | undefined): SheetDocument => {
    const read = text === undefined ? null : readCoefficient(id, text, unitOf[id], document.settings.decimalComma);
    return read?.ok === true ? correct(all, coefficientKey(id, recipe), read.value, 'typed') : all;
  };
  return take(take(document, 'labelSugar', sugar), 'labelServing', serving);
}
