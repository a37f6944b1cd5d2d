import Big from 'big.js';
import type { Exact } from '../src/measure/exact';

// A constructor of our own, so that no other user of the library changes the places: a decimal library to hold ours against.
const Decimal = Big();
Decimal.DP = 60;

/** What an exact number is by a decimal library: exact where the decimal ends, else 60 places. */
export function big({ numerator, denominator }: Exact): Big {
  return Decimal(`${numerator}`).div(`${denominator}`);
}
