import type { Component } from '../../reference/physics';
import { specificVolume } from './density';

/** What one gram of source brings, and how it is soaked, blended and strained. Masses in g per g of source as bought. */
export interface Strain {
  /** Water of the source as bought, w. */
  readonly water: number;
  /** Water taken up in soaking, u. */
  readonly uptake: number;
  /** Sugars that reach the blender, S: what the source holds less what leached into drained soak water. */
  readonly sugars: number;
  readonly leached: number;
  /** Dry solids other than sugars, by component; their sum is N. */
  readonly solids: Readonly<Record<SolidComponent, number>>;
  /** Share of N that passes the bag, x; 1 for a liquid source. */
  readonly passing: number;
  /** Moisture of the pressed pulp, wet basis, p. */
  readonly pulpMoisture: number;
  /** Share of the milk lost on sides and in the bag, l. */
  readonly handlingLoss: number;
  /** A liquid that comes with the source (the water of a fresh coconut), counted before tap water. */
  readonly own: { readonly mass: number; readonly water: number; readonly sugars: number; readonly solids: number };
}

export type SolidComponent = Exclude<Component, 'water'>;

/** The stages of the balance, g per g of source, volumes in mL per g. */
export interface Stages {
  readonly tapWater: number;
  readonly ownLiquid: number;
  readonly slurryMass: number;
  readonly slurryVolume: number;
  readonly heldBack: number;
  readonly pulpMass: number;
  readonly pulpDry: number;
  /** Milk before handling loses any. */
  readonly beforeLoss: number;
  readonly milkMass: number;
  readonly milkVolume: number;
  readonly milkSolids: number;
  readonly milkSugars: number;
  readonly lost: number;
}

const solidComponents: readonly SolidComponent[] = ['protein', 'fat', 'carbohydrate', 'fibre', 'ash'];

export function sumOfSolids(solids: Strain['solids']): number {
  return solidComponents.reduce((sum, component) => sum + solids[component], 0);
}

/**
 * Which of the solids pass: fibre last; fat, protein, other carbohydrate and ash in proportion. g per g of source.
 * Source: a judgement of this sheet, since a bag holds back what is coarse.
 */
export function passingSolids(strain: Strain): Record<SolidComponent, number> {
  const all = sumOfSolids(strain.solids);
  const soft = all - strain.solids.fibre;
  const passes = strain.passing * all;
  const softShare = soft > 0 ? Math.min(passes / soft, 1) : 0;
  const part = (component: SolidComponent): number => strain.solids[component] * softShare;
  return {
    protein: part('protein'),
    fat: part('fat'),
    carbohydrate: part('carbohydrate'),
    ash: part('ash'),
    fibre: Math.max(passes - soft, 0),
  };
}

/**
 * The same balance with everything but the water fixed. With W the slurry's water and W′ = W − kS, the share of water
 * and sugar kept in the pulp is q = c/W′, so each figure of the milk is `still + rising·W′ + falling/W′`: linear in W′
 * and 1/W′. That is why a wanted yield gives its water in closed form.
 */
export interface Linear {
  readonly still: number;
  readonly rising: number;
  readonly falling: number;
}

export interface Reduced {
  readonly strain: Strain;
  readonly nonSugar: number;
  readonly passed: number;
  /** k = p/(1 − p), water per dry solid in the pulp; 0 where nothing is held back. */
  readonly waterPerDry: number;
  /** c = k(1 − x)N: what the pulp keeps of W′. */
  readonly kept: number;
  /** kN: the W′ at which the slurry is as wet as the pulp. Only above it does straining part the two. */
  readonly asWetAsPulp: number;
  readonly volume: Linear;
  readonly sugars: Linear;
  /** The mass of source solids and its own liquid that pass, and their volume. */
  readonly passedVolume: number;
}

export function reduce(strain: Strain): Reduced {
  const nonSugar = sumOfSolids(strain.solids);
  const heldDry = (1 - strain.passing) * nonSugar;
  const waterPerDry = heldDry > 0 ? strain.pulpMoisture / (1 - strain.pulpMoisture) : 0;
  const kept = waterPerDry * heldDry;
  const passing = passingSolids(strain);
  const passed = strain.passing * nonSugar;
  const passedVolume = solidComponents.reduce((sum, part) => sum + passing[part] * specificVolume(part), 0);
  const sugars = strain.sugars + strain.own.sugars;
  const keep = 1 - strain.handlingLoss;
  const ofWater = specificVolume('water');
  const ownVolume = strain.own.solids * specificVolume('carbohydrate');
  const sugarAndItsWater = sugars * (specificVolume('carbohydrate') + waterPerDry * ofWater);
  return {
    strain,
    nonSugar,
    passed,
    waterPerDry,
    kept,
    asWetAsPulp: waterPerDry * (nonSugar + strain.own.solids),
    passedVolume: passedVolume + ownVolume,
    volume: {
      still: keep * (passedVolume + ownVolume + sugarAndItsWater - kept * ofWater),
      rising: keep * ofWater,
      falling: -keep * kept * sugarAndItsWater,
    },
    sugars: { still: keep * sugars, rising: 0, falling: -keep * kept * sugars },
  };
}

/** Water ratio R (g/g) at which W′ takes this value, and back. */
export function ratioAt(reduced: Reduced, freeWater: number): number {
  return freeWater - freeWaterAt(reduced, reduced.strain.own.mass) + reduced.strain.own.mass;
}

/** W′ = w + u + water of the own liquid + tap water − kS at the ratio R, g per g of source. */
export function freeWaterAt(reduced: Reduced, ratio: number): number {
  const { strain, waterPerDry } = reduced;
  const sugars = strain.sugars + strain.own.sugars;
  return strain.water + strain.uptake + strain.own.water + (ratio - strain.own.mass) - waterPerDry * sugars;
}

export function valueAt(linear: Linear, freeWater: number): number {
  return linear.still + linear.rising * freeWater + (linear.falling === 0 ? 0 : linear.falling / freeWater);
}

/**
 * The water ratio above which there is milk, g/g; at it the slurry is as wet as the pulp, and under it the milk would be
 * drier than its own pulp: it gels. A source's own liquid is counted before tap water, so as far as it reaches.
 */
export function leastRatio(reduced: Reduced): number {
  const { strain, nonSugar, waterPerDry } = reduced;
  const { own } = strain;
  const withTap = ratioAt(reduced, reduced.asWetAsPulp);
  const perOwn = own.water - waterPerDry * (own.sugars + own.solids);
  if (withTap >= own.mass || !(perOwn > 0)) return withTap;
  return (own.mass * (waterPerDry * (nonSugar + strain.sugars) - strain.water - strain.uptake)) / perOwn;
}

/**
 * Mass balance of soaking, blending and straining at the water ratio R, per g of source as bought.
 * Gives null when the slurry is not wetter than the pulp (R at or under `leastRatio`).
 * Source: conservation of mass; sugars follow the water. Mass in = milk + pulp + lost, to rounding.
 */
export function stagesAt(reduced: Reduced, ratio: number): Stages | null {
  const { strain, nonSugar, passed, waterPerDry, kept, asWetAsPulp } = reduced;
  const freeWater = freeWaterAt(reduced, ratio);
  if (!(freeWater > asWetAsPulp)) return null;
  const sugars = strain.sugars + strain.own.sugars;
  const water = freeWater + waterPerDry * sugars;
  const held = kept === 0 ? 0 : kept / freeWater;
  const pulpDry = nonSugar - passed + held * sugars;
  const pulpMass = pulpDry + held * water;
  const beforeLoss = passed + strain.own.solids + (1 - held) * (sugars + water);
  const milkMass = beforeLoss * (1 - strain.handlingLoss);
  const solids = passed + strain.own.solids + (1 - held) * sugars;
  const allVolume = solidComponents.reduce((sum, part) => sum + strain.solids[part] * specificVolume(part), 0);
  return {
    tapWater: ratio - strain.own.mass,
    ownLiquid: strain.own.mass,
    slurryMass: nonSugar + strain.own.solids + sugars + water,
    slurryVolume:
      allVolume + (strain.own.solids + sugars) * specificVolume('carbohydrate') + water * specificVolume('water'),
    heldBack: held,
    pulpMass,
    pulpDry,
    beforeLoss,
    milkMass,
    milkVolume: valueAt(reduced.volume, freeWater),
    milkSolids: solids / beforeLoss,
    milkSugars: (1 - held) * sugars * (1 - strain.handlingLoss),
    lost: beforeLoss * strain.handlingLoss,
  };
}

/**
 * The water ratios at which `figure(W′) = still + rising·W′`, a quadratic in W′: none when more milk is asked than the
 * water could give, or so little that the pulp keeps it. Two where a typed amount of water gives the same milk with
 * little of the source and with much.
 */
export function ratiosFor(reduced: Reduced, figure: Linear, target: { still: number; rising: number }): number[] {
  const roots = rootsOf(figure.rising - target.rising, figure.still - target.still, figure.falling);
  return roots.filter((freeWater) => freeWater > reduced.asWetAsPulp).map((freeWater) => ratioAt(reduced, freeWater));
}

/** Real roots of a·w² + b·w + c = 0, without the cancellation of the schoolbook form. */
function rootsOf(a: number, b: number, c: number): number[] {
  const under = b * b - 4 * a * c; // algebra
  if (!(under >= 0)) return [];
  const sum = -(b + (b < 0 ? -1 : 1) * Math.sqrt(under)) / 2;
  const roots = sum === 0 ? [0] : [c / sum];
  return a === 0 || sum === 0 ? roots : [...roots, sum / a];
}

/** a·f + b·g of two figures. */
export function combine(f: Linear, a: number, g: Linear, b: number): Linear {
  return {
    still: a * f.still + b * g.still,
    rising: a * f.rising + b * g.rising,
    falling: a * f.falling + b * g.falling,
  };
}

/**
 * The water ratio that gives milk of this share of solids (0 to 1), from (1 − σ)·(solids) = σ·(water). With tap water, or
 * with less than all of the liquid that comes with the source and so less of its solids, everything in it is linear in
 * what is poured: again a quadratic, known by three of its points. Null when no ratio gives it.
 */
export function ratioForSolids(reduced: Reduced, share: number): number | null {
  const { strain, nonSugar, passed, waterPerDry, kept } = reduced;
  const { own } = strain;
  /** With this part of the own liquid and so much tap water. */
  const at = (part: number, tap: number) => {
    const sugars = strain.sugars + part * own.sugars;
    const free = strain.water + strain.uptake + part * own.water + tap - waterPerDry * sugars;
    const solids = (passed + part * own.solids) * free + (free - kept) * sugars;
    return {
      off: (1 - share) * solids - share * (free - kept) * (free + waterPerDry * sugars),
      isWet: free > waterPerDry * (nonSugar + part * own.solids),
    };
  };
  const solve = (along: (to: number) => ReturnType<typeof at>): number => {
    const [none, more, less] = [along(0).off, along(1).off, along(-1).off];
    // The larger root is the milk; the smaller has the pulp hold more than there is.
    const found = Math.max(...rootsOf((more + less) / 2 - none, (more - less) / 2, none));
    return along(found).isWet ? found : Number.NaN;
  };
  const tap = solve((to) => at(1, to));
  if (tap >= 0 || own.mass === 0) return Number.isFinite(tap) ? own.mass + tap : null;
  const part = solve((to) => at(to, 0));
  return part >= 0 && part <= 1 ? part * own.mass : null;
}
