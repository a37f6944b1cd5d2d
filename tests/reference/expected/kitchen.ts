import { type Figures, listed, under } from './figures';

// Where nothing else is said a figure here is a judgement of ours, written down a second time so that a slip shows.

export const kitchenFigures: Figures = {
  // Common practice: 1 to 2 in, 2.5 to 5 cm.
  'headspaceDepth, cm': [2.5, 2.5, 5],
  // Judgements: a fifth of the jar for rising, between a tenth and a third; a tenth before one more jar.
  'headspaceShare, %': [20, 10, 35],
  'headspaceShareLeast, %': [10],
  'jarSlack, %': [5],
  // From memory: 25 g/L of granulated sugar, 99.8 % sucrose, as hexose; between 15 and 40.
  'addedSugar, g/L': [26.26, 15, 40],
  'nativeSugarThreshold, g/L': [10],
  'servingSize, mL': [250, 150, 300],
  // Common practice.
  'roomTemperature, °C': [21, 18, 24],
  'blenderCapacity, mL': [1500, 1000, 2000],
  // Common practice: soaked overnight is 8 to 12 h.
  'overnight, h': [10, 8, 12],
  // 21 CFR 114.3: pH 4.6.
  'acidityLine, pH': [4.6],
  'agreement, share': [0.005],
  'scoopSlack, share': [0.01],
  'scoopEnough, share': [0.05],
  'scoopMost, share': [0.15],
  'acidityTime, h': [24],
};

export const kitchenLineFigures: Figures = {
  // FDA Food Code § 3-501.16: 5 °C (41 °F) or less; the 4 is a judgement.
  'refrigerator, °C': [4, 1, 5],
  // Growth and survival of foodborne pathogens during soaking and drying of almond kernels, J. Food Prot. 83 (2020)
  // 2122–2133, abstract: at most 8 h at 18 °C or above; no growth in 24 h at 15 °C.
  'warmSoakLimit, h': [8],
  'coldSoakTemperature, °C': [15],
  // Common practice: at most 30 °C (86 °F).
  'grainTemperatureLimit, °C': [30],
  'lastJar, share': [0.1],
  'leftOver, share': [0.02],
  'workingDigits, digits': [4],
  'constantDigits, digits': [12],
};

/** Common practice: 13.5 fl oz or 400 mL; its range is a judgement. */
export const usualCanFigures: Figures = { ', mL': [400, 385, 415] };

/** Common practice: about a week, coconut seven to ten days. Kernels are bought raw; mouldy nuts can be seen, seeds cannot. */
export const keepingFigures: Figures = {
  ...{ 'ground.keeps, days': [7, 6, 8], 'butter.keeps, days': [7, 6, 8], 'cereal.keeps, days': [7, 6, 8] },
  ...{ 'ground.raw': true, 'ground.pickedOver': false, 'butter.raw': false, 'butter.pickedOver': false },
  ...{ 'own.keeps, days': [7, 6, 8], 'own.raw': true, 'own.pickedOver': true },
  ...{ 'cereal.raw': false, 'cereal.pickedOver': false },
  ...{ 'nut.keeps, days': [7, 6, 8], 'legume.keeps, days': [7, 6, 8], 'seed.keeps, days': [7, 6, 8] },
  ...{ 'coconut.keeps, days': [8.5, 7, 10], 'carton.keeps, days': [7, 6, 8] },
  ...{ 'nut.raw': true, 'nut.pickedOver': true, 'legume.raw': true, 'legume.pickedOver': true, 'seed.raw': true },
  ...{ 'seed.pickedOver': false, 'coconut.raw': false, 'coconut.pickedOver': false },
  ...{ 'carton.raw': false, 'carton.pickedOver': false },
};

export const handworkFigures: Figures = {
  ...{ 'soak, min': [10], 'weigh, min': [15], 'load, min': [10], 'pour, min': [5], 'setUp, min': [10] },
  ...{ 'jar, min': [3], 'heat, min': [30], 'taste, min': [5], 'strain, min': [10], 'strainJar, min': [4] },
  ...{ 'bottle, min': [10], 'bottleEach, min': [2], 'fridge, min': [3], 'fridgeEach, min': [0.5] },
  'chill, h': [4],
  // USDA Food Safety and Inspection Service, Danger Zone: 2 h, or 1 h above 90 °F, 32 °C.
  ...{ 'outOfCold, h': [2], 'outOfColdHot, h': [1], 'hotRoom, °C': [32] },
  ...{ 'step, min': [5], 'search, min': [15], 'drawn, day': [28], 'reach, day': [2] },
};

export const bottleFigures: Figures = {
  'unknownGlass, bar': [2],
  'longestSealed, h': [24],
  'mostHeadspace, share': [0.5],
  // Its sum is worked again in bottles.test.ts, and that of the next.
  'pressureLeftOut, bar': [0.4],
  'realGas, share per bar': [0.006, 0.005, 0.007],
  'mostFruit, share of the fill': [0.5],
  'fruitWeight, g/mL': [1.05],
};

/** Judgements: 36 h at most, half as long again in the warmth; well on its way at pH 5. */
export const acidTimeFigures: Figures = { 'longest, h': [36], 'halfAgain, times': [1.5], 'onItsWay, pH': [5] };

/** science-2, section 11, “A range to show”: a judgement drawn around published series, for 22 to 25 °C. */
export const expectedAcidityFigures: Figures = {
  ...{ ...listed('thin.low', [6.2, 4.7, 4, 3.7]), ...listed('thin.high', [7, 5.8, 4.9, 4.4]) },
  ...{ ...listed('rich.low', [6.2, 5, 4.3, 4]), ...listed('rich.high', [6.8, 6, 5, 4.6]) },
  ...{ ...listed('coconut.low', [6, 4.5, 3.7, 3.5]), ...listed('coconut.high', [6.4, 5.5, 4.4, 4.1]) },
  ...{ ...listed('cereal.low', [6.2, 4.3, 3.8, 3.6]), ...listed('cereal.high', [6.8, 5.5, 4.6, 4.3]) },
};
export const expectedRoomFigures: Figures = { ', °C': [23.5, 22, 25] };
export const expectedTimesFigures: Figures = listed('hours', [0, 12, 24, 48]);

/** Up to three days to turn: common practice. */
export const cartonWaitingFigures: Figures = {
  ...{ 'usualDays, days': [3], 'mostDaysOffered, days': [5], 'sameCarton, h': [24] },
  'shareWidth, standard deviations': [1.28],
};

export const learningFigures: Figures = {
  ...{ 'kitchenSpread, ln': [0.4], 'grainsSpread, ln': [0.25], 'sourceSpread, ln': [0.15], 'batchSpread, ln': [0.2] },
  'justSpan, times': [1.1, 1.05, 1.2],
  // From memory: ready after 12 h, too sour for most after some 18 h.
  'ripeSpan, times': [1.5, 1.3, 2],
  'likelyWidth, standard deviations': [1.35],
  ...{ 'leastHours, h': [0.1], 'mostHours, h': [10000], 'sameMake, h': [6], 'oneSitting, h': [0.25] },
};

export const sweetnessFigures: Figures = under('steps', {
  ...{ '0.most': 4, '1.most': 12, '2.most': 25, '3.most': Number.POSITIVE_INFINITY },
});

/** A judgement: where the fizz of so many volumes is called otherwise. */
export const livelinessFigures: Figures = under('bands', {
  ...{ '0.most': 0.9, '1.most': 1.4, '2.most': 2.5, '3.most': Number.POSITIVE_INFINITY },
});

/** From memory, a judgement: liquids ±5 %, level spoons of sugar ±5 to 10 %, cut nuts ±15 %, ground or flaked ±20 %. */
export const measureErrorFigures: Figures = {
  ...{ 'liquid, share': [0.05, 0.02, 0.05], 'sugar, share': [0.075, 0.05, 0.1] },
  ...{ 'pieces, share': [0.15, 0.1, 0.2], 'fine, share': [0.2, 0.1, 0.25], 'own, share': [0.1] },
};

export const looselyFigures: Figures = { 'scant, times': [0.95, 0.9, 1], 'generous, times': [1.05, 1, 1.1] };

/** Which records are poured, lie as sugar does, or are ground or shredded; all others are pieces. A judgement. */
export const liesAs: Readonly<Record<'liquid' | 'sugar' | 'fine', readonly string[]>> = {
  liquid: [
    ...['12166', '12195', '16398'],
    ...['01077', '01079', '01085', '01151', '12115', '12117', '12118', '12119', '14411', '14429'],
    ...['19296', '19304', '19349', '19350', '19353', '19355', '19911', '19912', '90480'],
  ],
  sugar: ['19334', '19335', '19340', '19908'],
  fine: ['08120', '12104', '12108', '12109', '12177', '12179', '19336'],
};
