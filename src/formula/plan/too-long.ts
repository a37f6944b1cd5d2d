import { convertNumber } from '../../measure/units';
import { dayMinutes } from '../time/span';
import type { Making } from './making';

/** No kitchen plans further, and days are gone through one by one: planning has to end whatever a file holds. */
const mostDays = 1000;
const longest = convertNumber(mostDays, 'day', 'min');

/**
 * Why a batch is too long to be placed in time, with the part to look at; null where it is not. A part that is no number
 * is too long as well.
 */
export function whyTooLong(making: Making): string | null {
  const parts = partsOf(making);
  const total = parts.reduce((sum, { minutes }) => sum + minutes, 0);
  if (total <= longest) return null;
  const { name } =
    parts.find(({ minutes }) => !Number.isFinite(minutes)) ??
    parts.reduce((most, part) => (part.minutes > most.minutes ? part : most));
  return `It would take more than ${mostDays} days in all, and no plan goes that far. Look at ${name} first.`;
}

/** The parts of a batch at their longest, in minutes, by what the sheet calls them. */
function partsOf({ soak, make, ferment, strain, second, chill, keep, checks }: Making) {
  return [
    { name: 'the soak', minutes: soak === null ? 0 : soak.minutes + soak.wait.high },
    { name: 'the heat step, the blender loads and the jars', minutes: make },
    { name: 'the first ferment', minutes: strain + ('wait' in ferment ? ferment.wait.high : 0) },
    { name: 'the second ferment', minutes: second === null ? 0 : second.bottle + second.wait.high + second.fridge },
    { name: 'how long it keeps', minutes: chill.high + (keep?.last ?? 0) * dayMinutes },
    { name: 'the days of waiting', minutes: (checks ?? 0) * dayMinutes },
  ];
}
