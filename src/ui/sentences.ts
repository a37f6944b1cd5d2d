import { signal } from '@preact/signals';
import type { cellProblem } from '../batch/cell-problem';
import type { describeProblem } from '../formula/words';

interface Sentences {
  readonly cellProblem: typeof cellProblem;
  readonly describeProblem: typeof describeProblem;
}

/** What puts a problem into words; there from just after the first paint, since most sheets open without a problem. */
export const sentences = signal<Sentences | null>(null);

export async function loadSentences(): Promise<void> {
  const [cells, problems] = await Promise.all([import('../batch/cell-problem'), import('../formula/words')]);
  sentences.value = { cellProblem: cells.cellProblem, describeProblem: problems.describeProblem };
}
