import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { doubleOf, exactly } from '../../src/measure/exact';
import { unitOrigins } from '../../src/measure/unit-origins';
import { baseUnits, convert, convertNumber, toBase, type UnitId, unitList, units } from '../../src/measure/units';
import { big } from '../big';

const value = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map((whole) => exactly(whole).div(1000));
const anyUnit = fc.constantFrom(...unitList.map((unit) => unit.id));

describe('the table of units', () => {
  test('keeps each unit under its own id', () => {
    for (const [key, unit] of Object.entries(units)) expect(unit.id).toBe(key);
  });

  test('has a base unit for each kind, whose factor is one', () => {
    for (const [kind, id] of Object.entries(baseUnits)) {
      expect(units[id].kind).toBe(kind);
      expect(big(toBase(1, id)).eq(1)).toBe(true);
    }
  });

  test('relates each unit to others that are in the table, of the same kind where it is a multiple or a part', () => {
    const rows = new Map<string, (typeof unitList)[number]>(unitList.map((unit) => [unit.id, unit]));
    for (const unit of unitList) {
      if ('of' in unit.relation) expect(rows.get(unit.relation.of)?.kind).toBe(unit.kind);
      expect(() => toBase(1, unit.id)).not.toThrow();
    }
  });

  test('names a work for each relation', () => {
    for (const unit of unitList) expect(unitOrigins[unit.id].work.length).toBeGreaterThan(5);
  });
});

describe('converting', () => {
  const worked: readonly (readonly [string, UnitId, UnitId, string])[] = [
    ['1', 'lb', 'g', '453.59237'],
    ['6', 'oz', 'g', '170.09713875'],
    ['68', '°F', '°C', '20'],
    ['39.2', '°F', '°C', '4'],
    ['-40', '°C', '°F', '-40'],
    ['1', 'Δ°C', 'Δ°F', '1.8'],
    ['10', 'min', 'h', '0.166666666666666666666666666667'],
    ['2', 'day', 'h', '48'],
    ['1', 'atm', 'bar', '1.01325'],
    ['1', 'psi', 'Pa', '6894.757293168361336722673445346891'],
    ['1', 'in', 'mm', '25.4'],
    ['1', 'australianTbsp', 'metricTsp', '4'],
  ];

  test.each(worked)('%s %s in %s is %s', (amount, from, to, expected) => {
    expect(big(convert(amount, from, to)).toFixed(30)).toBe(big(exactly(expected)).toFixed(30));
  });

  test('comes back exactly from the base unit, for every unit', () => {
    fc.assert(
      fc.property(anyUnit, value, (unit, amount) => {
        expect(convert(toBase(amount, unit), baseUnits[units[unit].kind], unit).compare(amount)).toBe(0);
      }),
    );
  });

  test('comes back exactly from every unit of the same kind', () => {
    fc.assert(
      fc.property(anyUnit, fc.nat(), value, (from, pick, amount) => {
        const same = unitList.filter((unit) => unit.kind === units[from].kind);
        const to = same[pick % same.length]?.id ?? from;
        expect(convert(convert(amount, from, to), to, from).compare(amount)).toBe(0);
      }),
    );
  });

  test('throws on two kinds whose ids are only known when running', () => {
    const from: UnitId = unitList.find((unit) => unit.kind === 'mass')?.id ?? 'g';
    const to: UnitId = unitList.find((unit) => unit.kind === 'volume')?.id ?? 'mL';
    expect(() => convert(1, from, to)).toThrow('different kinds');
  });
});

describe('converting doubles', () => {
  test('gives doubles back without negative zero and leaves what is not finite', () => {
    expect(convertNumber(512, 'mL', 'L')).toBe(0.512);
    expect(Object.is(convertNumber(-0, 'g', 'kg'), 0)).toBe(true);
    expect(convertNumber(Number.NaN, 'g', 'kg')).toBeNaN();
  });

  test('gives what exact decimals give, for any two units of a kind', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...unitList.map(({ id }) => id)),
        fc.nat(),
        fc.double({ min: -1e12, max: 1e12, noNaN: true }),
        (from, pick, value) => {
          const same = unitList.filter((unit) => unit.kind === units[from].kind);
          const to = same[pick % same.length]?.id ?? from;
          expect(convertNumber(value, from, to)).toBe(doubleOf(convert(value, from, to)));
        },
      ),
    );
  });

  test('throws on two kinds whose ids are only known when running', () => {
    const from: UnitId = unitList.find((unit) => unit.kind === 'mass')?.id ?? 'g';
    const to: UnitId = unitList.find((unit) => unit.kind === 'volume')?.id ?? 'mL';
    expect(() => convertNumber(1, from, to)).toThrow('different kinds');
  });
});
