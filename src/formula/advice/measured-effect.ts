import { type Formulation, formulate } from '../engine/formulate';
import type { MeasuredRowId, NumericRowId } from '../recipe/order';
import { type Kitchen, writeRow } from '../words/write-row';
import { changeRecipe } from './typed-change';

/** An amount that is another since something was measured, in the unit that leads. */
export interface MovedAmount {
  readonly row: NumericRowId;
  readonly from: string;
  readonly to: string;
}

/** What is weighed, poured or drunk, in the order of the work. */
const amounts: readonly NumericRowId[] = [
  'soakedMass',
  'blendWater',
  'milkVolume',
  'pulpMass',
  'sweetenerMass',
  'grainMass',
  'fillVolume',
  'drinkVolume',
];

/** What a measurement moves: the amounts that the cook reads otherwise with it than without it. None where it is not there. */
export function movedBy(row: MeasuredRowId, formulation: Formulation, kitchen: Kitchen): readonly MovedAmount[] {
  if (formulation.recipe.measured[row] === undefined) return [];
  const without = formulate(changeRecipe(formulation.recipe, [{ do: 'unmeasure', row }]));
  return amounts.flatMap((id): MovedAmount[] => {
    const [from, to] = [lead(without, id, kitchen), lead(formulation, id, kitchen)];
    const isMoved = id !== row && from !== null && to !== null && from !== to;
    return isMoved ? [{ row: id, from, to }] : [];
  });
}

function lead(formulation: Formulation, id: NumericRowId, kitchen: Kitchen): string | null {
  const written = writeRow(formulation, id, kitchen);
  if (written === null) return null;
  return kitchen.leads === 'us' ? (written.us ?? written.metric) : written.metric;
}
