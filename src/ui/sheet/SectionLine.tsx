import { useComputed } from '@preact/signals';
import type { Batch } from '../../batch/document';
import type { SectionId } from '../../formula/order';
import type { Drawn } from './columns-on-screen';
import { Spacer } from './Spacer';
import type { SheetState } from './sheet-state';

interface Props {
  readonly id: SectionId;
  readonly label: string;
  readonly state: SheetState;
  readonly batches: readonly Batch[];
  readonly drawn: Drawn;
}

/** The name of a section, which folds its rows away. */
export function SectionLine({ id, label, state, batches, drawn }: Props) {
  const here = useComputed(() => state.spot.value.line === `section:${id}`).value;
  const folded = state.folded.value.has(id);
  return (
    <tr>
      <th scope="rowgroup" class="label section-name">
        <button
          type="button"
          class="fold"
          aria-expanded={!folded}
          tabIndex={here ? 0 : -1}
          data-spot={here}
          data-line={`section:${id}`}
          onClick={() => state.fold(id)}
        >
          {label}
        </button>
      </th>
      <Spacer width={drawn.before} />
      {batches.map((batch) => (
        <td class="section-fill" key={batch.id} />
      ))}
      <Spacer width={drawn.after} />
    </tr>
  );
}
