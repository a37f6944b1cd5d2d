import type { NumericRowId } from './order';
import type { TermId, Ways } from './row';
import { numericRows } from './sheet';
import { intermediates } from './terms';

export function isRow(id: string): id is NumericRowId {
  return Object.hasOwn(numericRows, id);
}

/** The ways of a row or of what rows share. */
export function waysOf(id: TermId): Ways {
  return isRow(id) ? numericRows[id].ways : intermediates[id];
}
