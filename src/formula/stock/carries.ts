import type { GrainKind } from '../../reference/grains';
import { isGrains, grains as kinds } from '../../reference/grains';
import type { JarId } from '../../reference/jars';
import { jars } from '../../reference/jars';
import { growthLearning } from '../../reference/stock-growth';
import { stockRest } from '../../reference/stock-rest';
import { type Formulation, formulate } from '../engine/formulate';
import type { Recipe } from '../recipe/recipe';
import type { Instant } from '../time/event';
import type { Growth } from './growth';
import type { Entry, Ledger } from './ledger';

/** Grains per litre of milk: of the open batch where it is of these grains and has one, else the usual. */
export interface Dose {
  readonly rate: number;
  readonly isBatch: boolean;
}

/** By which dose a stock is measured, g/L. */
export function doseFor(grains: GrainKind, formulation: Formulation | null): Dose {
  const usual: Dose = { rate: kinds[grains].dose.value, isBatch: false };
  if (formulation === null || formulation.recipe.grains !== grains) return usual;
  const { value, status } = formulation.rows.grainRate;
  const isOwn = typeof value === 'number' && value > 0 && (status === 'given' || value !== usual.rate);
  return isOwn ? { rate: value, isBatch: true } : usual;
}

/** The milk that grains can carry, mL. */
export function carries(grams: number, { rate }: Dose): number {
  return (1000 * Math.max(grams, 0)) / rate;
}

/** The grains a batch asks for, g; null where it is of another kind, or has no figure. */
export function askedBy(grains: GrainKind, formulation: Formulation | null): number | null {
  if (formulation === null || formulation.recipe.grains !== grains) return null;
  const { value } = formulation.rows.grainMass;
  return typeof value === 'number' && value > 0 ? value : null;
}

/** The recipe with these grains; a dose typed for others is none of theirs. */
export function withGrains(recipe: Recipe, grains: GrainKind): Recipe {
  if (recipe.grains === grains) return recipe;
  return { ...recipe, grains, given: recipe.given.filter(({ row }) => row !== 'grainRate') };
}

/** The grains that this recipe would ask for to fill another jar, at its own dose; null where it comes to no figure. */
export function askedByJar(recipe: Recipe, vessel: JarId): number | null {
  const given = recipe.given.filter(({ row }) => row === 'grainRate' || row === 'headspaceDepth');
  if (!isGrains(recipe.grains)) return null;
  return askedBy(recipe.grains, formulate({ ...recipe, vessel, given, measured: {}, onHand: {} }));
}

/** A jar and the grains it asks for, g. */
export interface LargerJar {
  readonly id: JarId;
  readonly asked: number;
}

/** The jars that ask for more grains than there are, by this recipe; the one that asks for least first. */
export function largerJars(recipe: Recipe, grams: number): readonly LargerJar[] {
  return jarIds
    .flatMap((id): LargerJar[] => {
      const asked = id === 'own' ? null : askedByJar(recipe, id);
      return asked === null || asked <= grams ? [] : [{ id, asked }];
    })
    .sort((one, other) => one.asked - other.asked);
}

const jarIds = Object.keys(jars).filter((id): id is JarId => id in jars);

/** After how many batches there is enough, as a range; null where that end is not in sight. */
export interface Until {
  readonly soonest: number | null;
  readonly likely: number | null;
  readonly latest: number | null;
}

/** In how many batches at a growth grains come to a weight; all 0 where there are as many. Grams above 0. */
export function batchesUntil(have: number, wanted: number, growth: Pick<Growth, 'low' | 'likely' | 'high'>): Until {
  const at = (factor: number): number | null => {
    if (have >= wanted) return 0;
    if (!(factor > 1 && have > 0)) return null;
    const batches = Math.ceil(Math.log(wanted / have) / Math.log(factor));
    return batches <= growthLearning.inSight.value ? batches : null;
  };
  return { soonest: at(growth.high), likely: at(growth.likely), latest: at(growth.low) };
}

/** The usual time from one batch to the next, min: the middle one; null for a stock of few batches. */
export function paceOf(entries: readonly Pick<Entry, 'at' | 'did'>[]): number | null {
  const outs = entries.filter(({ did }) => did === 'out').map(({ at }): Instant => at);
  if (outs.length < growthLearning.pace.value) return null;
  const recent = outs.sort((one, other) => one - other).slice(-growthLearning.recent.value);
  const gaps = recent.slice(1).map((at, place) => at - (recent[place] ?? at));
  const middle = gaps.sort((one, other) => one - other)[Math.floor(gaps.length / 2)];
  return middle === undefined || middle <= 0 ? null : middle;
}

/** What a stock can spare, g: at rest, beyond what the open batch still has to get. Below 0 is what it lacks. */
export function spare({ rest, away }: Ledger, asked: number | null, batch: string | null): number {
  const isOut = away.some(({ out }) => out.batch !== undefined && out.batch === batch);
  return rest - (asked === null || isOut ? 0 : asked);
}

/** A portion to give away: for a beginner’s jar at the usual dose, g. */
export function portionOf(grains: GrainKind): number {
  return (kinds[grains].dose.value * stockRest.portionJar.value) / 1000;
}
