import { type Evaluation, isRow } from './evaluate';
import type { NumericRowId, RowId } from './order';
import { type Problem, severities } from './problem';
import { Recorder } from './recorder';
import type { TermId } from './row';

/** The problem that keeps a row from a number: its own, or that it waits for the row where the trouble began. */
export function rootProblem(id: NumericRowId, x: Evaluation): Problem {
  const own = x.problems.get(id);
  if (own) return own;
  const root = findRoot(id, x, new Set());
  return root === null ? { code: 'unreadable', at: id } : { code: 'waits', at: id, for: root };
}

function findRoot(id: TermId, x: Evaluation, seen: Set<TermId>): RowId | null {
  if (seen.has(id)) return null;
  seen.add(id);
  if (isRow(id)) {
    const problem = x.problems.get(id);
    if (problem && severities[problem.code] === 'refusal') return problem.code === 'waits' ? problem.for : id;
  }
  const recorder = new Recorder(x);
  recorder.run(id);
  for (const fed of recorder.terms) {
    if (Number.isFinite(x.of(fed))) continue;
    const root = findRoot(fed, x, seen);
    if (root !== null) return root;
  }
  return firstProblem(x);
}

/** Where no path leads to the root (a value that stood in for another), the first row with a refusal. */
function firstProblem(x: Evaluation): RowId | null {
  for (const [row, problem] of x.problems)
    if (severities[problem.code] === 'refusal') return problem.code === 'waits' ? problem.for : row;
  return null;
}
