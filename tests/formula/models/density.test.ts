import { describe, expect, test } from 'vitest';
import { densityOf, specificVolume, volumeOf, waterDensityAt } from '../../../src/formula/models/density';

describe('a mixture', () => {
  test('takes up the volumes of its parts', () => {
    const parts = { water: 90, fat: 5, carbohydrate: 5 };
    const separately = 90 * specificVolume('water') + 5 * specificVolume('fat') + 5 * specificVolume('carbohydrate');
    expect(volumeOf(parts)).toBeCloseTo(separately, 12);
    expect(densityOf(parts)).toBeCloseTo(100 / separately, 12);
  });

  test('has the same density in any amount', () => {
    expect(densityOf({ water: 0.9, protein: 0.1 })).toBeCloseTo(densityOf({ water: 9, protein: 1 }), 12);
  });

  test('of nothing has the density of nothing in particular, 1', () => {
    expect(densityOf({})).toBe(1);
    expect(volumeOf({})).toBe(0);
  });

  test('is lighter when warmer', () => {
    expect(densityOf({ water: 0.9, fat: 0.1 }, 30)).toBeLessThan(densityOf({ water: 0.9, fat: 0.1 }, 10));
  });
});

describe('plain water', () => {
  test('is densest near 4 °C', () => {
    expect(waterDensityAt(4)).toBeGreaterThan(waterDensityAt(2));
    expect(waterDensityAt(4)).toBeGreaterThan(waterDensityAt(6));
  });

  test('is that of kitchen temperature unless told otherwise', () => {
    expect(waterDensityAt()).toBe(waterDensityAt(20));
  });

  test('is not the water of the milk model, which is a quarter of a per cent lighter', () => {
    expect(1000 * densityOf({ water: 1 })).toBeLessThan(waterDensityAt() - 2);
  });
});
