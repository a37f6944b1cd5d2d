import type { Composition } from '../../reference/sources';
import { type Reduced, reduce, type Stages } from '../models/milk';
import { foodDensity, strainOf, withLabelSugar } from '../models/strain';
import type { Fixed } from '../recipe/coefficients';
import type { Pressing } from './pressing';

export interface TreatedFood {
  /** g per mL of the source as bought; null where no cup weight is published. */
  readonly weight: number | null;
  /** g per mL of milk at the usual ratio, for reading a typed weight of milk. */
  readonly milkDensity: number;
}

/** The composition in effect: the table's, or for a carton the table's with the sugar of its label. */
export function compositionInEffect(x: Fixed): Composition {
  const { source } = x.choices;
  return source.label ? withSugarOfLabel(x, x.c('labelSugar'), x.c('labelServing')) : source.composition;
}

/** The composition of a carton whose label says so much sugar, g, in so much of it, mL. */
export function withSugarOfLabel(x: Fixed, labelSugar: number, serving: number): Composition {
  return withLabelSugar(x.choices.source.composition, labelSugar, serving);
}

/** The source with how this cook soaks and presses it, ready for the balance, at most `ratio` of its own water used. */
export function reducedFor(x: Fixed, ratio: number, pressing?: Pressing): Reduced {
  return reducedWith(x, compositionInEffect(x), ratio, pressing);
}

/** The same with a composition, or a bag and a hand, other than those in effect. */
export function reducedWith(x: Fixed, food: Composition, ratio: number, pressing?: Pressing): Reduced {
  const { source } = x.choices;
  return reduce(
    strainOf(food, {
      uptake: x.c('uptake'),
      leaching: x.c('leaching'),
      passing: pressing?.passing ?? x.c('passing'),
      pulpMoisture: pressing?.pulpMoisture ?? x.c('pulpMoisture'),
      handlingLoss: pressing?.handlingLoss ?? x.c('handlingLoss'),
      own: source.ownWater ? { food: source.ownWater.composition, mass: Math.min(x.c('ownWater'), ratio) } : null,
    }),
  );
}

/** The same at a given water ratio: of its own liquid no more than the whole of the water wanted. */
export function reducedAt(x: Fixed & { reduced(): Reduced }, ratio: number): Reduced {
  return ratio < x.c('ownWater') ? reducedFor(x, ratio) : x.reduced();
}

/** What a typed amount of the source or of its milk is read with, by the stages at its usual ratio. */
export function treatFood(x: Fixed, usual: Stages | null): TreatedFood {
  const { source } = x.choices;
  const ofCup = source.cup ? source.cup.grams / source.cup.millilitres : null;
  return {
    weight: ofCup ?? (source.form === 'liquid' ? foodDensity(compositionInEffect(x)) : null),
    milkDensity: usual ? usual.milkMass / usual.milkVolume : Number.NaN,
  };
}
