import type { Batch } from '../../batch/document';
import type { Formulation } from '../../formula/formulate';
import type { RowId } from '../../formula/order';
import { severities } from '../../formula/problem';
import { lines } from './lines';

const seen = new WeakMap<Formulation, readonly RowId[]>();

/** The details that show by themselves: what is typed or measured there, what is in trouble, how large an own jar is. */
export function tellingRows(batches: readonly Batch[], formulationOf: (batch: Batch) => Formulation): Set<RowId> {
  const rows = new Set<RowId>();
  for (const batch of batches) for (const row of ofOne(formulationOf(batch))) rows.add(row);
  return rows;
}

function ofOne(formulation: Formulation): readonly RowId[] {
  const known = seen.get(formulation);
  if (known !== undefined) return known;
  const { given, measured, vessel } = formulation.recipe;
  const typed = new Set<string>([...given.map(({ row }) => row), ...Object.keys(measured)]);
  if (vessel === 'own') typed.add('brimful');
  const found = lines.flatMap(({ details }) =>
    details.filter((row) => typed.has(row) || formulation.rows[row].problems.some(isTrouble)),
  );
  seen.set(formulation, found);
  return found;
}

/** Whether a problem is one to look at where it stands, rather than in the working. */
export function isTrouble({ code }: Formulation['rows'][RowId]['problems'][number]): boolean {
  return severities[code] !== 'note' && code !== 'waits';
}
