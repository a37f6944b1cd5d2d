import { useEffect, useRef } from 'preact/hooks';
import type { Store } from '../batch/store';
import { type SectionId, sections } from '../formula/order';
import { BatchHead } from './BatchHead';
import { moveByKey } from './grid-keys';
import { WorkingLater } from './Later';
import { SheetRow } from './SheetRow';
import type { SheetState, Spot } from './sheet-state';
import { media, useMedia } from './use-media';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  /** Whether the working opens under its row; beside the sheet otherwise. */
  readonly workingInline: boolean;
}

const page = 8;

/** The grid: rows of quantities in the order of the work, a column for each batch. */
export function Sheet({ store, state, workingInline }: Props) {
  const grid = useRef<HTMLTableElement>(null);
  const { batches } = store.document.value;
  const lines = visibleLines(state.folded.value);
  const spot = state.spot.value;
  const phone = useMedia(media.phone);

  useEffect(() => {
    if (!state.wantsFocus.value) return;
    grid.current?.querySelector<HTMLElement>('[data-spot="true"]')?.focus();
    state.wantsFocus.value = false;
  });

  const move = (event: KeyboardEvent) => {
    if (state.editing.value !== null || event.altKey) return;
    const row = lines.indexOf(spot.line);
    const column = batches.findIndex(({ id }) => id === spot.batch);
    const to = moveByKey(event, { row, column }, { rows: lines.length, columns: batches.length, page });
    if (to === null) return;
    const line = lines[to.row];
    const batch = batches[to.column];
    if (line === undefined || batch === undefined) return;
    event.preventDefault();
    state.goTo({ line, batch: batch.id });
  };

  return (
    <div class="sheet-frame">
      <table
        class="sheet"
        role="grid"
        aria-label="Batches"
        aria-colcount={batches.length + 1}
        ref={grid}
        onKeyDown={move}
      >
        <thead>
          <tr>
            {!phone && <td class="corner" />}
            {batches.map((batch) => (
              <th scope="col" class="batch-head" colSpan={phone ? 2 : 1} key={batch.id}>
                <BatchHead batch={batch} formulation={store.formulationOf(batch)} kitchen={store.settings.value} />
              </th>
            ))}
          </tr>
        </thead>
        {sections.map((section) => {
          const folded = state.folded.value.has(section.id);
          return (
            <tbody key={section.id}>
              <SectionLine id={section.id} label={section.label} state={state} columns={batches.length} />
              {!folded &&
                section.rows.map((row) => (
                  <>
                    <SheetRow key={row} id={row} store={store} state={state} />
                    {workingInline && state.visited.value && spot.line === row && (
                      <tr class="working-line" key={`${row}-working`}>
                        <td colSpan={batches.length + 1}>
                          <WorkingLater store={store} state={state} />
                        </td>
                      </tr>
                    )}
                  </>
                ))}
            </tbody>
          );
        })}
      </table>
    </div>
  );
}

/** Lines that can be gone to: section names, and the rows of the sections that are not folded. */
function visibleLines(folded: ReadonlySet<SectionId>): readonly Spot['line'][] {
  return sections.flatMap(({ id, rows }): Spot['line'][] => [`section:${id}`, ...(folded.has(id) ? [] : rows)]);
}

interface SectionProps {
  readonly id: SectionId;
  readonly label: string;
  readonly state: SheetState;
  readonly columns: number;
}

function SectionLine({ id, label, state, columns }: SectionProps) {
  const here = state.spot.value.line === `section:${id}`;
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
          onClick={() => state.fold(id)}
        >
          {label}
        </button>
      </th>
      {Array.from({ length: columns }, (_, at) => (
        <td class="section-fill" key={at} />
      ))}
    </tr>
  );
}
