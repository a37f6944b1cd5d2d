import { type Exact, exactly } from './exact';
import type { Relation } from './unit-row';
import { units } from './unit-table';

/** A unit as base = (value − zero) × numerator ÷ denominator, in whole numbers, so nothing is rounded. */
export interface UnitScale extends Exact {
  readonly zero: bigint;
}

// m/s², exact by definition: NIST SP 811 (2008). The psi weighs a pound in this field.
const standardGravity = exactly('9.80665');
// (g → kg) ÷ (cm² → m²) ÷ (Pa → bar) = 10⁻³ ÷ 10⁻⁴ ÷ 10⁵
const gramsPerSquareCentimetreToBar = 10_000n;

const relations = new Map<string, Relation>(Object.values(units).map(({ id, relation }) => [id, relation]));
const scales = new Map<string, UnitScale>();

/** The scale of a unit; an id that is in no table is a fault in our own code and throws. */
export function scaleOf(id: string): UnitScale {
  const known = scales.get(id);
  if (known !== undefined) return known;
  const relation = relations.get(id);
  if (relation === undefined) throw new Error(`No unit is called "${id}"`);
  const scale = { zero: 'zeroAt' in relation ? BigInt(relation.zeroAt) : 0n, ...factorOf(relation) };
  scales.set(id, scale);
  return scale;
}

function factorOf(relation: Relation): Exact {
  if ('base' in relation) return exactly(1);
  if ('times' in relation) return times(scaleOf(relation.of), exactly(relation.times));
  if ('part' in relation) return over(scaleOf(relation.of), exactly(relation.part));
  if ('cubeOf' in relation) {
    // A cubic centimetre is a millilitre, so the cube of the edge in base units is already in base units.
    const { numerator, denominator } = scaleOf(relation.cubeOf);
    return { numerator: numerator ** 3n, denominator: denominator ** 3n };
  }
  if ('weightOf' in relation) {
    const edge = scaleOf(relation.onSquareOf);
    const { numerator, denominator } = over(times(scaleOf(relation.weightOf), standardGravity), times(edge, edge));
    return { numerator, denominator: denominator * gramsPerSquareCentimetreToBar };
  }
  return times(scaleOf(relation.stepOf), over(exactly(relation.numerator), exactly(relation.denominator)));
}

function times(a: Exact, b: Exact): Exact {
  return { numerator: a.numerator * b.numerator, denominator: a.denominator * b.denominator };
}

function over(a: Exact, b: Exact): Exact {
  return { numerator: a.numerator * b.denominator, denominator: a.denominator * b.numerator };
}
