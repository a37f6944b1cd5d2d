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
