import { type Exact, exactly } from './exact';
import type { Relation } from './unit-row';
import { units } from './unit-table';

/** A unit as base = (value − zero) × factor, exact. */
export interface UnitScale {
  readonly zero: bigint;
  readonly factor: Exact;
}

// m/s², exact by definition: NIST SP 811 (2008). The psi weighs a pound in this field.
const standardGravity = '9.80665';
// (g → kg) ÷ (cm² → m²) ÷ (Pa → bar) = 10⁻³ ÷ 10⁻⁴ ÷ 10⁵
const gramsPerSquareCentimetreToBar = 10_000;

const relations = new Map<string, Relation>(Object.values(units).map(({ id, relation }) => [id, relation]));
const scales = new Map<string, UnitScale>();

/** The scale of a unit; an id that is in no table is a fault in our own code and throws. */
export function scaleOf(id: string): UnitScale {
  const known = scales.get(id);
  if (known !== undefined) return known;
  const relation = relations.get(id);
  if (relation === undefined) throw new Error(`No unit is called "${id}"`);
  const scale = { zero: 'zeroAt' in relation ? BigInt(relation.zeroAt) : 0n, factor: factorOf(relation) };
  scales.set(id, scale);
  return scale;
}

function factorOf(relation: Relation): Exact {
  if ('base' in relation) return exactly(1);
  if ('times' in relation) return scaleOf(relation.of).factor.times(relation.times);
  if ('part' in relation) return scaleOf(relation.of).factor.div(relation.part);
  if ('cubeOf' in relation) {
    // A cubic centimetre is a millilitre, so the cube of the edge in base units is already in base units.
    const edge = scaleOf(relation.cubeOf).factor;
    return edge.times(edge).times(edge);
  }
  if ('weightOf' in relation) {
    const edge = scaleOf(relation.onSquareOf).factor;
    const force = scaleOf(relation.weightOf).factor.times(standardGravity);
    return force.div(edge.times(edge)).div(gramsPerSquareCentimetreToBar);
  }
  return scaleOf(relation.stepOf).factor.times(relation.numerator).div(relation.denominator);
}
