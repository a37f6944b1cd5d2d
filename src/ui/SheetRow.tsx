import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { isRow } from '../formula/evaluate';
import { labelOf } from '../formula/labels';
import type { NumericRowId, RowId } from '../formula/order';
import { ChoiceCell } from './ChoiceCell';
import { NumberCell } from './NumberCell';
import type { SheetState } from './sheet-state';

interface Props {
  readonly id: RowId;
  readonly store: Store;
  readonly state: SheetState;
}

/** One quantity across all batches. */
export function SheetRow({ id, store, state }: Props) {
  const { batches } = store.document.value;
  const sized = batches.filter((batch) => store.formulationOf(batch).sizedFrom === id);
  return (
    <tr>
      <th scope="row" class="label" id={`label-${id}`}>
        {labelOf(id)}
        {sized.length > 0 && <span class="sized">the batch is sized from this</span>}
      </th>
      {batches.map((batch) => (
        <CellOf key={batch.id} id={id} batch={batch} store={store} state={state} />
      ))}
    </tr>
  );
}

interface CellProps extends Props {
  readonly batch: Batch;
}

function CellOf({ id, batch, store, state }: CellProps) {
  return isNumeric(id) ? (
    <NumberCell id={id} batch={batch} store={store} state={state} />
  ) : (
    <ChoiceCell id={id} batch={batch} store={store} state={state} />
  );
}

function isNumeric(id: RowId): id is NumericRowId {
  return isRow(id);
}
