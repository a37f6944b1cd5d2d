import { countDecimals, exactly } from './exact';

const powers = [1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9];
/** Up to so many steps a double, and one that went through a few operations, is within the margin of the exact number. */
const countable = 1e8;
const margin = 1e-6;

/**
 * How many steps of 10^-`places` a magnitude comes nearest to; null where a double can't tell, near a half and beyond
 * what it counts well.
 */
function countSteps(size: number, places: number): number | null {
  const steps = size * (powers[places] ?? Number.NaN);
  return steps < countable && Math.abs((steps % 1) - 0.5) > margin ? Math.round(steps) : null;
}

/**
 * Text with exactly `places` decimals (0 or more), rounded half away from zero on the shortest decimal that names the
 * double (so 1.005 to two places is 1.01): in doubles, and exactly where they can't tell. No grouping, decimal point,
 * never "-0". A value that is not finite gives its plain name ("NaN", "Infinity").
 */
export function roundTo(value: number, places: number): string {
  if (!Number.isFinite(value)) return String(value);
  const size = Math.abs(value);
  const steps = countSteps(size, places);
  if (steps !== null) return `${value < 0 && steps > 0 ? '-' : ''}${size.toFixed(places)}`;
  const count = countDecimals(exactly(value), places);
  const digits = String(count < 0n ? -count : count).padStart(places + 1, '0');
  const whole = digits.length - places;
  const decimals = places > 0 ? `.${digits.slice(whole)}` : '';
  return `${count < 0n ? '-' : ''}${digits.slice(0, whole)}${decimals}`;
}

/** Like `roundTo`, without the zeros at the end of the decimals: "4.50" is "4.5", "3.0" is "3". */
export function roundAndTrim(value: number, places: number): string {
  const text = roundTo(value, places);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** The least number of `places` decimals that is greater than `value`; for saying a bound that must be passed. */
export function roundPast(value: number, places: number): number {
  const nearest = roundNumber(value, places);
  return nearest > value ? nearest : roundNumber(nearest + 1 / 10 ** places, places);
}

/** The double nearest to `value` rounded to `places` decimals; a value that is not finite comes back as it is. */
export function roundNumber(value: number, places: number): number {
  return roundRough(value, places) ?? Number(roundTo(value, places));
}

/**
 * The same of a number that a few operations in doubles have left a little off; null where that may change what it is
 * rounded to.
 */
export function roundRough(rough: number, places: number): number | null {
  const steps = countSteps(Math.abs(rough), places);
  if (steps === null) return null;
  // Both are whole, so the quotient is the double nearest to the decimal.
  const size = steps / (powers[places] ?? 1);
  return rough < 0 && steps > 0 ? -size : size;
}
