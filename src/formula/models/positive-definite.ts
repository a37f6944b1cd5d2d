/** A symmetric positive definite matrix as its lower triangle, row by row. */
export type Triangle = readonly (readonly number[])[];

/** The lower triangle L with L·Lᵀ the matrix (Cholesky). */
function factor(matrix: Triangle): number[][] {
  const lower: number[][] = [];
  for (const [row, entries] of matrix.entries()) {
    const found: number[] = [];
    for (const [column, entry] of entries.entries()) {
      const other = column === row ? found : (lower[column] ?? []);
      let rest = entry;
      for (let k = 0; k < column; k += 1) rest -= (found[k] ?? 0) * (other[k] ?? 0);
      found.push(column === row ? Math.sqrt(rest) : rest / (other[column] ?? 1));
    }
    lower.push(found);
  }
  return lower;
}

/** The x with matrix · x = `right`, for any number of right sides with one factoring. */
export function solver(matrix: Triangle): (right: readonly number[]) => readonly number[] {
  const lower = factor(matrix);
  return (right) => {
    const x = [...right];
    for (const [row, entries] of lower.entries()) {
      for (let k = 0; k < row; k += 1) x[row] = (x[row] ?? 0) - (entries[k] ?? 0) * (x[k] ?? 0);
      x[row] = (x[row] ?? 0) / (entries[row] ?? 1);
    }
    for (let row = lower.length - 1; row >= 0; row -= 1) {
      for (let k = row + 1; k < lower.length; k += 1) x[row] = (x[row] ?? 0) - (lower[k]?.[row] ?? 0) * (x[k] ?? 0);
      x[row] = (x[row] ?? 0) / (lower[row]?.[row] ?? 1);
    }
    return x;
  };
}
