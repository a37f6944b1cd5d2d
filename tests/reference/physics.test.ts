import { describe, expect, it } from 'vitest';
import { cardinalTemperatures, carrollHenry, fermenting } from '../../src/reference/fermenting';
import { componentDensities, molarMasses, physics } from '../../src/reference/physics';

function polynomial(coefficients: readonly number[], at: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * at + coefficient, 0);
}

describe('component densities', () => {
  it.each([
    ['water', 995.74],
    ['protein', 1319.532],
    ['fat', 917.239],
    ['carbohydrate', 1592.891],
    ['fibre', 1304.182],
    ['ash', 2418.187],
  ] as const)('give %s %d kg/m³ at 20 °C', (component, density) => {
    expect(polynomial(componentDensities[component].coefficients, 20)).toBeCloseTo(density, 3);
  });
});

describe('molar masses', () => {
  it('make 1.05263 g of hexose from a gram of sucrose', () => {
    expect((2 * molarMasses.hexose.value) / molarMasses.disaccharide.value).toBeCloseTo(1.05263, 5);
  });

  it('conserve mass: a disaccharide and water are two hexoses', () => {
    expect(molarMasses.disaccharide.value + molarMasses.water.value).toBeCloseTo(2 * molarMasses.hexose.value, 9);
  });

  it('conserve mass: a hexose is two of ethanol and two of carbon dioxide, or two of lactic acid', () => {
    const split = 2 * (molarMasses.ethanol.value + molarMasses.carbonDioxide.value);
    expect(Math.abs(split - molarMasses.hexose.value)).toBeLessThan(0.005);
    expect(2 * molarMasses.lacticAcid.value).toBeCloseTo(molarMasses.hexose.value, 9);
  });
});

describe('solubility of carbon dioxide', () => {
  it.each([
    [4, 85.628],
    [20, 141.364],
    [25, 161.968],
  ])('is right at %d °C', (celsius, pressure) => {
    const inverse = 1 / (celsius + physics.zeroCelsius.value);
    expect(Math.abs(Math.exp(polynomial(carrollHenry.coefficients, inverse)) - pressure)).toBeLessThan(0.001);
  });
});

describe('cardinal temperatures', () => {
  it('rise from minimum to maximum, with the optimum beyond the middle', () => {
    for (const { minimum, optimum, maximum } of Object.values(cardinalTemperatures)) {
      expect(minimum.value).toBeLessThan(optimum.value);
      expect(optimum.value).toBeLessThan(maximum.value);
      expect(optimum.value).toBeGreaterThan((minimum.value + maximum.value) / 2);
    }
  });

  it('allow growth in the whole range where a ready time is given', () => {
    for (const { minimum, maximum } of Object.values(cardinalTemperatures)) {
      expect(minimum.value).toBeLessThan(fermenting.ripeningCoolest.value);
      expect(maximum.value).toBeGreaterThan(fermenting.ripeningWarmest.value);
    }
  });
});
