import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { recipeOf, twoInches, typed } from '../../batches';
import { codesAt, numberIn, problemAt, worked } from '../../results';

describe('kefir to drink', () => {
  test('from a litre of milk is the fill less the grains and what clings to them', () => {
    // Fill 1000 + 24.997 × 0.62008 + 54 ÷ 1.05 = 1066.929; less 51.429 of grains and 54 × 0.25 = 13.5: 1002.000 mL.
    expect(worked(recipeOf({ given: [typed('milkVolume', 1000)] }), 'drinkVolume')).toBeCloseTo(1002, 2);
  });

  test('typed comes out as typed, and sizes the milk', () => {
    const formulation = formulate(recipeOf({ given: [typed('drinkVolume', 1002)] }));
    expect(formulation.rows.drinkVolume).toMatchObject({ status: 'given', value: 1002 });
    expect(numberIn(formulation, 'milkVolume')).toBeCloseTo(1000, 2);
  });

  test('is none, not less, where more clings to the grains than there is', () => {
    const formulation = formulate(recipeOf({ yours: twoInches, vessel: 'pint', given: [typed('grainMass', 243)] }));
    expect(numberIn(formulation, 'drinkVolume')).toBe(0);
    expect(numberIn(formulation, 'servings')).toBe(0);
  });

  test('of nothing is refused', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('drinkVolume', 0)] })), 'drinkVolume')).toEqual(['notPositive']);
  });
});

describe('glasses', () => {
  test('are the kefir divided by 250 mL', () => {
    const formulation = formulate(recipeOf());
    expect(numberIn(formulation, 'servings')).toBeCloseTo(numberIn(formulation, 'drinkVolume') / 250, 9);
  });

  test('typed size the batch: 4 of 250 mL are a litre', () => {
    expect(worked(recipeOf({ given: [typed('servings', 4)] }), 'drinkVolume')).toBe(1000);
  });

  test('of another size change their number alone', () => {
    const [plain, small] = [formulate(recipeOf()), formulate(recipeOf({ given: [typed('servingSize', 125)] }))];
    expect(numberIn(small, 'servings')).toBeCloseTo(2 * numberIn(plain, 'servings'), 9);
    expect(numberIn(small, 'milkVolume')).toBe(numberIn(plain, 'milkVolume'));
  });

  test('of a thimble or a bucket are refused', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('servingSize', 4)] })), 'servingSize')).toEqual(['tooSmall']);
    expect(codesAt(formulate(recipeOf({ given: [typed('servingSize', 5001)] })), 'servingSize')).toEqual(['tooLarge']);
    expect(codesAt(formulate(recipeOf({ given: [typed('servings', -1)] })), 'servings')).toEqual(['negative']);
  });
});

describe('acidity', () => {
  test('is measured only', () => {
    expect(formulate(recipeOf()).rows.finalPH).toMatchObject({ status: 'absent', absence: 'measuredOnly' });
  });

  const reading = (amount: number) => formulate(recipeOf({ measured: { finalPH: { kind: 'acidity', amount } } }));

  test('at 4.6 it has got there, above it has not', () => {
    expect(reading(4.6).rows.finalPH).toMatchObject({ status: 'measured', value: 4.6, problems: [] });
    expect(problemAt(reading(4.61), 'finalPH', 'notAcid')).toMatchObject({ measured: 4.61 });
  });

  test('moves no amount', () => {
    expect(numberIn(reading(4.2), 'milkVolume')).toBe(worked(recipeOf(), 'milkVolume'));
  });

  test('beyond the scale is refused', () => {
    expect(codesAt(reading(14.5), 'finalPH')).toEqual(['tooLarge']);
  });
});
