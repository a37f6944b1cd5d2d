import { formulate } from '../../formula/engine/formulate';
import { inKitchen, type LeftBehind, type Lesson, lessonOf } from '../../formula/lesson/lesson';
import type { Given } from '../../formula/recipe/recipe';
import { convertNumber } from '../../measure/units';
import { writeTrimmed } from '../../measure/write-quantity';
import { writeUnrounded } from '../../measure/write-unrounded';
import {
  type Batch,
  type GivenCell,
  type KeptClass,
  type Kitchen,
  longestName,
  recipeOf,
  type SheetDocument,
} from '../document/document';
import { cutText } from '../document/plain-text';
import { readCell } from '../reading/read-cell';

/** A class as it is worked out: the recipe, and what of it is carried to each kitchen. */
export interface Taught {
  readonly batch: Batch;
  readonly lesson: Lesson;
}

/** The recipe of a class, ready to be carried to its kitchens; null where its batch is gone or can’t be worked out. */
export function taughtBy(document: SheetDocument, { of }: KeptClass): Taught | null {
  const batch = document.batches.find(({ id }) => id === of);
  if (batch === undefined) return null;
  const recipe = recipeOf(document, batch);
  return formulate(recipe).failed ? null : { batch, lesson: lessonOf(recipe) };
}

/** The batch that a kitchen makes of the recipe. */
export interface KitchenBatch {
  /** It has the id of the recipe, whose figures of one’s own it is worked out with. */
  readonly batch: Batch;
  readonly left: readonly LeftBehind[];
}

/**
 * The recipe as a batch of one kitchen, named after both, and planned as the class is. What was typed for the recipe
 * stays as typed; a rate that its amounts came to is written out, so that its link and a copy read the same.
 */
export function kitchenBatch(
  document: SheetDocument,
  { batch, lesson }: Taught,
  kitchen: Kitchen,
  when: KeptClass['when'],
): KitchenBatch {
  const { recipe, left } = inKitchen(lesson, kitchen);
  const { onHand: _, opened: __, when: ___, ...rest } = batch;
  const given = recipe.given.map((one) => cellFor(document, batch, one, kitchen));
  const name = cutText(`${kitchen.name}: ${batch.name}`, longestName);
  const { vessel, grains } = kitchen;
  const made = { ...rest, name, vessel, grains, given, measured: {} };
  return { batch: when === undefined ? made : { ...made, when }, left };
}

function cellFor({ settings }: SheetDocument, batch: Batch, { row, kind, amount }: Given, kitchen: Kitchen): GivenCell {
  const old = batch.given.find((cell) => cell.row === row);
  if (old !== undefined && old.amount === amount) return old;
  const text =
    kind === 'temperature'
      ? writeTemperature(amount ?? 0, kitchen.leads, settings.decimalComma)
      : writeUnrounded(amount ?? 0, kind, settings.decimalComma);
  return { ...readCell(row, text, settings), row };
}

const places = 2;

/** A temperature as a kitchen says it, in °C or °F, to two decimals. */
export function writeTemperature(celsius: number, leads: Kitchen['leads'], decimalComma: boolean): string {
  const unit = leads === 'us' ? '°F' : '°C';
  const value = leads === 'us' ? convertNumber(celsius, '°C', '°F') : celsius;
  return `${writeTrimmed(value, places, decimalComma)} ${unit}`;
}
