import type { RowId } from '../../formula/recipe/order';
import { isRowSpot, type Spot } from './sheet-state';

/** The cells of a selected range: rows from the top, batches from the left. */
export interface Range {
  readonly rows: readonly RowId[];
  readonly batches: readonly string[];
}

/** The range between two corners, over the rows and batches as they stand; labels of lines are in no range. */
export function rangeBetween(a: Spot, b: Spot, rows: readonly RowId[], batches: readonly string[]): Range {
  return {
    rows: isRowSpot(a.at) && isRowSpot(b.at) ? between(rows, a.at, b.at) : [],
    batches: between(batches, a.batch, b.batch),
  };
}

function between<T>(list: readonly T[], a: T, b: T): readonly T[] {
  const [first, second] = [list.indexOf(a), list.indexOf(b)];
  if (first < 0 || second < 0) return [];
  return first <= second ? list.slice(first, second + 1) : list.slice(second, first + 1);
}
