import type { Batch } from '../../batch/document/document';
import type { Formulation } from '../../formula/engine/formulate';
import type { RowId } from '../../formula/recipe/order';
import { severities } from '../../formula/recipe/problem';
import { lines } from './lines';

/**
 * The details that show by themselves: those that are typed or measured in any batch and how large an own jar is, and
 * what is in trouble in a batch that is on screen. No other batch is worked out for it.
 */
export function tellingRows(
  batches: readonly Batch[],
  onScreen: readonly Batch[],
  formulationOf: (batch: Batch) => Formulation,
): ReadonlySet<RowId> {
  return new Set([...batches.flatMap(typedDetails), ...onScreen.map(formulationOf).flatMap(troubledDetails)]);
}

const details: readonly RowId[] = lines.flatMap((line): readonly RowId[] => line.details);

const typed = new WeakMap<Batch, readonly RowId[]>();
const troubled = new WeakMap<Formulation, readonly RowId[]>();

function typedDetails(batch: Batch): readonly RowId[] {
  const known = typed.get(batch);
  if (known !== undefined) return known;
  const rows = new Set<string>([...batch.given.map(({ row }) => row), ...Object.keys(batch.measured)]);
  if (batch.vessel === 'own') rows.add('brimful');
  const found = details.filter((row) => rows.has(row));
  typed.set(batch, found);
  return found;
}

function troubledDetails(formulation: Formulation): readonly RowId[] {
  const known = troubled.get(formulation);
  if (known !== undefined) return known;
  const found = details.filter((row) => formulation.rows[row].problems.some(isTrouble));
  troubled.set(formulation, found);
  return found;
}

/** Whether a problem is one to look at where it stands, rather than in the working. */
export function isTrouble({ code }: Formulation['rows'][RowId]['problems'][number]): boolean {
  return severities[code] !== 'note' && code !== 'waits';
}
