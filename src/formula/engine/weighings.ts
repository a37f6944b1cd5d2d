import { nearly } from '../../measure/nearly';
import { roundNumber } from '../../measure/rounding';
import { convertNumber } from '../../measure/units';
import { kitchen } from '../../reference/kitchen';
import { reducedAt } from '../composition/composition-in-effect';
import { reduce, stagesAt } from '../models/milk';
import type { MeasuredRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Amount } from '../recipe/recipe';
import { numericRows } from '../rows/sheet';
import type { Evaluation } from './evaluate';

/** What there can be at least and at most, in the row's unit; null where nothing that went in says so. */
interface Bounds {
  readonly least: number | null;
  readonly most: number | null;
}

const unbounded: Bounds = { least: null, most: null };

/**
 * What is to be said about a measured figure, in the row's unit, that can't have come of what went in or was hardly
 * meant. The figure stands all the same. Source: conservation of mass; nobody weighs more out than in.
 */
export function weighingProblems(
  id: MeasuredRowId,
  measured: number,
  planned: Evaluation,
  actual: Evaluation,
): readonly Problem[] {
  const expected = planned.of(id);
  if (!Number.isFinite(expected)) return [];
  const meant = meantIn(actual.recipe.measured[id], measured, expected);
  if (meant !== null) return [{ code: 'unitMeant', at: id, planned: expected, ...meant }];
  const together = moreOutThanIn(id, actual);
  if (together !== null) return [together];
  const { least, most } = boundsOf(id, actual);
  const over = most !== null && exceeds(measured, most);
  const under = least !== null && exceeds(least, measured);
  if (over || under || isUnexplained(id, actual)) {
    const bounds = { least: under ? least : null, most: over ? most : null };
    return [{ code: 'measuredImpossible', at: id, planned: expected, ...bounds }];
  }
  const isWet = id === 'pulpMass' && actual.standing.coefficients.has('passing');
  return isWet ? [{ code: 'hardlyPressed', at: id, planned: expected }] : [];
}

function exceeds(figure: number, limit: number): boolean {
  return figure > limit * (1 + kitchen.agreement.value);
}

/** Whether no coefficient there can be explains a weight. */
function isUnexplained(id: MeasuredRowId, { standing: { coefficients } }: Evaluation): boolean {
  return (
    (id === 'soakedMass' && !coefficients.has('uptake')) || (id === 'pulpMass' && !coefficients.has('pulpMoisture'))
  );
}

function boundsOf(id: MeasuredRowId, x: Evaluation): Bounds {
  switch (id) {
    case 'soakedMass': {
      const source = x.of('sourceMass');
      const soaking = numericRows.soakWater.absent?.(x) ? null : x.of('soakWater') * x.of('waterDensity');
      return { least: source * (1 - x.reduced().strain.leached), most: soaking === null ? null : source + soaking };
    }
    case 'pulpMass':
      return { least: whenPressedDry(x)?.pulp ?? null, most: putIn(x) };
    case 'milkVolume':
      return { least: null, most: whenPressedDry(x)?.milk ?? null };
    case 'drinkVolume':
      return { least: null, most: x.of('totalFill') };
    case 'sugarLeft':
      return { least: null, most: x.of('drinkSugar') };
    default:
      return unbounded;
  }
}

/** What a press that takes all water out of the pulp, and loses none of it, would leave in bag and jug. */
function whenPressedDry(x: Evaluation): { readonly pulp: number; readonly milk: number } | null {
  const ratio = x.of('waterRatio');
  const { strain } = reducedAt(x, ratio);
  const stages = stagesAt(reduce({ ...strain, pulpMoisture: 0, handlingLoss: 0 }), ratio);
  const source = x.of('sourceMass');
  return stages === null ? null : { pulp: source * stages.pulpMass, milk: source * stages.milkVolume };
}

/** Weight of all that went into the blender, g. */
function putIn(x: Evaluation): number {
  return x.of('sourceMass') * (1 + x.c('uptake') - x.reduced().strain.leached + x.of('waterRatio'));
}

/** Milk and pulp that were both measured, and weigh more than source and water together. */
function moreOutThanIn(id: MeasuredRowId, x: Evaluation): Problem | null {
  const { values } = x.standing;
  if ((id !== 'milkVolume' && id !== 'pulpMass') || !values.has('milkVolume') || !values.has('pulpMass')) return null;
  const out = x.of('pulpMass') + x.of('milkVolume') * x.of('milkDensity');
  const into = putIn(x);
  return exceeds(out, into) ? { code: 'moreOutThanIn', at: id, into, out } : null;
}

/** Units that are typed for one another, or left out, by kind: how many of the base unit each holds. */
const confused = {
  mass: { unit: 'g', holds: [convertNumber(1, 'kg', 'g'), convertNumber(1, 'oz', 'g')] },
  volume: { unit: 'mL', holds: [convertNumber(1, 'L', 'mL'), convertNumber(1, 'cup', 'mL')] },
} as const;

/**
 * The amount that the same number is in a unit often confused with the one it was read in, where only that is anywhere
 * near what is expected: 0.7 g for 0.7 kg, 240 oz for 240 g. Null where the figure is near enough, or no unit brings it
 * there.
 */
function meantIn(
  typed: Amount | undefined,
  measured: number,
  expected: number,
): { readonly unit: 'g' | 'mL'; readonly meant: number } | null {
  if (typed === undefined || typed.amount === null || (typed.kind !== 'mass' && typed.kind !== 'volume')) return null;
  const { unit, holds } = confused[typed.kind];
  const off = measured / expected;
  const near = 2; // tolerance: a batch may well come to half of what was expected, or twice
  const closest = holds
    .flatMap((factor) => [factor, 1 / factor])
    .reduce((best, factor) => (distance(off * factor) < distance(off * best) ? factor : best), 1);
  if (closest === 1 || distance(off * closest) > Math.log(near)) return null;
  // Read in the base unit the number is the amount; else it is what the amount holds of the unit it was read in.
  if (!isTypedBySomeone(typed.amount * Math.min(closest, 1))) return null;
  return { unit, meant: roundNumber(typed.amount * closest, 1) };
}

/** Whether a number has no more decimals than a scale shows. */
function isTypedBySomeone(number: number): boolean {
  const thousandths = 1000 * number;
  return nearly(thousandths, Math.round(thousandths));
}

function distance(ratio: number): number {
  return Math.abs(Math.log(ratio));
}
