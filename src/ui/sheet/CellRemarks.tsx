import { cellProblem, cellRemark } from '../../batch/cell-problem';
import type { Batch, Cell } from '../../batch/document';
import type { Store } from '../../batch/store';
import { cautionsAt } from '../../formula/cautions';
import { compareRow } from '../../formula/compare';
import type { Formulation } from '../../formula/formulate';
import type { ChoiceRowId, NumericRowId, RowId } from '../../formula/order';
import { severities } from '../../formula/problem';
import type { NumericRow } from '../../formula/row';
import { numericRows } from '../../formula/sheet';
import { waysOut } from '../../formula/ways-out';
import { describeProblem } from '../../formula/words';
import type { SheetState } from './sheet-state';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  /** Whether the cell is the current one, so that its buttons can be tabbed to. */
  readonly here: boolean;
}

interface NumberProps extends Props {
  readonly id: NumericRowId;
  /** What was typed or, in a row that is only measured, measured; null where nothing was. */
  readonly given: Cell | null;
  readonly state: SheetState;
}

/** What is to be said about a number: how it was read, what to know before typing, how far it is from another, problems. */
export function NumberRemarks({ id, given, batch, store, state, here }: NumberProps) {
  const settings = store.settings.value;
  const remark = given === null ? null : cellRemark(id, given, settings);
  const hint = here ? (hints[numericRows[id].typed] ?? null) : null;
  const far = compared(id, batch, store, state);
  return (
    <>
      {remark !== null && <span class="second">{remark}</span>}
      {hint !== null && <span class="second">{hint}</span>}
      {far !== null && <span class="compared">{far}</span>}
      <Problems
        id={id}
        unreadable={given === null ? null : cellProblem(id, given, settings)}
        batch={batch}
        store={store}
        here={here}
      />
      <Care id={id} formulation={store.formulationOf(batch)} />
    </>
  );
}

/** What is to be said about a choice. */
export function ChoiceRemarks({ id, batch, store, here }: Props & { readonly id: ChoiceRowId }) {
  return (
    <>
      <Problems id={id} unreadable={null} batch={batch} store={store} here={here} />
      <Care id={id} formulation={store.formulationOf(batch)} />
    </>
  );
}

/** What can be done with a cell that can't simply be typed into, said while it is the current one. */
const hints: Readonly<Partial<Record<NumericRow['typed'], string>>> = {
  never: 'Can’t be typed; the figures behind it can be changed in its working.',
  measured: 'Takes only what was measured: what you type counts as that.',
};

/** How far this batch is from the one it is compared with; null where there is nothing to say. */
function compared(id: NumericRowId, batch: Batch, store: Store, state: SheetState): string | null {
  const comparedWith = state.comparedWith.value;
  if (comparedWith === null) return null;
  const other = store.document.value.batches.find((one) => one.id === comparedWith);
  if (other === undefined || other === batch) return null;
  return compareRow(id, store.formulationOf(batch), store.formulationOf(other), store.settings.value);
}

interface ProblemsProps extends Props {
  readonly id: RowId;
  /** The plain sentence for a typed text that can't be read. */
  readonly unreadable: string | null;
}

/** The problems of a cell in words, and the ways out as buttons. */
function Problems({ id, unreadable, batch, store, here }: ProblemsProps) {
  const formulation = store.formulationOf(batch);
  return (
    <>
      {formulation.rows[id].problems.map((problem) => {
        const ways = waysOut(problem, formulation);
        // What was just typed and can't stand is spoken too: focus is on the cell before its message is there.
        const speaks = here && severities[problem.code] === 'refusal' && problem.code !== 'waits';
        return (
          <div class={`problem ${severities[problem.code]}`} key={problem.code} role={speaks ? 'alert' : undefined}>
            <div>
              <p>
                {problem.code === 'unreadable' && unreadable !== null
                  ? unreadable
                  : describeProblem(problem, store.settings.value)}
              </p>
              {ways.length > 0 && (
                <div class="ways-out">
                  {ways.map((way) => (
                    <button
                      type="button"
                      class="way-out"
                      key={way.label}
                      tabIndex={here ? 0 : -1}
                      onClick={() => store.takeWayOut(batch.id, way)}
                    >
                      {way.label}
                    </button>
                  ))}
                </div>
              )}
            </div>
          </div>
        );
      })}
    </>
  );
}

/** That there are cautions for this number; they stand in full in its working. */
function Care({ id, formulation }: { id: RowId; formulation: Formulation }) {
  const cautions = cautionsAt(id, formulation).length;
  if (cautions === 0) return null;
  return <span class="care">{cautions === 1 ? 'one caution' : `${cautions} cautions`}</span>;
}
