import { kitchen } from '../reference/kitchen';
import { chooseFrom, coefficientInEffect } from './coefficients';
import { Evaluation, isRow } from './evaluate';
import { choiceResult, everyRow, type Formulation, type RowResult } from './formulation';
import { isTypable } from './givens';
import { correctsSource, evaluateMeasured, isMeasured, measuredValue, upstream } from './measured';
import { fermentableOf } from './models/blend';
import { notesFor } from './notes';
import { isMeasuredRow, type NumericRowId, rowOrder } from './order';
import type { Problem } from './problem';
import type { Recipe } from './recipe';
import { rootProblem } from './roots';
import type { Absence, NumericRow } from './row';
import { numericRows } from './sheet';
import { planBatch } from './size';
import { weighingProblems } from './weighings';
import { withoutNumbers } from './without-numbers';

export type { Formulation, RowResult } from './formulation';

/**
 * Works out a whole batch. Pure: the same recipe gives the same result. Never throws: what can't be worked out carries a
 * problem that names its root, and should a rule fail all the same, that batch alone has no number. Formulas: each
 * row's own definition under `rows/`.
 */
export function formulate(recipe: Recipe): Formulation {
  try {
    return workOut(recipe);
  } catch {
    return withoutNumbers(recipe);
  }
}

function workOut(recipe: Recipe): Formulation {
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
  const rows = everyRow((id) =>
    isRow(id) ? numericResult(id, planned, actual) : choiceResult(id, recipe, notesFor(id, actual)),
  );
  const { sizedFrom } = plan;
  return { recipe, choices, rows, sizedFrom, of: (id) => actual.of(id), evaluation: actual, failed: false };
}

function numericResult(id: NumericRowId, planned: Evaluation, actual: Evaluation): RowResult {
  const x = upstream.includes(id) ? planned : actual;
  const row = numericRows[id];
  const typedOrProblem = x.reading(id);
  const typed = typeof typedOrProblem === 'number' ? typedOrProblem : null;
  const measured = isMeasuredRow(id) ? measuredValue(id, x.recipe, planned) : null;
  const counts = x.standing.values.has(id);
  const value = x.of(id);
  const missing = counts || x.plan.accepted.has(id) ? null : (row.absent?.(x) ?? null);
  const absence = typedOrProblem === null && measured === null ? missing : null;
  const problems: Problem[] = [];
  if (typedOrProblem !== null && typeof typedOrProblem !== 'number') problems.push(typedOrProblem);
  const isTypedWrong = problems.length > 0;
  if (measured !== null && typeof measured !== 'number') problems.push(measured);
  const has = Number.isFinite(value) && problems.length === 0;
  if (!Number.isFinite(value) && !isTypedWrong) problems.push(rootProblem(id, x));
  const expected = planned.of(id);
  const standing = x.problems.get(id) ?? actual.problems.get(id);
  if (standing && has) problems.push(standing);
  if (typeof measured === 'number' && isMeasuredRow(id)) {
    const stop = correctsSource.includes(id)
      ? (actual.problems.get('sourceMass') ?? actual.problems.get('waterRatio'))
      : null;
    if (stop) problems.push({ code: 'notCounted', at: id, for: stop.code === 'waits' ? stop.for : stop.at });
    problems.push(...weighingProblems(id, measured, planned, actual));
  }
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
    planned: typeof measured === 'number' ? finiteOrNull(expected) : null,
    range: has && measured === null ? rangeOf(row, x) : null,
    absence,
    problems: dedupe(problems),
    from: missing === null && has ? x : null,
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
