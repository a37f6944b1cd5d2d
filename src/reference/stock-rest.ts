import { type Coefficient, commonPractice, fromMemory, judgement, published } from './origins';

const table = {
  sugarWater: {
    value: 52.8,
    unit: 'g/L',
    origin: commonPractice('¼ cup, 50 g, to a US quart of water.'),
  },
  weakest: {
    value: 10,
    unit: 'g/L',
    origin: judgement('Weaker water feeds them for hours, not for days.'),
  },
  strongest: {
    value: 200,
    unit: 'g/L',
    origin: judgement('Stronger water is a syrup, which draws the water out of them.'),
  },
  dairy: {
    value: 100,
    unit: 'g/L',
    origin: published(
      'soy-kefir-2020',
      'table 1',
      'Grains to dairy milk, 10 % by weight to volume, at which they grew. Others took 4 or 5 %.',
    ),
  },
  dairyAtHome: {
    value: 25,
    unit: 'g/L',
    low: 20,
    high: 30,
    origin: commonPractice('For a kefir to drink.'),
  },
  waterCold: {
    value: 14,
    unit: 'days',
    low: 7,
    high: 21,
    origin: commonPractice('One to three weeks.'),
  },
  milkCold: {
    value: 7,
    unit: 'days',
    origin: judgement(
      'Pages disagree, from every week to every few weeks. The shortest is taken: in the cold they lose.',
    ),
  },
  waterRoom: {
    value: 2,
    unit: 'days',
    low: 1,
    high: 3,
    origin: fromMemory('By then most of the sugar is gone.'),
  },
  milkRoom: {
    value: 1,
    unit: 'days',
    origin: commonPractice('A day, as for a batch of dairy kefir.'),
  },
  dairyRoundAfter: {
    value: 6,
    unit: 'batches',
    origin: commonPractice(
      'Pages disagree: every week, after six batches of plant milk, every few weeks. Six is taken.',
    ),
  },
  dairyRound: {
    value: 24,
    unit: 'h',
    origin: commonPractice(),
  },
  reviveDairy: {
    value: 40,
    unit: 'g/L',
    low: 20,
    high: 100,
    origin: fromMemory('A passage was read without its citation: each day fresh, at 22 °C, up to six days.'),
  },
  reviveDays: {
    value: 6,
    unit: 'days',
    low: 1,
    high: 6,
    origin: fromMemory('Of the same passage.'),
  },
  reviveRoom: {
    value: 22,
    unit: '°C',
    low: 20,
    high: 25,
    origin: fromMemory('Of the same passage.'),
  },
  reviveSugar: {
    value: 65.8,
    unit: 'g/L',
    low: 52.6,
    high: 78.9,
    origin: commonPractice('50 to 75 g of sugar to 0.95 L of water.'),
  },
  reviveWaterDays: {
    value: 4,
    unit: 'days',
    low: 3,
    high: 5,
    origin: commonPractice(),
  },
  recoverBatches: {
    value: 2,
    unit: 'batches',
    low: 1,
    high: 3,
    origin: commonPractice('So many rounds until they are as they were.'),
  },
  dryDays: {
    value: 4,
    unit: 'days',
    low: 3,
    high: 5,
    origin: commonPractice(),
  },
  dryMost: {
    value: 29,
    unit: '°C',
    origin: commonPractice('Kept below it.'),
  },
  driedKeeps: {
    value: 180,
    unit: 'days',
    origin: commonPractice('To six months, in the cold.'),
  },
  frozenKeeps: {
    value: 120,
    unit: 'days',
    low: 60,
    high: 300,
    origin: fromMemory('The days of the study; grains that had been frozen grew as before.'),
  },
  feeding: {
    value: 10,
    unit: 'min',
    origin: judgement('Draining, weighing, mixing, rinsing the jar.'),
  },
  portionJar: {
    value: 500,
    unit: 'mL',
    origin: judgement('A portion to give away is to do for the smallest jar of a beginner.'),
  },
} satisfies Record<string, Coefficient>;

/** How grains rest, wake up, and are put by or shared out. */
export const stockRest: Readonly<Record<keyof typeof table, Coefficient>> = table;
