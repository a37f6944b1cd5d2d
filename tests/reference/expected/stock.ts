import type { Figures } from './figures';

// Chemical, microbiological and functional characterization of kefir produced from cow’s milk and soy milk, Int. J.
// Microbiol. 2020: 7019286, table 1: 10 g of grains weighed 15.76 g after seven batches in cow’s milk, 31.53 g in soy.
const overSeven = (grams: number): number => Number(((grams / 10) ** (1 / 7)).toFixed(4));

export const expectedGrowthFigures: Figures = {
  // Least and best single batches of the table: 12.84 → 13.02, 13.47 → 15.13; 18.55 → 20.58, 12.47 → 15.88.
  'milkInDairy, times': [overSeven(15.76), 1.014, 1.123],
  'milkInSoy, times': [overSeven(31.53), 1.109, 1.273],
  // Beverages 10(2): 34, abstract: +31 %.
  'waterInCoconutWater, times': [1.31],
  // From memory: +10 to +70 %.
  'waterInSugarWater, times': [1.3, 1.1, 1.7],
  'inCoconut, times': [1.1, 1, 1.3],
  'inPlantMilk, times': [1, 0.95, 1.05],
};

export const growthLearningFigures: Figures = {
  ...{ 'spread, ln': [0.06], 'spreadWorth, batches': [4], 'withoutRange, times': [1.2], 'below, share': [0.9] },
  ...{ 'expectedWidth, standard deviations': [1.28], 'recent, batches': [20], 'inSight, batches': [60] },
  ...{ 'leastRatio, times': [0.4], 'mostRatio, times': [2.5], 'pace, batches': [3] },
};

export const stockRestFigures: Figures = {
  // Common practice: ¼ cup, 50 g, to a quart of 0.946 L, every one to three weeks; woken in 50 to 75 g to 0.95 L.
  'sugarWater, g/L': [52.8],
  'waterCold, days': [14, 7, 21],
  'reviveSugar, g/L': [65.8, 52.6, 78.9],
  'reviveWaterDays, days': [4, 3, 5],
  'recoverBatches, batches': [2, 1, 3],
  ...{ 'weakest, g/L': [10], 'strongest, g/L': [200] },
  // The same table 1: 10 % w/v.
  'dairy, g/L': [100],
  'dairyAtHome, g/L': [25, 20, 30],
  ...{ 'milkCold, days': [7], 'waterRoom, days': [2, 1, 3], 'milkRoom, days': [1] },
  ...{ 'dairyRoundAfter, batches': [6], 'dairyRound, h': [24] },
  ...{ 'reviveDairy, g/L': [40, 20, 100], 'reviveDays, days': [6, 1, 6], 'reviveRoom, °C': [22, 20, 25] },
  ...{
    'dryDays, days': [4, 3, 5],
    'dryMost, °C': [29],
    'driedKeeps, days': [180],
    'frozenKeeps, days': [120, 60, 300],
  },
  ...{ 'feeding, min': [10], 'portionJar, mL': [500] },
};
