import type { Formulation } from '../../formula/engine/formulate';
import type { NumericRowId } from '../../formula/recipe/order';
import type { WriteAmount } from '../../formula/steps/steps';
import { bothUnits } from '../../formula/words/both-units';
import { labelOf } from '../../formula/words/labels';
import { type Kitchen, writeRow } from '../../formula/words/write-row';

/** How steps write an amount: the unit that leads, the other in brackets; the row to mend where there is none. */
export function stepAmounts(formulation: Formulation, kitchen: Kitchen): WriteAmount {
  return (id: NumericRowId): string => {
    const written = writeRow(formulation, id, kitchen);
    if (written === null) return `the amount under “${labelOf(id)}”`;
    return bothUnits(written, kitchen.leads);
  };
}
