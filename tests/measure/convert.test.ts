import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { add, convert, fromBase, quantity, toBase } from '../../src/measure/convert';
import { decimal } from '../../src/measure/decimal';
import { type UnitId, unitList, units } from '../../src/measure/units';
import { big } from '../big';

const value = fc.integer({ min: -1_000_000_000, max: 1_000_000_000 }).map((whole) => decimal(whole).div(1000));
const anyUnit = fc.constantFrom(...unitList.map((unit) => unit.id));

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
    expect(big(convert(amount, from, to)).toFixed(30)).toBe(big(decimal(expected)).toFixed(30));
  });

  test('comes back exactly from the base unit, for every unit', () => {
    fc.assert(
      fc.property(anyUnit, value, (unit, amount) => {
        expect(fromBase(toBase(amount, unit), unit).compare(amount)).toBe(0);
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

describe('quantities', () => {
  test('add within a kind, in base units', () => {
    expect(add(quantity(1, 'lb'), quantity(3, 'oz')).amount.compare('538.640939375')).toBe(0);
  });

  test('raise a temperature by a difference', () => {
    const warmer = add(quantity(68, '°F'), quantity(9, 'Δ°F'));
    expect(warmer.kind).toBe('temperature');
    expect(warmer.amount.compare(25)).toBe(0);
  });
});
