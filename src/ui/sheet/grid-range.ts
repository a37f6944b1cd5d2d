import type { RowId } from '../../formula/order';
import type { Spot } from './sheet-state';

/** The cells of a selected range: rows from the top, batches from the left. */
export interface Range {
  readonly rows: readonly RowId[];
  readonly batches: readonly string[];
}

/** The range between two corners, over the lines and batches as they stand; names of sections are left out. */
export function rangeBetween(a: Spot, b: Spot, lines: readonly Spot['line'][], batches: readonly string[]): Range {
  return {
    rows: between(lines, a.line, b.line).filter(isRowLine),
    batches: between(batches, a.batch, b.batch),
  };
}

export function isRowLine(line: Spot['line']): line is RowId {
  return !line.startsWith('section:');
}

function between<T>(list: readonly T[], a: T, b: T): readonly T[] {
  const [first, second] = [list.indexOf(a), list.indexOf(b)];
  if (first < 0 || second < 0) return [];
  return first <= second ? list.slice(first, second + 1) : list.slice(second, first + 1);
}
