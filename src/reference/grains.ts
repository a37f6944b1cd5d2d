import type { AllergenId } from './allergens';
import { type Coefficient, commonPractice, fromMemory, judgement, type Origin } from './origins';

/** What is stirred in and stays in the drink, in place of grains that are strained out again. */
export interface Starter {
  /** Sugar that it brings of its own, as hexose, g per g. */
  readonly ownSugar: Coefficient;
  /** Lactic acid and alcohol that it brings, g per g. */
  readonly ownAcid: Coefficient;
  readonly ownEthanol: Coefficient;
  /** What one packet weighs, g, where it is sold by the packet. */
  readonly packet?: Coefficient;
}

export interface Grain {
  readonly name: string;
  /** Absent of grains. */
  readonly starter?: Starter;
  /** Drained grains, or starter, per litre of milk, g/L. */
  readonly dose: Coefficient;
  /** Of drained grains, g/mL. */
  readonly density: Coefficient;
  /** Drained grains in one tablespoon, rounded as they are dished up, g: level, it holds no more than 15.5. */
  readonly tablespoon: Coefficient;
  /** Liquid that clings to drained grains, mL per g. */
  readonly cling: Coefficient;
  /** Whether the grains gather at the top of the jar; else at the bottom. Nothing gathers of what is stirred in. */
  readonly floats: boolean;
  /** Sugars besides glucose, fructose, sucrose and maltose that count as fermentable with these grains. */
  readonly takes: { readonly lactose: boolean; readonly galactose: boolean; readonly origin: Origin };
  readonly dairy: boolean;
  readonly allergens: readonly AllergenId[];
  /** First ferment until ready to taste, h, at `readyTemperature` with the usual dose. */
  readonly readyTime: Coefficient;
  readonly readyTemperature: Coefficient;
  /** Share of the sugar used up when it is ready. */
  readonly usedWhenReady: Coefficient;
  /** Share of the used sugar that goes through yeast, to alcohol and gas; the rest becomes acid. */
  readonly yeastShare: Coefficient;
  /** How fast it goes on in a sealed bottle, times as fast as in the jar. */
  readonly withoutGrains: Coefficient;
}

const density: Coefficient = { value: 1.05, unit: 'g/mL', low: 1, high: 1.1, origin: fromMemory() };
const cling: Coefficient = { value: 0.25, unit: 'mL/g', low: 0.1, high: 0.5, origin: fromMemory('Low confidence.') };
const readyTime: Coefficient = { value: 12, unit: 'h', low: 8, high: 16, origin: commonPractice() };
const readyTemperature: Coefficient = { value: 21, unit: '°C', origin: commonPractice('The room of the usual time.') };

const stirredIn: Coefficient = {
  value: 1,
  unit: 'times as fast',
  low: 0.7,
  high: 1.5,
  origin: judgement('Nothing is taken out of it, so it goes on as it went; how yeasts grow in a bottle was not found.'),
};

const table = {
  water: {
    name: 'Water kefir grains',
    dose: {
      ...{ value: 54, unit: 'g/L', low: 45, high: 65 },
      origin: commonPractice('About 51 g to a US quart, 0.946 L.'),
    },
    density,
    tablespoon: {
      value: 17.5,
      unit: 'g',
      low: 15,
      high: 20,
      origin: fromMemory('Small grains, rounded on the spoon.'),
    },
    cling,
    floats: false,
    takes: {
      lactose: false,
      galactose: true,
      origin: fromMemory('Their usual yeast takes galactose, after glucose, and has no means to split lactose.'),
    },
    dairy: false,
    allergens: [],
    readyTime,
    readyTemperature,
    usedWhenReady: { value: 0.35, unit: 'share', low: 0.2, high: 0.5, origin: fromMemory('Low confidence.') },
    yeastShare: {
      ...{ value: 0.5, unit: 'share', low: 0.2, high: 0.9 },
      origin: judgement(
        'Ethanol and lactic acid are the main products in published water kefir series, to 2 % lactic acid and mostly under 1 % alcohol. Bacteria that make gas as well as acid count half to either side, which their equation makes exact.',
      ),
    },
    withoutGrains: {
      ...{ value: 1.4, unit: 'times as fast', low: 0.5, high: 2 },
      origin: judgement(
        'Set so that 6 to 10 h at 21 °C come to about 1.5 volumes of gas: lively fizz by then is common practice. The grains are out, but yeast has grown in the liquor.',
      ),
    },
  },
  milk: {
    name: 'Milk kefir grains',
    dose: {
      ...{ value: 31, unit: 'g/L', low: 25, high: 40 },
      origin: commonPractice('About 29 g to a US quart, 0.946 L.'),
    },
    density,
    tablespoon: { value: 21.5, unit: 'g', low: 18, high: 25, origin: fromMemory('Rounded on the spoon.') },
    cling,
    floats: true,
    takes: {
      lactose: true,
      galactose: true,
      origin: fromMemory('Their yeasts and bacteria live on milk sugar, which is both.'),
    },
    dairy: true,
    allergens: ['milk'],
    readyTime: {
      ...{ value: 11, unit: 'h', low: 7, high: 16 },
      origin: judgement(
        'Common practice gives both kinds 8 to 16 h. At their dose milk grains sour more strongly, so they are put an hour before water grains.',
      ),
    },
    readyTemperature,
    usedWhenReady: {
      ...{ value: 0.4, unit: 'share', low: 0.2, high: 0.6 },
      origin: fromMemory(
        'Low confidence: sourer and livelier than water grains at their dose. Coconut milk held 0.66 to 0.75 % lactic acid after 24 h.',
      ),
    },
    yeastShare: {
      ...{ value: 0.5, unit: 'share', low: 0.2, high: 0.9 },
      origin: judgement(
        'Published series with milk grains lie about there: 13 g/L lactic acid (soy 7), and 8 g/L ethanol in whey. Bacteria that make gas as well as acid count half to either side, which their equation makes exact.',
      ),
    },
    withoutGrains: {
      ...{ value: 1.5, unit: 'times as fast', low: 0.6, high: 2.2 },
      origin: judgement(
        'Put a little above water grains: of water kefir it is published that most of its microbes sit on the grains, and milk kefir goes on when they are out.',
      ),
    },
  },
  powder: {
    name: 'Starter powder',
    starter: {
      ownSugar: {
        ...{ value: 0.5, unit: 'g/g', low: 0, high: 1 },
        origin: judgement('It is mostly carrier, often milk sugar or maltodextrin, which hardly feeds it.'),
      },
      ownAcid: { value: 0, unit: 'g/g', low: 0, high: 0.01, origin: judgement('It is dry, and has not fermented.') },
      ownEthanol: { value: 0, unit: 'g/g', origin: judgement('It is dry, and has not fermented.') },
      packet: {
        ...{ value: 3, unit: 'g', low: 1, high: 5 },
        origin: commonPractice('Packets of 1 to 5 g, mostly carrier: how alive it is counts, not its weight.'),
      },
    },
    dose: { value: 3, unit: 'g/L', low: 1, high: 5, origin: commonPractice('A packet to a litre.') },
    density: { value: 1.5, unit: 'g/mL', low: 1.3, high: 1.6, origin: fromMemory('Sugars and starches, dissolved.') },
    tablespoon: { value: 9, unit: 'g', low: 6, high: 11, origin: fromMemory('A fine powder, level.') },
    cling: { value: 0, unit: 'mL/g', origin: judgement('Nothing is taken out of it.') },
    floats: false,
    takes: {
      lactose: true,
      galactose: true,
      origin: fromMemory('It is bred from the yeasts and bacteria of milk kefir.'),
    },
    dairy: true,
    allergens: ['milk'],
    readyTime: {
      ...{ value: 20, unit: 'h', low: 16, high: 24 },
      origin: commonPractice('At 22 to 25 °C; no source for plant milk was found.'),
    },
    readyTemperature: { value: 23.5, unit: '°C', origin: commonPractice('The middle of 22 to 25 °C.') },
    usedWhenReady: {
      ...{ value: 0.3, unit: 'share', low: 0.15, high: 0.5 },
      origin: judgement('No figure was found. Published: grains sour more than powder.'),
    },
    yeastShare: {
      ...{ value: 0.3, unit: 'share', low: 0.05, high: 0.9 },
      origin: judgement('No figure was found. Some powders hold hardly any yeast; the high end is that of grains.'),
    },
    withoutGrains: stirredIn,
  },
  kefir: {
    name: 'Finished kefir',
    starter: {
      ownSugar: {
        ...{ value: 0.015, unit: 'g/g', low: 0, high: 0.045 },
        origin: judgement('What plant-milk kefir has left; one of dairy milk has up to its milk sugar.'),
      },
      ownAcid: { value: 0.007, unit: 'g/g', low: 0.003, high: 0.013, origin: judgement('As published series end.') },
      ownEthanol: {
        value: 0.004,
        unit: 'g/g',
        low: 0,
        high: 0.016,
        origin: judgement('About 0.5 % by volume, to 2 %.'),
      },
    },
    dose: {
      ...{ value: 30, unit: 'g/L', low: 10, high: 100 },
      origin: judgement(
        'About 3 % of the milk, 1 to 10 %. Published for dairy milk: 2 to 3 % of grain kefir. At home 1 to 2 tbsp go into a cup, which is more.',
      ),
    },
    density: { value: 1.02, unit: 'g/mL', low: 1, high: 1.04, origin: fromMemory() },
    tablespoon: {
      value: 15.1,
      unit: 'g',
      low: 14.8,
      high: 15.4,
      origin: judgement('Its density, in a level tablespoon.'),
    },
    cling: { value: 0, unit: 'mL/g', origin: judgement('Nothing is taken out of it.') },
    floats: false,
    takes: {
      lactose: true,
      galactose: true,
      origin: judgement('It may come of either grains, so whatever one of them takes counts.'),
    },
    dairy: true,
    allergens: ['milk'],
    readyTime: {
      ...{ value: 16, unit: 'h', low: 8, high: 24 },
      origin: commonPractice(
        '12 to 24 h at home. Published for dairy milk with 2 to 3 % of grain kefir: 8 to 20 h at 20 to 22 °C.',
      ),
    },
    readyTemperature,
    usedWhenReady: {
      ...{ value: 0.35, unit: 'share', low: 0.2, high: 0.6 },
      origin: judgement('No figure was found: between the two kinds of grains, and as uncertain as both.'),
    },
    yeastShare: {
      ...{ value: 0.4, unit: 'share', low: 0.1, high: 0.9 },
      origin: judgement('No figure was found. The balance of its yeasts and bacteria shifts from batch to batch.'),
    },
    withoutGrains: stirredIn,
  },
} satisfies Record<string, Grain>;

export type CultureId = keyof typeof table;

/** What grows, is strained out and is kept: the two kinds of kefir grains. */
export type GrainKind = Extract<CultureId, 'water' | 'milk'>;

/** Whether a culture is grains, rather than a starter that stays in the drink. */
export function isGrains(culture: string): culture is GrainKind {
  return culture === 'water' || culture === 'milk';
}

/** What a milk is fermented with: the two kinds of kefir grains, and what is stirred in without grains. */
export const grains: Readonly<Record<CultureId, Grain>> = table;
