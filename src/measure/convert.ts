import { decimal, Rational } from './decimal';
import type { Kind } from './unit-row';
import { scaleOf } from './unit-scale';
import { type KindOf, refuseTwoKinds, type UnitId, type UnitOf, units } from './units';

/**
 * The value in the base unit of its kind (g, mL, cm, °C, h, bar, …), exact.
 * Any finite value; a value that is no finite number is a fault in our own code and throws.
 */
export function toBase(value: Rational | number | string, unit: UnitId): Rational {
  const { numerator, denominator, zero } = scaleOf(unit);
  return decimal(value).minus(`${zero}`).times(new Rational(numerator, denominator));
}

/** The inverse of `toBase`: a value in the base unit, said in `unit`. Same range. */
export function fromBase(base: Rational | number, unit: UnitId): Rational {
  const { numerator, denominator, zero } = scaleOf(unit);
  return decimal(base).div(new Rational(numerator, denominator)).plus(`${zero}`);
}

/**
 * The value said in another unit of the same kind, exact. Units of two kinds do not compile; where ids are only known
 * when running, they throw.
 */
export function convert<U extends UnitId>(value: Rational | number | string, from: U, to: UnitOf<KindOf<U>>): Rational {
  refuseTwoKinds(from, to);
  return fromBase(toBase(value, from), to);
}

/** An amount that knows what it measures, held in the base unit of its kind. */
export type Quantity<K extends Kind> = { readonly kind: K; readonly amount: Rational };

/** A quantity from a value in any unit; the unit says the kind. */
export function quantity<U extends UnitId>(value: Rational | number | string, unit: U): Quantity<KindOf<U>> {
  const kind: KindOf<U> = units[unit].kind;
  return { kind, amount: toBase(value, unit) };
}

/** The kinds whose points mean nothing when added: 20 °C and 20 °C are not 40 °C. */
export type PointKind = 'temperature' | 'acidity';

/**
 * The sum of two amounts of one kind; a temperature takes only a difference of temperature.
 * Two kinds, or two temperatures, do not compile.
 */
export function add(a: Quantity<'temperature'>, b: Quantity<'temperatureDifference'>): Quantity<'temperature'>;
export function add<K extends Exclude<Kind, PointKind>>(a: Quantity<K>, b: Quantity<NoInfer<K>>): Quantity<K>;
export function add(a: Quantity<Kind>, b: Quantity<Kind>): Quantity<Kind> {
  return { kind: a.kind, amount: a.amount.plus(b.amount) };
}
