import { describe, expect, test } from 'vitest';
import { hexoseOf, hexoseOfUnknown, hexosePerDisaccharide, sumOfSugars } from '../../../src/formula/models/sugar';

const none = { sucrose: null, glucose: null, fructose: null, maltose: null, lactose: null, galactose: null };
const water = { lactose: false, galactose: true };
const milk = { lactose: true, galactose: true };

describe('sugar as hexose', () => {
  test('is 360.312/342.297 of a disaccharide', () => {
    expect(hexosePerDisaccharide).toBeCloseTo(360.312 / 342.297, 12);
  });

  test('adds single sugars as they are and double ones with their water', () => {
    expect(hexoseOf({ ...none, sucrose: 10, glucose: 3, fructose: 2, maltose: 1 }, water)).toBeCloseTo(
      5 + 11 * 1.05263,
      4,
    );
  });

  test('counts lactose and galactose only for grains that take them', () => {
    const whey = { ...none, lactose: 5, galactose: 1 };
    expect(hexoseOf(whey, water)).toBe(1);
    expect(hexoseOf(whey, milk)).toBeCloseTo(1 + 5 * 1.05263, 4);
    expect(hexoseOf(whey, { lactose: false, galactose: false })).toBe(0);
  });

  test('of sugars without a figure is a least value: what is not known adds nothing', () => {
    expect(hexoseOf(none, milk)).toBe(0);
    expect(sumOfSugars({ ...none, fructose: 4 })).toBe(4);
  });

  test('of an unknown total runs from all single to all double, the middle its estimate', () => {
    const { low, high, value } = hexoseOfUnknown(0.6, 0.8);
    expect([low, high]).toEqual([0.6, expect.closeTo(0.8 * 1.05263, 5)]);
    expect(value).toBeCloseTo((0.6 + 0.8 * 1.05263) / 2, 5);
  });
});
