import { describe, expect, test } from 'vitest';
import { sumOfSolids } from '../../../src/formula/models/milk';
import {
  foodDensity,
  hexosePerSugar,
  nativeHexose,
  solidsOf,
  strainOf,
  totalSugars,
  withLabelSugar,
} from '../../../src/formula/models/strain';
import { sources } from '../../../src/reference/sources';
import { sourceIds } from '../../batches';

const water = { lactose: false, galactose: true };
const treatment = { uptake: 0, leaching: 0, passing: 0.5, pulpMoisture: 0.6, handlingLoss: 0, own: null };

describe('one gram of a food', () => {
  test('is water, sugars and other solids, and nothing else', () => {
    for (const id of sourceIds) {
      const { composition } = sources[id];
      const sum = composition.water / 100 + totalSugars(composition).value + sumOfSolids(solidsOf(composition));
      expect(sum, id).toBeCloseTo(1, 12);
      expect(Math.min(...Object.values(solidsOf(composition))), id).toBeGreaterThanOrEqual(0);
    }
  });

  test('whose sugars no table has holds between none and its carbohydrate less fibre', () => {
    expect(totalSugars(sources.chia.composition)).toEqual({
      low: 0,
      high: expect.closeTo(0.0772, 9),
      value: expect.closeTo(0.0386, 9),
    });
    expect(totalSugars(sources.almond.composition)).toEqual({ low: 0.0435, high: 0.0435, value: 0.0435 });
  });

  test('of coconut milk without a figure for fibre may be all carbohydrate', () => {
    expect(totalSugars(sources.coconutMilk.composition).high).toBeCloseTo(0.0281, 9);
  });
});

describe('its native sugar as hexose', () => {
  test('counts what is named as it is, and the rest of the total as single to double', () => {
    const { low, high } = nativeHexose(sources.sunflower.composition, water);
    expect(low).toBeCloseTo((2.5 * 1.05263 + 0.12) / 100, 6);
    expect(high).toBeCloseTo((2.5 * 1.05263 + 0.12 * 1.05263) / 100, 6);
  });

  test('per gram of sugar is not changed by leaching, which takes all alike', () => {
    const { composition } = sources.almond;
    const factors = [0, 0.3, 0.8].map((leaching) =>
      hexosePerSugar(composition, strainOf(composition, { ...treatment, leaching }), null, water),
    );
    for (const { value } of factors) expect(value).toBeCloseTo(factors[0]?.value ?? 0, 12);
  });

  test('of a food without sugars is none', () => {
    const { composition } = sources.cartonPlain;
    expect(hexosePerSugar(composition, strainOf(composition, treatment), null, water).value).toBe(0);
  });
});

describe('a label', () => {
  test('of 12 g in 240 mL puts 12 g of sugars in 240 mL of that drink, the water giving way', () => {
    const plain = sources.cartonSweetened.composition;
    const sweet = withLabelSugar(plain, 12, 240);
    const grams = (sweet.sugars ?? 0) / 100;
    expect(grams * 240 * foodDensity(sweet)).toBeCloseTo(12, 9);
    expect(sweet.water + (sweet.sugars ?? 0)).toBeCloseTo(plain.water + (plain.sugars ?? 0), 9);
    expect(sweet.sucrose).toBeNull();
  });

  test('can’t make a drink more than all sugar', () => {
    expect(withLabelSugar(sources.cartonPlain.composition, 500, 1).water).toBeGreaterThanOrEqual(0);
    expect(withLabelSugar(sources.cartonPlain.composition, 5, 0)).toEqual(sources.cartonPlain.composition);
  });
});
