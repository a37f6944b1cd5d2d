import { fermentableOf } from '../models/blend';
import { type Reduced, type Stages, stagesAt } from '../models/milk';
import { totalSugars } from '../models/strain';
import type { Ranged } from '../models/sugar';
import {
  type Choices,
  type CoefficientId,
  chooseFrom,
  coefficientIds,
  coefficientInEffect,
  coefficientSlot,
  type Fixed,
  hasYours,
} from '../recipe/coefficients';
import type { Recipe } from '../recipe/recipe';
import { compositionInEffect, reducedAt, reducedFor, type TreatedFood, treatFood } from './composition-in-effect';
import { nativeRange, nativeSugarAt } from './native';
import { type Extreme, pressingAt } from './pressing';

/** The balance of the source at one water ratio, g/g; of it what was asked for before is kept. */
export class AtRatio {
  readonly reduced: Reduced;
  /** Null where it gels. */
  readonly stages: Stages | null;
  private hexoseOnce: Ranged | undefined;
  private nativeOnce: Ranged | undefined;
  private readonly pressed = new Map<Extreme, Stages | null>();

  constructor(
    private readonly settled: Settled,
    readonly ratio: number,
  ) {
    this.reduced = reducedAt(settled, ratio);
    this.stages = stagesAt(this.reduced, ratio);
  }

  /** g of hexose per g of the sugar that reaches the milk. */
  get hexose(): Ranged {
    this.hexoseOnce ??= nativeRange(this.settled, this.reduced);
    return this.hexoseOnce;
  }

  /** The milk's own sugar, g of hexose per litre of milk. */
  get native(): Ranged {
    this.nativeOnce ??= nativeSugarAt(this.settled, this);
    return this.nativeOnce;
  }

  /** The stages with bag and hand at an extreme; null where that would gel. */
  at(extreme: Extreme): Stages | null {
    const known = this.pressed.get(extreme);
    if (known !== undefined) return known;
    const found = stagesAt(reducedFor(this.settled, this.ratio, pressingAt(this.settled, extreme)), this.ratio);
    this.pressed.set(extreme, found);
    return found;
  }
}

/**
 * What a recipe's choices and the cook's own figures settle before any amount is known: each coefficient, and what
 * follows from these alone. The same for every batch with the same of them, and for a batch while amounts are typed.
 */
export class Settled implements Fixed {
  readonly choices: Choices;
  readonly coefficients: Float64Array;
  /** Fermentable sugar of 1 g of the sweetener, g of hexose. */
  readonly fermentable: Ranged;
  private reducedOnce: Reduced | undefined;
  private treatedOnce: TreatedFood | undefined;
  private lastRatio: AtRatio | undefined;
  private usual: AtRatio | undefined;

  constructor(
    readonly recipe: Recipe,
    corrected: ReadonlyMap<CoefficientId, number>,
  ) {
    this.choices = chooseFrom(recipe);
    this.coefficients = Float64Array.from(coefficientIds, (id) => {
      return corrected.get(id) ?? coefficientInEffect(id, recipe, this.choices).value;
    });
    this.fermentable = fermentableOf(this.choices.sweetener, this.choices.grain.takes);
  }

  c(id: CoefficientId): number {
    return this.coefficients[coefficientSlot(id)] ?? Number.NaN;
  }

  /** The source's balance with only the water open, all of its own liquid used. */
  reduced(): Reduced {
    this.reducedOnce ??= reducedFor(this, Number.POSITIVE_INFINITY);
    return this.reducedOnce;
  }

  get treated(): TreatedFood {
    this.treatedOnce ??= treatFood(this, this.atUsual.stages);
    return this.treatedOnce;
  }

  /** Sugars of the source as it is used, g per g. */
  get totalSugars(): number {
    return totalSugars(compositionInEffect(this)).value;
  }

  /** At the usual ratio; of its own liquid no more than that is used. */
  get atUsual(): AtRatio {
    this.usual ??= new AtRatio(this, this.c('usualRatio'));
    return this.usual;
  }

  /** At a water ratio, g/g. An edit that leaves it where it is finds the balance there. */
  at(ratio: number): AtRatio {
    if (ratio === this.usual?.ratio) return this.usual;
    if (this.lastRatio === undefined || this.lastRatio.ratio !== ratio) this.lastRatio = new AtRatio(this, ratio);
    return this.lastRatio;
  }

  /** Whether the usual recipe of this source takes tap water at all. */
  get takesWater(): boolean {
    const slack = 1e-3; // tolerance: a drop of water sizes nothing
    return this.c('usualRatio') - this.c('ownWater') > slack;
  }
}

const nothingCorrected: ReadonlyMap<CoefficientId, number> = new Map();
const kept = new Map<string, Settled>();

/** What a recipe settles, from those kept where another recipe settled the same. */
export function settledFor(recipe: Recipe): Settled {
  const key = keyOf(recipe);
  const found = kept.get(key);
  if (found !== undefined) return found;
  // More than a sheet has of different makes; beyond them all are worked out anew.
  if (kept.size > 1000) kept.clear();
  const settled = new Settled(recipe, nothingCorrected);
  kept.set(key, settled);
  return settled;
}

/** All that decides: the choices, and where the cook has own figures, which of them count in this batch. */
function keyOf(recipe: Recipe): string {
  const { vessel, source, grains, sweetener, yours, jarOf, measured } = recipe;
  let key = `${vessel} ${source} ${grains}`;
  for (const { id, share } of sweetener) key += ` ${id} ${share}`;
  return hasYours(recipe) ? key + JSON.stringify([yours, jarOf, Object.keys(measured)]) : key;
}
