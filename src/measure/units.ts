import { doubleOf, Exact, exactly, type Operand } from './exact';
import type { Kind, UnitRow } from './unit-row';
import { scaleOf } from './unit-scale';
import { units } from './unit-table';

export { type CupStandardId, cupStandards } from './cup-standards';
export type { Kind } from './unit-row';
export { units } from './unit-table';

type Units = typeof units;
export type UnitId = keyof Units;
export type KindOf<U extends UnitId> = Units[U]['kind'];
export type UnitOf<K extends Kind> = { [U in UnitId]: Units[U]['kind'] extends K ? U : never }[UnitId];
export type Unit = UnitRow & { readonly id: UnitId };

/** Every row of the table, in its order. */
export const unitList: readonly Unit[] = Object.values(units);

/** The unit in which each kind is held everywhere below the page. */
export const baseUnits = {
  mass: 'g',
  volume: 'mL',
  length: 'cm',
  temperature: '°C',
  temperatureDifference: 'Δ°C',
  time: 'h',
  pressure: 'bar',
  ratio: 'g/g',
  concentration: 'g/L',
  share: '%',
  count: '',
  acidity: 'pH',
} as const satisfies { readonly [K in Kind]: UnitOf<K> };

/**
 * The value in the base unit of its kind (g, mL, cm, °C, h, bar, …), exact. What names no finite number is a fault in our
 * own code and throws.
 */
export function toBase(value: Operand, unit: UnitId): Exact {
  const { zero, factor } = scaleOf(unit);
  return exactly(value).minus(new Exact(zero, 1n)).times(factor);
}

/**
 * The value said in another unit of the same kind, exact. Units of two kinds do not compile; where ids are only known
 * when running, they throw.
 */
export function convert<U extends UnitId>(value: Operand, from: U, to: UnitOf<KindOf<U>>): Exact {
  refuseTwoKinds(from, to);
  const [source, goal, typed] = [scaleOf(from), scaleOf(to), exactly(value)];
  const denominator = typed.denominator * source.factor.denominator * goal.factor.numerator;
  const moved = typed.numerator - source.zero * typed.denominator;
  const numerator = moved * source.factor.numerator * goal.factor.denominator + goal.zero * denominator;
  return new Exact(numerator, denominator);
}

/** The same of a double, rounded once; a number that is not finite comes back as it is. */
export function convertNumber<U extends UnitId>(value: number, from: U, to: UnitOf<KindOf<U>>): number {
  return Number.isFinite(value) ? doubleOf(convert(value, from, to)) : value;
}

/** Throws where two units measure different kinds, which is a fault in our own code. */
export function refuseTwoKinds(from: UnitId, to: UnitId): void {
  if (units[from].kind !== units[to].kind) throw new Error(`"${from}" and "${to}" measure different kinds`);
}
