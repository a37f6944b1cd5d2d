import type { Formulation } from '../../formula/engine/formulate';
import type { NumericRowId } from '../../formula/recipe/order';
import type { WriteAmount } from '../../formula/steps/steps';
import { labelOf } from '../../formula/words/labels';
import { type Kitchen, writeRow } from '../../formula/words/write-row';
import { leading } from '../jar/leading';

/** How steps write an amount: the unit that leads, the other in brackets; the row to mend where there is none. */
export function stepAmounts(formulation: Formulation, kitchen: Kitchen): WriteAmount {
  return (id: NumericRowId): string => {
    const written = writeRow(formulation, id, kitchen);
    if (written === null) return `the amount under “${labelOf(id)}”`;
    const { first, second } = leading(written, kitchen.leads);
    return second === null ? first : `${first} (${second})`;
  };
}
