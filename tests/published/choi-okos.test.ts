// Choi Y., Okos M.R. (1986), Effects of temperature and composition on the thermal properties of foods, in: Le Maguer M.,
// Jelen P. (eds), Food Engineering and Process Applications 1, Elsevier, pp. 93–101. Read in a food-engineering
// textbook's reproduction, not in the original. The check values were worked apart from the program in double precision.
// Cup weights: USDA National Nutrient Database for Standard Reference, Release 28.
import { describe, expect, it } from 'vitest';
import { densityOf, specificVolume } from '../../src/formula/models/density';
import { foodMeasures } from '../../src/reference/food-measures';
import { type Food, foods } from '../../src/reference/foods';
import { otherFoods } from '../../src/reference/other-foods';

function partsOf(food: Food) {
  const fibre = food.fibre ?? 0;
  const { water, protein, fat, ash } = food;
  return { water, protein, fat, ash, fibre, carbohydrate: food.carbohydrate - fibre };
}

describe('component densities at 20 °C, kg/m³', () => {
  it.each([
    ['water', 995.74],
    ['protein', 1319.532],
    ['fat', 917.239],
    ['carbohydrate', 1592.891],
    ['fibre', 1304.182],
    ['ash', 2418.187],
  ] as const)('%s %s', (component, density) => {
    expect(1000 / specificVolume(component, 20)).toBeCloseTo(density, 2);
  });
});

describe('mixtures, kg/m³', () => {
  const milk = { water: 0.92, protein: 0.02, fat: 0.045, carbohydrate: 0.01, fibre: 0.003, ash: 0.002 };

  it.each([
    [4, 1004.23],
    [20, 1002.447],
    [25, 1001.522],
  ])('a milk at %s °C: %s', (celsius, density) => {
    expect(1000 * densityOf(milk, celsius)).toBeCloseTo(density, 2);
  });

  it('almonds by their record, the parts brought to a sum of 1: 1094.36', () => {
    expect(1000 * densityOf(partsOf(foods['12061']), 20)).toBeCloseTo(1094.36, 1);
  });

  it.each([
    [10, 1034.52],
    [20, 1076.45],
    [30, 1121.92],
    [50, 1225.44],
  ])('%s %% sucrose in water: %s', (percent, density) => {
    expect(1000 * densityOf({ carbohydrate: percent, water: 100 - percent }, 20)).toBeCloseTo(density, 1);
  });
});

// 1 cup is 236.588 mL. The tolerances: a printed cup is rounded to a gram, 0.2 % of milk; the component densities run
// 0.25 % low in water and up to 0.5 % low in sugar; milk is weighed cold, 0.2 % denser than at 20 °C: 1 % in all. A cup
// of syrup may keep some air or be filled warm, so 2 % there.
describe('published cup weights', () => {
  const cup = 236.5882365;

  it('whole milk, 244 g a cup, is 1.031 g/mL, within 1 %', () => {
    const density = densityOf(partsOf(otherFoods['01077']), 20);
    expect(244 / cup).toBeCloseTo(1.031, 3);
    expect(Math.abs(density / (244 / cup) - 1)).toBeLessThan(0.01);
  });

  it.each([
    ['19296', 'honey', 339],
    ['19353', 'maple syrup', 315],
  ] as const)('%s %s, %s g a cup, within 2 %%', (record, _, grams) => {
    const density = densityOf(partsOf(foods[record]), 20);
    expect(foodMeasures[record].measures).toContainEqual({ amount: 1, unit: 'cup', grams });
    expect(Math.abs(density / (grams / cup) - 1)).toBeLessThan(0.02);
  });
});
