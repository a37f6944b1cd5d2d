import { Fragment } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { SheetStore } from '../../batch/sheet-store';
import { isRow } from '../../formula/evaluate';
import { type RowId, type SectionId, sections } from '../../formula/order';
import { afterPaint } from '../page/after-paint';
import { WorkingLater } from '../page/Later';
import { media, useMedia } from '../page/use-media';
import { BatchHead } from './BatchHead';
import { columnCount, columnIndex, wholeSpan } from './columns-on-screen';
import { moveByKey } from './grid-keys';
import { isRowLine, rangeBetween } from './grid-range';
import { SectionLine } from './SectionLine';
import { SheetRow } from './SheetRow';
import { Spacer } from './Spacer';
import { placeOf, type SheetState, type Spot } from './sheet-state';
import { useColumns } from './use-columns';

interface Props {
  readonly store: SheetStore;
  readonly state: SheetState;
  /** Whether the working opens under its row; beside the sheet otherwise. */
  readonly workingInline: boolean;
}

const page = 8;

/** The grid: rows of quantities in the order of the work, a column for each batch that is on screen. */
export function Sheet({ store, state, workingInline }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const phone = useMedia(media.phone);
  const later = afterPaint.value;
  const all = store.document.value.batches;
  const { batch: here } = state.spot.value;
  const shown = phone ? all.filter(({ id }) => id === here) : all;
  const { drawn, show } = useColumns(frame, shown.length);
  const batches = shown.slice(drawn.from, drawn.to);
  const different =
    state.onlyDifferent.value && all.length > 1 ? (later?.rowsThatDiffer(all.map(store.formulationOf)) ?? null) : null;
  const lines = visibleLines(state.folded.value, different);
  const ids = shown.map(({ id }) => id);
  const range = () => rangeBetween(state.anchor.value, state.spot.value, lines, ids);

  // A spot in a batch that is gone goes to the first one there is.
  const first = all[0]?.id;
  useEffect(() => {
    if (first !== undefined && !all.some(({ id }) => id === here)) state.select({ ...state.spot.peek(), batch: first });
  }, [all, here]);

  // In the frame in which the spot moves, not in the one after it.
  useLayoutEffect(() => {
    if (!state.wantsFocus.value) return;
    const cell = frame.current?.querySelector<HTMLElement>(selectorOf(state.spot.value));
    if (cell === undefined || cell === null) {
      show(ids.indexOf(state.spot.value.batch));
      return;
    }
    state.wantsFocus.value = false;
    cell.focus({ preventScroll: true });
    show(ids.indexOf(state.spot.value.batch));
    cell.scrollIntoView?.({ block: 'nearest', inline: 'nearest' });
  });

  const clear = () => {
    if (store.readOnly.peek()) return;
    const { rows, batches } = range();
    const numbers = rows.filter(isRow);
    const places = batches.flatMap((batch) => numbers.map((row) => [placeOf(batch, row), '']));
    if (places.length > 0) store.edit((edits) => edits.clearCells(batches, numbers), Object.fromEntries(places));
  };

  const press = (event: KeyboardEvent) => {
    if (state.editing.value !== null || event.altKey) return;
    if (event.key === 'Delete' || event.key === 'Backspace') {
      if (!(event.target instanceof Element && event.target.getAttribute('role') === 'gridcell')) return;
      event.preventDefault();
      clear();
      return;
    }
    const spot = state.spot.value;
    const from = { row: lines.indexOf(spot.line), column: ids.indexOf(spot.batch) };
    const to = moveByKey(event, from, { rows: lines.length, columns: ids.length, page });
    const line = to === null ? undefined : lines[to.row];
    const batch = to === null ? undefined : ids[to.column];
    if (line === undefined || batch === undefined) return;
    event.preventDefault();
    if (event.shiftKey) state.extendTo({ line, batch }, true);
    else state.goTo({ line, batch });
  };

  return (
    <div class="sheet-frame" ref={frame}>
      <table
        class="sheet"
        role="grid"
        aria-label="Batches"
        aria-multiselectable="true"
        aria-colcount={columnCount(shown.length)}
        onKeyDown={press}
      >
        <thead>
          <tr>
            {!phone && <td class="corner" />}
            <Spacer width={drawn.before} />
            {batches.map((batch, at) => (
              <th
                scope="col"
                class="batch-head"
                colSpan={phone ? 2 : 1}
                key={batch.id}
                aria-colindex={columnIndex(drawn, at)}
              >
                <BatchHead batch={batch} store={store} state={state} />
              </th>
            ))}
            <Spacer width={drawn.after} />
          </tr>
        </thead>
        {sections.map((section) => (
          <tbody key={section.id}>
            <SectionLine id={section.id} label={section.label} state={state} batches={batches} drawn={drawn} />
            {section.rows
              .filter((row) => lines.includes(row))
              .map((row) => (
                <Fragment key={row}>
                  <SheetRow id={row} store={store} state={state} batches={batches} drawn={drawn} range={range} />
                  {workingInline && state.visited.value && state.spot.value.line === row && (
                    <tr class="working-line">
                      <td colSpan={wholeSpan(batches.length)}>
                        <WorkingLater store={store} state={state} />
                      </td>
                    </tr>
                  )}
                </Fragment>
              ))}
          </tbody>
        ))}
      </table>
      {later !== null && (
        <later.Clipboard
          frame={frame}
          store={later.withEdits(store)}
          state={state}
          range={range}
          rows={lines.filter(isRowLine)}
          batchIds={ids}
        />
      )}
    </div>
  );
}

/** Where a spot is drawn: not where it was last drawn, since keys may come faster than the sheet is drawn. */
function selectorOf({ line, batch }: Spot): string {
  return isRowLine(line) ? `[data-quantity="${line}"][data-batch="${batch}"]` : `[data-line="${line}"]`;
}

/** Lines that can be gone to: section names, and the rows of the sections that are not folded. */
function visibleLines(folded: ReadonlySet<SectionId>, only: ReadonlySet<RowId> | null): readonly Spot['line'][] {
  return sections.flatMap(({ id, rows }): Spot['line'][] => [
    `section:${id}`,
    ...(folded.has(id) ? [] : rows.filter((row) => only === null || only.has(row))),
  ]);
}
