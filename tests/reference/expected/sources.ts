import { type Figures, type Spread, under, underEach } from './figures';
import { compositionOf, measureOf, printedOf } from './usda';

// NIST Handbook 44, Appendix C: a gallon is 231 cubic inches, a cup a sixteenth and a tablespoon a 256th of it.
const cup = (231 * 2.54 ** 3) / 16;
const tablespoon = cup / 16;

// Common practice: the times to ready take the milk to be as warm as the room.
const nearRoom: Spread = [18, 15, 22];
const cool: Spread = [15, 10, 20];
const warm: Spread = [45, 40, 50];

// From memory, low confidence: hand-pressed pulp of nuts holds 60 to 72 % of water.
const handPressed: Spread = [0.65, 0.6, 0.72];

/** Water taken up by soaking, g/g, from the moistures before and after, % of the whole; as the table rounds it. */
function uptakeBetween(before: number, after: number): Spread {
  return [Number(((100 - before) / (100 - after) - 1).toFixed(3))];
}

interface Solid {
  /** Record number of what is eaten of it. */
  readonly record: string;
  /** Grams and millilitres of the household measure. */
  readonly cup: readonly [grams: number, millilitres: number];
  /** h; only where it is soaked in the refrigerator and drained. */
  readonly soak?: readonly [low: number, high: number];
  readonly uptake?: Spread;
  readonly ratio: Spread;
  readonly passing: Spread;
  readonly moisture: Spread;
  readonly blend: Spread;
  readonly water: Spread;
  readonly gels?: boolean;
}

const cupOf = (record: string, unit: string) => [measureOf(record, unit), cup] as const;

function solid({ record, cup: [grams, millilitres], soak, uptake, ...rest }: Solid): Figures {
  const [low, high] = soak ?? [];
  const soaked: Figures =
    low === undefined || high === undefined
      ? { 'leaching, share': [0] }
      : {
          'soak.hours, h': [(low + high) / 2, low, high],
          // Common practice: 3 mL of water a gram.
          'soak.waterPerGram, mL/g': [3, 2, 4],
          'soak.drained': true,
          // How much sugar goes with the soaking water was not found: from none to 0.3.
          'leaching, share': [0, 0, 0.3],
        };
  return {
    ...under('composition', compositionOf(record)),
    ...{ 'cup.grams': grams, 'cup.millilitres': millilitres },
    ...soaked,
    'uptake, g/g': uptake ?? [0],
    'waterRatio, g/g': rest.ratio,
    'passing, share': rest.passing,
    'pulpMoisture, share': rest.moisture,
    // From memory: 0.02, between 0.01 and 0.04.
    'handlingLoss, share': [0.02, 0.01, 0.04],
    'blendSeconds, s': rest.blend,
    'blendWater.temperature, °C': rest.water,
    gels: rest.gels ?? false,
    heated: false,
  };
}

function sucroseAlone(sucrose: number): Figures {
  return { sugars: sucrose, sucrose, glucose: 0, fructose: 0, maltose: 0, lactose: 0, galactose: 0 };
}

/** From 26 g of water in 100 to 8. */
function dried(grams: number): number {
  return (grams * (100 - 8)) / (100 - 26);
}

const soakless: Figures = { soak: null };
const waterless: Figures = { ownWater: null };
const unlabelled: Figures = { label: null };

// Water ratios: common practice, between 1 to 3 and 1 to 6 by weight for nuts. Uptakes without a moisture beside them,
// pulp moistures and blending times: from memory, low confidence.
const nut = {
  ratio: [4.5, 3, 6],
  moisture: handPressed,
  blend: [120, 60, 180],
  water: nearRoom,
} as const;

// Nothing of a butter is strained out. Common practice: two tablespoons, 32 g, to a cup, 237 mL.
const butter = {
  ratio: [7.4, 5, 10],
  passing: [1],
  moisture: [0],
  blend: [45, 20, 90],
  water: nearRoom,
} as const;

/**
 * Share of the dry solids other than sugars that passes the bag: all the fibre stays and `soft` of the rest passes. The
 * low end is from memory, what home bags let pass; at the high end `most` of the rest passes: 0.9, as the oil of almond
 * milk of 1 to 10 has (Furlan Goncalves Dias and others, AIChE conference 2022, abstract).
 */
function passingOf(record: string, soft: number, low: number, most = 0.9): Spread {
  const solids = 100 - Number(printedOf(record, 'water')) - Number(printedOf(record, 'sugars'));
  const share = (passes: number) =>
    Number(((passes * (solids - Number(printedOf(record, 'fibre')))) / solids).toFixed(2));
  return [share(soft), low, share(most)];
}

// Almond okara in biscuits, J. Sci. Food Agric. (2022), abstract: dry pulp is 40.79 % dietary fibre. Almonds have 12.5 g
// in 95.59 g dry, so 30.64 g are pulp, with 0.48 g of sugar in its water: of 78.74 g that are no fibre and no sugar
// 17.66 g stay, and 0.776 passes. Were they blanched, of 9.9 g of fibre in 95.49 g, it would be 0.83.
const whole = 0.775;
const blanched = 0.83;
// Pressed coconut, a passage seen without its citation, believed Yalegama and others, Food Chem. 141 (2013) 124: between 0.74
// and 0.84 of the fat passes.
const coconut = 0.79;

const solids: Readonly<Record<string, Solid>> = {
  almond: {
    ...nut,
    ...{ record: '12061', cup: cupOf('12061', 'cup, whole'), soak: [8, 12] },
    // Growth and survival of foodborne pathogens during soaking and drying of almond kernels, J. Food Prot. 83 (2020)
    // 2122–2133, abstract: 40 % of water after soaking; 4.41 % before, record 12061.
    uptake: uptakeBetween(4.41, 40),
    passing: passingOf('12061', whole, 0.4),
  },
  almondBlanched: {
    ...nut,
    ...{ record: '12062', cup: cupOf('12062', 'cup whole kernels'), soak: [6, 10], uptake: [0.4, 0.3, 0.6] },
    passing: passingOf('12062', blanched, 0.4),
  },
  cashew: {
    ...nut,
    // Raw cashews have no cup; that of dry roasted ones, record 12085, at second hand.
    ...{ record: '12087', cup: [137, cup], soak: [2, 4], uptake: [0.35, 0.3, 0.45] },
    ...{ passing: passingOf('12087', whole, 0.55), moisture: [0.6, 0.52, 0.7], blend: [90, 45, 150] },
  },
  hazelnut: {
    ...nut,
    ...{ record: '12120', cup: cupOf('12120', 'cup, whole'), soak: [6, 10], uptake: [0.35, 0.3, 0.45] },
    passing: passingOf('12120', whole, 0.4),
  },
  walnut: {
    ...nut,
    ...{ record: '12155', cup: cupOf('12155', 'cup shelled (50 halves)'), soak: [6, 8] },
    // Fate of foodborne pathogens during soaking and drying of walnuts, Michigan State University, abstract: about 4 %
    // of water before, about 30 % after 8 and after 24 h.
    uptake: uptakeBetween(4, 30),
    ...{ passing: passingOf('12155', whole, 0.4), moisture: [0.63, 0.58, 0.72] },
  },
  pecan: {
    ...nut,
    ...{ record: '12142', cup: cupOf('12142', 'cup, halves'), soak: [4, 8], uptake: [0.28, 0.1, 0.3] },
    ...{ passing: passingOf('12142', whole, 0.4), moisture: [0.63, 0.58, 0.72] },
  },
  macadamia: {
    ...nut,
    ...{ record: '12131', cup: cupOf('12131', 'cup, whole or halves'), soak: [2, 4], uptake: [0.15, 0.1, 0.3] },
    ...{ passing: passingOf('12131', whole, 0.45), moisture: [0.6, 0.52, 0.7] },
  },
  brazilNut: {
    ...nut,
    ...{ record: '12078', cup: cupOf('12078', 'cup, whole'), soak: [4, 6], uptake: [0.2, 0.1, 0.3] },
    ...{ passing: passingOf('12078', whole, 0.4), moisture: [0.62, 0.57, 0.72] },
  },
  pistachio: {
    ...nut,
    ...{ record: '12151', cup: cupOf('12151', 'cup'), soak: [4, 8], uptake: [0.4, 0.35, 0.5] },
    passing: passingOf('12151', whole, 0.4),
  },
  peanut: {
    ...nut,
    ...{ record: '16087', cup: cupOf('16087', 'cup'), soak: [6, 10] },
    // Moisture-dependent physical properties and hydration kinetics of peanut kernel (2022), abstract: studied from 6.57
    // to 35.07 %. That a soak goes from the one to the other is a judgement.
    uptake: uptakeBetween(6.57, 35.07),
    passing: passingOf('16087', whole, 0.4),
  },
  pineNut: {
    ...nut,
    ...{ record: '12147', cup: cupOf('12147', 'cup'), passing: passingOf('12147', whole, 0.5) },
    ...{ moisture: [0.6, 0.52, 0.7], blend: [90, 45, 150] },
  },
  almondGround: {
    ...nut,
    // No cup of ground blanched ones; that of whole ones ground.
    ...{ record: '12062', cup: cupOf('12061', 'cup, ground'), passing: passingOf('12062', blanched, 0.4) },
    blend: [60, 30, 120],
  },
  hazelnutGround: {
    ...nut,
    ...{ record: '12120', cup: cupOf('12120', 'cup, ground'), passing: passingOf('12120', whole, 0.4) },
    blend: [60, 30, 120],
  },
  almondButter: { ...butter, record: '12195', cup: cupOf('12195', 'cup') },
  peanutButter: { ...butter, record: '16398', cup: cupOf('16398', 'cup') },
  // No cup was noted; two tablespoons of 15 g to a cup.
  tahini: { ...butter, record: '12166', cup: [measureOf('12166', 'tbsp'), tablespoon], ratio: [7.9, 5, 10] },
  soy: {
    ...nut,
    ...{ record: '16108', cup: cupOf('16108', 'cup'), soak: [8, 12] },
    // Canadian Grain Commission, natto-type soybeans 2018, table: 1.18 in 2018, 1.25 in 2017.
    uptake: [1.18, 1.1, 1.3],
    // Common practice: half a cup, 93 g, to 3 cups, 710 mL.
    ratio: [7.6, 6, 10],
    // Okara keeps 17 % of the protein and is 25 % protein when dry: 0.17 × 36.49 ÷ 0.25 = 24.8 g of 86.48 g dry.
    ...{ passing: [Number((1 - (0.17 * 36.49) / 0.25 / (100 - 8.54 - 4.98)).toFixed(2)), 0.55, 0.8] },
    moisture: [0.78, 0.76, 0.82],
  },
  oats: {
    // Common practice: a cup, 81 g, to 3 cups, 710 mL. Share passing and moisture: from memory.
    ...{ record: '08120', cup: cupOf('08120', 'cup'), ratio: [8.8, 7, 12], passing: [0.55, 0.35, 0.8] },
    ...{ moisture: [0.75, 0.7, 0.82], blend: [30, 20, 45], water: cool, gels: true },
  },
  rice: {
    // Common practice: half a cup, 92.5 g, to 4 cups, 946 mL. Share passing and moisture: from memory.
    ...{ record: '20444', cup: cupOf('20444', 'cup'), ratio: [10.2, 8, 14], passing: [0.8, 0.5, 0.95] },
    ...{ moisture: [0.8, 0.75, 0.85], blend: [60, 30, 120], water: cool },
  },
  coconutFreshWhole: {
    // Common practice: 397 g of flesh to 206 g of its water and 4 cups.
    ...{ record: '12104', cup: cupOf('12104', 'cup, shredded'), ratio: [2.9, 2, 4.5] },
    ...{ passing: [1], moisture: [0], blend: [150, 90, 240], water: cool },
  },
  hemp: {
    ...{ record: '12012', cup: [3 * measureOf('12012', 'tbsp'), 3 * tablespoon] },
    // Common practice: half a cup, 80 g, to 3 ½ cups, 828 mL.
    ratio: [10.4, 8, 12],
    ...{ passing: passingOf('12012', whole, 0.55), moisture: [0.6, 0.52, 0.7], blend: [120, 60, 150], water: nearRoom },
  },
  sunflower: {
    ...nut,
    ...{ record: '12036', cup: cupOf('12036', 'cup') },
    // Common practice: a cup, 140 g, to 3 ½ cups, 828 mL.
    ...{ ratio: [5.9, 4.5, 7.5], passing: passingOf('12036', whole, 0.4) },
  },
  pumpkin: {
    ...nut,
    ...{ record: '12014', cup: cupOf('12014', 'cup'), soak: [4, 8], uptake: [0.3, 0.3, 0.5] },
    // Common practice: a cup, 129 g, to 3 cups, 710 mL.
    ...{ ratio: [5.5, 4, 7], passing: passingOf('12014', whole, 0.4) },
  },
  sesame: {
    ...nut,
    ...{ record: '12023', cup: cupOf('12023', 'cup'), soak: [4, 8], uptake: [0.4, 0.4, 0.6] },
    ...{ ratio: [5, 4, 6.5], passing: passingOf('12023', whole, 0.4) },
  },
  sesameHulled: {
    ...nut,
    // Sesame with its pulp washed twice: about 92 % of the lipid (methods of a manuscript, its text).
    ...{ record: '12201', cup: cupOf('12201', 'cup'), soak: [4, 8], uptake: [0.4, 0.4, 0.6] },
    ...{ ratio: [5, 4, 6.5], passing: passingOf('12201', whole, 0.4, 0.92) },
  },
  flax: {
    // Share passing: from memory; at most what would pass if only the fibre stayed, as of chia.
    ...{ record: '12220', cup: cupOf('12220', 'cup, whole'), ratio: [15, 12, 20], passing: [0.35, 0.2, 0.55] },
    ...{ moisture: [0.88, 0.85, 0.92], blend: [45, 30, 60], water: cool, gels: true },
  },
  chia: {
    // No cup of its own; that of whole flax seed.
    ...{ record: '12006', cup: cupOf('12220', 'cup, whole'), ratio: [20, 16, 28], passing: [0.25, 0.1, 0.5] },
    ...{ moisture: [0.93, 0.88, 0.95], blend: [45, 20, 60], water: cool, gels: true },
  },
  coconutDried: {
    // No cup of its own; that of sweetened shredded.
    ...{
      record: '12108',
      cup: cupOf('12179', 'cup, shredded'),
      ratio: [5.6, 4, 7],
      passing: passingOf('12108', coconut, 0.4),
    },
    ...{ moisture: [0.6, 0.5, 0.7], blend: [120, 60, 180], water: warm },
  },
  coconutDriedSweetened: {
    ...{
      record: '12179',
      cup: cupOf('12179', 'cup, shredded'),
      ratio: [5.6, 4, 7],
      passing: passingOf('12179', coconut, 0.4),
    },
    ...{ moisture: [0.6, 0.5, 0.7], blend: [120, 60, 180], water: warm },
  },
  coconutFresh: {
    ...{
      record: '12104',
      cup: cupOf('12104', 'cup, shredded'),
      ratio: [2.5, 1.5, 3.5],
      passing: passingOf('12104', coconut, 0.4),
    },
    ...{ moisture: [0.55, 0.45, 0.65], blend: [90, 60, 180], water: cool },
  },
};

// From memory: ten minutes, between five and a quarter of an hour, in the blending water.
const steeped: Figures = {
  'soak.hours, h': [10 / 60, 5 / 60, 15 / 60],
  'soak.waterPerGram, mL/g': [0],
  'soak.drained': false,
};

const poured: Figures = {
  ...{ cup: null, heated: false },
  ...{ 'uptake, g/g': [0], 'passing, share': [1], 'pulpMoisture, share': [0], 'handlingLoss, share': [0] },
  ...{ 'leaching, share': [0], gels: false, blendSeconds: null, blendWater: null },
  ...soakless,
  ...waterless,
};

// Common practice: a cup, 145 g, to 3 cups, 710 mL. The rest from memory.
const tigerNutFigures: Figures = {
  ...{ food: null, 'cup.grams': 145, 'cup.millilitres': cup, label: null, ownWater: null, gels: false, heated: false },
  ...{ 'soak.hours, h': [18, 12, 24], 'soak.waterPerGram, mL/g': [3, 2, 4], 'soak.drained': true },
  ...{ 'uptake, g/g': [0.5, 0.35, 0.7], 'leaching, share': [0, 0, 0.3], 'waterRatio, g/g': [4.9, 3.5, 6] },
  ...{
    'passing, share': [0.5, 0.3, 0.75],
    'pulpMoisture, share': handPressed,
    'handlingLoss, share': [0.02, 0.01, 0.04],
  },
  ...{ 'blendSeconds, s': [120, 60, 180], 'blendWater.temperature, °C': nearRoom },
};

// Common practice: ready after 12 to 72 h, 24 h being usual, where homemade milk takes 8 to 16 h, 12 h being usual.
// From memory: a usual almond or oat carton, made to sum to 100. A label cup is 240 mL in the US: 21 CFR 101.9(b)(5)(viii).
const carton: Figures = {
  ...poured,
  ...{
    food: null,
    cup: null,
    heated: true,
    'waterRatio, g/g': [0],
    'slower, times': [24 / 12, 12 / 8, 72 / 16],
    'label.serving, mL': [240, 100, 250],
  },
  ...under('composition', {
    ...{ protein: 0.6, fat: 1.3, fibre: 0.4, ash: 0.4 },
    ...{ sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null },
  }),
};

const soaksNowhere = [
  ...['hemp', 'sunflower', 'flax', 'chia', 'coconutFresh', 'coconutFreshWhole', 'pineNut', 'oats', 'rice'],
  ...['almondGround', 'hazelnutGround', 'almondButter', 'peanutButter', 'tahini'],
];
const ownsWater = ['coconutFresh', 'coconutFreshWhole'];
const names = Object.keys(solids);

/** Figures of the sources. */
export const sourceFigures: Figures = {
  ...Object.assign({}, ...Object.entries(solids).map(([name, row]) => under(name, solid(row)))),
  ...underEach(names, unlabelled),
  ...underEach(
    names.filter((name) => !ownsWater.includes(name)),
    waterless,
  ),
  ...underEach(soaksNowhere, soakless),
  ...underEach(['coconutDried', 'coconutDriedSweetened'], steeped),
  ...underEach(
    ownsWater.map((name) => `${name}.ownWater`),
    {
      ...under('composition', compositionOf('12119')),
      // One coconut yields 206 g of water, one medium nut 397 g of flesh; the range is from memory.
      'perGram, g/g': [
        Number((measureOf('12119', 'coconut yields') / measureOf('12104', 'medium')).toFixed(3)),
        0,
        0.6,
      ],
    },
  ),
  // Of its sugars sucrose alone counts: 54.4 g a kilogram dry (Canadian Grain Commission, 2018).
  ...under(
    'soy.composition',
    sucroseAlone(Number(((54.4 / 10) * (1 - Number(printedOf('16108', 'water')) / 100)).toFixed(2))),
  ),
  ...under('peanut', { 'cook.minutes, min': [10, 5, 15] }),
  ...under('soy', { 'cook.minutes, min': [15, 10, 20] }),
  ...under('rice', { 'cook.minutes, min': [20, 15, 25] }),
  ...under('tigerNut', {
    ...tigerNutFigures,
    // A magazine page at second hand, on 26 g of water; put on 8 as bought dried, from memory.
    ...under('composition', {
      ...{ water: 8, fibre: Number(dried(8.8).toFixed(1)), ...sucroseAlone(Number(dried(13).toFixed(1))) },
      ...{ carbohydrate: Number((dried(29.9) + dried(8.8) + dried(13)).toFixed(1)), protein: 3.9, fat: 22.1, ash: 1.7 },
    }),
  }),
  ...under('coconutMilk', {
    ...poured,
    heated: true,
    ...unlabelled,
    ...under('composition', compositionOf('12118')),
    // From memory: cans are near 400 mL, and are let down by 0.85 of water or drunk neat.
    ...{ 'waterRatio, g/g': [0.85, 0, 1.5], 'can.volume, mL': [400, 385, 415] },
  }),
  ...under('coconutCream', {
    ...poured,
    heated: true,
    ...unlabelled,
    // Raw cream, the nearest record. Common practice: a can to two of water.
    ...under('composition', compositionOf('12115')),
    ...{ 'waterRatio, g/g': [2, 1, 3], 'can.volume, mL': [400, 385, 415] },
  }),
  ...under('coconutWater', {
    ...poured,
    heated: true,
    ...unlabelled,
    ...under('composition', compositionOf('12119')),
    'waterRatio, g/g': [0],
  }),
  // A usual nut until the cook types a label; passing as of almonds, the rest as of nuts.
  ...under('own', {
    ...{ food: null, cup: null, label: null, ownWater: null, gels: false, heated: false },
    ...under('composition', {
      ...{ water: 5, protein: 20, fat: 50, carbohydrate: 22, fibre: 9, sugars: 4, ash: 3 },
      ...{ sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null },
    }),
    ...under('ownLabel', {
      ...{ 'fat, g in 100 g': [50], 'protein, g in 100 g': [20], 'starch, g in 100 g': [22 - 9 - 4] },
      ...{ 'sugars, g in 100 g': [4], 'fibre, g in 100 g': [9], 'ash, g in 100 g': [3] },
    }),
    ...{ 'soak.hours, h': [8, 6, 10], 'soak.waterPerGram, mL/g': [3, 2, 4], 'soak.drained': true },
    ...{ 'uptake, g/g': [0.4, 0.1, 0.6], 'leaching, share': [0, 0, 0.3], 'waterRatio, g/g': nut.ratio },
    // All of 9 g of fibre in 91 g of solids stay, and of the rest 0.775 passes, at most 0.9.
    'passing, share': [Number(((whole * 82) / 91).toFixed(2)), 0.4, 0.82],
    ...{ 'pulpMoisture, share': handPressed, 'handlingLoss, share': [0.02, 0.01, 0.04] },
    ...{ 'blendSeconds, s': nut.blend, 'blendWater.temperature, °C': nearRoom },
  }),
  ...under('cartonPlain', {
    ...carton,
    ...under('composition', { water: 97, carbohydrate: 0.7, sugars: 0 }),
    'label.sugarPerServing, g': [0, 0, 1],
  }),
  ...under('cartonSweetened', {
    ...carton,
    ...under('composition', { water: 94.1, carbohydrate: 3.6, sugars: 2.9 }),
    'label.sugarPerServing, g': [7, 4, 13],
  }),
};

/**
 * What each source is on the lists as: a nut or legume is its own allergen, carton allergens are those printed on it.
 * FDA, Questions and Answers Regarding Food Allergens (Edition 5, 2025); Regulation (EU) No 1169/2011, Annex II.
 */
export const allergensOfSources: Readonly<Record<string, readonly string[]>> = {
  ...{ almond: ['almond'], almondBlanched: ['almond'], cashew: ['cashew'], hazelnut: ['hazelnut'], walnut: ['walnut'] },
  ...{ pecan: ['pecan'], macadamia: ['macadamia'], brazilNut: ['brazilNut'], pistachio: ['pistachio'] },
  ...{ peanut: ['peanut'], hemp: [], sunflower: [], pumpkin: [], flax: [], chia: [] },
  ...{ pineNut: ['pineNut'], almondGround: ['almond'], hazelnutGround: ['hazelnut'], almondButter: ['almond'] },
  ...{ peanutButter: ['peanut'], tahini: ['sesame'], soy: ['soy'], tigerNut: [], oats: ['oats'], rice: [] },
  ...{ coconutFreshWhole: ['coconut'], coconutCream: ['coconut'] },
  ...{ sesame: ['sesame'], sesameHulled: ['sesame'] },
  ...{ coconutDried: ['coconut'], coconutDriedSweetened: ['coconut'], coconutFresh: ['coconut'] },
  ...{ coconutMilk: ['coconut'], coconutWater: ['coconut'], cartonPlain: [], cartonSweetened: [], own: [] },
};
