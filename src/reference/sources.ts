import type { AllergenId } from './allergens';
import type { FamilyId } from './families';
import { measurePlace } from './food-measures';
import { type FoodId, foods, type Proximates } from './foods';
import { type Coefficient, commonPractice, fromMemory, judgement, type Origin, published } from './origins';
import { usualCan } from './packings';

/** What is in a source as bought, and where that is from. */
export interface Composition extends Proximates {
  readonly origin: Origin;
  /** Where no table gives its sugars: what they are taken to be instead. */
  readonly sugarsEstimate?: Origin;
}

export interface Source {
  readonly name: string;
  readonly plural: string;
  readonly family: FamilyId;
  readonly form: 'solid' | 'liquid';
  /** Heated and sealed by its maker: neat, it starts nearly free of germs and may be waited for. */
  readonly heated: boolean;
  /** How many times as long as a homemade milk it takes to be ready, where it differs; it teaches nothing of a kitchen. */
  readonly slower?: Coefficient;
  readonly composition: Composition;
  readonly food: FoodId | null;
  /** The household measure used; its note says where it is that of the nearest form. */
  readonly cup: {
    readonly grams: number;
    readonly millilitres: number;
    readonly measure: string;
    readonly origin: Origin;
  } | null;
  readonly soak: {
    readonly hours: Coefficient;
    readonly waterPerGram: Coefficient;
    readonly place: 'refrigerator' | 'blending water';
    readonly drained: boolean;
  } | null;
  readonly uptake: Coefficient;
  readonly waterRatio: Coefficient;
  /** Share of the dry solids other than sugars that passes the bag. */
  readonly passing: Coefficient;
  readonly pulpMoisture: Coefficient;
  readonly handlingLoss: Coefficient;
  /** Share of the sugars lost to drained soaking water. */
  readonly leaching: Coefficient;
  /** Liquid that comes with the source and is counted before any water. */
  readonly ownWater: { readonly composition: Composition; readonly perGram: Coefficient } | null;
  readonly label: { readonly serving: Coefficient; readonly sugarPerServing: Coefficient } | null;
  /** What is in 100 g of a source of the cook’s own, until its label is typed; what is left is water. */
  readonly ownLabel?: Readonly<Record<'fat' | 'protein' | 'starch' | 'sugars' | 'fibre' | 'ash', Coefficient>>;
  readonly can?: { readonly volume: Coefficient };
  /** What is not eaten raw: it is cooked before it is blended, or its milk is. */
  readonly cook?: { readonly what: 'source' | 'milk'; readonly minutes: Coefficient };
  readonly gels: boolean;
  readonly blendSeconds: Coefficient | null;
  readonly blendWater: { readonly words: 'cool' | 'warm'; readonly temperature: Coefficient } | null;
  readonly allergens: readonly AllergenId[];
}

/** What stands in for the sugars that no table gives, as of chia and canned coconut. */
export const sugarsByCarbohydrate = judgement(
  'Its sugars are in no table that was read. They are taken as half of its carbohydrate, less its fibre where that is known; anything from none to all of it may be.',
);

function composed(id: FoodId, note?: string): Composition {
  const { water, protein, fat, carbohydrate, fibre, sugars, ash, ...rest } = foods[id];
  const { sucrose, glucose, fructose, maltose, lactose, galactose } = rest;
  return {
    ...{ water, protein, fat, carbohydrate, fibre, sugars, ash },
    ...{ sucrose, glucose, fructose, maltose, lactose, galactose },
    origin: published('usda-sr', `record ${id}, ${rest.name}`, note),
    ...(sugars === null ? { sugarsEstimate: sugarsByCarbohydrate } : {}),
  };
}

// 54.4 g of sucrose in a kilogram of dry bean, of which a bean as bought is 91.46 %.
const soySucrose = 4.98;
const soyComposition: Composition = {
  ...composed('16108'),
  ...{ sugars: soySucrose, sucrose: soySucrose, glucose: 0, fructose: 0, maltose: 0, lactose: 0, galactose: 0 },
  origin: published(
    'usda-sr',
    'record 16108, Soybeans, raw',
    'Its 7.33 g of sugars were not analysed and are in part of kinds that yeast takes slowly or not at all. Counted is the sucrose of the Canadian Grain Commission’s soybeans of 2018, 54.4 g a kilogram dry.',
  ),
};

const tigerNutComposition: Composition = {
  ...{ water: 8, protein: 3.9, fat: 22.1, carbohydrate: 64.3, fibre: 10.9, ash: 1.7 },
  ...{ sugars: 16.2, sucrose: 16.2, glucose: 0, fructose: 0, maltose: 0, lactose: 0, galactose: 0 },
  origin: fromMemory(
    'Starch 29.9, fibre 8.8 and sucrose 13.0 g beside 26 g of water, from a magazine page at second hand, put on 8 g of water as they are bought dried. Fat, protein and ash are shared out of what is left.',
  ),
};

// 231 in³ over 16.
const cupMillilitres = 236.5882365;

function cup(record: string, measure: string, grams: number, note?: string) {
  const origin = published('usda-sr', measurePlace(record, `1 ${measure}`), note);
  return { grams, millilitres: cupMillilitres, measure, origin };
}

function believed(value: number, unit: string, low: number, high: number, note?: string): Coefficient {
  return { value, unit, low, high, origin: fromMemory(note) };
}

function settled(value: number, unit: string, reason: string): Coefficient {
  return { value, unit, origin: judgement(reason) };
}

const asOfAlmonds = 'As of almonds: a cup, 143 g, to 2 ¾ cups, 651 mL.';

function ratio(value: number, low: number, high: number, measured = asOfAlmonds): Coefficient {
  const origin = commonPractice(`${measured} Richer or thinner is a matter of taste.`);
  return { value, unit: 'g/g', low, high, origin };
}

function seconds(value: number, low: number, high: number): Coefficient {
  return believed(value, 's', low, high);
}

function soakCold(low: number, high: number) {
  return {
    hours: believed((low + high) / 2, 'h', low, high),
    waterPerGram: { value: 3, unit: 'mL/g', low: 2, high: 4, origin: commonPractice() },
    place: 'refrigerator',
    drained: true,
  } as const;
}

const soakWarm = {
  hours: believed(1 / 6, 'h', 1 / 12, 1 / 4),
  waterPerGram: settled(0, 'mL/g', 'It steeps in the blending water, so there is no other.'),
  place: 'blending water',
  drained: false,
} as const;

const nearRoom = {
  words: 'cool',
  temperature: {
    ...{ value: 18, unit: '°C', low: 15, high: 22 },
    origin: commonPractice('The times to ready take the milk to be as warm as the room.'),
  },
} as const;
const cool = { words: 'cool', temperature: believed(15, '°C', 10, 20) } as const;
const warm = { words: 'warm', temperature: believed(45, '°C', 40, 50) } as const;

const strained = {
  form: 'solid',
  heated: false,
  handlingLoss: believed(0.02, 'share', 0.01, 0.04, 'What stays on the blender, bag and jug.'),
  ownWater: null,
  label: null,
  gels: false,
} as const;

const drained = {
  ...strained,
  leaching: believed(0, 'share', 0, 0.3, 'Some sugar leaves with drained soaking water; how much was not found.'),
} as const;

const undrained = {
  ...strained,
  uptake: settled(0, 'g/g', 'Not soaked and drained.'),
  leaching: settled(0, 'share', 'No soaking water is poured away.'),
} as const;

const unstrained = {
  ...undrained,
  soak: null,
  passing: settled(1, 'share', 'Nothing is strained out.'),
  pulpMoisture: settled(0, 'share', 'There is no pulp.'),
} as const;

const butter = {
  ...unstrained,
  family: 'butter',
  blendSeconds: seconds(45, 20, 90),
  blendWater: nearRoom,
} as const;

const poured = {
  form: 'liquid',
  heated: false,
  // Weighed by what is in it, as the milk it becomes is, so that what is poured in comes out again.
  cup: null,
  soak: null,
  uptake: settled(0, 'g/g', 'A liquid is not soaked.'),
  passing: settled(1, 'share', 'Poured and not strained.'),
  pulpMoisture: settled(0, 'share', 'There is no pulp.'),
  handlingLoss: settled(0, 'share', 'Poured and not strained.'),
  leaching: settled(0, 'share', 'No soaking water is poured away.'),
  ownWater: null,
  gels: false,
  blendSeconds: null,
  blendWater: null,
} as const;

const asItIs = settled(0, 'g/g', 'Used as it is.');

const handPressed = 'Hand-pressed pulp; low confidence.';
const homeBags = 'Low end: what home blenders and bags are believed to pass; high end: 0.9 of all but the fibre.';
const gumStays = 'Its gum holds back more than fibre alone would; low confidence.';

/** From the fibre of almonds and of their pulp; both in g per 100 g, of the nut as bought and of dry pulp. */
function ofAlmondPulp(value: number, low: number, high: number, fibre: number, dry: number): Coefficient {
  const origin = published(
    'almond-pulp-2022',
    'abstract, dietary fibre 40.79 % of dry pulp',
    `Computed, as if all fibre stayed: ${fibre}/0.4079 of ${dry} g dry are pulp, less the sugar in it. ${homeBags}`,
  );
  return { value, unit: 'share', low, high, origin };
}

function likeAlmond(value: number, low: number, high: number): Coefficient {
  const origin = judgement(
    `By the pulp of almonds, for want of its own: all fibre stays and 0.775 of the other solids passes. ${homeBags}`,
  );
  return { value, unit: 'share', low, high, origin };
}

function likeCoconut(value: number, low: number, high: number): Coefficient {
  const origin = judgement(
    `A composition of pressed coconut, seen without its citation, has 0.74 to 0.84 of the fat pass; so 0.79 of all but the fibre. ${homeBags}`,
  );
  return { value, unit: 'share', low, high, origin };
}

const startsAsNut = 'A usual nut, until you type what your label says.';

function ofLabel(value: number): Coefficient {
  return settled(value, 'g in 100 g', startsAsNut);
}

const coconutsOwnWater = {
  composition: composed('12119'),
  perGram: {
    value: 0.519,
    unit: 'g/g',
    low: 0,
    high: 0.6,
    origin: published(
      'usda-sr',
      'Release 28, records 12119 (1 coconut yields 206 g) and 12104 (1 medium, 397 g)',
      'Computed: 206/397. The range is from memory: an old nut is nearly dry.',
    ),
  },
} as const;

// A usual almond or oat carton, remembered, made to sum to 100.
const cartonComposition = { protein: 0.6, fat: 1.3, ash: 0.4, sucrose: null, glucose: null, fructose: null } as const;
const cartonSugarsUnknown = { maltose: null, lactose: null, galactose: null, fibre: 0.4 } as const;
const cartonSlower: Coefficient = {
  ...{ value: 2, unit: 'times', low: 1.5, high: 4.5 },
  origin: commonPractice(
    'Ready after 12 to 72 h, where a homemade milk takes 8 to 16 h: 12 ÷ 8 and 72 ÷ 16. Some never turn.',
  ),
};
const cartonServing: Coefficient = {
  value: 240,
  unit: 'mL',
  low: 100,
  high: 250,
  origin: commonPractice('A label cup in the US; labels elsewhere count by 100 mL.'),
};

const table = {
  almond: {
    ...drained,
    name: 'Almonds, whole',
    plural: 'almonds',
    family: 'nut',
    composition: composed('12061'),
    food: '12061',
    cup: cup('12061', 'cup, whole', 143),
    soak: soakCold(8, 12),
    uptake: {
      value: 0.593,
      unit: 'g/g',
      origin: published(
        'almond-soak-2020',
        'abstract, 40 % moisture after soaking',
        'Computed with the 4.41 % before soaking of record 12061: (1 − 0.0441)/(1 − 0.40) − 1. How long and how cold it soaked is not in the abstract.',
      ),
    },
    waterRatio: ratio(4.5, 3, 6),
    passing: ofAlmondPulp(0.67, 0.4, 0.78, 12.5, 95.59),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['almond'],
  },
  almondBlanched: {
    ...drained,
    name: 'Almonds, blanched',
    plural: 'blanched almonds',
    family: 'nut',
    composition: composed('12062'),
    food: '12062',
    cup: cup('12062', 'cup whole kernels', 145),
    soak: soakCold(6, 10),
    uptake: believed(0.4, 'g/g', 0.3, 0.6),
    waterRatio: ratio(4.5, 3, 6),
    passing: ofAlmondPulp(0.74, 0.4, 0.8, 9.9, 95.49),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['almond'],
  },
  cashew: {
    ...drained,
    name: 'Cashews',
    plural: 'cashews',
    family: 'nut',
    composition: composed('12087'),
    food: '12087',
    cup: cup(
      '12085',
      'cup, halves and whole',
      137,
      'Raw cashews 12087 have no cup weight; this is that of dry roasted ones, the nearest form. Read at second hand, not in the release itself.',
    ),
    soak: soakCold(2, 4),
    uptake: believed(0.35, 'g/g', 0.3, 0.45, 'Low confidence.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.75, 0.55, 0.87),
    pulpMoisture: believed(0.6, 'share', 0.52, 0.7, 'Low confidence.'),
    blendSeconds: seconds(90, 45, 150),
    blendWater: nearRoom,
    allergens: ['cashew'],
  },
  hazelnut: {
    ...drained,
    name: 'Hazelnuts',
    plural: 'hazelnuts',
    family: 'nut',
    composition: composed('12120'),
    food: '12120',
    cup: cup('12120', 'cup, whole', 135),
    soak: soakCold(6, 10),
    uptake: believed(0.35, 'g/g', 0.3, 0.45, 'Low confidence.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.69, 0.4, 0.8),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['hazelnut'],
  },
  walnut: {
    ...drained,
    name: 'Walnuts',
    plural: 'walnuts',
    family: 'nut',
    composition: composed('12155'),
    food: '12155',
    cup: cup('12155', 'cup shelled (50 halves)', 100),
    soak: soakCold(6, 8),
    uptake: {
      value: 0.371,
      unit: 'g/g',
      origin: published(
        'walnut-soak',
        'abstract, about 30 % moisture after 8 and after 24 h',
        'Computed from about 4 % before soaking: (1 − 0.04)/(1 − 0.30) − 1.',
      ),
    },
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.72, 0.4, 0.84),
    pulpMoisture: believed(0.63, 'share', 0.58, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['walnut'],
  },
  pecan: {
    ...drained,
    name: 'Pecans',
    plural: 'pecans',
    family: 'nut',
    composition: composed('12142'),
    food: '12142',
    cup: cup('12142', 'cup, halves', 99),
    soak: soakCold(4, 8),
    uptake: believed(0.28, 'g/g', 0.1, 0.3, 'Low confidence.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.69, 0.4, 0.81),
    pulpMoisture: believed(0.63, 'share', 0.58, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['pecan'],
  },
  macadamia: {
    ...drained,
    name: 'Macadamias',
    plural: 'macadamias',
    family: 'nut',
    composition: composed('12131'),
    food: '12131',
    cup: cup('12131', 'cup, whole or halves', 134),
    soak: soakCold(2, 4),
    uptake: believed(0.15, 'g/g', 0.1, 0.3, 'Low confidence.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.7, 0.45, 0.82),
    pulpMoisture: believed(0.6, 'share', 0.52, 0.7, 'Low confidence.'),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['macadamia'],
  },
  brazilNut: {
    ...drained,
    name: 'Brazil nuts',
    plural: 'Brazil nuts',
    family: 'nut',
    composition: composed('12078'),
    food: '12078',
    cup: cup('12078', 'cup, whole', 133),
    soak: soakCold(4, 6),
    uptake: believed(0.2, 'g/g', 0.1, 0.3, 'Low confidence.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.71, 0.4, 0.83),
    pulpMoisture: believed(0.62, 'share', 0.57, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['brazilNut'],
  },
  pistachio: {
    ...drained,
    name: 'Pistachios, shelled',
    plural: 'pistachios',
    family: 'nut',
    composition: composed('12151'),
    food: '12151',
    cup: cup('12151', 'cup', 123),
    soak: soakCold(4, 8),
    uptake: believed(0.4, 'g/g', 0.35, 0.5, 'Low confidence.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.68, 0.4, 0.79),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['pistachio'],
  },
  pineNut: {
    ...undrained,
    name: 'Pine nuts',
    plural: 'pine nuts',
    family: 'nut',
    composition: composed('12147'),
    food: '12147',
    cup: cup('12147', 'cup', 135),
    soak: null,
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.74, 0.5, 0.86),
    pulpMoisture: believed(0.6, 'share', 0.52, 0.7, 'Low confidence.'),
    blendSeconds: seconds(90, 45, 150),
    blendWater: nearRoom,
    allergens: ['pineNut'],
  },
  almondGround: {
    ...undrained,
    name: 'Almonds, ground',
    plural: 'ground almonds',
    family: 'ground',
    composition: composed('12062'),
    food: '12062',
    cup: cup(
      '12061',
      'cup, ground',
      95,
      'Blanched almonds 12062 have no cup of ground ones; this is that of whole almonds.',
    ),
    soak: null,
    waterRatio: ratio(4.5, 3, 6),
    passing: ofAlmondPulp(0.74, 0.4, 0.8, 9.9, 95.49),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(60, 30, 120),
    blendWater: nearRoom,
    allergens: ['almond'],
  },
  hazelnutGround: {
    ...undrained,
    name: 'Hazelnuts, ground',
    plural: 'ground hazelnuts',
    family: 'ground',
    composition: composed('12120'),
    food: '12120',
    cup: cup('12120', 'cup, ground', 75),
    soak: null,
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.69, 0.4, 0.8),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(60, 30, 120),
    blendWater: nearRoom,
    allergens: ['hazelnut'],
  },
  almondButter: {
    ...butter,
    name: 'Almond butter',
    plural: 'almond butter',
    composition: composed('12195'),
    food: '12195',
    cup: cup('12195', 'cup', 250),
    waterRatio: ratio(7.4, 5, 10, '2 tablespoons, 32 g, to a cup, 237 mL.'),
    allergens: ['almond'],
  },
  peanutButter: {
    ...butter,
    name: 'Peanut butter',
    plural: 'peanut butter',
    composition: composed('16398'),
    food: '16398',
    cup: cup('16398', 'cup', 258),
    waterRatio: ratio(7.4, 5, 10, '2 tablespoons, 32 g, to a cup, 237 mL.'),
    allergens: ['peanut'],
  },
  tahini: {
    ...butter,
    name: 'Tahini (sesame butter)',
    plural: 'tahini',
    composition: composed('12166'),
    food: '12166',
    cup: {
      grams: 15,
      millilitres: 14.78676478125,
      measure: 'tbsp',
      origin: published('usda-sr', measurePlace('12166', '1 tbsp'), 'No cup was noted.'),
    },
    waterRatio: ratio(7.9, 5, 10, '2 tablespoons, 30 g, to a cup, 237 mL.'),
    allergens: ['sesame'],
  },
  peanut: {
    ...drained,
    name: 'Peanuts, shelled',
    plural: 'peanuts',
    family: 'legume',
    composition: composed('16087'),
    food: '16087',
    cup: cup('16087', 'cup', 146),
    soak: soakCold(6, 10),
    uptake: {
      value: 0.439,
      unit: 'g/g',
      origin: judgement(
        'The moistest and the driest kernels of a published study (Moisture-dependent physical properties and hydration kinetics of peanut kernel, 2022, abstract), 35.07 and 6.57 %, taken as those of a whole soak: (1 − 0.0657)/(1 − 0.3507) − 1.',
      ),
    },
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.7, 0.4, 0.81),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    cook: { what: 'milk', minutes: { value: 10, unit: 'min', low: 5, high: 15, origin: commonPractice() } },
    allergens: ['peanut'],
  },
  soy: {
    ...drained,
    name: 'Soybeans, dry',
    plural: 'soybeans',
    family: 'legume',
    composition: soyComposition,
    food: '16108',
    cup: cup('16108', 'cup', 186),
    soak: soakCold(8, 12),
    uptake: {
      ...{ value: 1.18, unit: 'g/g', low: 1.1, high: 1.3 },
      origin: published(
        'soybeans-2018',
        'table of 14 samples',
        'The range is from memory; the harvest before had 1.25.',
      ),
    },
    waterRatio: ratio(7.6, 6, 10, 'Half a cup, 93 g, to 3 cups, 710 mL.'),
    passing: {
      ...{ value: 0.71, unit: 'share', low: 0.55, high: 0.8 },
      origin: judgement(
        'Okara, its pulp, is said to keep 17 % of the bean’s protein (a trade article, at second hand) and is 25 % protein when dry (Composition, nutrition and utilization of okara, abstract): 0.17 × 36.49/0.25 = 24.8 g of 86.5 g dry without sugar stay.',
      ),
    },
    pulpMoisture: {
      ...{ value: 0.78, unit: 'share', low: 0.76, high: 0.82 },
      origin: judgement(
        'Okara is 76 to 80 % water packed, by a trade article at second hand, and 81.64 % in record 16130.',
      ),
    },
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    cook: { what: 'milk', minutes: { value: 15, unit: 'min', low: 10, high: 20, origin: commonPractice() } },
    allergens: ['soy'],
  },
  hemp: {
    ...undrained,
    name: 'Hemp hearts',
    plural: 'hemp hearts',
    family: 'seed',
    composition: composed('12012'),
    food: '12012',
    cup: {
      grams: 30,
      millilitres: 44.36029434375,
      measure: '3 tbsp',
      origin: published(
        'usda-sr',
        'Release 28, record 12012, 3 tbsp',
        'It has no cup weight; this is its only measure.',
      ),
    },
    soak: null,
    waterRatio: ratio(10.4, 8, 12, 'Half a cup, 80 g, to 3 ½ cups, 828 mL.'),
    passing: likeAlmond(0.74, 0.55, 0.86),
    pulpMoisture: believed(0.6, 'share', 0.52, 0.7, 'Low confidence.'),
    blendSeconds: seconds(120, 60, 150),
    blendWater: nearRoom,
    allergens: [],
  },
  sunflower: {
    ...undrained,
    name: 'Sunflower kernels, hulled',
    plural: 'sunflower kernels',
    family: 'seed',
    composition: composed('12036'),
    food: '12036',
    cup: cup('12036', 'cup', 140),
    soak: null,
    waterRatio: ratio(5.9, 4.5, 7.5, 'A cup, 140 g, to 3 ½ cups, 828 mL.'),
    passing: likeAlmond(0.7, 0.4, 0.82),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: [],
  },
  pumpkin: {
    ...drained,
    name: 'Pumpkin kernels, hulled',
    plural: 'pumpkin kernels',
    family: 'seed',
    composition: composed('12014'),
    food: '12014',
    cup: cup('12014', 'cup', 129),
    soak: soakCold(4, 8),
    uptake: believed(0.3, 'g/g', 0.3, 0.5, 'Low confidence.'),
    waterRatio: ratio(5.5, 4, 7, 'A cup, 129 g, to 3 cups, 710 mL.'),
    passing: likeAlmond(0.73, 0.4, 0.84),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: [],
  },
  sesame: {
    ...drained,
    name: 'Sesame, unhulled',
    plural: 'unhulled sesame seeds',
    family: 'seed',
    composition: composed('12023'),
    food: '12023',
    cup: cup('12023', 'cup', 144),
    soak: soakCold(4, 8),
    uptake: believed(0.4, 'g/g', 0.4, 0.6, 'Low confidence.'),
    waterRatio: ratio(5, 4, 6.5, 'A cup, 144 g, to 3 cups, 710 mL.'),
    passing: likeAlmond(0.68, 0.4, 0.79),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['sesame'],
  },
  sesameHulled: {
    ...drained,
    name: 'Sesame, hulled',
    plural: 'hulled sesame seeds',
    family: 'seed',
    composition: composed('12201'),
    food: '12201',
    cup: cup('12201', 'cup', 150, 'The tablespoon of the same record, 8 g, is 15 % lighter for its volume.'),
    soak: soakCold(4, 8),
    uptake: believed(0.4, 'g/g', 0.4, 0.6, 'Low confidence.'),
    waterRatio: ratio(5, 4, 6.5, 'A cup, 144 g, to 3 cups, 710 mL.'),
    passing: likeAlmond(0.68, 0.4, 0.81),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: ['sesame'],
  },
  flax: {
    ...undrained,
    name: 'Flax seed, whole',
    plural: 'flax seeds',
    family: 'seed',
    composition: composed('12220'),
    food: '12220',
    cup: cup('12220', 'cup, whole', 168),
    soak: null,
    waterRatio: ratio(15, 12, 20, 'A quarter cup, 42 g, to 2 ⅔ cups, 631 mL.'),
    passing: believed(0.35, 'share', 0.2, 0.55, gumStays),
    pulpMoisture: believed(0.88, 'share', 0.85, 0.92, 'Its gum holds much water; low confidence.'),
    gels: true,
    blendSeconds: seconds(45, 30, 60),
    blendWater: cool,
    allergens: [],
  },
  chia: {
    ...undrained,
    name: 'Chia seed, whole',
    plural: 'chia seeds',
    family: 'seed',
    composition: composed('12006'),
    food: '12006',
    cup: cup(
      '12220',
      'cup, whole',
      168,
      'Chia 12006 has no cup weight; this is that of whole flax seed, the nearest form.',
    ),
    soak: null,
    waterRatio: ratio(20, 16, 28, 'A quarter cup, 42 g, to 3 ½ cups, 828 mL.'),
    passing: believed(0.25, 'share', 0.1, 0.5, gumStays),
    pulpMoisture: believed(0.93, 'share', 0.88, 0.95, 'Its gum holds much water; low confidence.'),
    gels: true,
    blendSeconds: seconds(45, 20, 60),
    blendWater: cool,
    allergens: [],
  },
  tigerNut: {
    ...drained,
    name: 'Tiger nuts, dried',
    plural: 'tiger nuts',
    family: 'seed',
    composition: tigerNutComposition,
    food: null,
    cup: { grams: 145, millilitres: cupMillilitres, measure: 'cup', origin: fromMemory('140 to 150 g.') },
    soak: soakCold(12, 24),
    uptake: believed(0.5, 'g/g', 0.35, 0.7, 'Low confidence.'),
    waterRatio: ratio(4.9, 3.5, 6, 'A cup, 145 g, to 3 cups, 710 mL.'),
    passing: believed(0.5, 'share', 0.3, 0.75, 'Fibre and much of the starch stay; low confidence.'),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    allergens: [],
  },
  oats: {
    ...undrained,
    name: 'Oats, rolled',
    plural: 'rolled oats',
    family: 'cereal',
    composition: composed('08120'),
    food: '08120',
    cup: cup('08120', 'cup', 81),
    soak: null,
    waterRatio: ratio(8.8, 7, 12, 'A cup, 81 g, to 3 cups, 710 mL.'),
    passing: believed(0.55, 'share', 0.35, 0.8, 'How much of the starch passes hangs on the blender; low confidence.'),
    pulpMoisture: believed(0.75, 'share', 0.7, 0.82, 'Low confidence.'),
    gels: true,
    blendSeconds: seconds(30, 20, 45),
    blendWater: cool,
    allergens: ['oats'],
  },
  rice: {
    ...undrained,
    name: 'Rice, white',
    plural: 'rice',
    family: 'cereal',
    composition: composed('20444'),
    food: '20444',
    cup: cup('20444', 'cup', 185),
    soak: null,
    waterRatio: ratio(10.2, 8, 14, 'Half a cup, 92.5 g, to 4 cups, 946 mL, the cooking water among them.'),
    passing: believed(0.8, 'share', 0.5, 0.95, 'Cooked soft, most of it is blended fine; low confidence.'),
    pulpMoisture: believed(0.8, 'share', 0.75, 0.85, 'Low confidence.'),
    blendSeconds: seconds(60, 30, 120),
    blendWater: cool,
    cook: { what: 'source', minutes: { value: 20, unit: 'min', low: 15, high: 25, origin: commonPractice() } },
    allergens: [],
  },
  coconutDried: {
    ...undrained,
    name: 'Coconut, dried, unsweetened',
    plural: 'dried coconut',
    family: 'coconut',
    composition: composed('12108'),
    food: '12108',
    cup: cup(
      '12179',
      'cup, shredded',
      93,
      'Unsweetened 12108 has no cup weight; this is that of sweetened shredded, the nearest form, which is moister and so a little heavier.',
    ),
    soak: soakWarm,
    waterRatio: ratio(5.6, 4, 7, 'A cup, 93 g, to 2 ¼ cups, 532 mL.'),
    passing: likeCoconut(0.65, 0.4, 0.74),
    pulpMoisture: believed(0.6, 'share', 0.5, 0.7, 'Low confidence.'),
    blendSeconds: seconds(120, 60, 180),
    blendWater: warm,
    allergens: ['coconut'],
  },
  coconutDriedSweetened: {
    ...undrained,
    name: 'Coconut, dried, sweetened',
    plural: 'sweetened dried coconut',
    family: 'coconut',
    composition: composed('12179'),
    food: '12179',
    cup: cup('12179', 'cup, shredded', 93),
    soak: soakWarm,
    waterRatio: ratio(5.6, 4, 7, 'A cup, 93 g, to 2 ¼ cups, 532 mL.'),
    passing: likeCoconut(0.71, 0.4, 0.81),
    pulpMoisture: believed(0.6, 'share', 0.5, 0.7, 'Low confidence.'),
    blendSeconds: seconds(120, 60, 180),
    blendWater: warm,
    allergens: ['coconut'],
  },
  coconutFresh: {
    ...undrained,
    name: 'Coconut, fresh flesh',
    plural: 'fresh coconut flesh',
    family: 'coconut',
    composition: composed('12104'),
    food: '12104',
    cup: cup('12104', 'cup, shredded', 80),
    soak: null,
    waterRatio: ratio(2.5, 1.5, 3.5, 'The flesh of a nut, 397 g, to 4 ¼ cups, 1005 mL, its own water among them.'),
    passing: likeCoconut(0.64, 0.4, 0.73),
    pulpMoisture: believed(0.55, 'share', 0.45, 0.65, 'Low confidence.'),
    ownWater: coconutsOwnWater,
    blendSeconds: seconds(90, 60, 180),
    blendWater: cool,
    allergens: ['coconut'],
  },
  coconutFreshWhole: {
    ...unstrained,
    name: 'Coconut, fresh, unstrained',
    plural: 'unstrained fresh coconut',
    family: 'coconut',
    composition: composed('12104'),
    food: '12104',
    cup: cup('12104', 'cup, shredded', 80),
    waterRatio: ratio(2.9, 2, 4.5, 'The flesh of a nut, 397 g, to its own 206 g of water and 4 cups, 946 mL.'),
    ownWater: coconutsOwnWater,
    blendSeconds: seconds(150, 90, 240),
    blendWater: cool,
    allergens: ['coconut'],
  },
  coconutMilk: {
    ...poured,
    name: 'Coconut milk, canned',
    plural: 'canned coconut milk',
    family: 'coconut',
    heated: true,
    composition: composed('12118'),
    food: '12118',
    waterRatio: ratio(0.85, 0, 1.5, 'A can, about 390 g, to 1 ⅖ cups, 331 mL; 0 is neat.'),
    label: null,
    can: { volume: usualCan },
    allergens: ['coconut'],
  },
  coconutCream: {
    ...poured,
    name: 'Coconut cream, canned',
    plural: 'canned coconut cream',
    family: 'coconut',
    heated: true,
    composition: composed('12115', 'Raw cream, the nearest record there is.'),
    food: '12115',
    waterRatio: ratio(2, 1, 3, 'A can to two cans of water, by weight.'),
    label: null,
    can: { volume: usualCan },
    allergens: ['coconut'],
  },
  coconutWater: {
    ...poured,
    name: 'Coconut water, packed',
    plural: 'coconut water',
    family: 'coconut',
    heated: true,
    composition: composed('12119'),
    food: '12119',
    waterRatio: asItIs,
    label: null,
    allergens: ['coconut'],
  },
  cartonPlain: {
    ...poured,
    name: 'Carton, unsweetened',
    plural: 'unsweetened plant milk',
    family: 'carton',
    heated: true,
    slower: cartonSlower,
    composition: {
      ...cartonComposition,
      ...cartonSugarsUnknown,
      water: 97,
      carbohydrate: 0.7,
      sugars: 0,
      origin: fromMemory('An unsweetened carton; its sugar is the label’s.'),
    },
    food: null,
    waterRatio: asItIs,
    label: { serving: cartonServing, sugarPerServing: believed(0, 'g', 0, 1, 'Unsweetened.') },
    allergens: [],
  },
  cartonSweetened: {
    ...poured,
    name: 'Carton, sweetened',
    plural: 'sweetened plant milk',
    family: 'carton',
    heated: true,
    slower: cartonSlower,
    composition: {
      ...cartonComposition,
      ...cartonSugarsUnknown,
      water: 94.1,
      carbohydrate: 3.6,
      sugars: 2.9,
      origin: fromMemory('A sweetened carton; its sugar is the label’s.'),
    },
    food: null,
    waterRatio: asItIs,
    label: { serving: cartonServing, sugarPerServing: believed(7, 'g', 4, 13) },
    allergens: [],
  },
  own: {
    ...drained,
    name: 'Your own source',
    plural: 'nuts, seeds or grain of your own',
    family: 'own',
    composition: {
      ...{ water: 5, protein: 20, fat: 50, carbohydrate: 22, fibre: 9, sugars: 4, ash: 3 },
      ...{ sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null },
      origin: judgement(startsAsNut),
    },
    food: null,
    cup: null,
    soak: soakCold(6, 10),
    uptake: believed(0.4, 'g/g', 0.1, 0.6, 'As nuts take up; weigh yours after soaking. 0 where you do not soak.'),
    waterRatio: ratio(4.5, 3, 6),
    passing: likeAlmond(0.7, 0.4, 0.82),
    pulpMoisture: believed(0.65, 'share', 0.6, 0.72, handPressed),
    blendSeconds: seconds(120, 60, 180),
    blendWater: nearRoom,
    ownLabel: {
      ...{ fat: ofLabel(50), protein: ofLabel(20), starch: ofLabel(9) },
      ...{ sugars: ofLabel(4), fibre: ofLabel(9), ash: ofLabel(3) },
    },
    allergens: [],
  },
} satisfies Record<string, Source>;

export type SourceId = keyof typeof table;

/** What a milk can be made of, in the order of the menu. */
export const sources: Readonly<Record<SourceId, Source>> = table;
