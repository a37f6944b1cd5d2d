import type { AllergenId } from './allergens';
import { type Coefficient, commonPractice, fromMemory, type Origin } from './origins';

export interface Grain {
  readonly name: string;
  /** Drained grains per litre of milk, g/L. */
  readonly dose: Coefficient;
  /** Of drained grains, g/mL. */
  readonly density: Coefficient;
  /** Drained grains in one tablespoon, rounded as they are dished up, g: level, it holds no more than 15.5. */
  readonly tablespoon: Coefficient;
  /** Liquid that clings to drained grains, mL per g. */
  readonly cling: Coefficient;
  /** Whether the grains gather at the top of the jar; else at the bottom. */
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
  readonly notes: readonly { readonly text: string; readonly origin: Origin; readonly caution?: boolean }[];
}

const density: Coefficient = { value: 1.05, unit: 'g/mL', low: 1, high: 1.1, origin: fromMemory() };
const cling: Coefficient = { value: 0.25, unit: 'mL/g', low: 0.1, high: 0.5, origin: fromMemory('Low confidence.') };
const readyTime: Coefficient = { value: 12, unit: 'h', low: 8, high: 16, origin: commonPractice() };
const readyTemperature: Coefficient = { value: 21, unit: '°C', origin: commonPractice('The room of the usual time.') };

const chlorine = {
  text: 'Chlorine in tap water slows them. Let the water stand open overnight or boil and cool it; some waterworks add what does not leave that way, so filter it or buy water where they do.',
  origin: fromMemory(),
} as const;

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
    notes: [
      {
        text: 'They live on added sugar. Expect little growth in plant milk, and rest them in sugar water between batches.',
        origin: commonPractice(),
      },
      chlorine,
    ],
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
    readyTime,
    readyTemperature,
    usedWhenReady: {
      ...{ value: 0.4, unit: 'share', low: 0.2, high: 0.6 },
      origin: fromMemory(
        'Low confidence: sourer and livelier than water grains at their dose. Coconut milk held 0.66 to 0.75 % lactic acid after 24 h.',
      ),
    },
    notes: [
      {
        text: 'They carry milk protein, even after rinsing. Tell anyone with a milk allergy.',
        origin: commonPractice(),
        caution: true,
      },
      {
        text: 'They hold up better when every few batches are made in dairy milk.',
        origin: commonPractice(),
      },
      chlorine,
    ],
  },
} satisfies Record<string, Grain>;

export type GrainId = keyof typeof table;

/** The two kinds of kefir grains. */
export const grains: Readonly<Record<GrainId, Grain>> = table;
