import { correctCoefficients } from './correct';
import { Evaluation, type Standing } from './evaluate';
import { readGiven } from './givens';
import { type MeasuredRowId, measuredRows, type NumericRowId } from './order';
import type { Plan } from './plan';
import type { Problem } from './problem';
import type { Recipe } from './recipe';
import type { TermId } from './row';
import { numericRows } from './sheet';

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
const moved: readonly NumericRowId[] = ['milkVolume', 'fillVolume', 'headspaceDepth', 'headspaceVolume', 'drinkVolume'];

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

/** The batch as it really stands: source, water and jars as planned, what was measured in place of what was expected. */
export function evaluateMeasured(recipe: Recipe, plan: Plan, planned: Evaluation): Evaluation {
  const values = new Map<TermId, number>();
  for (const id of measuredRows) {
    const value = measuredValue(id, recipe, planned);
    if (typeof value === 'number') values.set(id, value);
  }
  const moving = [...values.keys()].some((id) => !atTheEnd.some((late) => late === id));
  // A plan that can't be worked out leaves nothing to go on from: its own problems stay the ones to mend.
  if (!moving || fixed.some((id) => !Number.isFinite(planned.of(id)))) {
    const late = atTheEnd.flatMap((id): [TermId, number][] => {
      const value = values.get(id);
      return value === undefined ? [] : [[id, value]];
    });
    return new Evaluation(recipe, plan, { values: new Map(late), coefficients: new Map() });
  }
  for (const id of fixed) values.set(id, planned.of(id));
  const standing: Standing = { values, coefficients: correctCoefficients(planned, values) };
  const ways = {
    ...plan.ways,
    milkVolume: 'fromSource',
    fillVolume: 'shared',
    headspaceVolume: 'fromFill',
    headspaceDepth: 'fromRoom',
    drinkVolume: 'strained',
    ...(values.has('grainMass') ? { grainRate: 'fromMass' } : {}),
  };
  const glassesSize = plan.ways.drinkVolume === 'fromServings';
  const accepted = new Set(
    [...plan.accepted].filter(
      (id) =>
        !moved.includes(id) && !(id === 'servings' && glassesSize) && !(id === 'grainRate' && values.has('grainMass')),
    ),
  );
  return new Evaluation(recipe, { ...plan, ways, accepted }, standing);
}
