import type { Batch } from '../../batch/document';
import type { SheetStore } from '../../batch/sheet-store';
import { isRow } from '../../formula/evaluate';
import { labelOf } from '../../formula/labels';
import type { RowId } from '../../formula/order';
import { ChoiceCell } from './ChoiceCell';
import { columnIndex, type Drawn } from './columns-on-screen';
import type { Range } from './grid-range';
import { NumberCell } from './NumberCell';
import { Spacer } from './Spacer';
import type { SheetState } from './sheet-state';

interface Props {
  readonly id: RowId;
  readonly store: SheetStore;
  readonly state: SheetState;
  readonly batches: readonly Batch[];
  readonly drawn: Drawn;
  readonly range: () => Range;
}

/** One quantity across the batches that are drawn. */
export function SheetRow({ id, store, state, batches, drawn, range }: Props) {
  const { rows, batches: columns } = range();
  const isPicked = (batch: Batch): boolean => rows.includes(id) && columns.includes(batch.id);
  return (
    <tr>
      <th scope="row" class="label" id={`label-${id}`}>
        {labelOf(id)}
      </th>
      <Spacer width={drawn.before} />
      {batches.map((batch, at) => {
        const shared = { batch, store, state, column: columnIndex(drawn, at), picked: isPicked(batch) };
        return isRow(id) ? (
          <NumberCell key={batch.id} id={id} {...shared} />
        ) : (
          <ChoiceCell key={batch.id} id={id} {...shared} />
        );
      })}
      <Spacer width={drawn.after} />
    </tr>
  );
}
