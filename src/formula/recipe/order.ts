/** The rows of the sheet in the order of the work, by section. A row's id is its key everywhere. */
export const sections = [
  {
    id: 'jar',
    label: 'Jar',
    rows: ['vessel', 'vesselCount', 'brimful', 'headspaceDepth', 'headspaceVolume', 'fillVolume'],
  },
  {
    id: 'milk',
    label: 'Milk',
    rows: [
      'source',
      'sourceMass',
      'soakWater',
      'soakTime',
      'soakedMass',
      'waterRatio',
      'blendWater',
      'blenderLoads',
      'pulpMass',
      'milkVolume',
      'milkSolids',
    ],
  },
  {
    id: 'sweeten',
    label: 'Sweeten',
    rows: ['sweetener', 'sugarRate', 'sweetenerMass', 'caneEquivalent', 'startingSugar'],
  },
  { id: 'culture', label: 'Culture', rows: ['grains', 'grainRate', 'grainMass'] },
  {
    id: 'ferment',
    label: 'Ferment',
    rows: ['roomTemperature', 'readyTime', 'finalPH', 'drinkVolume', 'servingSize', 'servings'],
  },
  {
    id: 'bottle',
    label: 'Bottle',
    rows: [
      'sugarLeft',
      'bottleSugar',
      'bottleTime',
      'bottleTemperature',
      'bottleVolume',
      'bottleHeadspace',
      'bottleCount',
      'bottlePressureLikely',
      'bottlePressureForgotten',
      'bottleLimit',
      'bottleSugarMost',
    ],
  },
  { id: 'keep', label: 'Keep', rows: ['keepDays'] },
] as const;

export type Section = (typeof sections)[number];
export type SectionId = Section['id'];
export type RowId = Section['rows'][number];

/** Rows whose value is a choice from a table, not a number. */
export const choiceRows = ['vessel', 'source', 'sweetener', 'grains'] as const;
export type ChoiceRowId = (typeof choiceRows)[number];
export type NumericRowId = Exclude<RowId, ChoiceRowId>;

/** Amounts of scale: the first of these typed resizes the batch. */
export const amountRows = [
  'vesselCount',
  'fillVolume',
  'sourceMass',
  'blendWater',
  'milkVolume',
  'drinkVolume',
  'servings',
] as const;
export type AmountRowId = (typeof amountRows)[number];

/** Rows that take a second entry: what the scale, the jug or the strip said. */
export const measuredRows = [
  'soakedMass',
  'pulpMass',
  'milkVolume',
  'drinkVolume',
  'grainMass',
  'finalPH',
  'sugarLeft',
] as const;
export type MeasuredRowId = (typeof measuredRows)[number];

/** What a cook can have on hand, and the row each of it is an amount of. */
export const stockIds = ['source', 'sweetener', 'grains', 'jars'] as const;
export type StockId = (typeof stockIds)[number];
export const stockRows = {
  source: 'sourceMass',
  sweetener: 'sweetenerMass',
  grains: 'grainMass',
  jars: 'vesselCount',
} as const satisfies Record<StockId, NumericRowId>;

/** Rows of which what was typed may be all there is, so that it sizes the batch. */
export const onHandRows = ['sweetenerMass', 'grainMass'] as const satisfies readonly NumericRowId[];
export type OnHandRowId = (typeof onHandRows)[number];

export function isOnHandRow(id: string): id is OnHandRowId {
  return onHandRows.some((row) => row === id);
}

export const rowOrder: readonly RowId[] = sections.flatMap((section) => [...section.rows]);

/** Quantities that rows share and the working shows, but that have no row of their own. */
export type IntermediateId =
  | 'headspaceAsked'
  | 'fillAllowed'
  | 'fillMost'
  | 'totalFill'
  | 'roomPerMilk'
  | 'fixedRoom'
  | 'drinkPerMilk'
  | 'drinkFixed'
  | 'sourceWeight'
  | 'sourceSugars'
  | 'sourceSolids'
  | 'leached'
  | 'slurryMass'
  | 'slurryVolume'
  | 'heldBack'
  | 'milkPerGram'
  | 'usualMilk'
  | 'milkMass'
  | 'milkDensity'
  | 'usualMilkDensity'
  | 'lost'
  | 'ownLiquid'
  | 'waterDensity'
  | 'milkLeast'
  | 'milkMost'
  | 'solidsLeast'
  | 'solidsMost'
  | 'nativeSugar'
  | 'fermentable'
  | 'sugarUnsure'
  | 'caneFermentable'
  | 'sweetenerRoom'
  | 'sweetenerWeight'
  | 'caneWeight'
  | 'usualStart'
  | 'asLong'
  | 'readySoonest'
  | 'readyLatest'
  | 'liquid'
  | 'drinkSugar'
  | 'drinkSugarMost'
  | 'waterShare'
  | 'bottleRoom'
  | 'dissolvedGas'
  | 'bottleReady'
  | 'bottleUsed'
  | 'gasLikely'
  | 'gasLeast'
  | 'gasMost'
  | 'pressureLeast'
  | 'pressureMost'
  | 'gasForgotten'
  | 'sugarForgotten'
  | 'limitCounted'
  | 'forgottenHeat'
  | 'keepLeast'
  | 'keepMost';

export function isMeasuredRow(id: string): id is MeasuredRowId {
  return measuredRows.some((row) => row === id);
}
