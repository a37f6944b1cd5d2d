import { describe, expect, it } from 'vitest';
import { grainNotes } from '../../src/reference/grain-notes';
import { grains, isGrains } from '../../src/reference/grains';
import { grainIds } from '../batches';

describe('grains', () => {
  it('fill a rounded tablespoon', () => {
    for (const { tablespoon, density } of [grains.water, grains.milk]) {
      expect(tablespoon.value / 14.78676478125).toBeGreaterThan(1);
      expect(tablespoon.value / 14.78676478125).toBeLessThan(density.value * 1.5);
    }
  });

  it('take milk sugar only where they come from milk', () => {
    expect(grains.water.takes.lactose).toBe(false);
    expect(grains.milk.takes).toMatchObject({ lactose: true, galactose: true });
  });

  it('name milk as the allergen of all but water grains', () => {
    expect(grains.water).toMatchObject({ dairy: false, allergens: [], floats: false });
    expect(grains.milk).toMatchObject({ dairy: true, allergens: ['milk'], floats: true });
  });

  it('are grains where nothing is stirred in to stay, and a starter may bring milk', () => {
    for (const id of grainIds) {
      const { starter, allergens } = grains[id];
      expect(starter === undefined, id).toBe(isGrains(id));
      const warns = grainNotes[id].some(({ caution }) => caution);
      if (starter !== undefined) expect([allergens, warns], id).toEqual([['milk'], true]);
    }
  });

  it('fill a level tablespoon with finished kefir by its density', () => {
    const { tablespoon, density } = grains.kefir;
    expect(tablespoon.value).toBeCloseTo(density.value * 14.78676478125, 1);
  });
});
