import { sweeteners } from '../../reference/sweeteners';
import type { Formulation } from '../engine/formulate';
import { type Blend, fermentableOf } from '../models/blend';
import type { SweetenerPart } from '../recipe/recipe';

/**
 * What other sweeteners, in any shares by weight, weigh together at the fermentable sugar that this batch adds, g:
 * m₂ = m₁·f₁/f₂. Null where the grains can ferment none of them, or the batch adds none.
 */
export function blendMass(parts: readonly SweetenerPart[], { of, choices }: Formulation): number | null {
  const blend: Blend = parts.map(({ id, share }) => ({ entry: sweeteners[id], share }));
  const fermentable = fermentableOf(blend, choices.grain.takes).value;
  const hexose = of('sweetenerMass') * of('fermentable');
  return fermentable > 0 && Number.isFinite(hexose) ? hexose / fermentable : null;
}
