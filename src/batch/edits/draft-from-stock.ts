import type { Change } from '../../formula/advice/typed-change';
import type { ChoiceRowId } from '../../formula/recipe/order';
import type { Batch, SheetDocument } from '../document/document';
import { addMade } from './batch-list';
import { choose } from './edits';
import { takeChanges } from './take-changes';

/** What a draft has of its own, beside the batch that it is drafted at. */
export type Drafted = Pick<Batch, 'source' | 'sweetener' | 'grains' | 'vessel' | 'given' | 'onHand'>;

/** A batch to be made from what is on hand: the choices and rates of one on the sheet, and nothing measured. */
export function draftOf(batch: Batch, own: Drafted | null): Batch {
  const { when: _, opened: __, ...rest } = { ...batch, ...own };
  // What the sheet knows to be on hand of the same is on hand for the draft too.
  const same = Object.entries(batch.onHand ?? {}).filter(([stock]) => own === null || isSame(stock, own, batch));
  return { ...rest, measured: {}, onHand: { ...own?.onHand, ...Object.fromEntries(same) } };
}

/** Whether what is on hand of this is on hand for the batch that is looked at as well. */
export function isSame(stock: string, draft: Drafted, batch: Batch): boolean {
  if (stock === 'jars') return draft.vessel === batch.vessel;
  if (stock === 'sweetener') return draft.sweetener === batch.sweetener;
  return stock === 'grains' ? draft.grains === batch.grains : draft.source === batch.source;
}

/** The draft with another choice. Rates typed for one source are not another's. */
export function chooseInDraft(document: SheetDocument, draft: Batch, row: ChoiceRowId, id: string): Batch {
  const chosen = choose({ ...document, batches: [draft] }, draft.id, row, id).batches[0] ?? draft;
  return row === 'source' && chosen !== draft ? { ...chosen, given: [] } : chosen;
}

/** The sheet with the draft added as a batch of its own after the one it was drafted at, and its changes made. */
export function addDraft(document: SheetDocument, draft: Batch, changes: readonly Change[]): SheetDocument {
  const { id: after, name: _, ...made } = draft;
  const added = addMade(document, after, made);
  const id = added.batches.find((one) => !document.batches.some((old) => old.id === one.id))?.id;
  return id === undefined ? document : takeChanges(added, id, changes);
}
