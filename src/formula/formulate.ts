import type { Kind } from '../measure/units';
import { kitchen } from '../reference/kitchen';
import { type Choices, chooseFrom, coefficientInEffect } from './coefficients';
import { Evaluation, isRow } from './evaluate';
import { isTypable } from './givens';
import { evaluateMeasured, isMeasured, measuredValue, upstream } from './measured';
import { fermentableOf } from './models/blend';
import { notesFor } from './notes';
import { isMeasuredRow, type NumericRowId, type RowId, rowOrder } from './order';
import { type Problem, severities } from './problem';
import type { Recipe } from './recipe';
import { Recorder } from './recorder';
import type { Absence, NumericRow, TermId } from './row';
import { numericRows } from './sheet';
import { planBatch } from './size';
import { weighingProblems } from './weighings';

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
}

/**
 * Works out a whole batch. Pure: the same recipe gives the same result. Nothing a user can type makes it throw; what
 * can't be worked out carries a problem that names its root. Formulas: each row's own definition under `rows/`.
 */
export function formulate(recipe: Recipe): Formulation {
  const choices = chooseFrom(recipe);
  const given = recipe.given.filter(({ row }) => isTypable(numericRows[row]));
  const tapWater =
    coefficientInEffect('usualRatio', recipe, choices).value - coefficientInEffect('ownWater', recipe, choices).value;
  const slack = 1e-3; // tolerance: a drop of water sizes nothing
  const plan = planBatch(given, {
    takesWater: tapWater > slack,
    sweetens: fermentableOf(choices.sweetener, choices.grain.takes).value > 0,
  });
  const planned = new Evaluation(recipe, plan);
  const actual = isMeasured(recipe) ? evaluateMeasured(recipe, plan, planned) : planned;
  // A problem is recorded at its root when what it stops is worked out, so every row comes before any result.
  for (const x of planned === actual ? [planned] : [planned, actual])
    for (const id of rowOrder) if (isRow(id)) x.of(id);
  const rows: Partial<Record<RowId, RowResult>> = {};
  for (const id of rowOrder) {
    rows[id] = isRow(id) ? numericResult(id, planned, actual) : choiceResult(id, recipe, actual);
  }
  if (!isComplete(rows)) throw new Error('a row of the order has no result');
  return { recipe, choices, rows, sizedFrom: plan.sizedFrom, of: (id) => actual.of(id), evaluation: actual };
}

function isComplete(rows: Partial<Record<RowId, RowResult>>): rows is Record<RowId, RowResult> {
  return rowOrder.every((id) => rows[id] !== undefined);
}

function choiceResult(id: Exclude<RowId, NumericRowId>, recipe: Recipe, x: Evaluation): RowResult {
  const value = id === 'sweetener' ? recipe.sweetener.map((part) => part.id).join(' + ') : recipe[id];
  const problems = notesFor(id, x);
  const nothing = { typed: null, planned: null, range: null, absence: null, from: null };
  return { id, kind: 'choice', value, status: 'choice', problems, ...nothing };
}

function numericResult(id: NumericRowId, planned: Evaluation, actual: Evaluation): RowResult {
  const x = upstream.includes(id) ? planned : actual;
  const row = numericRows[id];
  const typedOrProblem = x.reading(id);
  const typed = typeof typedOrProblem === 'number' ? typedOrProblem : null;
  const measured = isMeasuredRow(id) ? measuredValue(id, x.recipe, planned) : null;
  const counts = x.standing.values.has(id);
  // A measured figure stands in its cell even where the plan can't be worked out and nothing goes on from it.
  const value = typeof measured === 'number' ? measured : x.of(id);
  const missing = counts || x.plan.accepted.has(id) ? null : (row.absent?.(x) ?? null);
  const absence = typedOrProblem === null && measured === null ? missing : null;
  const problems: Problem[] = [];
  if (typedOrProblem !== null && typeof typedOrProblem !== 'number') problems.push(typedOrProblem);
  const isTypedWrong = problems.length > 0;
  if (measured !== null && typeof measured !== 'number') problems.push(measured);
  const has = Number.isFinite(value) && problems.length === 0;
  if (!Number.isFinite(value) && !isTypedWrong) problems.push(rootProblem(id, x));
  const standing = x.problems.get(id) ?? actual.problems.get(id);
  if (standing && has) problems.push(standing);
  if (typeof measured === 'number' && counts && isMeasuredRow(id))
    problems.push(...weighingProblems(id, measured, planned, actual));
  const disagreement = typed === null || !has ? null : disagree(id, typed, value, planned, x);
  if (disagreement) problems.push(disagreement);
  const brim = actual.problems.get('headspaceVolume');
  const fills = id === 'vesselCount' ? typed !== null : id === x.plan.sizedFrom;
  if (has && fills && brim?.code === 'overBrim') problems.push({ ...brim, code: 'runsOver', at: id });
  if (has && absence === null) problems.push(...notesFor(id, x));
  return {
    id,
    kind: row.kind,
    value: absence !== null || !has ? null : value,
    status: statusOf({
      absence,
      has,
      measured,
      typed,
      accepted: x.plan.accepted.has(id) || (typed !== null && isSame(typed, value)),
    }),
    typed,
    planned: typeof measured === 'number' ? finiteOrNull(planned.of(id)) : null,
    range: has && measured === null ? rangeOf(row, x) : null,
    absence,
    problems: dedupe(problems),
    from: missing === null && has && (counts || measured === null) ? x : null,
  };
}

function rangeOf({ bounds }: NumericRow, x: Evaluation): RowResult['range'] {
  if (bounds === undefined) return null;
  const [low, high] = [x.of(bounds.low), x.of(bounds.high)];
  return Number.isFinite(low) && Number.isFinite(high) && low < high ? { low, high } : null;
}

function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}

function dedupe(problems: readonly Problem[]): readonly Problem[] {
  if (problems.length < 2) return problems;
  const written = problems.map((problem) => JSON.stringify(problem));
  return problems.filter((_, at) => written.indexOf(written[at] ?? '') === at);
}

function statusOf(of: {
  absence: Absence | null;
  has: boolean;
  measured: number | Problem | null;
  typed: number | null;
  accepted: boolean;
}): RowResult['status'] {
  if (of.absence !== null) return 'absent';
  if (!of.has) return 'refused';
  if (of.measured !== null) return 'measured';
  return of.typed !== null && of.accepted ? 'given' : 'workedOut';
}

const rounding = 1e-9; // tolerance

function isSame(typed: number, computed: number, slack = rounding): boolean {
  return Math.abs(typed - computed) <= slack * Math.max(Math.abs(typed), Math.abs(computed));
}

/** Whether a typed value that was not taken as it stands differs from what comes out, and what it differs from. */
function disagree(
  id: NumericRowId,
  typed: number,
  computed: number,
  planned: Evaluation,
  actual: Evaluation,
): Problem | null {
  if (isSame(typed, computed)) return null;
  const { plan } = planned;
  const sized = plan.sizedFrom === 'jar' || !isRow(plan.sizedFrom) ? [] : [plan.sizedFrom];
  const isLeast = plan.depthIsLeast && (id === 'headspaceDepth' || id === 'headspaceVolume');
  const against = plan.against.get(id) ?? (isLeast ? sized : undefined);
  if (isSame(typed, computed, kitchen.agreement.value))
    return against === undefined || actual !== planned
      ? null
      : { code: 'nearlyAgrees', at: id, typed, computed, with: against };
  if (plan.accepted.has(id) && actual !== planned)
    return { code: 'measuredOff', at: id, planned: typed, measured: computed };
  if (isLeast) {
    if (computed >= typed) return { code: 'headspaceKept', at: id, asked: typed, actual: computed };
    return { code: 'conflict', at: id, typed, computed, with: sized };
  }
  if (against === undefined) return null;
  if (against.length > 0) return { code: 'conflict', at: id, typed, computed, with: against };
  const { entry } = planned.choices.sweetener[0] ?? {};
  return { code: 'nothingToFerment', at: id, sweetener: entry?.name ?? '', reason: entry?.refused ?? '' };
}

/** The problem that keeps a row from a number: its own, or that it waits for the row where the trouble began. */
function rootProblem(id: NumericRowId, x: Evaluation): Problem {
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
