import type { Composition } from '../../reference/sources';
import { densityOf, specificVolume } from './density';
import type { SolidComponent, Strain } from './milk';
import { type Appetite, hexoseOf, hexosePerDisaccharide, type Ranged, sumOfSugars } from './sugar';

/**
 * Total sugars of a food, g per g. Where the table has none, between 0 and carbohydrate less fibre, the midpoint as an
 * estimate; a fibre that is missing too leaves the whole carbohydrate as the upper end.
 */
export function totalSugars(food: Composition): Ranged {
  if (food.sugars !== null) return exactly(food.sugars / 100);
  const high = Math.max(food.carbohydrate - (food.fibre ?? 0), 0) / 100;
  return { low: 0, high, value: high / 2 };
}

/**
 * Fermentable sugar of a food, g of hexose per g. The kinds that the table gives count as they are; what is left of
 * the total lies between all single sugars (× 1) and all double (× 1.05263).
 */
export function nativeHexose(food: Composition, takes: Appetite): Ranged {
  const known = hexoseOf(food, takes) / 100;
  const total = totalSugars(food);
  const printed = sumOfSugars(food) / 100;
  const low = known + Math.max(total.low - printed, 0);
  const high = known + Math.max(total.high - printed, 0) * hexosePerDisaccharide;
  return { low, high, value: (low + high) / 2 };
}

function exactly(value: number): Ranged {
  return { value, low: value, high: value };
}

/**
 * Dry solids other than sugars by component, g per g of food, as shares of what is neither water nor sugar. The parts
 * of a table add up to 99.9 to 100.1, so they are scaled to N = 1 − water − sugars: mass is conserved, not the rounding.
 */
export function solidsOf(food: Composition): Readonly<Record<SolidComponent, number>> {
  const sugars = totalSugars(food).value;
  const fibre = food.fibre ?? 0;
  const parts = {
    protein: food.protein,
    fat: food.fat,
    fibre,
    ash: food.ash,
    carbohydrate: Math.max(food.carbohydrate - fibre - sugars * 100, 0),
  };
  const sum = parts.protein + parts.fat + parts.fibre + parts.ash + parts.carbohydrate;
  const scale = sum > 0 ? Math.max(1 - food.water / 100 - sugars, 0) / sum : 0;
  return {
    protein: parts.protein * scale,
    fat: parts.fat * scale,
    fibre: parts.fibre * scale,
    ash: parts.ash * scale,
    carbohydrate: parts.carbohydrate * scale,
  };
}

/** Density of a food as it is, g/mL, from its composition. Source: Choi & Okos 1986. */
export function foodDensity(food: Composition): number {
  const solids = solidsOf(food);
  return densityOf({
    ...solids,
    carbohydrate: solids.carbohydrate + totalSugars(food).value,
    water: food.water / 100,
  });
}

/**
 * The same drink with the sugar its label states: g of sugars in `serving` mL, the water giving way gram for gram. With
 * v the volume of a gram, s its sugars and c the sugars of a mL: s = c·v, and v falls with s as sugar displaces water.
 */
export function withLabelSugar(food: Composition, sugarPerServing: number, serving: number): Composition {
  if (!(serving > 0)) return food;
  const before = (food.sugars ?? 0) / 100;
  const wanted = sugarPerServing / serving;
  const swap = specificVolume('carbohydrate') - specificVolume('water');
  const share = (wanted * (1 / foodDensity(food) - before * swap)) / (1 - wanted * swap);
  const sugars = Math.min(100 * share, food.water + (food.sugars ?? 0));
  const change = sugars - (food.sugars ?? 0);
  const kinds = { sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null };
  return { ...food, ...kinds, sugars, carbohydrate: food.carbohydrate + change, water: food.water - change };
}

export interface Treatment {
  readonly uptake: number;
  readonly leaching: number;
  readonly passing: number;
  readonly pulpMoisture: number;
  readonly handlingLoss: number;
  readonly own: { readonly food: Composition; readonly mass: number } | null;
}

/** One gram of a food, ready for the mass balance, treated as said. */
export function strainOf(food: Composition, treatment: Treatment): Strain {
  const sugars = totalSugars(food).value;
  const { own } = treatment;
  const ownSugars = own ? totalSugars(own.food).value : 0;
  return {
    water: food.water / 100,
    uptake: treatment.uptake,
    leached: sugars * treatment.leaching,
    sugars: sugars * (1 - treatment.leaching),
    solids: solidsOf(food),
    passing: treatment.passing,
    pulpMoisture: treatment.pulpMoisture,
    handlingLoss: treatment.handlingLoss,
    own: own
      ? {
          mass: own.mass,
          water: (own.mass * own.food.water) / 100,
          sugars: own.mass * ownSugars,
          solids: own.mass * Math.max(1 - own.food.water / 100 - ownSugars, 0),
        }
      : { mass: 0, water: 0, sugars: 0, solids: 0 },
  };
}

/** g of hexose per g of the sugars that reach the blender, its own liquid's included; 0 where there are none. */
export function hexosePerSugar(food: Composition, strain: Strain, own: Composition | null, takes: Appetite): Ranged {
  const all = strain.sugars + strain.own.sugars;
  if (!(all > 0)) return exactly(0);
  const first = nativeHexose(food, takes);
  const kept = strain.sugars + strain.leached > 0 ? strain.sugars / (strain.sugars + strain.leached) : 1;
  const second = own ? nativeHexose(own, takes) : exactly(0);
  const share = (of: (range: Ranged) => number): number => (of(first) * kept + of(second) * strain.own.mass) / all;
  return { value: share((r) => r.value), low: share((r) => r.low), high: share((r) => r.high) };
}
