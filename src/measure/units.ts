import { type Big, decimal, toDouble } from './decimal';
import type { Kind, Relation, UnitRow } from './unit-row';
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

/** A unit as base = (value − zero) × numerator ÷ denominator; two integers' worth of factor, so one division does. */
type Scale = { readonly numerator: Big; readonly denominator: Big; readonly zero: Big };

const nothing = decimal(0);
const one = decimal(1);
// m/s², exact by definition; from memory, believed in NIST SP 811. The psi weighs a pound in this field.
const standardGravity = '9.80665';
// (g → kg) ÷ (cm² → m²) ÷ (Pa → bar) = 10⁻³ ÷ 10⁻⁴ ÷ 10⁵
const gramsPerSquareCentimetreToBar = '10000';

const rowById = new Map<string, Unit>(unitList.map((unit) => [unit.id, unit]));
const scaleById = new Map<string, Scale>();

function findScale(id: string): Scale {
  const known = scaleById.get(id);
  if (known !== undefined) return known;
  const unit = rowById.get(id);
  if (unit === undefined) throw new Error(`No unit is called "${id}"`);
  const scale = deriveScale(unit.relation);
  scaleById.set(id, scale);
  return scale;
}

function deriveScale(relation: Relation): Scale {
  if ('base' in relation) return { numerator: one, denominator: one, zero: nothing };
  if ('times' in relation) {
    const { numerator, denominator } = findScale(relation.of);
    return { numerator: numerator.times(relation.times), denominator, zero: nothing };
  }
  if ('part' in relation) {
    const { numerator, denominator } = findScale(relation.of);
    return { numerator, denominator: denominator.times(relation.part), zero: nothing };
  }
  if ('cubeOf' in relation) {
    // A cubic centimetre is a millilitre, so the cube of the edge in base units is already in base units.
    const edge = findScale(relation.cubeOf);
    return { numerator: edge.numerator.pow(3), denominator: edge.denominator.pow(3), zero: nothing };
  }
  if ('weightOf' in relation) {
    const mass = findScale(relation.weightOf);
    const edge = findScale(relation.onSquareOf);
    return {
      numerator: mass.numerator.times(standardGravity).times(edge.denominator.pow(2)),
      denominator: mass.denominator.times(edge.numerator.pow(2)).times(gramsPerSquareCentimetreToBar),
      zero: nothing,
    };
  }
  const step = findScale(relation.stepOf);
  return {
    numerator: step.numerator.times(relation.numerator),
    denominator: step.denominator.times(relation.denominator),
    zero: decimal(relation.zeroAt),
  };
}

/**
 * The value in the base unit of its kind (g, mL, cm, °C, h, bar, …): exact where the decimal ends, else 30 places.
 * Any finite value; a value that is no finite number is a fault in our own code and throws.
 */
export function toBase(value: Big | number | string, unit: UnitId): Big {
  const { numerator, denominator, zero } = findScale(unit);
  return decimal(decimal(value).minus(zero).times(numerator).div(denominator));
}

/** The inverse of `toBase`: a value in the base unit, said in `unit`. Same range. */
export function fromBase(base: Big | number, unit: UnitId): Big {
  const { numerator, denominator, zero } = findScale(unit);
  return decimal(decimal(base).times(denominator).div(numerator).plus(zero));
}

/**
 * The value said in another unit of the same kind, with a single division, so no rounding creeps in between.
 * Units of two kinds do not compile; where ids are only known when running, they throw.
 */
export function convert<U extends UnitId>(value: Big | number | string, from: U, to: UnitOf<KindOf<U>>): Big {
  const target: UnitId = to;
  if (units[from].kind !== units[target].kind) throw new Error(`"${from}" and "${target}" measure different kinds`);
  const source = findScale(from);
  const goal = findScale(target);
  const scaled = decimal(value).minus(source.zero).times(source.numerator).times(goal.denominator);
  return decimal(scaled.div(source.denominator.times(goal.numerator)).plus(goal.zero));
}

/** `convert` for doubles: exact inside, rounded once. A number that is not finite comes back as it is. */
export function convertNumber<U extends UnitId>(value: number, from: U, to: UnitOf<KindOf<U>>): number {
  return Number.isFinite(value) ? toDouble(convert(value, from, to)) : value;
}

/** An amount that knows what it measures, held in the base unit of its kind. */
export type Quantity<K extends Kind> = { readonly kind: K; readonly amount: Big };

/** A quantity from a value in any unit; the unit says the kind. */
export function quantity<U extends UnitId>(value: Big | number | string, unit: U): Quantity<KindOf<U>> {
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
  return { kind: a.kind, amount: decimal(a.amount.plus(b.amount)) };
}
