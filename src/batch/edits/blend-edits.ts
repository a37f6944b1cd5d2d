import { halfGlass } from '../../formula/blend/blend';
import { formulate } from '../../formula/engine/formulate';
import { writeMetric } from '../../measure/write-quantity';
import { type Batch, type KeptBlend, longestName, recipeOf, type SheetDocument } from '../document/document';
import { mostBlended, mostBlends } from '../document/document-limits';
import { cleanName, cutText } from '../document/plain-text';
import { isSameData } from '../document/same-data';
import { pouredAs } from '../reading/read-blend';
import { readCell } from '../reading/read-cell';
import { shorten } from './shorten';

// Every edit is document to document, and gives back the same object where nothing changes: that is no step to undo.

type Part = KeptBlend['parts'][number];

/** Adds a blend of batches, half a glass of each, with a name of its own. One more than a sheet holds changes nothing. */
export function addBlend(document: SheetDocument, of: readonly string[]): SheetDocument {
  const { blends = [] } = document;
  if (blends.length >= mostBlends) return document;
  const name = firstFree(
    (number) => (number === 1 ? 'Blend' : `Blend ${number}`),
    blends.map((one) => one.name),
  );
  const key = firstFree(
    (number) => `k${number}`,
    blends.map((one) => one.key),
  );
  const parts = of.slice(0, mostBlended).flatMap((id) => newPart(document, id));
  return { ...document, blends: [...blends, { key, name, parts }] };
}

function firstFree(write: (number: number) => string, taken: readonly string[]): string {
  let number = 1;
  while (taken.includes(write(number))) number += 1;
  return write(number);
}

function newPart(document: SheetDocument, of: string): readonly Part[] {
  const batch = document.batches.find(({ id }) => id === of);
  return batch === undefined ? [] : [{ of, name: batch.name, volume: halfOf(document, batch) }];
}

/** Half a glass, as it would be typed; nothing where the batch can’t be worked out. */
function halfOf(document: SheetDocument, batch: Batch): Part['volume'] {
  const half = halfGlass(formulate(recipeOf(document, batch)));
  const { settings } = document;
  const text = half === null ? '' : writeMetric(half, 'volume', settings.decimalComma);
  return readCell(pouredAs, text, settings);
}

/** Takes a blend away; its batches stay. */
export function removeBlend(document: SheetDocument, key: string): SheetDocument {
  const { blends = [] } = document;
  const left = blends.filter((one) => one.key !== key);
  return left.length === blends.length ? document : { ...document, blends: left };
}

/** Renames a blend. A name of which nothing can be seen changes nothing. */
export function renameBlend(document: SheetDocument, key: string, name: string): SheetDocument {
  const kept = cutText(cleanName(name), longestName);
  return changeBlend(document, key, (one) => (kept === '' || kept === one.name ? one : { ...one, name: kept }));
}

/** Pours half a glass of another batch in. A blend that has as many as it holds stays as it is. */
export function addPart(document: SheetDocument, key: string, of: string): SheetDocument {
  const added = newPart(document, of);
  return changeBlend(document, key, (one) =>
    added.length === 0 || one.parts.length >= mostBlended ? one : { ...one, parts: [...one.parts, ...added] },
  );
}

/** Has a part, by its place from 0, be of another batch. */
export function choosePart(document: SheetDocument, key: string, place: number, of: string): SheetDocument {
  const batch = document.batches.find(({ id }) => id === of);
  return batch === undefined ? document : changePart(document, key, place, { of, name: batch.name });
}

/** How much of a part is poured in, as it is typed; what can’t be read is kept too. */
export function pourPart(document: SheetDocument, key: string, place: number, text: string): SheetDocument {
  return changePart(document, key, place, { volume: readCell(pouredAs, text, document.settings) });
}

/** Takes a part out of a blend, by its place from 0. */
export function removePart(document: SheetDocument, key: string, place: number): SheetDocument {
  return changeBlend(document, key, (one) =>
    one.parts[place] === undefined ? one : { ...one, parts: one.parts.toSpliced(place, 1) },
  );
}

function changePart(document: SheetDocument, key: string, place: number, changes: Partial<Part>): SheetDocument {
  return changeBlend(document, key, (one) => {
    const old = one.parts[place];
    if (old === undefined) return one;
    const part = { ...old, ...changes };
    return isSameData(old, part) ? one : { ...one, parts: one.parts.with(place, part) };
  });
}

function changeBlend(document: SheetDocument, key: string, change: (one: KeptBlend) => KeptBlend): SheetDocument {
  const { blends = [] } = document;
  const place = blends.findIndex((one) => one.key === key);
  const old = blends[place];
  const changed = old === undefined ? undefined : change(old);
  if (changed === undefined || changed === old) return document;
  return { ...document, blends: blends.with(place, changed) };
}

/** The names of the steps for undo and redo. */
export const blendSteps = {
  add: 'Blend finished drinks',
  remove: ({ name }: KeptBlend) => `Remove ${shorten(name)}`,
  rename: (name: string) => `Rename the blend to ${shorten(name)}`,
  addPart: (name: string) => `Pour ${shorten(name)} in`,
  choosePart: (name: string) => `Blend with ${shorten(name)}`,
  pourPart: ({ name }: Part, text: string) => `Pour ${shorten(text)} of ${shorten(name)}`,
  removePart: ({ name }: Part) => `Take ${shorten(name)} out of the blend`,
};
