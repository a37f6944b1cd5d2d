import { aureusGrowth } from '../../reference/growth-limit';
import { kitchen } from '../../reference/kitchen';
import { growthAt } from './ripening';

/**
 * After how many hours at a temperature, °C, Staphylococcus aureus has grown as much as in the usual time for turning
 * sour in the usual room. A temperature that is not known counts as usual.
 */
export function hoursAsSafe(celsius: number): number {
  const { value: usual } = kitchen.roomTemperature;
  // Past its optimum it would slow down; whatever stands so warm has no more time for that.
  const warmth = Math.min(Number.isNaN(celsius) ? usual : celsius, aureusGrowth.optimum.value);
  return (kitchen.acidityTime.value * growthAt(usual, aureusGrowth)) / growthAt(warmth, aureusGrowth);
}

/** In which time a homemade milk must have turned sour at a temperature, in whole hours: never over the usual time. */
export function turnTimeAt(celsius: number): number {
  return Math.round(Math.min(kitchen.acidityTime.value, hoursAsSafe(celsius)));
}
