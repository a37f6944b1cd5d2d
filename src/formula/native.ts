import { coefficientInEffect, coefficientKey, coefficients } from './coefficients';
import type { Reduced } from './models/milk';
import { stagesAt } from './models/milk';
import { hexosePerSugar } from './models/strain';
import type { Ranged } from './models/sugar';
import type { Recipe } from './recipe';
import type { Access } from './row';
import { compositionInEffect, reducedAt, reducedWith, withSugarOfLabel } from './treated';

/** g of hexose per g of the sugar that reaches the milk, with its range where the table does not say which sugars. */
export function nativeRange(x: Access, reduced: Reduced = x.reduced()): Ranged {
  const { source, grain } = x.choices;
  return hexosePerSugar(compositionInEffect(x), reduced.strain, source.ownWater?.composition ?? null, grain.takes);
}

export function nativeFactor(x: Access): number {
  return nativeRange(x).value;
}

/**
 * The milk's own sugar, g of hexose per litre of milk, from the least to the most that its table leaves open and, until
 * the cook has put in what the label says, that such labels say. NaN where there is no milk.
 */
export function nativeSugarRange(x: Access): Ranged {
  const ratio = x.of('waterRatio');
  const stages = x.stages();
  const { value, low, high } = nativeRange(x, reducedAt(x, ratio));
  const perFactor = stages ? (1000 * stages.milkSugars) / stages.milkVolume : Number.NaN;
  const label = labelsSay(x, ratio);
  return {
    value: perFactor * value,
    low: label ? Math.min(perFactor * low, label.low) : perFactor * low,
    high: label ? Math.max(perFactor * high, label.high) : perFactor * high,
  };
}

/** Whether there is no label to read, or both its figures are the cook’s: a sugar without its serving is a guess. */
export function isLabelRead({ choices, recipe }: Pick<Access, 'choices' | 'recipe'>): boolean {
  return choices.source.label === null || (isOwn('labelSugar', recipe) && isOwn('labelServing', recipe));
}

function isOwn(id: 'labelSugar' | 'labelServing', recipe: Recipe): boolean {
  return recipe.yours[coefficientKey(id, recipe)] !== undefined;
}

/**
 * The same by the least and the most that labels of this kind say, or that the cook’s sugar comes to in the servings that
 * labels count by; null where there is no label, or its own figures are known.
 */
function labelsSay(x: Access, ratio: number): { readonly low: number; readonly high: number } | null {
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

function sugarByLabel(x: Access, ratio: number, labelSugar: number, serving: number): Ranged {
  const food = withSugarOfLabel(x, labelSugar, serving);
  const reduced = reducedWith(x, food, ratio);
  const stages = stagesAt(reduced, ratio);
  const factor = hexosePerSugar(food, reduced.strain, null, x.choices.grain.takes);
  const perFactor = stages ? (1000 * stages.milkSugars) / stages.milkVolume : Number.NaN;
  return { value: perFactor * factor.value, low: perFactor * factor.low, high: perFactor * factor.high };
}
