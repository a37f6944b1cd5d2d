import { type CardinalTemperatures, cardinalTemperatures, fermenting } from '../../reference/fermenting';
import { physics } from '../../reference/physics';

/**
 * Growth at a temperature (°C) as a share of growth at the optimum: the cardinal temperature model with inflection.
 * From 0 to 1; 0 outside the least and greatest temperature. Source: `growthModel`; first printed by
 * Rosso, Lobry and Flandrois in 1993, which was not found.
 */
export function growthAt(celsius: number, { minimum, optimum, maximum }: CardinalTemperatures): number {
  const [least, best, most] = [minimum.value, optimum.value, maximum.value];
  if (celsius <= least || celsius >= most) return 0;
  const rising = (best - least) * (celsius - best);
  const falling = (best - most) * (best + least - 2 * celsius);
  return ((celsius - most) * (celsius - least) ** 2) / ((best - least) * (rising - falling));
}

/** How many times as fast at one temperature (°C) as at another by Arrhenius. Source: ethanol made by kefir grains. */
function arrhenius(celsius: number, reference: number): number {
  const kelvin = physics.zeroCelsius.value;
  const scale = fermenting.ethanolActivation.value / physics.gasConstant.value;
  return Math.exp(scale * (1 / (reference + kelvin) - 1 / (celsius + kelvin)));
}

const { plantarum, starter, yeast } = cardinalTemperatures;
const models = [plantarum, starter, yeast];

export interface Spread {
  readonly likely: number;
  readonly least: number;
  readonly most: number;
}

/**
 * How many times as long a ferment takes at a temperature as at a reference, both in °C: by the bacterium nearest to
 * plant milk, and the least and most of all published models. 1 at the reference; falls with warmth below the optimum.
 */
export function timesAsLong(celsius: number, reference: number): Spread {
  const all = models.map((model) => growthAt(reference, model) / growthAt(celsius, model));
  const [likely = Number.NaN] = all;
  all.push(1 / arrhenius(celsius, reference));
  return { likely, least: Math.min(...all), most: Math.max(...all) };
}

/** Whether the models hold at a temperature, °C; outside they part ways and no time is given. */
export function isWithinModels(celsius: number): boolean {
  return celsius >= fermenting.ripeningCoolest.value && celsius <= fermenting.ripeningWarmest.value;
}

/** Share of the sugar used up after `shares` of the ready time, where `atReady` of it is used at 1: first order. */
export function usedAfter(shares: number, atReady: number): number {
  return 1 - (1 - atReady) ** shares;
}
