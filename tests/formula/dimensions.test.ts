import { describe, expect, test } from 'vitest';
import { isIntermediate, isRow } from '../../src/formula/engine/evaluate';
import { readFormula } from '../../src/formula/engine/expression';
import { formulate } from '../../src/formula/engine/formulate';
import { waysOf } from '../../src/formula/engine/ways-of';
import { type CoefficientId, chooseFrom, coefficients, isCoefficient } from '../../src/formula/recipe/coefficients';
import { figureValues } from '../../src/formula/rows/figure-values';
import { numericRows } from '../../src/formula/rows/sheet';
import { intermediateIds } from '../../src/formula/rows/terms';
import { findFigure } from '../../src/formula/working/figures';
import { formulaOf } from '../../src/formula/working/formula-of';
import { sharedNames } from '../../src/formula/working/told/names';
import { baseUnits, units } from '../../src/measure/units';
import { numericRowIds, recipeOf } from '../batches';

// Every formula is reckoned a second time with the units of what goes into it, scales included: grams divided by mL of
// milk in a gram are no mL, and g/L times mL are no g until 1000 is divided by.

/** A unit as a scale and powers of g, mL, cm, h, mol, Pa and the like. */
interface Dimension {
  readonly scale: number;
  readonly powers: Readonly<Record<string, number>>;
}

const none: Dimension = { scale: 1, powers: {} };
const of = (powers: Dimension['powers'], scale = 1): Dimension => ({ scale, powers });

const dimensions: Readonly<Record<string, Dimension>> = {
  '': none,
  share: none,
  power: none,
  times: none,
  'times as fast': none,
  pH: none,
  'g/g': none,
  'mL/mL': none,
  '%': of({}, 1 / 100),
  g: of({ g: 1 }),
  mL: of({ mL: 1 }),
  cm: of({ cm: 1 }),
  h: of({ h: 1 }),
  days: of({ day: 1 }),
  '°C': of({ K: 1 }),
  K: of({ K: 1 }),
  bar: of({ bar: 1 }),
  Pa: of({ Pa: 1 }),
  'Pa/bar': of({ Pa: 1, bar: -1 }),
  'g/mL': of({ g: 1, mL: -1 }),
  'mL/g': of({ mL: 1, g: -1 }),
  'g/L': of({ g: 1, mL: -1 }, 1e-3),
  'kg/m³': of({ g: 1, mL: -1 }, 1e-3),
  'g/mol': of({ g: 1, mol: -1 }),
  'mol/m³': of({ mol: 1, mL: -1 }, 1e-6),
  'mol/(m³·Pa)': of({ mol: 1, mL: -1, Pa: -1 }, 1e-6),
  // A joule is a pascal times a cubic metre.
  'J/(mol·K)': of({ Pa: 1, mL: 1, mol: -1, K: -1 }, 1e6),
};

function dimensionOf(unit: string): Dimension {
  return dimensions[unit] ?? expect.fail(`the unit ${unit} is not known`);
}

const { evaluation } = formulate(recipeOf());
const choices = chooseFrom(recipeOf());

/** The unit in which a name in a formula stands. */
function unitOf(name: string): string {
  if (isRow(name)) return numericRows[name].unit ?? units[baseUnits[numericRows[name].kind]].symbol;
  if (isIntermediate(name)) return sharedNames[name].unit;
  if (isCoefficient(name)) return unitOfCoefficient(name);
  // Written out where it is told, as a product of two powers of shares.
  return name === 'atDoseAndSugar' ? '' : (findFigure(name, evaluation)?.unit ?? expect.fail(`${name} is nothing`));
}

function unitOfCoefficient(id: CoefficientId): string {
  return coefficients[id].find(choices).unit;
}

/** What turns one unit into another stands as a bare number: 1000 mL are a litre, 100 % are a whole. */
const conversions: readonly number[] = [100, 1000];

function isSame(one: Dimension, other: Dimension): boolean {
  const names = [...Object.keys(one.powers), ...Object.keys(other.powers)];
  const isScaled = Math.abs(one.scale / other.scale - 1) < 1e-9;
  return isScaled && names.every((name) => (one.powers[name] ?? 0) === (other.powers[name] ?? 0));
}

function times(one: Dimension, other: Dimension, sign: 1 | -1): Dimension {
  const powers = { ...one.powers };
  for (const [name, power] of Object.entries(other.powers)) powers[name] = (powers[name] ?? 0) + sign * power;
  return { scale: one.scale * other.scale ** sign, powers };
}

/** The dimension of a part of a formula; null for 0, which is so much of anything. */
type Measured = Dimension | null;

function measureLeaf(text: string): Measured {
  if (text === '0') return null;
  if (/^\d+$/.test(text)) return conversions.includes(Number(text)) ? of({}, 1 / Number(text)) : none;
  return dimensionOf(unitOf(text.slice(1, -1)));
}

/** Throws where unlike is added to unlike. */
function measurePair(op: string, left: Measured, right: Measured): Measured {
  if (op.startsWith(', rounded')) return left;
  if (op === '^') {
    if (!isSame(left ?? none, none) || !isSame(right ?? none, none)) throw new Error('a power of what has a unit');
    return none;
  }
  if (left === null || right === null) return left ?? right;
  if (op === '×' || op === '÷') return times(left, right, op === '×' ? 1 : -1);
  if (!isSame(left, right)) throw new Error(`${op} of unlike quantities`);
  return left;
}

/** Says where a formula does not come to a unit. */
function complaintOf(formula: string, unit: string): string | null {
  try {
    const found = readFormula(formula, measureLeaf, measurePair);
    return found === null || isSame(found, dimensionOf(unit)) ? null : 'another unit';
  } catch (error) {
    return String(error);
  }
}

describe.each([...numericRowIds, ...intermediateIds])('%s', (id) => {
  test('comes in its own unit by every formula that it has', () => {
    for (const [name, way] of Object.entries(waysOf(id))) {
      const formula = formulaOf(way);
      if (formula !== null) expect(complaintOf(formula, unitOf(id)), `${name}: ${formula}`).toBeNull();
    }
  });
});

describe('a formula', () => {
  test('that multiplies where it should divide is found', () => {
    expect(complaintOf('{milkVolume} ÷ {milkPerGram}', 'g')).toBeNull();
    expect(complaintOf('{milkVolume} × {milkPerGram}', 'g')).toBe('another unit');
  });

  test('that forgets the mL of a litre or the whole of a percentage is found', () => {
    expect(complaintOf('{sugarRate} × {milkVolume} ÷ {fermentable}', 'g')).toBe('another unit');
    expect(complaintOf('1 − {milkSolids}', '')).toMatch(/unlike/);
  });

  test('that adds unlike to unlike or raises what has a unit is found', () => {
    expect(complaintOf('{milkVolume} + {sourceMass}', 'mL')).toMatch(/unlike/);
    expect(complaintOf('{milkVolume}^{doseExponent}', 'mL')).toMatch(/power/);
  });

  test('names no figure that has no unit of its own', () => {
    for (const name of Object.keys(figureValues)) expect(dimensionOf(unitOf(name)), name).toBeDefined();
  });
});
