import { type Coefficient, commonPractice, fromMemory, judgement, type Origin, published } from './origins';

const figures = {
  ethanolActivation: {
    value: 64300,
    unit: 'J/mol',
    origin: published('kefir-ethanol', 'abstracts', 'Ethanol made by milk kefir grains.'),
  },
  leastHeadspace: {
    value: 0.03,
    unit: 'share',
    origin: judgement('With less gas space in a sealed bottle the liquid’s own expansion on warming can burst it.'),
  },
  forgottenTemperature: {
    value: 30,
    unit: '°C',
    origin: judgement('A bottle forgotten in a warm kitchen; the warmer of this and the typed temperature counts.'),
  },
  ripeningCoolest: {
    value: 16,
    unit: '°C',
    origin: judgement(
      'Published water kefir series (Front. Microbiol. 13: 871550) begin at 17 °C, and the models part ways below this.',
    ),
  },
  ripeningWarmest: {
    value: 30,
    unit: '°C',
    origin: judgement(
      'Published water kefir series (Front. Microbiol. 13: 871550) end at 29 °C, and the models part ways above this.',
    ),
  },
  pace: {
    value: 1,
    unit: 'times as fast',
    low: 0.2,
    high: 5,
    origin: judgement('One, until your log or you say how this kitchen differs.'),
  },
  paceOfGrains: {
    value: 1,
    unit: 'times as fast',
    low: 0.2,
    high: 5,
    origin: judgement('One, until your log or you say how these grains differ.'),
  },
  paceOfSource: {
    value: 1,
    unit: 'times as fast',
    low: 0.2,
    high: 5,
    origin: judgement('One, until your log or you say how this source differs.'),
  },
  carriedOver: {
    value: 0.9,
    unit: 'share',
    low: 0.5,
    high: 1,
    origin: judgement('What ferments is full of gas; straining and pouring let some of it go, how much was not found.'),
  },
  bottleTime: {
    value: 8,
    unit: 'h',
    low: 6,
    high: 10,
    origin: commonPractice(),
  },
  bottleTimeUsual: {
    value: 0,
    unit: 'h',
    origin: judgement('A second ferment is a wish: none until it is asked for.'),
  },
  bottleVolume: {
    value: 500,
    unit: 'mL',
    low: 330,
    high: 1000,
    origin: judgement('A bottle of half a litre; type what yours holds to the rim.'),
  },
  bottleRoom: {
    value: 0.05,
    unit: 'share',
    low: 0.03,
    high: 0.1,
    origin: judgement('About the neck of a bottle.'),
  },
  doseMost: {
    value: 2,
    unit: 'times the usual',
    low: 1,
    high: 3,
    origin: judgement('How much faster still more grains are was not found, so a larger dose counts as this one.'),
  },
  doseExponent: {
    value: 0.75,
    unit: 'power',
    low: 0.5,
    high: 1,
    origin: fromMemory('Low confidence: more grains are faster, how much was not found.'),
  },
  sugarExponent: {
    value: 0.15,
    unit: 'power',
    low: 0,
    high: 0.3,
    origin: fromMemory('Low confidence: none was found.'),
  },
} satisfies Record<string, Coefficient>;

/** Figures of fermenting and of sealed bottles. */
export const fermenting: Readonly<Record<keyof typeof figures, Coefficient>> = figures;

/**
 * Carbon dioxide in water at low pressure, better than the simple form below 15 °C:
 * ln(H₂₁/MPa) = Σ aᵢ/Tⁱ, T in K, 273 to 433 K, to 1 MPa, on mole fractions.
 */
export const carrollHenry = {
  coefficients: [-6.8346, 1.2817e4, -3.7668e6, 2.997e8],
  unit: 'ln MPa',
  from: 273,
  to: 433,
  /** bar; it is given for low pressures, to 1 MPa. */
  pressureTo: 10,
  origin: published('carroll-1991', 'abstract, correlation'),
} as const;

export interface CardinalTemperatures {
  readonly name: string;
  readonly minimum: Coefficient;
  readonly optimum: Coefficient;
  readonly maximum: Coefficient;
}

function cardinals(name: string, origin: Origin, minimum: number, optimum: number, maximum: number) {
  return {
    name,
    minimum: { value: minimum, unit: '°C', origin },
    optimum: { value: optimum, unit: '°C', origin },
    maximum: { value: maximum, unit: '°C', origin },
  } satisfies CardinalTemperatures;
}

const saccharomyces = published('saccharomyces-2011', 'abstract');

const organisms = {
  plantarum: cardinals(
    'Lactiplantibacillus plantarum in lactose-free milk',
    published('plantarum-2019', 'abstract', 'Nearest to plant milk, which is a judgement.'),
    5.4,
    34.2,
    41.4,
  ),
  starter: cardinals(
    'Dairy starter of three bacterial species, in milk',
    published('dairy-starter-2019', 'abstract'),
    4,
    38.3,
    49.6,
  ),
  yeast: {
    ...cardinals('Saccharomyces cerevisiae', saccharomyces, 2.8, 32.3, 45.4),
    minimum: {
      value: 2.8,
      unit: '°C',
      low: 1.3,
      high: 4.3,
      origin: fromMemory('The range is that published for the genus.'),
    },
  },
} satisfies Record<string, CardinalTemperatures>;

export type CardinalId = keyof typeof organisms;

/** Published growth temperatures; their spread about the usual room is the range of the ready time. */
export const cardinalTemperatures: Readonly<Record<CardinalId, CardinalTemperatures>> = organisms;
