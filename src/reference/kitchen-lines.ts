import { type Coefficient, commonPractice, judgement, published } from './origins';

const table = {
  refrigerator: {
    value: 4,
    unit: '°C',
    low: 1,
    high: 5,
    origin: judgement('A degree below the 5 °C (41 °F) that the FDA Food Code asks of cold food, § 3-501.16.'),
  },
  warmSoakLimit: {
    value: 8,
    unit: 'h',
    origin: published('almond-soak-2020', 'abstract', 'At 18 °C and above, for almonds.'),
  },
  coldSoakTemperature: {
    value: 15,
    unit: '°C',
    origin: published('almond-soak-2020', 'abstract', 'No growth in 24 h at or below this, for almonds.'),
  },
  grainTemperatureLimit: {
    value: 30,
    unit: '°C',
    origin: commonPractice('Milk warmer than this can harm the grains.'),
  },
  lastJar: {
    value: 0.1,
    unit: 'share',
    origin: judgement('Where the last jar would hold less than this share of the batch, one jar fewer is offered.'),
  },
  leftOver: {
    value: 0.02,
    unit: 'share',
    origin: judgement('Less than this share of what is on hand is used up, as a scale and a spoon tell it.'),
  },
  workingDigits: {
    value: 4,
    unit: 'digits',
    origin: judgement('Enough to follow an arithmetic by eye.'),
  },
  constantDigits: {
    value: 12,
    unit: 'digits',
    origin: judgement('More than any constant here has: rounded, one would be another.'),
  },
} satisfies Record<string, Coefficient>;

/** Lines of every kitchen that no edit asks for: they are held against once steps, fizz, stock or a working are looked at. */
export const kitchenLines: Readonly<Record<keyof typeof table, Coefficient>> = table;
