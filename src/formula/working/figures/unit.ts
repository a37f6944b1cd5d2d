import { doubleOf } from '../../../measure/exact';
import { nearly } from '../../../measure/nearly';
import { unitOrigins } from '../../../measure/unit-origins';
import type { Relation } from '../../../measure/unit-row';
import { scaleOf } from '../../../measure/unit-scale';
import { baseUnits, type UnitId, units } from '../../../measure/units';
import { type Figure, type Telling, workedOut } from '../figure';

/** Where the relation of a unit was read, or that it was not, in a sentence. */
export function describeUnitOrigin(id: UnitId): string {
  const { kind, work } = unitOrigins[id];
  return `${kind.replace(/^./, (first) => first.toUpperCase())}: ${work}.`;
}

function isUnit(id: string): id is UnitId {
  return Object.hasOwn(units, id);
}

function isBase(id: string): boolean {
  return isUnit(id) && 'base' in units[id].relation;
}

/** One of a unit in the base unit of its kind, down to what it is defined by: a cup is a share of 231 in³. */
export function oneOf(id: UnitId): Figure {
  const { symbol, kind, relation } = units[id];
  const unit = `${units[baseUnits[kind]].symbol}/${symbol}`;
  const origin = `Exact by definition. ${describeUnitOrigin(id)}`;
  const told = relate(relation);
  const one = { symbol, label: `One ${symbol}`, unit, value: doubleOf(scaleOf(id).factor) };
  return told === null
    ? { ...one, origin: () => origin, told: null }
    : workedOut(one.symbol, one.label, one.unit, one.value, { words: origin, ...told });
}

/** The relation as a formula of other units; null where it is a bare number of the base unit. */
function relate(relation: Relation): Omit<Telling, 'words'> | null {
  if ('cubeOf' in relation && isUnit(relation.cubeOf)) {
    return { formula: '{edge}³', parts: { edge: oneOf(relation.cubeOf) } };
  }
  if (!('of' in relation) || !isUnit(relation.of) || isBase(relation.of)) return null;
  const formula = 'times' in relation ? `${relation.times} × {of}` : `{of} ÷ ${relation.part}`;
  return { formula, parts: { of: oneOf(relation.of) } };
}

const measures: readonly UnitId[] = ['cup', 'tbsp', 'tsp', 'flOz'];

/** A volume that a table gives as so many measures of the US kitchen: the largest of them that it is a whole number of. */
export function inMeasures(symbol: string, label: string, millilitres: number): Figure {
  for (const id of measures) {
    const count = millilitres / doubleOf(scaleOf(id).factor);
    const whole = Math.round(count);
    if (whole < 1 || !nearly(count, whole)) continue;
    const told = { words: 'Measures of the US kitchen.', formula: `${whole} × {one}`, parts: { one: oneOf(id) } };
    return workedOut(symbol, label, 'mL', millilitres, told);
  }
  return workedOut(symbol, label, 'mL', millilitres, { words: 'As its table has it.', formula: '' });
}
