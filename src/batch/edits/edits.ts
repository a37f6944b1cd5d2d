import {
  type CoefficientDefinition,
  type CoefficientId,
  coefficients,
  isAllowed,
} from '../../formula/recipe/coefficients';
import { type ChoiceRowId, isMeasuredRow, type MeasuredRowId, type NumericRowId } from '../../formula/recipe/order';
import type { HeatStep, SweetenerPart, Yours } from '../../formula/recipe/recipe';
import { numericRows } from '../../formula/rows/sheet';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { type SourceId, sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import { isNamedAfter, nameFor } from '../document/batch-name';
import { changeBatch } from '../document/change-batch';
import { exampleName } from '../document/demo';
import { type Batch, type GivenCell, largestShare, type SheetDocument } from '../document/document';
import { hottestHeat, longestHeat, longestName, longestText, mostCorrections } from '../document/document-limits';
import { isKeyOf } from '../document/table-keys';
import { isBlank, readCell } from '../reading/read-cell';

// Every edit is document to document, and gives back the same object where nothing changes: that is no step to undo.

/**
 * Types a text into a row; a blank text clears it. A row typed anew keeps its place in the order of typing, which
 * decides what the batch is sized from. In a row that is only measured it is a measurement; a row that can't be typed
 * stays as it is.
 */
export function typeCell(document: SheetDocument, batchId: string, row: NumericRowId, text: string): SheetDocument {
  if (isOnlyMeasured(row)) return measureCell(document, batchId, row, text);
  if (numericRows[row].typed === 'never') return document;
  if (isBlank(text)) return clearCell(document, batchId, row);
  return changeBatch(document, batchId, (batch) => {
    const old = batch.given.find((cell) => cell.row === row);
    const read = readCell(row, text, document.settings);
    if (old === undefined) return { ...batch, given: [...batch.given, { ...read, row }] };
    if (old.text === read.text) return batch;
    return { ...batch, given: batch.given.map((cell) => (cell === old ? { ...old, ...read } : cell)) };
  });
}

/** Clears what was typed into a row, so that it is worked out again. */
export function clearCell(document: SheetDocument, batchId: string, row: NumericRowId): SheetDocument {
  const cleared = changeBatch(document, batchId, (batch) => {
    const given = batch.given.filter((cell) => cell.row !== row);
    return given.length === batch.given.length ? batch : { ...batch, given };
  });
  return isOnlyMeasured(row) ? clearMeasured(cleared, batchId, row) : cleared;
}

/** Clears what was typed into several rows of several batches. */
export function clearCells(
  document: SheetDocument,
  batchIds: readonly string[],
  rows: readonly NumericRowId[],
): SheetDocument {
  return batchIds.reduce((all, id) => rows.reduce((one, row) => clearCell(one, id, row), all), document);
}

/** Whether the row takes only what was measured, so that typing into it measures. */
export function isOnlyMeasured(row: NumericRowId): row is NumericRowId & MeasuredRowId {
  return numericRows[row].typed === 'measured' && isMeasuredRow(row);
}

/** Enters what the scale, the jug or the strip said for a row; a blank text forgets it. */
export function measureCell(document: SheetDocument, batchId: string, row: MeasuredRowId, text: string): SheetDocument {
  if (isBlank(text)) return clearMeasured(document, batchId, row);
  return changeBatch(document, batchId, (batch) => {
    const old = batch.measured[row];
    const read = readCell(row, text, document.settings);
    return old?.text === read.text ? batch : { ...batch, measured: { ...batch.measured, [row]: { ...old, ...read } } };
  });
}

/** Forgets what was measured for a row. */
export function clearMeasured(document: SheetDocument, batchId: string, row: MeasuredRowId): SheetDocument {
  return changeBatch(document, batchId, (batch) => {
    if (batch.measured[row] === undefined) return batch;
    const { [row]: _, ...measured } = batch.measured;
    return { ...batch, measured };
  });
}

/**
 * Chooses a jar, a source, a sweetener or a kind of grains by its id; all that was typed is kept. An id that is not in
 * the table changes nothing. A sweetener chosen so takes the place of a blend. A name that came from the source goes
 * with it.
 */
export function choose(document: SheetDocument, batchId: string, row: ChoiceRowId, id: string): SheetDocument {
  return changeBatch(document, batchId, (batch) => {
    switch (row) {
      case 'vessel':
        return isKeyOf(jars, id) && id !== batch.vessel ? { ...batch, vessel: id } : batch;
      case 'source':
        return isKeyOf(sources, id) && id !== batch.source ? withSource(document, batch, id) : batch;
      case 'grains':
        return isKeyOf(grains, id) && id !== batch.grains ? { ...batch, grains: id } : batch;
      case 'sweetener':
        return isKeyOf(sweeteners, id) ? sweetenWith(batch, [{ id, share: 1 }]) : batch;
    }
  });
}

function withSource({ batches }: SheetDocument, batch: Batch, source: SourceId): Batch {
  const isOwnName = !isNamedAfter(batch.source, batch.name) && batch.name !== exampleName;
  if (isOwnName) return { ...batch, source };
  const others = batches.filter((one) => one !== batch).map(({ name }) => name);
  return { ...batch, source, name: nameFor(source, others) };
}

/**
 * Sweetens with a blend, by shares of the mass (1 is all of it). Shares that do not add up to 1 are kept, for the sheet
 * to say so; an empty blend, or a share below 0 or beyond any sense, changes nothing.
 */
export function blendSweeteners(
  document: SheetDocument,
  batchId: string,
  parts: readonly SweetenerPart[],
): SheetDocument {
  if (parts.length === 0 || parts.some(({ share }) => !(share >= 0 && share <= largestShare))) return document;
  return changeBatch(document, batchId, (batch) => sweetenWith(batch, parts));
}

function sweetenWith(batch: Batch, parts: readonly SweetenerPart[]): Batch {
  const same =
    parts.length === batch.sweetener.length &&
    parts.every(({ id, share }, at) => batch.sweetener[at]?.id === id && batch.sweetener[at]?.share === share);
  return same ? batch : { ...batch, sweetener: parts.map(({ id, share }) => ({ id, share: share + 0 })) };
}

/** Says that a typed mass of sweetener or grains is all there is, so that it sizes the batch, or takes that back. */
export function setUse(
  document: SheetDocument,
  batchId: string,
  row: 'sweetenerMass' | 'grainMass',
  use: GivenCell['use'],
): SheetDocument {
  return changeBatch(document, batchId, (batch) => {
    const old = batch.given.find((cell) => cell.row === row);
    if (old === undefined || old.use === use) return batch;
    const { use: _, ...rest } = old;
    const cell = use === undefined ? rest : { ...rest, use };
    return { ...batch, given: batch.given.map((one) => (one === old ? cell : one)) };
  });
}

/** Says which fruit or juice the sugar in each bottle comes from; it holds for as long as that sugar stays as it was typed. */
export function addFruit(document: SheetDocument, batchId: string, fruit: NonNullable<Batch['fruit']>): SheetDocument {
  const { grams, name, amount } = fruit;
  if (!Number.isFinite(grams) || grams < 0 || amount.length > longestText || name.length > longestName) return document;
  return changeBatch(document, batchId, (batch) => ({ ...batch, fruit }));
}

/** Sets the heat step, or with null leaves it out. Figures that could not be saved change nothing. */
export function setHeat(document: SheetDocument, batchId: string, heat: HeatStep | null): SheetDocument {
  if (heat !== null && !isWithin(heat.temperature, hottestHeat)) return document;
  if (heat !== null && !isWithin(heat.minutes, longestHeat)) return document;
  return changeBatch(document, batchId, (batch) => {
    const old = batch.heat;
    const same =
      heat === null
        ? old === null
        : old?.what === heat.what && old.temperature === heat.temperature && old.minutes === heat.minutes;
    return same ? batch : { ...batch, heat };
  });
}

/** Whether a figure may be saved: above 0, and at most so much. */
function isWithin(value: number, most: number): boolean {
  return value > 0 && value <= most;
}

/** Puts a figure of the cook's own in place of a table's; a key or figure that can't be, or one too many, changes nothing. */
export function correct(document: SheetDocument, key: string, value: number, how: Yours['how']): SheetDocument {
  const id = coefficientAt(key);
  const old = document.yours[key];
  if (id === null || !isAllowed(id, value) || (old?.value === value && old.how === how)) return document;
  // Beside a pace of the cook’s own nothing that the log taught counts.
  const isPace = key === 'kitchen.pace' && how !== 'learned';
  const others = Object.entries(document.yours).filter((one) => !(isPace && one[1].how === 'learned'));
  const yours = { ...Object.fromEntries(others), [key]: { ...old, value: value + 0, how } };
  return Object.keys(yours).length > mostCorrections ? document : { ...document, yours };
}

/** Keeps what was measured as the cook's own figure from now on. */
export function keepMeasured(document: SheetDocument, key: string, value: number): SheetDocument {
  return correct(document, key, value, 'measured');
}

/** Gives a corrected figure back to the table. */
export function giveBack(document: SheetDocument, key: string): SheetDocument {
  if (!Object.hasOwn(document.yours, key)) return document;
  const { [key]: _, ...yours } = document.yours;
  return { ...document, yours };
}

/** The coefficient that a key such as `almond.uptake` corrects; null where there is none. */
export function coefficientAt(key: string): CoefficientId | null {
  const [owner = '', id = '', ...rest] = key.split('.');
  if (rest.length > 0 || !isKeyOf(coefficients, id)) return null;
  return isKeyOf(owners[coefficients[id].owner], owner.replace(/^own@[\w-]+$/, 'own')) ? id : null;
}

const owners: Readonly<Record<CoefficientDefinition['owner'], Readonly<Record<string, unknown>>>> = {
  kitchen: { kitchen: null },
  vessel: jars,
  source: sources,
  grains,
};
