import { describe, expect, test } from 'vitest';
import { nativeRange, nativeSugarRange } from '../../../../src/formula/composition/native';
import { formulate } from '../../../../src/formula/engine/formulate';
import type { Recipe } from '../../../../src/formula/recipe/recipe';
import { workingOf } from '../../../../src/formula/working/working';
import { notesOf } from '../../../../src/reference/source-notes';
import { tightBag as recipeOf, typed } from '../../../batches';
import { originsWithin } from '../../origins-within';

describe('native sugar', () => {
  test('of 200 g of almonds at 5 g/g, by hand', () => {
    // As hexose per 100 g: 3.95 × 1.05263 + 0.17 + 0.11 + 0.04 × 1.05263 + 0.07 (galactose) = 4.54999 known, and 0.01 of
    // sugars not named, × 1 to × 1.05263. So 4.56025 per 4.35 of sugars, 1.048334. N 0.9124, x 0.45, p 0.65: k 1.857143,
    // q = 1.857143 × 0.50182 ÷ (5.6371 − 0.080786) = 0.167729; milk sugars 0.0435 × 0.832271 × 0.98 = 0.035480 g/g.
    const formulation = formulate(recipeOf({ given: [typed('sourceMass', 200), typed('waterRatio', 5)] }));
    expect(formulation.of('heldBack')).toBeCloseTo(0.167729, 5);
    const milk = formulation.of('milkPerGram');
    expect(formulation.of('nativeSugar')).toBeCloseTo((1000 * 0.03548 * 1.048334) / milk, 2);
  });

  test('is a range where the table does not say which sugars', () => {
    const { evaluation } = formulate(recipeOf({ source: 'hemp' }));
    expect(nativeRange(evaluation, evaluation.reduced())).toEqual({
      low: expect.closeTo(1, 12),
      high: expect.closeTo(1.05263, 5),
      value: expect.closeTo(1.026315, 5),
    });
  });

  test.each(['chia', 'coconutMilk'] as const)('of %s, in no table, says that it is a judgement', (source) => {
    const { evaluation } = formulate(recipeOf({ source }));
    expect(originsWithin(workingOf('nativeSugar', evaluation), evaluation).join(' ')).toContain(
      'A judgement of this sheet',
    );
    expect(notesOf(source, 'water').find(({ text }) => /estimate/.test(text))?.origin.kind).toBe('judgement');
  });

  test('of almonds is published throughout', () => {
    const { evaluation } = formulate(recipeOf({ source: 'almond' }));
    const told = originsWithin(workingOf('nativeSugar', evaluation), evaluation).join(' ');
    expect(told).toContain('Published');
    expect(told).not.toContain('judgement');
  });

  test('of a carton is what its label says: 7 g in 240 mL are 29.2 to 30.7 g/L', () => {
    const formulation = formulate(recipeOf({ source: 'cartonSweetened' }));
    expect(formulation.of('nativeSugar')).toBeCloseTo((1000 * 7 * 1.026315) / 240, 3);
    const yours = { 'cartonSweetened.labelSugar': { value: 3.5, how: 'typed' } } as const;
    expect(formulate(recipeOf({ source: 'cartonSweetened', yours })).of('nativeSugar')).toBeCloseTo(
      (1000 * 3.5 * 1.026315) / 240,
      3,
    );
  });

  test('of a carton without sugar is none', () => {
    expect(formulate(recipeOf({ source: 'cartonPlain' })).of('nativeSugar')).toBe(0);
  });
});

describe('the sweetener', () => {
  test('takes 0.62 mL a dissolved gram, its water as water: honey 0.829 × 0.62 + 0.171 ÷ 0.99820', () => {
    const honey = formulate(recipeOf({ sweetener: [{ id: 'honey', share: 1 }] }));
    expect(honey.of('sweetenerRoom')).toBeCloseTo(0.829 * 0.62 + 0.171 / 0.9982, 5);
  });

  test('weighs what its published spoon does, and cane sugar what its own does', () => {
    const honey = formulate(recipeOf({ sweetener: [{ id: 'honey', share: 1 }] }));
    expect(honey.of('sweetenerWeight')).toBeCloseTo(339 / 236.5882365, 12);
    expect(honey.of('caneWeight')).toBeCloseTo(200 / 236.5882365, 12);
  });

  test('compares with cane sugar of 99.8 g sucrose: 0.998 × 1.05263 = 1.05052', () => {
    expect(formulate(recipeOf()).of('caneFermentable')).toBeCloseTo(1.050524, 6);
  });

  test('of a carton may be all that such labels say, until both figures of its label are typed', () => {
    const of = (yours: Recipe['yours'] = {}) => formulate(recipeOf({ source: 'cartonSweetened', yours }));
    const unread = nativeSugarRange(of().evaluation);
    // 4 g all single sugars to 13 g all double ones, in 240 mL.
    expect(unread.low).toBeCloseTo((1000 * 4) / 240, 3);
    expect(unread.high).toBeCloseTo((1000 * 13 * 1.05263) / 240, 3);
    expect(of().of('sugarUnsure')).toBeCloseTo(unread.high - unread.value, 9);
    const sugar = { 'cartonSweetened.labelSugar': { value: 7, how: 'typed' } } as const;
    // Its serving may be 250 mL, or the 100 mL of most labels.
    const unsure = nativeSugarRange(of(sugar).evaluation);
    expect(unsure.low).toBeCloseTo((1000 * 7) / 250, 3);
    expect(unsure.high).toBeCloseTo((1000 * 7 * 1.05263) / 100, 3);
    const read = of({ ...sugar, 'cartonSweetened.labelServing': { value: 240, how: 'typed' } });
    expect(read.of('sugarUnsure')).toBeCloseTo((1000 * 7 * (1.05263 - 1.026315)) / 240, 3);
  });

  test('of a carton called unsweetened may be a gram in its cup', () => {
    expect(formulate(recipeOf({ source: 'cartonPlain' })).of('sugarUnsure')).toBeCloseTo((1000 * 1.05263) / 240, 3);
  });

  test('of a carton let down is thinned with it', () => {
    const whole = formulate(recipeOf({ source: 'cartonSweetened' }));
    const half = formulate(recipeOf({ source: 'cartonSweetened', given: [typed('waterRatio', 1)] }));
    const [one, other] = [whole, half].map(({ evaluation }) => nativeSugarRange(evaluation));
    expect((other?.high ?? 0) / (one?.high ?? 0)).toBeCloseTo((other?.value ?? 0) / (one?.value ?? 0), 2);
    expect(other?.high).toBeLessThan(0.52 * (one?.high ?? 0));
  });
});
