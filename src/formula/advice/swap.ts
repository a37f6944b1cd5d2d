import type { Exact } from '../../measure/exact';
import { sweetenerNotes } from '../../reference/sweetener-notes';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import type { Formulation } from '../engine/formulate';
import { type Blend, fermentableOf, weightOf } from '../models/blend';
import type { Ranged } from '../models/sugar';

/** One sweetener in place of the one in use, at equal fermentable sugar. */
export interface Swap {
  readonly id: SweetenerId;
  readonly name: string;
  /** g for the whole batch; the range is open where its sugars are an estimate. Null where the grains can't ferment it. */
  readonly mass: Ranged | null;
  /** g per mL, for writing it in spoons; null where no spoon of it is published. */
  readonly weight: number | null;
  /** Water it brings, g. */
  readonly water: number | null;
  /** Shares of its fermentable sugar by kind, 0 to 1; null where no table says. */
  readonly kinds: { readonly sucrose: number; readonly glucose: number; readonly fructose: number } | null;
  /** Error of sugar when it is swapped spoon for spoon, as people do: 0.2 is a fifth too much. Null where no spoon is known. */
  readonly spoonForSpoon: number | null;
  /** What it costs, in the cook's own currency; null where it has no price. */
  readonly cost: Exact | null;
  readonly flavour: string;
  readonly caution: string | null;
  readonly refused: string | null;
}

/** What so many grams of a sweetener cost; null where it has no price. */
export type CostOf = (id: SweetenerId, grams: number) => Exact | null;

const noPrices: CostOf = () => null;

function isSweetener(id: string): id is SweetenerId {
  return Object.hasOwn(sweeteners, id);
}

const ids: readonly SweetenerId[] = Object.keys(sweeteners)
  .filter(isSweetener)
  .filter((id) => id !== 'none');

/**
 * Every sweetener at the fermentable sugar that this batch adds: m₂ = m₁·f₁/f₂, masses in g. Null where the batch adds
 * none or its amount can't be had.
 */
export function swapsFor(formulation: Formulation, costOf: CostOf = noPrices): readonly Swap[] | null {
  const { of } = formulation;
  const hexose = of('sweetenerMass') * of('fermentable');
  if (!(hexose > 0)) return null;
  return ids.map((id) => swapTo(id, hexose, costOf, formulation));
}

function swapTo(id: SweetenerId, hexose: number, costOf: CostOf, { choices }: Formulation): Swap {
  const now: Blend = choices.sweetener;
  const entry = sweeteners[id];
  const blend: Blend = [{ entry, share: 1 }];
  const { takes } = choices.grain;
  const fermentable = fermentableOf(blend, takes);
  const mass = fermentable.value > 0 ? rangeOf(hexose, fermentable) : null;
  const weight = weightOf(blend);
  const weightNow = weightOf(now);
  const perSpoonNow = weightNow === null ? null : weightNow * fermentableOf(now, takes).value;
  const note = sweetenerNotes[id];
  return {
    id,
    name: entry.name,
    mass,
    weight,
    water: mass === null ? null : (mass.value * entry.water) / 100,
    kinds: kindsOf(id),
    spoonForSpoon:
      mass === null || weight === null || perSpoonNow === null ? null : (weight * fermentable.value) / perSpoonNow - 1,
    cost: mass === null ? null : costOf(id, mass.value),
    flavour: note.flavour,
    caution: note.caution?.text ?? null,
    refused: entry.refused ?? null,
  };
}

/** More of it is needed where less of it ferments, so the ends of the range change places. */
function rangeOf(hexose: number, { value, low, high }: Ranged): Ranged {
  return { value: hexose / value, low: hexose / high, high: low > 0 ? hexose / low : Number.POSITIVE_INFINITY };
}

function kindsOf(id: SweetenerId): Swap['kinds'] {
  const { sucrose, glucose, fructose } = sweeteners[id].sugars;
  if (sucrose === null || glucose === null || fructose === null) return null;
  const all = sucrose + glucose + fructose;
  return all > 0 ? { sucrose: sucrose / all, glucose: glucose / all, fructose: fructose / all } : null;
}
