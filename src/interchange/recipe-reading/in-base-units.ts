import { doubleOf, type Exact } from '../../measure/exact';
import { chooseUnit, type UnitWord } from '../../measure/unit-words';
import type { CupStandardId } from '../../measure/units';
import { toBase } from '../../measure/units';
import type { AmountPart } from './amount';
import type { Ends } from './shape';

export interface InBase extends Ends {
  readonly kind: 'mass' | 'volume' | 'count';
}

/** So much of a unit in mL; null where the unit is of no volume. */
export function volumeOf(value: Exact, unit: UnitWord, cups: CupStandardId): Exact | null {
  const meaning = unit.meanings.get('volume');
  return meaning === undefined ? null : toBase(value, chooseUnit(meaning, cups, '°C'));
}

/** A part of an amount in g, mL or pieces; an ounce of a liquid is a fluid one. Null where the doubles end. */
export function inBaseUnits(part: AmountPart, liquid: boolean, cups: CupStandardId): InBase | null {
  const { low, high, unit, highUnit = unit } = part;
  if (unit === null || highUnit === null) return finite('count', doubleOf(low), doubleOf(high));
  const ends = [
    { value: low, word: unit },
    { value: high, word: highUnit },
  ];
  const isMass = ends.every(({ word }) => word.meanings.has('mass')) && !(liquid && unit.meanings.has('volume'));
  const [least, most] = ends.map(({ value, word }) =>
    isMass ? massOf(value, word, cups) : volumeOf(value, word, cups),
  );
  if (!least || !most || least.compare(most) > 0) return null;
  return finite(isMass ? 'mass' : 'volume', doubleOf(least), doubleOf(most));
}

function massOf(value: Exact, unit: UnitWord, cups: CupStandardId): Exact | null {
  const meaning = unit.meanings.get('mass');
  return meaning === undefined ? null : toBase(value, chooseUnit(meaning, cups, '°C'));
}

function finite(kind: InBase['kind'], low: number, high: number): InBase | null {
  return Number.isFinite(low) && Number.isFinite(high) ? { kind, low, high } : null;
}
