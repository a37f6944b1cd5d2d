import { type ReadonlySignal, useComputed, useSignalEffect } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Store } from '../../batch/store';
import { rowsThatDiffer } from '../../formula/compare';
import { isRow } from '../../formula/evaluate';
import { lazyPiece } from '../page/lazy-piece';
import { media, useMedia } from '../page/use-media';
import { BatchHead } from './BatchHead';
import { columnCount, columnIndex } from './columns-on-screen';
import { moveByKey } from './grid-keys';
import { type Range, rangeBetween } from './grid-range';
import { rowsOf } from './lines';
import { SheetLine } from './SheetLine';
import { SheetTools } from './SheetTools';
import { Spacer } from './Spacer';
import type { SheetState, Spot } from './sheet-state';
import { isRowSpot } from './sheet-state';
import { tellingRows } from './telling';
import { useColumns } from './use-columns';
import { gridOf, placeIn, type VisibleLine, visibleLines } from './visible-lines';
import './sheet.css';
import './cells.css';
import './narrow.css';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

const Clipboard = lazyPiece(() => import('./Clipboard'));

const page = 6;

/** The sheet: lines in the order of the work, two cells of each for every batch that is on screen. */
export function Sheet({ store, state }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const phone = useMedia(media.phone);
  const all = useAlike(() => store.document.value.batches.map(({ id }) => id));
  const shown = useAlike(() => (phone ? all.value.filter((id) => id === state.spot.value.batch) : all.value));
  const lines = useAlike<VisibleLine>(() => {
    const { batches } = store.document.value;
    const only =
      state.onlyDifferent.value && batches.length > 1 ? rowsThatDiffer(batches.map(store.formulationOf)) : null;
    const drawn = batches.filter(({ id }) => shown.value.includes(id));
    return visibleLines({
      unfolded: state.unfolded.value,
      all: state.allFigures.value,
      telling: tellingRows(drawn, store.formulationOf),
      only,
    });
  });
  const rows = useComputed(() =>
    lines.value.flatMap((line) => rowsOf({ ...line, details: line.shown.filter((one) => isRow(one)) })),
  );
  const range = useComputed(() => rangeBetween(state.anchor.value, state.spot.value, rows.value, shown.value));
  const { drawn, show } = useColumns(frame, shown.value.length);
  const batches = shown.value.slice(drawn.from, drawn.to);

  // A spot in a batch that is gone goes to the first one there is.
  const [first] = all.value;
  useEffect(() => {
    const spot = state.spot.peek();
    if (first !== undefined && !all.value.includes(spot.batch)) state.select({ ...spot, batch: first });
  }, [all.value]);
  // A cell takes the focus itself once it is drawn; one beyond the edge is brought into sight first.
  useSignalEffect(() => {
    if (state.wantsFocus.value) show(shown.value.indexOf(state.spot.value.batch));
  });

  return (
    <section class="sheet-room" aria-label="Sheet">
      <div class="sheet-frame" ref={frame}>
        <div
          class="sheet"
          role="treegrid"
          tabIndex={-1}
          aria-label="Batches"
          aria-multiselectable="true"
          aria-colcount={columnCount(shown.value.length)}
          style={{ '--shown': batches.length, '--before': `${drawn.before}px`, '--after': `${drawn.after}px` }}
          onKeyDown={(event) => press(event, store, state, lines.value, shown.value, range)}
        >
          <div class="heads" role="row">
            <div class="corner" role="columnheader">
              <span class="unseen">Line</span>
            </div>
            <Spacer />
            {batches.map((id, at) => (
              <div
                class="batch-head"
                role="columnheader"
                aria-colspan={2}
                key={id}
                aria-colindex={columnIndex(drawn, at)}
              >
                <BatchHead id={id} store={store} state={state} />
              </div>
            ))}
            <Spacer />
          </div>
          {lines.value.map((line) => (
            <SheetLine
              key={line.id}
              line={line}
              batches={batches}
              store={store}
              state={state}
              drawn={drawn}
              range={range}
            />
          ))}
        </div>
      </div>
      <SheetTools store={store} state={state} />
      <Clipboard frame={frame} store={store} state={state} range={range} rows={rows} batchIds={shown} />
    </section>
  );
}

/** A list that stays the very same for as long as what is in it says the same, so that nothing is drawn for nothing. */
function useAlike<T>(make: () => readonly T[]): ReadonlySignal<readonly T[]> {
  const last = useRef<{ key: string; list: readonly T[] }>({ key: '', list: [] });
  return useComputed(() => {
    const list = make();
    const key = JSON.stringify(list);
    if (key !== last.current.key) last.current = { key, list };
    return last.current.list;
  });
}

function press(
  event: KeyboardEvent,
  store: Store,
  state: SheetState,
  lines: readonly VisibleLine[],
  batches: readonly string[],
  range: ReadonlySignal<Range>,
): void {
  if (state.editing.value !== null || event.altKey) return;
  const onCell = event.target instanceof Element && event.target.matches('[data-spot]');
  if (onCell && (event.key === 'Delete' || event.key === 'Backspace')) {
    event.preventDefault();
    const numbers = range.value.rows.filter(isRow);
    if (!store.readOnly.peek() && numbers.length > 0) store.clearCells(range.value.batches, numbers);
    return;
  }
  const spot = state.spot.value;
  if (onCell && event.key === '?') {
    event.preventDefault();
    state.working.value = spot;
    return;
  }
  if (event.key === 'Escape') state.working.value = null;
  const grid = gridOf(lines, batches);
  const from = placeIn(grid, spot);
  if (from === null || (!onCell && !event.ctrlKey && event.target instanceof HTMLButtonElement)) return;
  if (foldByKey(event, spot, lines, state)) return;
  const to = moveByKey(event, stepOver(event, grid, from), { rows: grid.length, columns: grid[0]?.length ?? 0, page });
  const next = to === null ? undefined : grid[to.row]?.[to.column];
  if (next === undefined) return;
  event.preventDefault();
  if (event.shiftKey && isRowSpot(next.at)) state.extendTo(next, true);
  else state.goTo(next);
}

/** A cell over both columns of its batch is left at the far one. */
function stepOver(
  { key }: KeyboardEvent,
  grid: readonly (readonly Spot[])[],
  from: { row: number; column: number },
): { row: number; column: number } {
  const cells = grid[from.row] ?? [];
  const isWide = cells[from.column]?.at === cells[from.column + 1]?.at && from.column > 0;
  return isWide && key === 'ArrowRight' ? { ...from, column: from.column + 1 } : from;
}

/** On the label of a line, the arrows unfold and fold it, by the ARIA treegrid pattern. */
function foldByKey(event: KeyboardEvent, spot: Spot, lines: readonly VisibleLine[], state: SheetState): boolean {
  const line = lines.find(({ id }) => spot.at === `line:${id}`);
  if (line === undefined) return false;
  const open = event.key === 'ArrowRight' && !line.open;
  const close = event.key === 'ArrowLeft' && line.open && !state.allFigures.value;
  if (!open && !close) return false;
  event.preventDefault();
  state.unfold(line.id, open);
  return true;
}
