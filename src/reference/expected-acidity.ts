import { type Coefficient, judgement, type Origin } from './origins';
import type { SourceId } from './sources';

/** pH to expect at the times of `expectedTimes`, in a room of `expectedRoom`, with enough grains and sugar. */
export interface ExpectedAcidity {
  readonly name: string;
  readonly unit: 'pH';
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly origin: Origin;
}

const unit = 'pH';

const table = {
  thin: {
    name: 'Nuts and seeds with 1 to 3 % of protein in the milk',
    unit,
    low: [6.2, 4.7, 4, 3.7],
    high: [7, 5.8, 4.9, 4.4],
    origin: judgement(
      'Drawn around published series, none of them with grains: almond 3.97 to 4.40 with Lactobacillus acidophilus; almond, Brazil nut and others 4.10 to 4.97 after 12 h at 37 °C (Foods 12: 4128, 2023).',
    ),
  },
  rich: {
    name: 'Cashew, soy, peanut and hemp, 3 to 5 % of protein in the milk',
    unit,
    low: [6.2, 5, 4.3, 4],
    high: [6.8, 6, 5, 4.6],
    origin: judgement(
      'Drawn around published series: soy with 10 % milk grains 4.35 to 4.48 after 24 h at 25 °C (Int. J. Microbiol. 2020: 7019286); cashew with a culture 4.5 to 5.0 after 24 h at 24 °C (J. Food Prot. 87: 100311); peanut with kefir starter 4.21 after 30 h (Br. J. Dairy Sci. 2, 2011).',
    ),
  },
  coconut: {
    name: 'Coconut milk',
    unit,
    low: [6, 4.5, 3.7, 3.5],
    high: [6.4, 5.5, 4.4, 4.1],
    origin: judgement(
      'Drawn around a published series: coconut milk with kefir grains 3.77 and 3.84 after 24 h (Taleb Abadl and others, 2022).',
    ),
  },
  cereal: {
    name: 'Oats and rice',
    unit,
    low: [6.2, 4.3, 3.8, 3.6],
    high: [6.8, 5.5, 4.6, 4.3],
    origin: judgement(
      'Drawn around published series, none of them with grains: oat 3.91 after 6 h with one Lactobacillus at yoghurt heat (Foods 14: 2615, 2025); oat and rice within 4.10 to 4.97 after 12 h at 37 °C (Foods 12: 4128, 2023).',
    ),
  },
} satisfies Record<string, ExpectedAcidity>;

export type ExpectedId = keyof typeof table;

/** What pH to expect, by what buffers the acid. */
export const expectedAcidity: Readonly<Record<ExpectedId, ExpectedAcidity>> = table;

/** After how many hours, from the first on. */
export const expectedTimes = {
  hours: [0, 12, 24, 48],
  unit: 'h',
  origin: judgement('The times between which the ranges are drawn straight; after the last it stays there.'),
} as const;

/** The rooms that the ranges are for. */
export const expectedRoom: Coefficient = {
  value: 23.5,
  unit: '°C',
  low: 22,
  high: 25,
  origin: judgement(
    'The ranges are for rooms of 22 to 25 °C; outside them the hours are stretched from the nearer end.',
  ),
};

/** Which of them a source goes with. Of a source that is not here nothing is known: cartons, coconut water, tubers, gels. */
export const expectedOf: Readonly<Partial<Record<SourceId, ExpectedId>>> = {
  ...{ almond: 'thin', almondBlanched: 'thin', almondGround: 'thin', almondButter: 'thin' },
  ...{ hazelnut: 'thin', hazelnutGround: 'thin', walnut: 'thin', pecan: 'thin', macadamia: 'thin', brazilNut: 'thin' },
  ...{ pistachio: 'thin', pineNut: 'thin', sunflower: 'thin', pumpkin: 'thin' },
  ...{ sesame: 'thin', sesameHulled: 'thin', tahini: 'thin' },
  ...{ cashew: 'rich', soy: 'rich', peanut: 'rich', peanutButter: 'rich', hemp: 'rich' },
  ...{
    coconutDried: 'coconut',
    coconutDriedSweetened: 'coconut',
    coconutFresh: 'coconut',
    coconutFreshWhole: 'coconut',
  },
  ...{ coconutMilk: 'coconut', coconutCream: 'coconut', oats: 'cereal', rice: 'cereal' },
};
