import { type ReadonlySignal, useComputed } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Batch, Cell } from '../../batch/document/document';
import { cartonWarning } from '../../batch/edits/carton-edits';
import { cellProblem, cellRemark, cellWaysOut } from '../../batch/reading/cell-problem';
import type { Store } from '../../batch/store/store';
import { type WayOut, waysOut } from '../../formula/advice/ways-out';
import { isRow } from '../../formula/engine/evaluate';
import { isMeasuredRow, type RowId } from '../../formula/recipe/order';
import { type Problem, severities } from '../../formula/recipe/problem';
import { numericRows } from '../../formula/rows/sheet';
import { compareRow } from '../../formula/words/difference';
import { leading } from '../../formula/words/leading';
import { describeProblem } from '../../formula/words/words';
import { writeRow } from '../../formula/words/write-row';
import { sweeteners } from '../../reference/sweeteners';
import { media, useMedia } from '../page/use-media';
import { nameOf } from './ChoiceCell';
import { type Drawn, placeAmongDrawn } from './columns-on-screen';
import type { SheetState } from './sheet-state';
import { isTrouble } from './telling';
import { useAlike } from './use-alike';
import { WaysOut } from './WaysOut';

export interface RemarksProps {
  readonly rows: readonly RowId[];
  readonly batch: string;
  readonly store: Store;
  readonly state: SheetState;
  /** Where they stand in the grid: under the cell of this column, of which not all may be drawn. Absent outside the grid. */
  readonly column?: number;
  readonly drawn?: ReadonlySignal<Drawn>;
}

/** What is to be said about the cells of a line, under them: trouble with its ways out, how a text was read, how far apart. */
export default function Remarks({ rows, batch: batchId, store, state, column, drawn }: RemarksProps) {
  const remarks = useAlike(() => {
    const batch = store.batchOf(batchId).value;
    return batch === undefined ? null : remarksOn(rows, batch, store, state);
  }).value;
  const alone = useMedia(media.phone);
  if (remarks === null || (remarks.isSilent && !alone)) return null;
  const { said, swapped, carton } = remarks;
  const plain = column === undefined || drawn === undefined;
  return (
    <div
      class="remarks"
      {...(plain ? {} : { role: 'gridcell', 'aria-colspan': 2 })}
      style={plain ? undefined : { '--at': placeAmongDrawn(drawn.value, column) }}
    >
      {swapped !== null && (
        <p class="remark swapped" role="status">
          {swapped.now}, same sugar ·{' '}
          <button
            type="button"
            class="quiet"
            onClick={() => {
              store.typeCell(batchId, 'sweetenerMass', swapped.before);
              state.goTo({ at: 'sweetenerMass', batch: batchId });
            }}
          >
            keep {swapped.before}
          </button>
        </p>
      )}
      {carton !== null && (
        <div class="problem caution">
          <p>{carton}</p>
        </div>
      )}
      {said.map(({ row, troubles, unreadable, asked, remark, far, there }) => (
        <div key={row} id={plain ? undefined : `remarks-${row}-${batchId}`}>
          {remark !== null && <p class="remark">{remark}</p>}
          {alone && there !== null && <p class="compared">{there}</p>}
          {far !== null && <p class="compared">{far}</p>}
          {troubles.map((problem) => (
            <Trouble
              key={problem.code}
              problem={problem}
              unreadable={unreadable}
              asked={asked}
              batch={batchId}
              store={store}
              state={state}
            />
          ))}
        </div>
      ))}
    </div>
  );
}

/**
 * All there is to say; null where that is nothing. It is silent where all is what the other batch has, which need not be
 * said where that one stands beside it.
 */
function remarksOn(rows: readonly RowId[], batch: Batch, store: Store, state: SheetState) {
  const formulation = store.formulationOf(batch);
  const kitchen = store.settings.value;
  const said = rows.map((row) => {
    const cell = cellOf(row, batch);
    return {
      row,
      troubles: formulation.rows[row].problems.filter(isTrouble),
      unreadable: cell === null || !isRow(row) ? null : cellProblem(row, cell, kitchen),
      asked: cell === null || !isRow(row) ? [] : cellWaysOut(row, cell, kitchen, formulation),
      remark: cell === null || !isRow(row) ? null : cellRemark(row, cell, kitchen),
      ...compared(row, batch, store, state),
    };
  });
  const swapped = rows.includes('sweetener') ? swapOf(batch, store) : null;
  const carton = rows.includes('source') ? cartonWarning(store.document.value, batch) : null;
  const isSilent =
    swapped === null &&
    carton === null &&
    said.every(({ troubles, remark, far }) => troubles.length === 0 && remark === null && far === null);
  return isSilent && said.every(({ there }) => there === null) ? null : { said, swapped, carton, isSilent };
}

/** What another sweetener just chosen weighs, and what the one before did; null where none was, or nothing ferments. */
function swapOf(batch: Batch, store: Store): { readonly now: string; readonly before: string } | null {
  const swapped = store.justSwapped.value;
  if (swapped?.batch !== batch.id) return null;
  const write = (one: Batch): string | null => {
    const row = writeRow(store.formulationOf(one), 'sweetenerMass', store.settings.value);
    return row?.metric ?? null;
  };
  const [now, before] = [write(batch), swapped.text ?? write(swapped.before)];
  const isSame = store.formulationOf(batch).rows.sweetenerMass.status !== 'absent';
  if (now === null || before === null || now === before || !isSame) return null;
  const names = batch.sweetener.map(({ id }) => sweeteners[id].name.toLowerCase()).join(' and ');
  return { now: `${now} ${names}`, before };
}

/** What stands in a cell as typed or, in a row that is only measured, as measured. */
function cellOf(row: RowId, batch: Batch): Cell | null {
  const given = batch.given.find((one) => one.row === row);
  if (given !== undefined) return given;
  return isRow(row) && numericRows[row].typed === 'measured' && isMeasuredRow(row)
    ? (batch.measured[row] ?? null)
    : null;
}

interface TroubleProps {
  readonly problem: Problem;
  readonly unreadable: string | null;
  /** What the text may mean, where it may mean several things. */
  readonly asked: readonly WayOut[];
  readonly batch: string;
  readonly store: Store;
  readonly state: SheetState;
}

/** A problem in words, and its ways out as buttons. After one is taken the focus is on the cell that it was about. */
function Trouble({ problem, unreadable, asked, batch: batchId, store, state }: TroubleProps) {
  const severity = severities[problem.code];
  const here = useComputed(() => state.spot.value.at === problem.at && state.spot.value.batch === batchId).value;
  const mends = useAlike(() => {
    const batch = store.batchOf(batchId).value;
    return batch === undefined ? [] : waysOut(problem, store.formulationOf(batch));
  }).value;
  const ways = problem.code === 'unreadable' ? [...asked, ...mends] : mends;
  const speaks = here && (severity === 'refusal' || severity === 'conflict');
  const element = useRef<HTMLDivElement>(null);
  // Under a cell at the foot of the window it would stand out of sight.
  useLayoutEffect(() => {
    if (speaks) element.current?.scrollIntoView?.({ block: 'nearest' });
  }, [speaks]);
  const words =
    problem.code === 'unreadable' && unreadable !== null ? unreadable : describeProblem(problem, store.settings.value);
  return (
    <div ref={element} class={`problem ${severity}`} role={speaks ? 'alert' : undefined}>
      <p>{words}</p>
      <WaysOut
        ways={ways}
        tabbed={here}
        onTake={(way) => {
          store.takeWayOut(batchId, way);
          state.goTo({ at: problem.at, batch: batchId });
        }}
      />
    </div>
  );
}

/** How far this batch is from the one it is compared with, and what that one has; null where there is nothing to say. */
function compared(
  row: RowId,
  batch: Batch,
  store: Store,
  state: SheetState,
): { readonly far: string | null; readonly there: string | null } {
  const { value: id } = state.comparedWith;
  const other = id === null || id === batch.id ? undefined : store.batchOf(id).value;
  if (other === undefined) return { far: null, there: null };
  const [here, its] = [store.formulationOf(batch), store.formulationOf(other)];
  const kitchen = store.settings.value;
  const far = compareRow(row, here, its, kitchen);
  if (isRow(row)) {
    const written = far === null ? null : writeRow(its, row, kitchen);
    return { far, there: written === null ? null : `${other.name}: ${leading(written, kitchen.leads).first}` };
  }
  const [mine, name] = [
    nameOf(row, batch, String(here.rows[row].value)),
    nameOf(row, other, String(its.rows[row].value)),
  ];
  return { far: null, there: mine === name ? null : `${other.name}: ${name}` };
}
