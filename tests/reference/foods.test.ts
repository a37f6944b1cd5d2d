import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foods as used } from '../../src/reference/foods';
import { otherFoods } from '../../src/reference/other-foods';

const foods = { ...used, ...otherFoods };

const records = Object.entries(foods);

describe('foods', () => {
  it('are 52, each under its own record number', () => {
    expect(records).toHaveLength(52);
    for (const [key, { ndb }] of records) {
      expect(ndb).toBe(key);
      expect(ndb).toMatch(/^\d{5}$/);
    }
  });

  it('have unique names', () => {
    expect(new Set(records.map(([, { name }]) => name)).size).toBe(records.length);
  });

  it('sum to 100 g of water, protein, fat, carbohydrate and ash', () => {
    fc.assert(
      fc.property(fc.constantFrom(...records), ([id, food]) => {
        const sum = food.water + food.protein + food.fat + food.carbohydrate + food.ash;
        expect(Math.abs(sum - 100), id).toBeLessThanOrEqual(0.1);
      }),
      { numRuns: 500 },
    );
  });

  it('hold their fibre within their carbohydrate', () => {
    for (const [id, { fibre, carbohydrate }] of records) {
      if (fibre !== null) expect(fibre, id).toBeLessThanOrEqual(carbohydrate);
    }
  });

  it('have individual sugars that sum to the total where all six are known, save for molasses and the like', () => {
    let checked = 0;
    for (const [id, food] of records) {
      const { sucrose, glucose, fructose, maltose, lactose, galactose, sugars } = food;
      if (sucrose === null || glucose === null || fructose === null || maltose === null) continue;
      if (lactose === null || galactose === null || sugars === null) continue;
      checked += 1;
      const sum = sucrose + glucose + fructose + maltose + lactose + galactose;
      expect(Math.abs(sum - sugars), id).toBeLessThanOrEqual(0.1);
    }
    expect(checked).toBeGreaterThan(15);
  });

  it('keep what is missing missing', () => {
    expect(foods['12006'].sugars).toBeNull();
    expect(foods['12118'].fibre).toBeNull();
    expect(foods['12120'].galactose).toBeNull();
    expect(foods['19296'].lactose).toBeNull();
    expect(foods['19336'].sucrose).toBeNull();
  });

  it('keep a printed zero a zero', () => {
    expect(foods['12061'].lactose).toBe(0);
    expect(foods['14411'].sugars).toBe(0);
  });

  it('are copied as printed: almonds', () => {
    expect(foods['12061']).toMatchObject({
      ...{ name: 'Nuts, almonds', water: 4.41, protein: 21.15, fat: 49.93, carbohydrate: 21.55, fibre: 12.5 },
      ...{ sugars: 4.35, sucrose: 3.95, glucose: 0.17, fructose: 0.11, maltose: 0.04, lactose: 0, galactose: 0.07 },
      ...{ starch: 0.72, ash: 2.97 },
    });
  });

  it('are copied as printed: whole milk, whose sugar is lactose', () => {
    expect(foods['01077']).toMatchObject({ sugars: 5.05, lactose: 5.05, maltose: 0, galactose: 0, ash: 0.67 });
  });
});
