import type { Batch } from '../../batch/document/document';
import { cellProblem } from '../../batch/reading/cell-problem';
import type { Store } from '../../batch/store/store';
import { isRow } from '../../formula/engine/evaluate';
import { type RowId, rowOrder } from '../../formula/recipe/order';
import { type Severity, severities } from '../../formula/recipe/problem';
import { labelOf } from '../../formula/words/labels';
import { describeProblem } from '../../formula/words/words';

interface Props {
  readonly batch: Batch;
  readonly store: Pick<Store, 'formulationOf' | 'settings'>;
}

const told: readonly Severity[] = ['refusal', 'conflict', 'caution'];

/** What is to be mended before a batch is made by its card, each at its root; nothing where all is well. */
export function PrintProblems({ batch, store }: Props) {
  const { rows } = store.formulationOf(batch);
  const settings = store.settings.value;
  const unreadable = (id: RowId): string | null => {
    const typed = isRow(id) ? batch.given.find(({ row }) => row === id) : undefined;
    return typed === undefined ? null : cellProblem(typed.row, typed, settings);
  };
  const problems = rowOrder.flatMap((id) =>
    rows[id].problems
      .filter(({ code }) => told.includes(severities[code]) && code !== 'waits')
      .map((problem) => ({
        id,
        code: problem.code,
        text: (problem.code === 'unreadable' ? unreadable(id) : null) ?? describeProblem(problem, settings),
      })),
  );
  const once = problems.filter(({ text }, place) => problems.findIndex((other) => other.text === text) === place);
  if (once.length === 0) return null;
  const waits = rowOrder.some((id) => rows[id].status === 'refused');
  return (
    <section class="print-problems">
      <h3>{waits ? 'This card waits: mend this first' : 'Look at this first'}</h3>
      <ul>
        {once.map(({ id, code, text }) => (
          <li key={`${id} ${code}`}>
            <b>{labelOf(id)}.</b> {text}
          </li>
        ))}
      </ul>
    </section>
  );
}
