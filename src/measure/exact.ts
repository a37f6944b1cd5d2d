/** A rational number in whole numbers, exact; the denominator is above zero. */
export interface Exact {
  readonly numerator: bigint;
  readonly denominator: bigint;
}

/** The number that a decimal such as "453.59237", "-2" or "1.5e-7" names; of a double, its shortest decimal. Finite. */
export function exactly(decimal: string | number): Exact {
  const [digits = '', exponent = '0'] = String(decimal).split('e');
  const [whole = '', decimals = ''] = digits.split('.');
  const power = Number(exponent) - decimals.length;
  const numerator = BigInt(whole + decimals);
  return power < 0
    ? { numerator, denominator: powerOfTen(-power) }
    : { numerator: numerator * powerOfTen(power), denominator: 1n };
}

/** How many whole 10^-`places` the number comes nearest to, a half away from zero; `places` of 0 or more. */
export function countDecimals({ numerator, denominator }: Exact, places: number): bigint {
  const half = numerator < 0n ? -denominator : denominator;
  return (2n * numerator * powerOfTen(places) + half) / (2n * denominator);
}

/**
 * The number as a double, by way of 30 digits or more, which no double can tell apart; never negative zero. A magnitude
 * beyond the doubles gives an infinity, which the caller checks.
 */
export function doubleOf(exact: Exact): number {
  if (exact.numerator === 0n) return 0;
  const zeros = String(exact.denominator).length - String(exact.numerator).length;
  const places = digits + Math.max(0, zeros);
  return Number(`${countDecimals(exact, places)}e-${places}`);
}

const digits = 30;

function powerOfTen(power: number): bigint {
  return 10n ** BigInt(power);
}
