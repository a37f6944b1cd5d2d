import { doubleOf, exactly } from './exact';
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
 * A number in one unit said in another of the same kind: exact inside, rounded once. A number that is not finite comes
 * back as it is. Units of two kinds do not compile; where ids are only known when running, they throw.
 */
export function convertNumber<U extends UnitId>(value: number, from: U, to: UnitOf<KindOf<U>>): number {
  refuseTwoKinds(from, to);
  if (!Number.isFinite(value)) return value;
  const [source, goal, typed] = [scaleOf(from), scaleOf(to), exactly(value)];
  const denominator = typed.denominator * source.denominator * goal.numerator;
  const scaled = (typed.numerator - source.zero * typed.denominator) * source.numerator * goal.denominator;
  return doubleOf({ numerator: scaled + goal.zero * denominator, denominator });
}

/** Throws where two units measure different kinds, which is a fault in our own code. */
export function refuseTwoKinds(from: UnitId, to: UnitId): void {
  if (units[from].kind !== units[to].kind) throw new Error(`"${from}" and "${to}" measure different kinds`);
}
