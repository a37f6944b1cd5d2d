import { cardinalTemperatures, fermenting } from '../../reference/fermenting';
import { molarMasses, physics } from '../../reference/physics';
import { sweeteners } from '../../reference/sweeteners';
import { nativeSugarRange } from '../composition/native';
import type { Extreme } from '../composition/pressing';
import { fermentableOf } from '../models/blend';
import { waterDensityAt } from '../models/density';
import type { Stages } from '../models/milk';
import { growthAt, isWithinModels, type Spread, timesAsLong } from '../models/ripening';
import { henryAt, pascalPerBar } from '../models/solubility';
import { depthBelowRim, roomAbove } from '../models/vessel';
import { coefficientInEffect } from '../recipe/coefficients';
import { atThisDoseAndSugar } from './dose-and-sugar';
import { jarProfile } from './jar-profile';
import type { Access, TermId } from './row';

const stage = (name: keyof Stages) => (x: Access) => x.stages()?.[name] ?? Number.NaN;
const pressed = (extreme: Extreme, name: keyof Stages) => (x: Access) =>
  x.settled.at(x.of('waterRatio')).at(extreme)?.[name] ?? Number.NaN;
const solubility = (at: TermId) => (x: Access) => henryAt(x.of(at));
const kelvin = (at: TermId) => (x: Access) => x.of(at) + physics.zeroCelsius.value;
const growth = (celsius: number): number => growthAt(celsius, cardinalTemperatures.plantarum);
const usualRoom = (x: Access): number => x.choices.grain.readyTemperature.value;
const spread = (x: Access): Spread => timesAsLong(x.of('roomTemperature'), usualRoom(x));

/** Density of plain water at the temperature volumes are read at, kg/m³. Source: Kell, on ITS-90. */
const waterWeighs = waterDensityAt();
/** White cane sugar as a blend. */
export const cane = [{ entry: sweeteners.caneWhite, share: 1 }];

/** An end of what a coefficient may be; a figure of the cook's own is what it is. */
const end =
  (id: 'carriedOver' | 'yeastShare' | 'withoutGrains' | 'usedWhenReady' | 'starterSugar', at: 'low' | 'high') =>
  (x: Access): number =>
    coefficientInEffect(id, x.recipe, x.choices)[at] ?? x.c(id);

/** An end of the days that are usual; a figure of the cook's own is never made longer. */
function keeps(x: Access, end: 'low' | 'high'): number {
  return coefficientInEffect('keepUsual', x.recipe, x.choices)[end] ?? x.of('keepDays');
}

/** At least or at most as many times as long as a homemade milk; the cook's own figure has no other end. */
export function slowerAt(x: Access, end: 'low' | 'high'): number {
  const { value, [end]: bound = value } = coefficientInEffect('slower', x.recipe, x.choices);
  return bound;
}

/** The headspace to keep: the depth typed, or the depth of the room typed; of both, the one typed first. */
function typedHeadspace(x: Access): number {
  const depth = x.plan.against.has('headspaceDepth') ? Number.NaN : x.typed('headspaceDepth');
  return Number.isNaN(depth) ? depthBelowRim(jarProfile(x), x.typed('headspaceVolume')) : depth;
}

/**
 * The numbers that formulas name and that are no term and no coefficient: of a table, or worked out by code. Each is
 * told under the same name in `figures/`.
 */
const values = {
  headspaceTyped: typedHeadspace,
  fillTyped: (x) => x.typed('fillVolume'),
  shareDepth: (x) => depthBelowRim(jarProfile(x), (x.c('headspaceShare') / 100) * x.of('brimful')),
  roomAboveUsual: (x) => roomAbove(jarProfile(x), x.c('headspaceUsual')),
  roomAsked: (x) => roomAbove(jarProfile(x), x.of('headspaceAsked')),
  totalSugars: (x) => x.settled.totalSugars,
  slurryPerGram: stage('slurryMass'),
  slurryVolumePerGram: stage('slurryVolume'),
  milkBeforeLoss: stage('beforeLoss'),
  ownUsed: stage('ownLiquid'),
  milkSugars: stage('milkSugars'),
  densityOfMilk: (x) => {
    const stages = x.stages();
    return stages ? stages.milkMass / stages.milkVolume : Number.NaN;
  },
  densityOfUsualMilk: (x) => x.settled.treated.milkDensity,
  usualSourceMass: (x) =>
    x.plan.accepted.has('sourceMass')
      ? x.of('sourceMass')
      : (x.of('blendWater') * x.of('waterDensity')) / (x.c('usualRatio') - x.c('ownWater')),
  usualMilkPerGram: (x) => x.settled.atUsual.stages?.milkVolume ?? 0,
  waterWeighs: () => waterWeighs,
  leastMilk: pressed('leastMilk', 'milkVolume'),
  mostMilk: pressed('mostMilk', 'milkVolume'),
  leastSolids: (x) => 100 * pressed('leastSolids', 'milkSolids')(x),
  mostSolids: (x) => 100 * pressed('mostSolids', 'milkSolids')(x),
  hexosePerSugar: (x) => x.settled.at(x.of('waterRatio')).hexose.value,
  nativeMost: (x) => nativeSugarRange(x).high,
  fermentableBlend: (x) => x.settled.fermentable.value,
  fermentableCane: (x) => fermentableOf(cane, x.choices.grain.takes).value,
  sweetenerOpen: (x) => {
    const { value, high } = x.settled.fermentable;
    return value > 0 ? high / value - 1 : 0;
  },
  sweetenerWater: (x) => x.choices.sweetener.reduce((sum, { entry, share }) => sum + (share * entry.water) / 100, 0),
  atDoseAndSugar: atThisDoseAndSugar,
  growthUsual: (x) => growth(usualRoom(x)),
  growthHere: (x) => growth(x.of('roomTemperature')),
  usualTime: (x) => x.choices.grain.readyTime.value,
  shortTime: (x) => x.choices.grain.readyTime.low ?? x.choices.grain.readyTime.value,
  longTime: (x) => x.choices.grain.readyTime.high ?? x.choices.grain.readyTime.value,
  leastSlower: (x) => slowerAt(x, 'low'),
  mostSlower: (x) => slowerAt(x, 'high'),
  leastOfModels: (x) => spread(x).least,
  mostOfModels: (x) => spread(x).most,
  asLongInBottle: (x) => {
    const celsius = x.of('bottleTemperature');
    return isWithinModels(celsius) ? timesAsLong(celsius, usualRoom(x)).likely : Number.NaN;
  },
  shortKeep: (x) => keeps(x, 'low'),
  longKeep: (x) => keeps(x, 'high'),
  carriedLeast: end('carriedOver', 'low'),
  carriedMost: end('carriedOver', 'high'),
  yeastLeast: end('yeastShare', 'low'),
  yeastMost: end('yeastShare', 'high'),
  paceLeast: end('withoutGrains', 'low'),
  paceMost: end('withoutGrains', 'high'),
  starterSugarMost: end('starterSugar', 'high'),
  usedLeast: end('usedWhenReady', 'low'),
  usedMost: end('usedWhenReady', 'high'),
  solubilityRoom: solubility('roomTemperature'),
  solubilityBottle: solubility('bottleTemperature'),
  solubilityForgotten: solubility('forgottenHeat'),
  kelvinBottle: kelvin('bottleTemperature'),
  kelvinForgotten: kelvin('forgottenHeat'),
  gasConstant: () => physics.gasConstant.value,
  atmosphere: () => physics.atmosphere.value,
  pascalPerBar: () => pascalPerBar,
  hexoseMass: () => molarMasses.hexose.value,
  warmKitchen: () => fermenting.forgottenTemperature.value,
} satisfies Record<string, (x: Access) => number>;

export const figureValues: Readonly<Record<string, (x: Access) => number>> = values;

/** What works out a figure that a formula names. A name of nothing is a fault in our own code. */
export function figureValue(name: string): (x: Access) => number {
  const value = figureValues[name];
  if (value === undefined) throw new Error(name);
  return value;
}
