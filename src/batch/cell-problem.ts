import type { NumericRowId } from '../formula/order';
import { describeReadProblem } from '../measure/read-problem-words';
import type { Cell, Settings } from './document';
import { readText } from './read-cell';

/** The sentence for a cell whose text can't be read, and what to write instead; null where there is nothing to say. */
export function cellProblem(row: NumericRowId, cell: Cell, settings: Settings): string | null {
  if (cell.amount !== null) return null;
  const read = readText(row, cell.text, settings);
  return read.ok ? null : describeReadProblem(read.problem);
}
