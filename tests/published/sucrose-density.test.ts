// Density of sucrose solutions at 20 °C, air-free mass per cent, g/mL. From memory; believed to be in National Bureau of
// Standards Circular C440 (1942), Polarimetry, Saccharimetry and the Sugars, and in the CRC Handbook of Chemistry and
// Physics, Concentrative Properties of Aqueous Solutions. Water at 20 °C is 0.99823 g/mL in the same tables.
import { describe, expect, it } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { densityOf } from '../../src/formula/models/density';
import { physics } from '../../src/reference/physics';
import { sweeteners } from '../../src/reference/sweeteners';
import { tightBag as recipeOf } from '../batches';

const table = [
  [5, 1.0178],
  [10, 1.0381],
  [15, 1.0592],
  [20, 1.081],
  [30, 1.127],
  [40, 1.1764],
  [50, 1.2296],
] as const;
const water = 0.99823;

describe('component densities', () => {
  it.each(table)('put %s %% sucrose (%s g/mL) at most 0.5 %% low, and never high', (percent, density) => {
    const ratio = densityOf({ carbohydrate: percent, water: 100 - percent }, 20) / density;
    expect(ratio).toBeLessThan(1);
    expect(ratio).toBeGreaterThan(0.995);
  });
});

describe('the room that dissolved sugar takes', () => {
  it.each(table)('is within the stated range at %s %% (%s g/mL)', (percent, density) => {
    const share = percent / 100;
    const room = (1 / density - (1 - share) / water) / share;
    const { low = 0, high = 0 } = physics.sugarDisplacement;
    expect(room).toBeGreaterThanOrEqual(low);
    expect(room).toBeLessThanOrEqual(high);
  });

  it('is 0.62 mL/g', () => {
    expect(physics.sugarDisplacement.value).toBe(0.62);
  });

  it('makes 1037 mL of a litre with 60 g of sucrose in it', () => {
    // As much white sugar as has 60 g dry, without the room of its water.
    const { of } = formulate(recipeOf({}));
    const sugar = 60 / (1 - sweeteners.caneWhite.water / 100);
    const volume = 1000 + sugar * of('sweetenerRoom') - (sugar - 60) / of('waterDensity');
    expect(volume).toBeCloseTo(1037.2, 9);
    // By the table: 60 g in 1058.23 g is 5.67 %, of which a kilogram is 1/1.0204 L.
    expect((60 * 100) / (60 + 998.23)).toBeCloseTo(5.67, 2);
    expect((60 + 998.23) / 1.0204).toBeCloseTo(1037, 0);
  });
});
