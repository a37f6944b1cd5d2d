import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { kitchen } from '../../reference/kitchen';
import type { Coefficient } from '../../reference/origins';
import { physics } from '../../reference/physics';
import { type Composition, sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import { type Choices, type CoefficientDefinition, define } from './coefficient';
import { fermentCoefficients } from './ferment-coefficients';
import type { MeasuredRowId } from './order';
import type { Recipe } from './recipe';

export type { Choices, CoefficientDefinition } from './coefficient';

/** The entries of the tables that the recipe names. Shares of a blend that do not add up to 1 count in proportion. */
export function chooseFrom(recipe: Recipe): Choices {
  const shares = sharesOf(recipe);
  const choices: Choices = {
    jar: jars[recipe.vessel],
    source: sources[recipe.source],
    grain: grains[recipe.grains],
    sweetener: recipe.sweetener.map(({ id, share }) => ({
      entry: sweeteners[id],
      share: share / (shares > 0 ? shares : 1),
    })),
  };
  const { source } = choices;
  if (source.ownLabel === undefined) return choices;
  return { ...choices, source: { ...source, composition: composeByLabel(recipe, choices) } };
}

/** What a label of a source of the cook's own says, in the order of a label. */
export const labelIds = ['byFat', 'byProtein', 'byStarch', 'bySugars', 'byFibre', 'byAsh'] as const;

/** What is in 100 g by the label; what is left is water. A label that says more than 100 g leaves none. */
function composeByLabel(recipe: Recipe, choices: Choices): Composition {
  const found = labelIds.map((id) => coefficientInEffect(id, recipe, choices));
  const [fat = 0, protein = 0, starch = 0, sugars = 0, fibre = 0, ash = 0] = found.map(({ value }) => value);
  const sum = found.reduce((all, { value }) => all + value, 0);
  const { composition } = choices.source;
  return {
    ...composition,
    ...{ fat, protein, sugars, fibre, ash, carbohydrate: starch + sugars + fibre, water: Math.max(100 - sum, 0) },
    origin: found.find(({ origin }) => origin.kind === 'yours')?.origin ?? composition.origin,
  };
}

/** What the shares of the sweeteners add up to; 1 where they are as they ought to be. */
export function sharesOf(recipe: Recipe): number {
  return recipe.sweetener.reduce((sum, { share }) => sum + share, 0);
}

const none: Coefficient = { value: 0, unit: 'g/g', origin: { kind: 'judgement', reason: 'It has none.' } };
const asLong: Coefficient = { value: 1, unit: 'times', origin: { kind: 'judgement', reason: 'It takes no longer.' } };
const noTime: Coefficient = { value: 0, unit: 'h', origin: { kind: 'judgement', reason: 'It is not soaked.' } };

const table = {
  brimfulUsual: define('vessel', { range: { least: 20, most: 100000 } }, (c) => c.jar.brimful),
  neckDiameter: define('vessel', { range: { least: 1, most: 100 } }, (c) => c.jar.neckDiameter),
  neckHeight: define('vessel', { range: { least: 0, most: 100 } }, (c) => c.jar.neckHeight),
  shoulderHeight: define('vessel', { range: { least: 0, most: 100 } }, (c) => c.jar.shoulderHeight),
  bodyDiameter: define('vessel', { range: { least: 1, most: 100 } }, (c) => c.jar.bodyDiameter),
  headspaceUsual: define('kitchen', { range: { least: 0, most: 100 } }, () => kitchen.headspaceDepth),
  headspaceShare: define('kitchen', { range: { least: 0, most: 90 } }, () => kitchen.headspaceShare),
  headspaceShareLeast: define('kitchen', { range: { least: 0, most: 90 } }, () => kitchen.headspaceShareLeast),
  jarSlack: define('kitchen', { range: { least: 0, most: 50 } }, () => kitchen.jarSlack),
  soakHours: define('source', { range: { least: 0, most: 1000 } }, (c) => c.source.soak?.hours ?? noTime),
  soakWaterPerGram: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.soak?.waterPerGram ?? none),
  uptake: define('source', { range: { least: 0, most: 5 } }, (c) => c.source.uptake),
  leaching: define('source', { range: { least: 0, most: 1 } }, (c) => c.source.leaching),
  usualRatio: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.waterRatio),
  ownWater: define('source', { range: { least: 0, most: 5 } }, (c) => c.source.ownWater?.perGram ?? none),
  passing: define('source', { range: { least: 0, most: 1 } }, (c) => c.source.passing),
  pulpMoisture: define('source', { range: { least: 0, most: 0.99 } }, (c) => c.source.pulpMoisture),
  handlingLoss: define('source', { range: { least: 0, most: 0.9 } }, (c) => c.source.handlingLoss),
  slower: define('source', { range: { least: 0.1, most: 20 } }, (c) => c.source.slower ?? asLong),
  canSize: define('source', { range: { least: 0, most: 5000 } }, (c) => c.source.can?.volume ?? none),
  labelServing: define('source', { range: { least: 1, most: 5000 } }, (c) => c.source.label?.serving ?? none),
  labelSugar: define('source', { range: { least: 0, most: 500 } }, (c) => c.source.label?.sugarPerServing ?? none),
  byFat: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.ownLabel?.fat ?? none),
  byProtein: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.ownLabel?.protein ?? none),
  byStarch: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.ownLabel?.starch ?? none),
  bySugars: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.ownLabel?.sugars ?? none),
  byFibre: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.ownLabel?.fibre ?? none),
  byAsh: define('source', { range: { least: 0, most: 100 } }, (c) => c.source.ownLabel?.ash ?? none),
  blenderCapacity: define('kitchen', { range: { least: 50, most: 100000 } }, () => kitchen.blenderCapacity),
  sugarUsual: define('kitchen', { range: { least: 0, most: 500 } }, () => kitchen.addedSugar),
  nativeThreshold: define('kitchen', { range: { least: 0, most: 500 } }, () => kitchen.nativeSugarThreshold),
  sugarRoom: define('kitchen', { range: { least: 0, most: 2 } }, () => physics.sugarDisplacement),
  usualDose: define('grains', { range: { least: 0.01, most: 2000 } }, (c) => c.grain.dose),
  grainDensity: define('grains', { range: { least: 0.5, most: 2 } }, (c) => c.grain.density),
  grainSpoon: define('grains', { range: { least: 1, most: 100 } }, (c) => c.grain.tablespoon),
  cling: define('grains', { range: { least: 0, most: 5 } }, (c) => c.grain.cling),
  packet: define('grains', { range: { least: 0, most: 100 } }, (c) => c.grain.starter?.packet ?? none),
  starterSugar: define('grains', { range: { least: 0, most: 1 } }, (c) => c.grain.starter?.ownSugar ?? none),
  starterAcid: define('grains', { range: { least: 0, most: 0.1 } }, (c) => c.grain.starter?.ownAcid ?? none),
  starterEthanol: define('grains', { range: { least: 0, most: 0.1 } }, (c) => c.grain.starter?.ownEthanol ?? none),
  servingUsual: define('kitchen', { range: { least: 1, most: 5000 } }, () => kitchen.servingSize),
  ...fermentCoefficients,
} satisfies Record<string, CoefficientDefinition>;

export type CoefficientId = keyof typeof table;
export const coefficients: Readonly<Record<CoefficientId, CoefficientDefinition>> = table;
export const coefficientIds = Object.keys(table).filter((id): id is CoefficientId => id in table);

const coefficientSlots = new Map<string, number>(coefficientIds.map((id, slot) => [id, slot]));

export function isCoefficient(id: string): id is CoefficientId {
  return coefficientSlots.has(id);
}

/** The place of a coefficient among all. */
export function coefficientSlot(id: CoefficientId): number {
  return coefficientSlots.get(id) ?? Number.NaN;
}

/** What is known of a batch before any amount is. */
export interface Fixed {
  readonly recipe: Recipe;
  readonly choices: Choices;
  /** The value of a coefficient, the user's own where there is one. */
  c(id: CoefficientId): number;
}

/** Under which key a correction is kept: `almond.uptake` holds for almonds alone, `own@b1.neckHeight` for that batch’s own jar and source. */
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
  if (published === none || published === noTime || published === asLong) return published;
  if (yours === undefined || !isAllowed(id, yours.value)) return published;
  // The batch in which a figure came to light was planned without it, and is not planned anew for keeping it.
  if (yours.how === 'measured' && broughtToLight[id]?.some((row) => recipe.measured[row] !== undefined)) {
    return published;
  }
  return { value: yours.value, unit: published.unit, origin: { kind: 'yours', how: yours.how } };
}
