import type { Kind } from '../../measure/units';
import type { Choices } from '../recipe/coefficients';
import { type ChoiceRowId, type RowId, rowOrder } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Recipe } from '../recipe/recipe';
import type { Absence, TermId } from '../rows/row';
import type { Evaluation } from './evaluate';

/** What stands in a cell of the sheet. */
export interface RowResult {
  readonly id: RowId;
  readonly kind: Kind | 'choice';
  /** In the base unit of the kind; the id of a choice; null where there is no such quantity or it can't be had. */
  readonly value: number | string | null;
  readonly status: 'choice' | 'given' | 'workedOut' | 'measured' | 'absent' | 'refused';
  /** What was typed, in the row's unit; null where nothing was, or nothing readable. */
  readonly typed: number | null;
  /** What the sheet expected, where something else was measured. */
  readonly planned: number | null;
  /** The range its value lies in, in the same unit, for what is never one number. */
  readonly range: { readonly low: number; readonly high: number } | null;
  readonly absence: Absence | null;
  readonly problems: readonly Problem[];
  /** What its working is told from, by `workingIn`. Null for a choice and for a quantity that is not there. */
  readonly from: Evaluation | null;
}

export interface Formulation {
  readonly recipe: Recipe;
  readonly choices: Choices;
  readonly rows: Readonly<Record<RowId, RowResult>>;
  /** The row the batch is sized from, or the jar where no amount was typed. */
  readonly sizedFrom: RowId | 'jar';
  /** The value of any term as it stands after measuring; for steps, drawings and balances. NaN where it can't be had. */
  readonly of: (id: TermId) => number;
  readonly evaluation: Evaluation;
  /** Whether working it out failed as a whole: then no row has a number, and the first says so. */
  readonly failed: boolean;
}

/** Of a row: nothing typed, planned or told. */
export const nothing = { typed: null, planned: null, range: null, absence: null, from: null };

/** A choice as it stands in a batch; what is to be said about it is found when it is first read. */
export class ChoiceResult implements RowResult {
  readonly kind = 'choice';
  readonly status = 'choice';
  readonly typed = null;
  readonly planned = null;
  readonly range = null;
  readonly absence = null;
  readonly from = null;
  private problemsOnce: readonly Problem[] | undefined;

  constructor(
    readonly id: ChoiceRowId,
    private readonly recipe: Recipe,
    private readonly findProblems: () => readonly Problem[],
  ) {}

  get value(): string {
    const { id, recipe } = this;
    return id === 'sweetener' ? recipe.sweetener.map((part) => part.id).join(' + ') : recipe[id];
  }

  get problems(): readonly Problem[] {
    this.problemsOnce ??= this.findProblems();
    return this.problemsOnce;
  }
}

/** The results of all rows, each as `make` gives it. */
export function everyRow(make: (id: RowId) => RowResult): Record<RowId, RowResult> {
  const rows: Partial<Record<RowId, RowResult>> = {};
  for (const id of rowOrder) rows[id] = make(id);
  if (!isComplete(rows)) throw new Error('a row of the order has no result');
  return rows;
}

function isComplete(rows: Partial<Record<RowId, RowResult>>): rows is Record<RowId, RowResult> {
  return rowOrder.every((id) => rows[id] !== undefined);
}
