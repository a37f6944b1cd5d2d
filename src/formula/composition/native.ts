import { type Reduced, type Stages, stagesAt } from '../models/milk';
import { hexosePerSugar } from '../models/strain';
import type { Ranged } from '../models/sugar';
import { coefficientInEffect, coefficientKey, coefficients, type Fixed } from '../recipe/coefficients';
import type { Recipe } from '../recipe/recipe';
import { compositionInEffect, reducedWith, withSugarOfLabel } from './composition-in-effect';

/** A batch by its water ratio and the balance there. */
interface WithBalance {
  of(id: 'waterRatio'): number;
  stages(): Stages | null;
  readonly settled: { at(ratio: number): { readonly native: Ranged } };
}

/** g of hexose per g of the sugar that reaches the milk, with its range where the table does not say which sugars. */
export function nativeRange(x: Fixed, reduced: Reduced): Ranged {
  const { source, grain } = x.choices;
  return hexosePerSugar(compositionInEffect(x), reduced.strain, source.ownWater?.composition ?? null, grain.takes);
}

/**
 * The milk's own sugar, g of hexose per litre of milk, from the least to the most that its table leaves open and, until
 * the cook has put in what the label says, that such labels say. NaN where there is no milk.
 */
export function nativeSugarRange(x: WithBalance): Ranged {
  const ratio = x.of('waterRatio');
  x.stages();
  return x.settled.at(ratio).native;
}

/** The same at a water ratio, by the balance there. */
export function nativeSugarAt(
  x: Fixed,
  { ratio, hexose, stages }: { readonly ratio: number; readonly hexose: Ranged; readonly stages: Stages | null },
): Ranged {
  const { value, low, high } = hexose;
  const label = labelsSay(x, ratio);
  const [least, most] = [perLitre(stages, low), perLitre(stages, high)];
  return {
    value: perLitre(stages, value),
    low: label ? Math.min(least, label.low) : least,
    high: label ? Math.max(most, label.high) : most,
  };
}

/** g of hexose per litre of milk, by what a gram of its sugar makes; in the order of the formula of `nativeSugar`. */
function perLitre(stages: Stages | null, hexose: number): number {
  return stages ? (1000 * stages.milkSugars * hexose) / stages.milkVolume : Number.NaN;
}

/** Whether there is no label to read, or both its figures are the cook’s: a sugar without its serving is a guess. */
export function isLabelRead({ choices, recipe }: Pick<Fixed, 'choices' | 'recipe'>): boolean {
  return choices.source.label === null || (isOwn('labelSugar', recipe) && isOwn('labelServing', recipe));
}

function isOwn(id: 'labelSugar' | 'labelServing', recipe: Recipe): boolean {
  return recipe.yours[coefficientKey(id, recipe)] !== undefined;
}

/**
 * The same by the least and the most that labels of this kind say, or that the cook’s sugar comes to in the servings that
 * labels count by; null where there is no label, or its own figures are known.
 */
function labelsSay(x: Fixed, ratio: number): { readonly low: number; readonly high: number } | null {
  if (isLabelRead(x)) return null;
  const sugar = coefficientInEffect('labelSugar', x.recipe, x.choices);
  // The sugars of the table are those of its serving; the cook's own may be of any that labels count by.
  const { value, low: least = value, high: most = value } = coefficients.labelServing.find(x.choices);
  const [small, large] = isOwn('labelSugar', x.recipe) ? [least, most] : [value, value];
  return {
    low: sugarByLabel(x, ratio, sugar.low ?? sugar.value, large).low,
    high: sugarByLabel(x, ratio, sugar.high ?? sugar.value, small).high,
  };
}

function sugarByLabel(x: Fixed, ratio: number, labelSugar: number, serving: number): Ranged {
  const food = withSugarOfLabel(x, labelSugar, serving);
  const reduced = reducedWith(x, food, ratio);
  const stages = stagesAt(reduced, ratio);
  const factor = hexosePerSugar(food, reduced.strain, null, x.choices.grain.takes);
  return {
    value: perLitre(stages, factor.value),
    low: perLitre(stages, factor.low),
    high: perLitre(stages, factor.high),
  };
}
