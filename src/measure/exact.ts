/** What arithmetic takes beside another exact number: a finite number, or a decimal in text. */
export type Operand = Exact | number | string;

/** A rational number in whole numbers with its arithmetic; nothing is rounded before it is written or becomes a double. */
export class Exact {
  /** A denominator above zero is the caller's to see to. */
  constructor(
    readonly numerator: bigint,
    readonly denominator: bigint,
  ) {}

  plus(other: Operand): Exact {
    const { numerator, denominator } = exactly(other);
    return new Exact(this.numerator * denominator + numerator * this.denominator, this.denominator * denominator);
  }

  minus(other: Operand): Exact {
    return this.plus(exactly(other).times(-1));
  }

  times(other: Operand): Exact {
    const { numerator, denominator } = exactly(other);
    return new Exact(this.numerator * numerator, this.denominator * denominator);
  }

  /** Division by zero is a fault in our own code and throws. */
  div(other: Operand): Exact {
    const { numerator, denominator } = exactly(other);
    if (numerator === 0n) throw new RangeError('divided by zero');
    const sign = numerator < 0n ? -1n : 1n;
    return new Exact(this.numerator * denominator * sign, this.denominator * numerator * sign);
  }

  /** Below zero, zero or above, as this is less than the other, the same or more. */
  compare(other: Operand): number {
    const { numerator } = this.minus(other);
    return numerator < 0n ? -1 : Number(numerator > 0n);
  }
}

/**
 * The exact number that a decimal such as "453.59237", "-2" or "1.5e-7" names; of a double, its shortest decimal. What
 * names no finite number is a fault in our own code and throws.
 */
export function exactly(value: Operand): Exact {
  if (value instanceof Exact) return value;
  if (Number.isSafeInteger(value)) return new Exact(BigInt(value), 1n);
  if (value === '') throw new SyntaxError('no text is no number');
  const [digits = '', exponent = '0'] = String(value).split('e');
  const [whole = '', decimals = ''] = digits.split('.');
  const power = Number(exponent) - decimals.length;
  const numerator = BigInt(whole + decimals);
  return power < 0 ? new Exact(numerator, powerOfTen(-power)) : new Exact(numerator * powerOfTen(power), 1n);
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

/** Ten to a whole power of 0 or more. */
export function powerOfTen(power: number): bigint {
  return 10n ** BigInt(power);
}
