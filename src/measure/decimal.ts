import Big from 'big.js';

// A constructor of our own: the precision is set once here and no other user of the library can change it.
const Decimal = Big();
Decimal.DP = 30;
Decimal.RM = Decimal.roundHalfUp;

const zero = Decimal(0);

export type { Big };

/**
 * An exact decimal; divisions made with it keep 30 decimal places, rounded half up. Never a negative zero.
 * Takes a finite number or the text of one; anything else is a fault in our own code and throws.
 */
export function decimal(value: Big | number | string): Big {
  const exact = Decimal(value);
  return exact.eq(zero) ? zero : exact;
}

/**
 * The value as a double, never negative zero.
 * A magnitude beyond the doubles gives an infinity, which the caller checks.
 */
export function toDouble(value: Big): number {
  const double = value.toNumber();
  return double === 0 ? 0 : double;
}

/**
 * Text with exactly `places` decimals, rounded half away from zero on the shortest decimal that names the double
 * (so 1.005 to two places is 1.01). No grouping, decimal point, never "-0".
 * A value that is not finite gives its plain name ("NaN", "Infinity").
 */
export function roundTo(value: number, places: number): string {
  if (!Number.isFinite(value)) return String(value);
  const rounded = decimal(value).round(places);
  return decimal(rounded).toFixed(places);
}

/** Like `roundTo`, without the zeros at the end of the decimals: "4.50" is "4.5", "3.0" is "3". */
export function roundAndTrim(value: number, places: number): string {
  const text = roundTo(value, places);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

/** The double nearest to `value` rounded to `places` decimals; a value that is not finite comes back as it is. */
export function roundNumber(value: number, places: number): number {
  return Number(roundTo(value, places));
}
