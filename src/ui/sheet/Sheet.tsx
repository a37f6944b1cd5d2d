import { effect, type ReadonlySignal, useComputed } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import { isRow } from '../../formula/engine/evaluate';
import { rowsThatDiffer } from '../../formula/words/compare';
import { Guarded } from '../page/Guarded';
import { lazyPiece } from '../page/lazy-piece';
import { media, useMedia, useMediaSignal } from '../page/use-media';
import { BatchHead } from './BatchHead';
import { columnCount, columnIndex } from './columns-on-screen';
import { edgeOf, gridRows, placeIn, spotAt } from './grid';
import { moveByKey } from './grid-keys';
import { type Range, rangeBetween } from './grid-range';
import { rowsOf } from './lines';
import { SheetLine } from './SheetLine';
import { SheetTools } from './SheetTools';
import { Spacer } from './Spacer';
import type { SheetState, Spot } from './sheet-state';
import { isRowSpot } from './sheet-state';
import { tellingRows } from './telling';
import { useAlike, useAlikeList } from './use-alike';
import { useColumns } from './use-columns';
import { type VisibleLine, visibleLines } from './visible-lines';
import './sheet.css';
import './cells.css';
import './narrow.css';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

const Clipboard = lazyPiece(() => import('./Clipboard'));
const CostLine = lazyPiece(() => import('./CostLine'));

const page = 6;

/** The sheet: lines in the order of the work, two cells of each for every batch that is on screen. */
export function Sheet({ store, state }: Props) {
  const frame = useRef<HTMLDivElement>(null);
  const phone = useMediaSignal(media.phone);
  const thumb = useMedia(media.thumb);
  const all = useAlike(() => store.document.value.batches.map(({ id }) => id));
  // On a phone one batch at a time, wherever else the spot moves within it.
  const only = useComputed(() => (phone.value ? state.spot.value.batch : null));
  const shown = useAlike(() => (only.value === null ? all.value : all.value.filter((id) => id === only.value)));
  const { drawn, show } = useColumns(
    frame,
    useComputed(() => shown.value.length),
  );
  const onScreen = useAlike(() => shown.value.slice(drawn.value.from, drawn.value.to));
  const lines = useAlikeList<VisibleLine>(() => {
    const { batches } = store.document.value;
    const differs = state.onlyDifferent.value && batches.length > 1;
    return visibleLines({
      unfolded: state.unfolded.value,
      all: state.allFigures.value,
      telling: tellingRows(
        batches.filter(({ id }) => shown.value.includes(id)),
        batches.filter(({ id }) => onScreen.value.includes(id)),
        store.formulationOf,
      ),
      only: differs ? rowsThatDiffer(batches.map(store.formulationOf), store.settings.value) : null,
    });
  });
  const rows = useComputed(() =>
    lines.value.flatMap((line) => rowsOf({ ...line, details: line.shown.filter((one) => isRow(one)) })),
  );
  const range = useComputed(() => rangeBetween(state.anchor.value, state.spot.value, rows.value, shown.value));
  const batches = onScreen.value;
  const hasPrices = useComputed(() => (store.document.value.packages ?? []).length > 0).value;

  // A spot in a batch that is gone goes to the first one there is.
  const [first] = all.value;
  useEffect(() => {
    const spot = state.spot.peek();
    if (first !== undefined && !all.value.includes(spot.batch)) state.select({ ...spot, batch: first });
  }, [all.value]);
  // The focus follows once all is drawn, so that it is laid out once; to a batch beyond the edge once that is in sight.
  const follow = () => {
    if (!state.wantsFocus.peek()) return;
    const cell = frame.current?.querySelector<HTMLElement>('[data-spot="true"]');
    if (document.activeElement !== cell) {
      cell?.scrollIntoView?.({ block: 'nearest', inline: 'nearest' });
      show(shown.peek().indexOf(state.spot.peek().batch));
      cell?.focus({ preventScroll: true });
    }
    if (cell) state.wantsFocus.value = false;
  };
  useLayoutEffect(
    () =>
      effect(() => {
        if (state.wantsFocus.value && state.spot.value) queueMicrotask(follow);
      }),
    [],
  );
  useLayoutEffect(() => queueMicrotask(follow), [batches]);

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
          style={{
            '--shown': batches.length,
            '--before': `${drawn.value.before}px`,
            '--after': `${drawn.value.after}px`,
          }}
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
                aria-colindex={columnIndex(drawn.value, at)}
              >
                <BatchHead id={id} store={store} state={state} phone={phone.value} />
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
              thumb={thumb}
            />
          ))}
          {hasPrices && (
            <Guarded store={store} instead={null}>
              <CostLine batches={batches} store={store} drawn={drawn} />
            </Guarded>
          )}
        </div>
      </div>
      <SheetTools store={store} state={state} />
      <Clipboard frame={frame} store={store} state={state} range={range} rows={rows} batchIds={shown} />
    </section>
  );
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
  const grid = gridRows(lines);
  const from = placeIn(grid, batches, spot);
  if (from === null || (!onCell && !event.ctrlKey && event.target instanceof HTMLButtonElement)) return;
  if (foldByKey(event, spot, lines, state)) return;
  const size = { rows: grid.length, columns: columnCount(batches.length), page };
  const to = moveByKey(event, edgeOf(grid, from, event.key), size);
  const next = to === null ? null : spotAt(grid, batches, to);
  if (next === null) return;
  event.preventDefault();
  if (event.shiftKey && isRowSpot(next.at)) state.extendTo(next, true);
  else state.goTo(next);
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
