import { rowOrder } from '../recipe/order';
import type { TermId } from '../rows/row';
import { intermediateIds } from '../rows/terms';
import { isRow } from './ways-of';

/** Every quantity that has a number, rows first in the order of the work. Its place here is its slot in an evaluation. */
export const termIds: readonly TermId[] = [...rowOrder.filter(isRow), ...intermediateIds];

/** The slot of each term by its id. */
export const slots: ReadonlyMap<string, number> = new Map(termIds.map((id, slot) => [id, slot]));

/** The slot of a term. A name that is no term is a fault in our own code. */
export function slotOf(id: TermId): number {
  const slot = slots.get(id);
  if (slot === undefined) throw new Error(id);
  return slot;
}

/** How many of the first slots are rows. */
export const rowSlots = termIds.length - intermediateIds.length;
