import { type Exact, exactly } from './exact';

/** What arithmetic takes beside another exact number: a finite number, or a decimal in text. */
export type Operand = Rational | number | string;

/** An exact number with its arithmetic; nothing is rounded before it is written or becomes a double. */
export class Rational implements Exact {
  /** A denominator above zero is the caller's to see to. */
  constructor(
    readonly numerator: bigint,
    readonly denominator: bigint,
  ) {}

  plus(other: Operand): Rational {
    const { numerator, denominator } = decimal(other);
    return new Rational(this.numerator * denominator + numerator * this.denominator, this.denominator * denominator);
  }

  minus(other: Operand): Rational {
    return this.plus(decimal(other).times(-1));
  }

  times(other: Operand): Rational {
    const { numerator, denominator } = decimal(other);
    return new Rational(this.numerator * numerator, this.denominator * denominator);
  }

  /** Division by zero is a fault in our own code and throws. */
  div(other: Operand): Rational {
    const { numerator, denominator } = decimal(other);
    if (numerator === 0n) throw new RangeError('divided by zero');
    const sign = numerator < 0n ? -1n : 1n;
    return new Rational(this.numerator * denominator * sign, this.denominator * numerator * sign);
  }

  /** Below zero, zero or above, as this is less than the other, the same or more. */
  compare(other: Operand): number {
    const { numerator } = this.minus(other);
    return numerator < 0n ? -1 : Number(numerator > 0n);
  }
}

/**
 * The exact number that a finite number or the text of a decimal ("1.5", "-2", "1e3") names. Anything else is a fault in
 * our own code and throws.
 */
export function decimal(value: Operand): Rational {
  if (value instanceof Rational) return value;
  if (value === '') throw new SyntaxError('no text is no number');
  const { numerator, denominator } = exactly(value);
  return new Rational(numerator, denominator);
}
