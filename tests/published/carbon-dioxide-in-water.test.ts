// Carbon dioxide in water.
// 1. Sander R. (2023), Compilation of Henry's law constants, version 5.0.0, Atmos. Chem. Phys. 23: 10901–12440, page of
//    carbon dioxide: literature evaluations 3.3 and 3.4 × 10⁻⁴ mol m⁻³ Pa⁻¹ at 25 °C, d ln H/d(1/T) 2300 to 2400 K.
// 2. Handbook table of the solubility of gases in water, g per 100 g of water where gas and vapour together make 1 atm.
//    From memory; believed in Lange's Handbook of Chemistry. Vapour pressures of water likewise.
// 3. Carroll, Slupsky and Mather (1991), J. Phys. Chem. Ref. Data 20: 1201–1209, abstract: the correlation itself,
//    worked apart from the program.
import { describe, expect, it } from 'vitest';
import { waterDensityAt } from '../../src/formula/models/density';
import { henryAt } from '../../src/formula/models/solubility';

describe('against literature evaluations, which differ from each other by 3 %', () => {
  it.each([20, 25, 30])('at %s °C lies within 5 per cent of each', (celsius) => {
    for (const [atRoom, slope] of [
      [3.3e-4, 2400],
      [3.3e-4, 2300],
      [3.4e-4, 2300],
      [3.4e-4, 2400],
    ] as const) {
      const evaluated = atRoom * Math.exp(slope * (1 / (celsius + 273.15) - 1 / 298.15));
      expect(Math.abs(henryAt(celsius) / evaluated - 1)).toBeLessThan(0.05);
    }
    expect(henryAt(25)).toBeGreaterThan(3.3e-4);
    expect(henryAt(25)).toBeLessThan(3.45e-4);
  });
});

describe('against a handbook table, g in 100 g of water under 1 atm of gas and vapour', () => {
  it.each([
    [0, 0.3346, 611],
    [10, 0.2318, 1228],
    [20, 0.1688, 2339],
    [25, 0.1449, 3169],
    [30, 0.1257, 4246],
  ])('at %s °C: %s, within 3 %%', (celsius, printed, vapour) => {
    const molesPerCubicMetre = henryAt(celsius) * (101325 - vapour);
    const grams = (100 * molesPerCubicMetre * 44.01) / 1000 / waterDensityAt(celsius);
    expect(Math.abs(grams / printed - 1)).toBeLessThan(0.03);
  });
});

describe('the correlation, mol per m³ and Pa', () => {
  it.each([
    [0, 7.47e-4],
    [4, 6.482e-4],
    [20, 3.92e-4],
    [22, 3.706e-4],
    [25, 3.417e-4],
    [30, 3.006e-4],
  ])('at %s °C: %s', (celsius, henry) => {
    expect(henryAt(celsius) / henry).toBeCloseTo(1, 3);
  });
});
