import type { NumericRowId } from '../formula/order';
import { describeReadProblem } from '../measure/read-problem-words';
import type { Assumption } from '../measure/read-quantity';
import type { Cell, Settings } from './document';
import { readText } from './read-cell';

/** The sentence for a cell whose text can't be read, and what to write instead; null where there is nothing to say. */
export function cellProblem(row: NumericRowId, cell: Cell, settings: Settings): string | null {
  if (cell.amount !== null) return null;
  const read = readText(row, cell.text, settings);
  return read.ok ? null : describeReadProblem(read.problem);
}

const remarks: Readonly<Record<Assumption, string | null>> = {
  fluidOunce: 'oz read by volume, as fluid ounces',
  weightOunce: 'oz read by weight',
  bareUnit: null,
};

/** What had to be taken for granted in reading a typed cell and is worth saying: which ounce an ounce is. */
export function cellRemark(row: NumericRowId, cell: Cell, settings: Settings): string | null {
  const read = readText(row, cell.text, settings);
  const assumed = read.ok ? read.reading.assumed : undefined;
  return assumed === undefined ? null : remarks[assumed];
}
