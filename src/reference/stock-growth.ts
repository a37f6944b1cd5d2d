import { type Coefficient, fromMemory, judgement, published } from './origins';

const table = {
  milkInDairy: {
    value: 1.0671,
    unit: 'times',
    low: 1.014,
    high: 1.123,
    origin: published(
      'soy-kefir-2020',
      'table 1',
      'Seven batches at 25 °C with 10 % of grains; the ends are its least and its best batch.',
    ),
  },
  milkInSoy: {
    value: 1.1783,
    unit: 'times',
    low: 1.109,
    high: 1.273,
    origin: published(
      'soy-kefir-2020',
      'table 1',
      'Seven batches at 25 °C with 10 % of grains; the ends are its least and its best batch. A kitchen log that was read shows hardly any growth in soy.',
    ),
  },
  waterInCoconutWater: {
    value: 1.31,
    unit: 'times',
    origin: published(
      'coconut-pumpkin-2024',
      'abstract',
      'With 20 % of pumpkin and 10 % of brown sugar, at 27 °C. No range was seen.',
    ),
  },
  waterInSugarWater: {
    value: 1.3,
    unit: 'times',
    low: 1.1,
    high: 1.7,
    origin: fromMemory(
      'Low confidence: no figure was found. One study speaks of no high gain, least in refined sugar.',
    ),
  },
  inCoconut: {
    value: 1.1,
    unit: 'times',
    low: 1,
    high: 1.3,
    origin: judgement('They are said to grow well in coconut; no figure was found.'),
  },
  inPlantMilk: {
    value: 1,
    unit: 'times',
    low: 0.95,
    high: 1.05,
    origin: judgement('Nobody’s figure was found: count on the same weight until yours are weighed.'),
  },
} satisfies Record<string, Coefficient>;

export type ExpectedGrowthId = keyof typeof table;

/** What drained grains weigh after a batch, for each gram that went in, before this kitchen’s own were weighed. */
export const expectedGrowth: Readonly<Record<ExpectedGrowthId, Coefficient>> = table;

const learning = {
  spread: {
    value: 0.06,
    unit: 'ln',
    origin: judgement(
      'How far two weighings of the same growth differ: grains drip, and batches of one study differ by 4 to 5 %.',
    ),
  },
  spreadWorth: {
    value: 4,
    unit: 'batches',
    origin: judgement('As good as so many batches is that spread, until there are more of your own.'),
  },
  withoutRange: {
    value: 1.2,
    unit: 'times',
    origin: judgement('Where a figure has no range, it may be so much more or less.'),
  },
  below: {
    value: 0.9,
    unit: 'share',
    origin: judgement('A range leaves out one case in ten on either side: it is meant to hold four times in five.'),
  },
  expectedWidth: {
    value: 1.28,
    unit: 'standard deviations',
    origin: judgement('The range of what is expected is taken to hold four times in five, too.'),
  },
  recent: {
    value: 20,
    unit: 'batches',
    origin: judgement('Grains change over the months: the latest batches tell most.'),
  },
  leastRatio: {
    value: 0.4,
    unit: 'times',
    origin: judgement('Less than this coming back is grains that were lost or a slip of the scale, no growth.'),
  },
  mostRatio: {
    value: 2.5,
    unit: 'times',
    origin: judgement('No grains were found to grow so much in one batch: it is a slip of the scale.'),
  },
  inSight: {
    value: 60,
    unit: 'batches',
    origin: judgement('More batches than this ahead nobody can see.'),
  },
  pace: {
    value: 3,
    unit: 'batches',
    origin: judgement('From so many on there is a usual time between two.'),
  },
} satisfies Record<string, Coefficient>;

/** What learning the growth of a stock rests on. Spreads are standard deviations of the logarithm of a ratio. */
export const growthLearning: Readonly<Record<keyof typeof learning, Coefficient>> = learning;
