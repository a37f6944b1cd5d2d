import { grains } from '../reference/grains';
import { jars } from '../reference/jars';
import { kitchen } from '../reference/kitchen';
import type { Coefficient } from '../reference/origins';
import { physics } from '../reference/physics';
import { sources } from '../reference/sources';
import { sweeteners } from '../reference/sweeteners';
import { type Choices, type CoefficientDefinition, define } from './coefficient';
import { fermentCoefficients } from './ferment-coefficients';
import type { MeasuredRowId } from './order';
import type { Recipe } from './recipe';

export type { Choices, CoefficientDefinition } from './coefficient';

/** The entries of the tables that the recipe names. Shares of a blend that do not add up to 1 count in proportion. */
export function chooseFrom(recipe: Recipe): Choices {
  const shares = sharesOf(recipe);
  return {
    jar: jars[recipe.vessel],
    source: sources[recipe.source],
    grain: grains[recipe.grains],
    sweetener: recipe.sweetener.map(({ id, share }) => ({
      entry: sweeteners[id],
      share: share / (shares > 0 ? shares : 1),
    })),
  };
}

/** What the shares of the sweeteners add up to; 1 where they are as they ought to be. */
export function sharesOf(recipe: Recipe): number {
  return recipe.sweetener.reduce((sum, { share }) => sum + share, 0);
}

const none: Coefficient = { value: 0, unit: 'g/g', origin: { kind: 'judgement', reason: 'It has none.' } };
const noTime: Coefficient = { value: 0, unit: 'h', origin: { kind: 'judgement', reason: 'It is not soaked.' } };

const table = {
  brimfulUsual: define(
    'V_j',
    'Brimful capacity of this kind of jar',
    'vessel',
    { range: { least: 20, most: 100000 } },
    (c) => c.jar.brimful,
  ),
  neckDiameter: define(
    'dₙ',
    'Inner diameter of the neck',
    'vessel',
    { range: { least: 1, most: 100 } },
    (c) => c.jar.neckDiameter,
  ),
  neckHeight: define('hₙ', 'Height of the neck', 'vessel', { range: { least: 0, most: 100 } }, (c) => c.jar.neckHeight),
  shoulderHeight: define(
    'hₛ',
    'Height of the shoulder',
    'vessel',
    { range: { least: 0, most: 100 } },
    (c) => c.jar.shoulderHeight,
  ),
  bodyDiameter: define(
    'dᵦ',
    'Inner diameter of the body',
    'vessel',
    { range: { least: 1, most: 100 } },
    (c) => c.jar.bodyDiameter,
  ),
  headspaceUsual: define(
    'h₀',
    'Usual headspace',
    'kitchen',
    { range: { least: 0, most: 100 } },
    () => kitchen.headspaceDepth,
  ),
  soakHours: define(
    't₀',
    'Usual soaking time',
    'source',
    { range: { least: 0, most: 1000 } },
    (c) => c.source.soak?.hours ?? noTime,
  ),
  soakWaterPerGram: define(
    'a',
    'Soaking water per gram',
    'source',
    { range: { least: 0, most: 100 } },
    (c) => c.source.soak?.waterPerGram ?? none,
  ),
  uptake: define('u', 'Water taken up in soaking', 'source', { range: { least: 0, most: 5 } }, (c) => c.source.uptake),
  leaching: define(
    'λ',
    'Share of the sugar lost to drained soaking water',
    'source',
    { range: { least: 0, most: 1 } },
    (c) => c.source.leaching,
  ),
  usualRatio: define(
    'R₀',
    'Usual water ratio',
    'source',
    { range: { least: 0, most: 100 } },
    (c) => c.source.waterRatio,
  ),
  ownWater: define(
    'e',
    'Its own water, counted first',
    'source',
    { range: { least: 0, most: 5 } },
    (c) => c.source.ownWater?.perGram ?? none,
  ),
  passing: define(
    'x',
    'Share of the dry solids that passes the bag',
    'source',
    { range: { least: 0, most: 1 } },
    (c) => c.source.passing,
  ),
  pulpMoisture: define(
    'p',
    'Moisture of the pressed pulp',
    'source',
    { range: { least: 0, most: 0.99 } },
    (c) => c.source.pulpMoisture,
  ),
  handlingLoss: define(
    'l',
    'Milk lost in handling',
    'source',
    { range: { least: 0, most: 0.9 } },
    (c) => c.source.handlingLoss,
  ),
  labelServing: define(
    'gₗ',
    'Serving on the label',
    'source',
    { range: { least: 1, most: 5000 } },
    (c) => c.source.label?.serving ?? none,
  ),
  labelSugar: define(
    'sₗ',
    'Sugars per serving on the label',
    'source',
    { range: { least: 0, most: 500 } },
    (c) => c.source.label?.sugarPerServing ?? none,
  ),
  blenderCapacity: define(
    'C',
    'What the blender takes',
    'kitchen',
    { range: { least: 50, most: 100000 } },
    () => kitchen.blenderCapacity,
  ),
  sugarUsual: define(
    'r₀',
    'Usual added sugar, as hexose',
    'kitchen',
    { range: { least: 0, most: 500 } },
    () => kitchen.addedSugar,
  ),
  nativeThreshold: define(
    'n₀',
    'Native sugar that counts for nothing',
    'kitchen',
    { range: { least: 0, most: 500 } },
    () => kitchen.nativeSugarThreshold,
  ),
  sugarRoom: define(
    'σ₀',
    'Room taken by dissolved sugar',
    'kitchen',
    { range: { least: 0, most: 2 } },
    () => physics.sugarDisplacement,
  ),
  usualDose: define(
    'd₀',
    'Usual dose of these grains',
    'grains',
    { range: { least: 0.01, most: 2000 } },
    (c) => c.grain.dose,
  ),
  grainDensity: define(
    'ρ₉',
    'Density of drained grains',
    'grains',
    { range: { least: 0.5, most: 2 } },
    (c) => c.grain.density,
  ),
  grainSpoon: define(
    'b',
    'Drained grains in a level tablespoon',
    'grains',
    { range: { least: 1, most: 100 } },
    (c) => c.grain.tablespoon,
  ),
  cling: define('κ', 'Liquid clinging to the grains', 'grains', { range: { least: 0, most: 5 } }, (c) => c.grain.cling),
  servingUsual: define('g₀', 'Usual glass', 'kitchen', { range: { least: 1, most: 5000 } }, () => kitchen.servingSize),
  ...fermentCoefficients,
} satisfies Record<string, CoefficientDefinition>;

export type CoefficientId = keyof typeof table;
export const coefficients: Readonly<Record<CoefficientId, CoefficientDefinition>> = table;
export const coefficientIds = Object.keys(table).filter((id): id is CoefficientId => id in table);

/** Under which key a correction is kept: `almond.uptake` holds for almonds alone, `own@b1.neckHeight` for that batch’s own jar. */
export function coefficientKey(id: CoefficientId, recipe: Recipe): string {
  const { owner } = coefficients[id];
  const choice = owner === 'kitchen' ? owner : recipe[owner];
  return `${choice === 'own' && recipe.jarOf !== undefined ? ownJarOf(recipe.jarOf) : choice}.${id}`;
}

/** What the keys of a batch’s own jar begin with, up to the dot. */
export function ownJarOf(batchId: string): string {
  return `own@${batchId}`;
}

/** Whether a number may stand for this coefficient. */
export function isAllowed(id: CoefficientId, value: number): boolean {
  const { least, most } = coefficients[id];
  return Number.isFinite(value) && value >= least && value <= most;
}

/** Whether the cook has any figure of their own. Most have none, and a batch asks this dozens of times. */
export function hasYours({ yours }: Recipe): boolean {
  for (const key in yours) if (Object.hasOwn(yours, key)) return true;
  return false;
}

/** The measurements that can bring a coefficient to light. */
const broughtToLight: Readonly<Partial<Record<CoefficientId, readonly MeasuredRowId[]>>> = {
  uptake: ['soakedMass'],
  pulpMoisture: ['pulpMass', 'milkVolume'],
  handlingLoss: ['milkVolume'],
};

/** The coefficient in effect, with its origin: the user's own if there is a usable one, else that of the tables. */
export function coefficientInEffect(id: CoefficientId, recipe: Recipe, choices: Choices): Coefficient {
  const published = coefficients[id].find(choices);
  if (!hasYours(recipe)) return published;
  const yours = recipe.yours[coefficientKey(id, recipe)];
  // A figure of one’s own for what this source does not have counts for nothing.
  if (published === none || published === noTime) return published;
  if (yours === undefined || !isAllowed(id, yours.value)) return published;
  // The batch in which a figure came to light was planned without it, and is not planned anew for keeping it.
  if (yours.how === 'measured' && broughtToLight[id]?.some((row) => recipe.measured[row] !== undefined)) {
    return published;
  }
  return { value: yours.value, unit: published.unit, origin: { kind: 'yours', how: yours.how } };
}
