import type { NumericRowId } from '../recipe/order';
import type { TermId, Ways } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { intermediates } from '../rows/terms';

export function isRow(id: string): id is NumericRowId {
  return Object.hasOwn(numericRows, id);
}

/** The ways of a row or of what rows share. */
export function waysOf(id: TermId): Ways {
  return isRow(id) ? numericRows[id].ways : intermediates[id];
}
