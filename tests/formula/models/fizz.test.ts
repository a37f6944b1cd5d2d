import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillAtPressure, gasFromSugar, pressureOf, shareGas } from '../../../src/formula/models/fizz';
import { henryAt } from '../../../src/formula/models/solubility';
import { carrollHenry } from '../../../src/reference/fermenting';
import { gasAtPressure, saturationAt, sugarFromGas } from './gas-by-hand';

const share = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const anySealed = fc.record({ water: share(0.5, 1), room: share(0.03, 2) });
const anyGas = share(1, 800);
const anyCelsius = share(0, 40);
const rising = (from: number, to: number) => fc.tuple(share(from, to), share(0.01, 1));

describe('gas from sugar', () => {
  test('is two of it for each hexose: 180.156 g/L give 2000 mol/m³', () => {
    expect(gasFromSugar(180.156)).toBeCloseTo(2000, 1);
    expect(gasFromSugar(0)).toBe(0);
  });

  test('turns back into that sugar', () => {
    fc.assert(
      fc.property(share(0, 300), (sugar) => {
        expect(Math.abs(sugarFromGas(gasFromSugar(sugar)) - sugar)).toBeLessThanOrEqual(1e-12 * Math.max(sugar, 1));
      }),
    );
  });
});

describe('a sealed bottle', () => {
  test('at 25 °C, 5 g/L of hexose in 950 mL under 50 mL of gas: 55.507 mol/m³ ÷ (3.417e-4 + 0.0526316 ÷ 2478.96) = 1.529 bar', () => {
    expect(pressureOf(gasFromSugar(5), { water: 1, room: 50 / 950 }, 25)).toBeCloseTo(1.529, 3);
  });

  test('with no gas in it has no pressure', () => {
    expect(pressureOf(0, { water: 0.9, room: 0.05 }, 20)).toBe(0);
  });

  test('keeps all its gas between liquid and space', () => {
    fc.assert(
      fc.property(anySealed, anyGas, anyCelsius, (sealed, gas, celsius) => {
        const { dissolved, above } = shareGas(pressureOf(gas, sealed, celsius), sealed, celsius);
        expect(Math.abs((dissolved + above) / gas - 1)).toBeLessThanOrEqual(1e-9);
      }),
    );
  });

  test('holds at its pressure the gas that gave it', () => {
    fc.assert(
      fc.property(anySealed, anyGas, anyCelsius, (sealed, gas, celsius) => {
        expect(gasAtPressure(pressureOf(gas, sealed, celsius), sealed, celsius) / gas).toBeCloseTo(1, 12);
      }),
    );
  });

  test('of 500 mL has the fill that gave its pressure, also where some of the gas is of what is put in it', () => {
    fc.assert(
      fc.property(anySealed, anyGas, share(0, 1), anyCelsius, (sealed, gas, ofLiquid, celsius) => {
        const bar = pressureOf(gas, sealed, celsius);
        const volume = 500;
        const fill = volume / (1 + sealed.room);
        const made = { gas: gas * ofLiquid, added: gas * (1 - ofLiquid) * fill, volume };
        expect(fillAtPressure(made, sealed.water, celsius, bar) / fill).toBeCloseTo(1, 6);
      }),
    );
  });

  // 416 mol/m³ of liquid and 20 000 µmol put in, at 30 °C and 6 bar: each mL of space holds 6e5 ÷ (8.314463 × 303.15)
  // = 238.045 mol/m³, each of water 3.006e-4 × 6e5 = 180.4. (238.045 × 500 − 20 000) ÷ (238.045 + 416 − 180.4) = 209.1.
  test('is filled to 209 mL of 500, by hand', () => {
    expect(fillAtPressure({ gas: 416, added: 20_000, volume: 500 }, 1, 30, 6)).toBeCloseTo(209.1, 0);
  });

  test('is harder with more sugar', () => {
    fc.assert(
      fc.property(anySealed, rising(0, 100), anyCelsius, (sealed, [sugar, more], celsius) => {
        const less = pressureOf(gasFromSugar(sugar), sealed, celsius);
        expect(pressureOf(gasFromSugar(sugar + more), sealed, celsius)).toBeGreaterThan(less);
      }),
    );
  });

  test('is harder when warmer', () => {
    fc.assert(
      fc.property(anySealed, anyGas, rising(0, 40), (sealed, gas, [celsius, more]) => {
        expect(pressureOf(gas, sealed, celsius + more)).toBeGreaterThan(pressureOf(gas, sealed, celsius));
      }),
    );
  });

  test('is harder the fuller it is', () => {
    fc.assert(
      fc.property(share(0.5, 1), rising(0.03, 2), anyGas, anyCelsius, (water, [room, more], gas, celsius) => {
        const full = pressureOf(gas, { water, room }, celsius);
        expect(pressureOf(gas, { water, room: room + more }, celsius)).toBeLessThan(full);
      }),
    );
  });
});

describe('water', () => {
  test('holds less gas the warmer it is, from 0 to 60 °C', () => {
    fc.assert(
      fc.property(rising(0, 59), ([celsius, more]) => {
        expect(henryAt(celsius + more)).toBeLessThan(henryAt(celsius));
      }),
    );
  });

  test('open to the gas at one atmosphere holds 101 325 times its solubility', () => {
    expect(saturationAt(21)).toBeCloseTo(henryAt(21) * 101325, 9);
  });

  test('is known to 10 bar, 1 MPa', () => {
    expect(carrollHenry.pressureTo).toBe(10);
  });
});
