import { countDecimals, exactly } from './exact';

/**
 * Text with exactly `places` decimals (0 or more), rounded half away from zero on the shortest decimal that names the
 * double (so 1.005 to two places is 1.01). No grouping, decimal point, never "-0".
 * A value that is not finite gives its plain name ("NaN", "Infinity").
 */
export function roundTo(value: number, places: number): string {
  if (!Number.isFinite(value)) return String(value);
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
  return Number(roundTo(value, places));
}
