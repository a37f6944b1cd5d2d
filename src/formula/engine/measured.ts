import { Settled } from '../composition/settled';
import { type MeasuredRowId, measuredRows, type NumericRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Recipe } from '../recipe/recipe';
import type { Plan } from '../recipe/sizing';
import type { TermId } from '../rows/row';
import { numericRows } from '../rows/sheet';
import { correctCoefficients } from './correct';
import { type Evaluation, evaluate, type Standing } from './evaluate';
import { readGiven } from './givens';
import { isRow } from './ways-of';

/** Rows that stay as planned when something is measured: they were done before. */
export const upstream: readonly NumericRowId[] = [
  'vesselCount',
  'brimful',
  'sourceMass',
  'soakWater',
  'soakTime',
  'waterRatio',
  'blendWater',
  'blenderLoads',
];

const fixed = ['sourceMass', 'waterRatio', 'vesselCount'] as const;

/** Rows that follow from what was measured before them, whatever was typed for them. */
const moved: readonly NumericRowId[] = [
  ...['milkVolume', 'milkSolids', 'fillVolume', 'headspaceDepth', 'headspaceVolume', 'drinkVolume'],
] as const;

/** What is measured of the source on its way, from which nothing follows without the source and its water. */
export const correctsSource: readonly NumericRowId[] = ['soakedMass', 'pulpMass'];

/** What is read when all is done, and feeds no amount. */
const atTheEnd = ['finalPH', 'sugarLeft'] as const;

/** Whether anything was measured in this recipe. */
export function isMeasured(recipe: Recipe): boolean {
  return measuredRows.some((id) => recipe.measured[id] !== undefined);
}

/**
 * What was measured in this row, in its unit; a problem where it can't be read; null where nothing was, or where this
 * source has nothing to measure there (a poured milk leaves no pulp).
 */
export function measuredValue(id: MeasuredRowId, recipe: Recipe, x: Evaluation): number | Problem | null {
  const typed = recipe.measured[id];
  if (typed === undefined || !hasIt(id, x)) return null;
  return readGiven(x, id, { ...numericRows[id], typed: 'aside', check: () => null }, typed);
}

/** Kernels that need no soaking may be soaked all the same, so a weight of them counts; of a liquid it does not. */
function hasIt(id: MeasuredRowId, x: Evaluation): boolean {
  const absence = numericRows[id].absent?.(x) ?? null;
  return (
    absence === null || absence === 'measuredOnly' || (absence === 'notSoaked' && x.choices.source.form === 'solid')
  );
}

/**
 * The batch as it really stands: source, water and jars as planned, what was measured in place of what was expected. Of
 * a plan that can't be worked out, what is wrong stays as it is, and what was measured counts for all it can.
 */
export function evaluateMeasured(recipe: Recipe, plan: Plan, planned: Evaluation): Evaluation {
  const values = new Map<TermId, number>();
  for (const id of measuredRows) {
    const value = measuredValue(id, recipe, planned);
    if (typeof value === 'number') values.set(id, value);
  }
  if ([...values.keys()].every((id) => atTheEnd.some((late) => late === id))) {
    return evaluate(planned.settled, recipe, plan, { values, coefficients: new Map() });
  }
  for (const id of fixed) values.set(id, planned.of(id));
  const standing: Standing = { values, coefficients: correctCoefficients(planned, values) };
  const settled = standing.coefficients.size === 0 ? planned.settled : new Settled(recipe, standing.coefficients);
  const actual = evaluate(settled, recipe, planMeasured(plan, values.has('grainMass')), standing);
  for (const id of fixed) if (!Number.isFinite(planned.of(id))) keepProblem(id, planned, actual);
  return actual;
}

/** What keeps a row of the plan from a number keeps standing at its root, where all that is fed by it is told to look. */
function keepProblem(id: NumericRowId, planned: Evaluation, actual: Evaluation): void {
  const problem = planned.rootOf(id);
  actual.standBad(id, problem);
  const root = problem.code === 'waits' && isRow(problem.for) ? planned.problemAt(problem.for) : undefined;
  if (root !== undefined) actual.record(root);
}

const measuredPlans = new WeakMap<Plan, Plan>();
const weighedPlans = new WeakMap<Plan, Plan>();

/** The plan once there is something measured, found once for a plan. */
function planMeasured(plan: Plan, weighsGrains: boolean): Plan {
  const among = weighsGrains ? weighedPlans : measuredPlans;
  const measured = among.get(plan) ?? makeMeasured(plan, weighsGrains);
  among.set(plan, measured);
  return measured;
}

/** Nothing is sized any more, and what went in by weight gives its rate. */
function makeMeasured(plan: Plan, weighsGrains: boolean): Plan {
  const { milkVolume, drinkVolume } = plan.ways;
  const allSweetener = milkVolume === 'fromSweetener';
  const allGrains = milkVolume === 'fromGrains' || weighsGrains;
  const isLeft = (id: NumericRowId): boolean =>
    !moved.includes(id) &&
    !(id === 'servings' && drinkVolume === 'fromServings') &&
    !(allGrains && id === 'grainRate') &&
    !(allSweetener && (id === 'sugarRate' || id === 'startingSugar'));
  return {
    ...plan,
    ways: {
      ...plan.ways,
      milkVolume: 'fromSource',
      fillVolume: 'shared',
      headspaceVolume: 'fromFill',
      headspaceDepth: 'fromRoom',
      drinkVolume: 'strained',
      ...(allSweetener ? { sugarRate: 'fromMass' } : {}),
      ...(allGrains ? { grainRate: 'fromMass' } : {}),
    },
    accepted: new Set([...plan.accepted].filter(isLeft)),
    ...(allSweetener ? { sweetenerFixed: true, sugarBy: 'mass' } : {}),
    grainsFixed: plan.grainsFixed || allGrains,
  };
}
