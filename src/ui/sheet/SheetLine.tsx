import { type ReadonlySignal, useComputed } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import { isRow } from '../../formula/engine/evaluate';
import type { NumericRowId, RowId } from '../../formula/recipe/order';
import { labelOf } from '../../formula/words/labels';
import { Guarded } from '../page/Guarded';
import { ChoiceCell } from './ChoiceCell';
import { columnIndex, type Drawn } from './columns-on-screen';
import type { Range } from './grid-range';
import { NumberCell } from './NumberCell';
import { Remarks } from './RemarksLater';
import { Spacer } from './Spacer';
import type { SheetState } from './sheet-state';
import type { VisibleLine } from './visible-lines';

interface Props {
  readonly line: VisibleLine;
  readonly batches: readonly string[];
  readonly store: Store;
  readonly state: SheetState;
  readonly drawn: ReadonlySignal<Drawn>;
  readonly range: ReadonlySignal<Range>;
  readonly thumb: boolean;
}

/** A line across the batches that are drawn, and under it the details that show. */
export function SheetLine({ line, batches, store, state, drawn, range, thumb }: Props) {
  const { how, much, shown, open } = line;
  const shared = { store, state, range, thumb };
  // The lists of rows are the same ones each time, so that remarks that stay are not drawn anew.
  const rows = useMemo(() => (how === null ? [much] : [how, much]), [how, much]);
  return (
    <>
      <div class="line" role="row" aria-level={1} aria-expanded={open}>
        <LineLabel line={line} state={state} />
        <Spacer />
        {batches.map((batch, at) => {
          const column = columnIndex(drawn.value, at);
          const ofHow = { batch, column, place: 'how', ...shared } as const;
          const blank = [
            <div class="cell how" role="gridcell" key="how" aria-colindex={column} />,
            <div class="cell much" role="gridcell" key="much" aria-colindex={columnIndex(drawn.value, at, 'much')}>
              –
            </div>,
          ];
          const cells = [
            how === null ? (
              <div class="cell how" role="gridcell" key={`${batch} how`} aria-colindex={column}>
                <span class="aside">{line.aside}</span>
              </div>
            ) : isRow(how) ? (
              <NumberCell key={`${batch} how`} id={how} {...ofHow} />
            ) : (
              <ChoiceCell key={`${batch} how`} id={how} {...ofHow} />
            ),
            <NumberCell
              key={`${batch} much`}
              id={much}
              batch={batch}
              column={columnIndex(drawn.value, at, 'much')}
              place="much"
              {...shared}
            />,
            <Remarks
              key={`${batch} remarks`}
              rows={rows}
              column={column}
              drawn={drawn}
              batch={batch}
              store={store}
              state={state}
            />,
          ];
          return (
            <Guarded key={batch} store={store} instead={blank}>
              {cells}
            </Guarded>
          );
        })}
        <Spacer />
      </div>
      {open && thumb && <About line={line} batches={batches} state={state} />}
      {shown.map((row) => (
        <Detail key={row} row={row} batches={batches} drawn={drawn} {...shared} />
      ))}
    </>
  );
}

interface DetailProps extends Omit<Props, 'line'> {
  readonly row: NumericRowId;
}

function Detail({ row, batches, store, state, drawn, range, thumb }: DetailProps) {
  const rows = useMemo(() => [row], [row]);
  return (
    <div class="line detail" role="row" aria-level={2}>
      <div class="label" role="rowheader">
        {labelOf(row)}
      </div>
      <Spacer />
      {batches.map((batch, at) => {
        const column = columnIndex(drawn.value, at);
        const blank = (
          <div class="cell detail" role="gridcell" aria-colindex={column} aria-colspan={2}>
            –
          </div>
        );
        return (
          <Guarded key={batch} store={store} instead={blank}>
            <NumberCell
              id={row}
              batch={batch}
              column={column}
              place="detail"
              store={store}
              state={state}
              range={range}
              thumb={thumb}
            />
            <Remarks rows={rows} column={column} drawn={drawn} batch={batch} store={store} state={state} />
          </Guarded>
        );
      })}
      <Spacer />
    </div>
  );
}

/** The way to the workings of an unfolded line, where no cell has room for it. */
function About({ line, batches: [batch = ''], state }: Pick<Props, 'line' | 'batches' | 'state'>) {
  const rows = line.how === null ? [line.much] : [line.how, line.much];
  return (
    <div class="line about" role="row" aria-level={2}>
      <div class="cell" role="gridcell">
        {rows.map((at) => (
          <button
            type="button"
            class="quiet"
            key={at}
            onClick={() => {
              state.working.value = { at, batch };
            }}
          >
            About {labelOf(at).toLowerCase()}
          </button>
        ))}
      </div>
    </div>
  );
}

function LineLabel({ line, state }: { readonly line: VisibleLine; readonly state: SheetState }) {
  const at = `line:${line.id}` as const;
  const here = useComputed(() => state.spot.value.at === at).value;
  const names = line.details.map((row: RowId) => labelOf(row)).join(', ');
  return (
    <div
      class="label unfolds"
      role="rowheader"
      data-spot={here}
      data-line={line.id}
      tabIndex={here ? 0 : -1}
      title={names === '' ? undefined : names}
      onClick={() => {
        state.select({ ...state.spot.peek(), at });
        state.unfold(line.id);
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Enter' && event.key !== ' ') return;
        event.preventDefault();
        state.unfold(line.id);
      }}
    >
      {line.label}
    </div>
  );
}
