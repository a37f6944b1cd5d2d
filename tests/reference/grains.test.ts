import { describe, expect, it } from 'vitest';
import { grains } from '../../src/reference/grains';

describe('grains', () => {
  it('fill a rounded tablespoon', () => {
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
});
