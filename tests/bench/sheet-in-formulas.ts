import type { NumericRowId } from '../../src/formula/recipe/order';
import type { Recipe } from '../../src/formula/recipe/recipe';
import { grains } from '../../src/reference/grains';
import { jars } from '../../src/reference/jars';
import { kitchen } from '../../src/reference/kitchen';
import { componentDensities, molarMasses, physics, waterDensity } from '../../src/reference/physics';
import { type Composition, sources } from '../../src/reference/sources';
import { sweeteners } from '../../src/reference/sweeteners';

type CellValue = number | string | null;

/** What is read off the tables and off the recipe: `null` is an empty cell, which is not zero. */
function inputsOf(recipe: Recipe): readonly (readonly [name: string, value: CellValue])[] {
  const source = sources[recipe.source];
  const jar = jars[recipe.vessel];
  const grain = grains[recipe.grains];
  const sweetener = sweeteners[recipe.sweetener[0]?.id ?? 'caneWhite'];
  return [
    ['headspaceLeast', kitchen.headspaceDepth.value],
    ['headspaceShare', kitchen.headspaceShare.value],
    ['brimful', jar.brimful.value],
    ['neckDiameter', jar.neckDiameter.value],
    ['neckHeight', jar.neckHeight.value],
    ['shoulderHeight', jar.shoulderHeight.value],
    ['bodyDiameter', jar.bodyDiameter.value],
    ...composition('', source.composition),
    ...composition('own.', source.ownWater?.composition ?? null),
    ['ownWater', source.ownWater?.perGram.value ?? 0],
    ['uptake', source.uptake.value],
    ['leaching', source.leaching.value],
    ['passing', source.passing.value],
    ['moisture', source.pulpMoisture.value],
    ['loss', source.handlingLoss.value],
    ['waterRatio', source.waterRatio.value],
    ['soakPerGram', source.soak?.waterPerGram.value ?? 0],
    ['capacity', kitchen.blenderCapacity.value],
    ...sugars('sweet.', sweetener.sugars),
    ['sweet.water', sweetener.water],
    ['sweet.low', sweetener.total?.low ?? null],
    ['sweet.high', sweetener.total?.high ?? null],
    ['caneSucrose', sweeteners.caneWhite.sugars.sucrose],
    ['caneGlucose', sweeteners.caneWhite.sugars.glucose],
    ['caneFructose', sweeteners.caneWhite.sugars.fructose],
    ['caneMaltose', sweeteners.caneWhite.sugars.maltose],
    ['lactoseCounts', grain.takes.lactose ? 1 : 0],
    ['galactoseCounts', grain.takes.galactose ? 1 : 0],
    ['grainRate', grain.dose.value],
    ['grainDensity', grain.density.value],
    ['cling', grain.cling.value],
    ['strained', grain.starter === undefined ? 1 : 0],
    ['usualSugar', kitchen.addedSugar.value],
    ['nativeFree', kitchen.nativeSugarThreshold.value],
    ['sugarRoom', physics.sugarDisplacement.value],
    ['servingSize', kitchen.servingSize.value],
    ['hydrolysis', `=2*${molarMasses.hexose.value}/${molarMasses.disaccharide.value}`],
    ['celsius', physics.densityTemperature.value],
    // mL in a gram of plain water.
    ['plainWater', `=1000*(1+${waterDensity.denominator}*{celsius})/(${polynomial(waterDensity.numerator)})`],
    ...Object.entries(componentDensities).map(([part, { coefficients }]) => {
      return [`v.${part}`, `=1000/(${polynomial(coefficients)})`] as const;
    }),
  ];
}

function polynomial(coefficients: readonly number[]): string {
  return coefficients.map((coefficient, power) => `(${coefficient})*{celsius}^${power}`).join('+');
}

const parts = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'sugars', 'ash'] as const;
const sugarKinds = ['sucrose', 'glucose', 'fructose', 'maltose', 'lactose', 'galactose'] as const;

function composition(prefix: string, of: Composition | null) {
  return [...parts.map((part) => [`${prefix}${part}`, of?.[part] ?? null] as const), ...sugars(prefix, of)];
}

function sugars(prefix: string, of: Pick<Composition, (typeof sugarKinds)[number]> | null) {
  return sugarKinds.map((kind) => [`${prefix}${kind}`, of?.[kind] ?? null] as const);
}

/** Total sugars and hexose of a food per g, of which its table may give only some kinds, or none. */
function sugarFormulas(prefix: string): readonly (readonly [string, string])[] {
  const p = (name: string): string => `{${prefix}${name}}`;
  const high = `MAX(${p('carbohydrate')}-${p('fibre')},0)/100`;
  const printed = sugarKinds.map(p).join('+');
  return [
    [`${prefix}sugar`, `=IF(ISBLANK(${p('sugars')}),${high}/2,${p('sugars')}/100)`],
    [`${prefix}sugarLow`, `=IF(ISBLANK(${p('sugars')}),0,${p('sugars')}/100)`],
    [`${prefix}sugarHigh`, `=IF(ISBLANK(${p('sugars')}),${high},${p('sugars')}/100)`],
    [`${prefix}printed`, `=(${printed})/100`],
    [`${prefix}known`, `=(${hexose(prefix)})/100`],
    [
      `${prefix}hexose`,
      `=${p('known')}+(MAX(${p('sugarLow')}-${p('printed')},0)+MAX(${p('sugarHigh')}-${p('printed')},0)*{hydrolysis})/2`,
    ],
  ];
}

function hexose(prefix: string): string {
  const p = (name: string): string => `{${prefix}${name}}`;
  const single = `${p('glucose')}+${p('fructose')}+{galactoseCounts}*${p('galactose')}`;
  return `${single}+(${p('sucrose')}+${p('maltose')}+{lactoseCounts}*${p('lactose')})*{hydrolysis}`;
}

/** The mass balance per gram of source; the pulp by its moisture, the milk as what is left of the slurry. */
const balance: readonly (readonly [string, string])[] = [
  ['otherCarbohydrate', '=MAX({carbohydrate}-{fibre}-100*{sugar},0)'],
  ['printedSolids', '={protein}+{fat}+{fibre}+{ash}+{otherCarbohydrate}'],
  ['N', '=IF({printedSolids}>0,MAX(1-{water}/100-{sugar},0),0)'],
  ['scale', '=IF({printedSolids}>0,{N}/{printedSolids},0)'],
  ['soft', '={N}-{scale}*{fibre}'],
  ['softShare', '=IF({soft}>0,MIN({passing}*{N}/{soft},1),0)'],
  ['fibrePassed', '=MAX({passing}*{N}-{soft},0)'],
  ['softVolume', '={scale}*({protein}*{v.protein}+{fat}*{v.fat}+{ash}*{v.ash}+{otherCarbohydrate}*{v.carbohydrate})'],
  ['ownSolids', '={ownWater}*MAX(1-{own.water}/100-{own.sugar},0)'],
  ['S', '={sugar}*(1-{leaching})+{ownWater}*{own.sugar}'],
  ['W', '={water}/100+{uptake}+{ownWater}*{own.water}/100+{waterRatio}-{ownWater}'],
  ['held', '=(1-{passing})*{N}'],
  ['k', '=IF({held}>0,{moisture}/(1-{moisture}),0)'],
  ['q', '={k}*{held}/({W}-{k}*{S})'],
  ['pulp', '=({held}+{q}*{S})/(1-{moisture})'],
  ['slurry', '={N}+{ownSolids}+{S}+{W}'],
  ['milk', '=({slurry}-{pulp})*(1-{loss})'],
  [
    'milkPerGram',
    '=(1-{loss})*({softShare}*{softVolume}+{fibrePassed}*{v.fibre}+({ownSolids}+(1-{q})*{S})*{v.carbohydrate}+(1-{q})*{W}*{v.water})',
  ],
  ['slurryVolume', '={softVolume}+{scale}*{fibre}*{v.fibre}+({ownSolids}+{S})*{v.carbohydrate}+{W}*{v.water}'],
  ['kept', '=1-{leaching}'],
  ['hexosePerSugar', '=IF({S}>0,({hexose}*{kept}+{own.hexose}*{ownWater})/{S},0)'],
  ['nativeSugar', '=1000*(1-{q})*{S}*(1-{loss})*{hexosePerSugar}/{milkPerGram}'],
];

/** A batch that fills one jar to its headspace, and what follows from its milk. */
const batch: readonly (readonly [string, string])[] = [
  // The share of every jar of the table reaches its body, or is less deep than the least that is kept.
  [
    'neckAndShoulder',
    '=PI()*({neckHeight}*{neckDiameter}^2/4+{shoulderHeight}*({neckDiameter}^2+{neckDiameter}*{bodyDiameter}+{bodyDiameter}^2)/12)',
  ],
  [
    'shareDepth',
    '={neckHeight}+{shoulderHeight}+({headspaceShare}/100*{brimful}-{neckAndShoulder})/(PI()*({bodyDiameter}/2)^2)',
  ],
  ['headspaceDepth', '=MAX({headspaceLeast},{shareDepth})'],
  ['inNeck', '=MIN({headspaceDepth},{neckHeight})*PI()*({neckDiameter}/2)^2'],
  ['inShoulder', '=MIN(MAX({headspaceDepth}-{neckHeight},0),{shoulderHeight})'],
  ['reached', '={neckDiameter}+IF({shoulderHeight}>0,({bodyDiameter}-{neckDiameter})*{inShoulder}/{shoulderHeight},0)'],
  ['shoulderRoom', '=PI()*{inShoulder}*({neckDiameter}^2+{neckDiameter}*{reached}+{reached}^2)/12'],
  ['bodyRoom', '=MAX({headspaceDepth}-{neckHeight}-{shoulderHeight},0)*PI()*({bodyDiameter}/2)^2'],
  ['headspaceVolume', '=MIN({inNeck}+{shoulderRoom}+{bodyRoom},{brimful})'],
  ['fillVolume', '={brimful}-{headspaceVolume}'],
  ['fermentable', `=IF(ISBLANK({sweet.high}),${hexose('sweet.')},({sweet.low}+{sweet.high}*{hydrolysis})/2)/100`],
  ['caneFermentable', '=({caneGlucose}+{caneFructose}+({caneSucrose}+{caneMaltose})*{hydrolysis})/100'],
  ['sweetenerRoom', '=(1-{sweet.water}/100)*{sugarRoom}+{sweet.water}/100*{plainWater}'],
  ['sugarRate', '=MAX({usualSugar}-MAX({nativeSugar}-{nativeFree},0),0)'],
  ['roomPerMilk', '=1+{sugarRate}/1000/{fermentable}*{sweetenerRoom}+{grainRate}/1000/{grainDensity}'],
  ['milkVolume', '={fillVolume}/{roomPerMilk}'],
  ['sourceMass', '={milkVolume}/{milkPerGram}'],
  ['soakWater', '={sourceMass}*{soakPerGram}'],
  ['soakedMass', '={sourceMass}*(1+{uptake}-{sugar}*{leaching})'],
  ['blendWater', '=MAX({waterRatio}-{ownWater},0)*{sourceMass}*{plainWater}'],
  ['blenderLoads', '=MAX(1,ROUNDUP({sourceMass}*{slurryVolume}/{capacity},0))'],
  ['pulpMass', '={sourceMass}*{pulp}'],
  ['milkSolids', '=100*({passing}*{N}+{ownSolids}+(1-{q})*{S})/({passing}*{N}+{ownSolids}+(1-{q})*({S}+{W}))'],
  ['sweetenerMass', '={sugarRate}*{milkVolume}/1000/{fermentable}'],
  ['caneEquivalent', '={sweetenerMass}*{fermentable}/{caneFermentable}'],
  ['startingSugar', '={nativeSugar}+{sugarRate}'],
  ['grainMass', '={grainRate}*{milkVolume}/1000'],
  ['drinkVolume', '={fillVolume}-{strained}*({grainMass}/{grainDensity}+{grainMass}*{cling})'],
  ['servings', '={drinkVolume}/{servingSize}'],
];

/** Rows of our sheet that these formulas give too. */
export const sharedRows = [
  'brimful',
  'headspaceDepth',
  'headspaceVolume',
  'fillVolume',
  'sourceMass',
  'soakWater',
  'soakedMass',
  'waterRatio',
  'blendWater',
  'blenderLoads',
  'pulpMass',
  'milkVolume',
  'milkSolids',
  'sugarRate',
  'sweetenerMass',
  'caneEquivalent',
  'startingSugar',
  'grainRate',
  'grainMass',
  'drinkVolume',
  'servingSize',
  'servings',
] as const satisfies readonly NumericRowId[];

/** The cells of one batch, top to bottom: inputs, then formulas that name other cells as `{name}`. */
function cellsOf(recipe: Recipe): readonly (readonly [name: string, cell: CellValue])[] {
  return [...inputsOf(recipe), ...sugarFormulas(''), ...sugarFormulas('own.'), ...balance, ...batch];
}

/**
 * Batches as a table for a general-purpose formula engine: a column for each, with the same inputs, intermediates and
 * rows as our sheet, written anew as cell formulas from the tables alone. For jar-sized batches with nothing typed.
 */
export function writeInFormulas(recipes: readonly Recipe[]): {
  readonly table: CellValue[][];
  readonly rowOf: (name: string) => number;
} {
  const columns = recipes.map(cellsOf);
  const rows = new Map(columns[0]?.map(([name], row) => [name, row]));
  const rowOf = (name: string): number => rows.get(name) ?? fail(name);
  const placed = (cell: CellValue, column: number): CellValue =>
    typeof cell === 'string' ? cell.replace(/\{([^}]+)\}/g, (_, name) => `${letters(column)}${rowOf(name) + 1}`) : cell;
  const table = [...rows.values()].map((row) => columns.map((cells, at) => placed(cells[row]?.[1] ?? null, at)));
  return { table, rowOf };
}

function fail(name: string): never {
  throw new Error(`no cell is called ${name}`);
}

/** A column's name: A to Z, AA and on. */
function letters(column: number): string {
  const before = Math.floor(column / 26);
  return (before > 0 ? letters(before - 1) : '') + String.fromCharCode(65 + (column % 26));
}
