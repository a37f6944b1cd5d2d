import { cupStandards } from '../../measure/cup-standards';
import { doubleOf } from '../../measure/exact';
import { writeFinely } from '../../measure/finer-scoops';
import { scaleOf } from '../../measure/unit-scale';
import { units } from '../../measure/units';
import type { FoodId } from '../../reference/foods';
import { kitchen as defaults } from '../../reference/kitchen';
import { measureErrors, measureKinds } from '../../reference/measure-error';
import type { Coefficient } from '../../reference/origins';
import { isRow } from '../engine/evaluate';
import type { Formulation } from '../engine/formulate';
import { rowWeight } from '../engine/givens';
import type { RowId } from '../recipe/order';
import type { Weighing } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { inScoops } from '../words/in-scoops';
import type { Kitchen } from '../words/write-row';
import { type Figure, ofTable, workedOut } from './figure';
import { oneOf } from './figures/unit';
import { inputOfFigure, type WorkingInput } from './working';

/** How a cell’s amount came to be said in cups or spoons, and what to expect of a level one. */
export interface KitchenWorking {
  /** In cups, or below one in tablespoons. */
  readonly measured: Figure;
  /** How far another level measure of it may be off, as a share; null for what is poured into a jug. */
  readonly error: Figure | null;
  /** The same by more scoops than it is written with, within 1 %; null where they are no nearer. */
  readonly finely: string | null;
}

const { scoopSlack } = defaults;

const weights: Readonly<Record<Exclude<Weighing, 'water' | 'milk'>, string>> = {
  source: '{sourceWeight}',
  sweetener: '{sweetenerWeight}',
  cane: '{caneWeight}',
  grains: '({grainSpoon} ÷ {spoon})',
};

/** The same amount in the cups of this kitchen; null for what is not written in cups. */
export function kitchenWorking(formulation: Formulation, id: RowId, kitchen: Kitchen): KitchenWorking | null {
  const { value } = formulation.rows[id];
  if (!isRow(id) || typeof value !== 'number') return null;
  const row = numericRows[id];
  if (row.kind !== 'mass' && row.kind !== 'volume') return null;
  const weight = row.kind === 'volume' ? 1 : rowWeight(formulation.evaluation, row);
  if (weight === null) return null;
  const { cup, tbsp } = cupStandards[kitchen.cups];
  const volume = value / weight;
  const measure = volume < doubleOf(scaleOf(cup).factor) ? tbsp : cup;
  const { weighing } = row;
  const isPoured = row.kind === 'volume' || weighing === undefined || weighing === 'water' || weighing === 'milk';
  const told = {
    words: isPoured
      ? 'The volume over that of the measure.'
      : 'The weight over the published weight of a mL of it, over the volume of the measure. Grams are the authority.',
    formula: isPoured ? `{${id}} ÷ {measure}` : `{${id}} ÷ ${weights[weighing]} ÷ {measure}`,
    parts: { measure: oneOf(measure), spoon: oneOf('tbsp') },
  };
  const { symbol } = units[measure];
  return {
    measured: workedOut('c', 'In kitchen measure', symbol, volume / doubleOf(scaleOf(measure).factor), told),
    error: isPoured ? null : errorOf(weighing, formulation),
    finely:
      Math.abs(inScoops(volume, kitchen).error) > scoopSlack.value
        ? writeFinely(volume, kitchen.scoops, kitchen.cups, scoopSlack.value)
        : null,
  };
}

function errorOf(weighing: Exclude<Weighing, 'water' | 'milk'>, { choices }: Formulation): Figure {
  return ofTable('±', 'How far another level measure of it may be off', coefficientOf(weighing, choices));
}

function coefficientOf(
  weighing: Exclude<Weighing, 'water' | 'milk'>,
  { source, sweetener, grain }: Formulation['choices'],
): Coefficient {
  if (weighing === 'grains') return measureErrors[spoonedAs(grain)];
  if (weighing === 'cane') return measureErrors.sugar;
  if (weighing === 'source') return ofFood(source.food, source.form === 'liquid' ? 'liquid' : 'pieces');
  // Of a blend, the part that measures worst.
  const errors = sweetener.map(({ entry }) => ofFood(entry.food, entry.state === 'liquid' ? 'liquid' : 'sugar'));
  return errors.reduce((worst, each) => (each.value > worst.value ? each : worst), measureErrors.liquid);
}

/** Grains lie in a spoon in pieces; a starter is a powder or is poured. */
function spoonedAs({ starter }: Formulation['choices']['grain']): keyof typeof measureErrors {
  if (starter === undefined) return 'pieces';
  return starter.packet === undefined ? 'liquid' : 'sugar';
}

function ofFood(food: FoodId | null, otherwise: keyof typeof measureErrors): Coefficient {
  return measureErrors[food === null ? otherwise : measureKinds[food]];
}

/** Both as inputs of a working. */
export function inputsOfKitchen({ measured, error }: KitchenWorking): readonly WorkingInput[] {
  const inputs = [inputOfFigure('measured', measured)];
  return error === null ? inputs : [...inputs, inputOfFigure('error', error)];
}
