import { describe, expect, it } from 'vitest';
import { grains } from '../../src/reference/grains';

describe('grains', () => {
  it('have the usual dose of their kind, by litre of milk', () => {
    expect(grains.water.dose).toMatchObject({ value: 54, low: 45, high: 65, unit: 'g/L' });
    expect(grains.milk.dose).toMatchObject({ value: 31, low: 25, high: 40, unit: 'g/L' });
  });

  it('fill a level tablespoon loosely, or brim it a little', () => {
    for (const { tablespoon, density } of Object.values(grains)) {
      expect(tablespoon.value / 14.78676478125).toBeGreaterThan(1);
      expect(tablespoon.value / 14.78676478125).toBeLessThan(density.value * 1.5);
    }
  });

  it('take milk sugar only where they come from milk', () => {
    expect(grains.water.takes.lactose).toBe(false);
    expect(grains.milk.takes).toMatchObject({ lactose: true, galactose: true });
  });

  it('name milk as the allergen of milk grains alone', () => {
    expect(grains.water).toMatchObject({ dairy: false, allergens: [], floats: false });
    expect(grains.milk).toMatchObject({ dairy: true, allergens: ['milk'], floats: true });
  });

  it('are ready in the middle of 8 to 16 h in a room of 21 °C', () => {
    for (const { readyTime, readyTemperature } of Object.values(grains)) {
      expect(readyTime).toMatchObject({ value: 12, low: 8, high: 16 });
      expect(readyTemperature.value).toBe(21);
    }
  });
});
