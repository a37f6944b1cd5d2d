import { describe, expect, test } from 'vitest';
import { formulate } from '../../../../src/formula/engine/formulate';
import { recipeOf, twoInches, typed } from '../../../batches';

const room = 0.9998 * 0.62 + 0.0002 / 0.9982;
const sugar = (0.02626 / 1.0505245) * room;
const grains = 0.054 / 1.05;

describe('a millilitre of milk', () => {
  test('fills 1.0669 mL with its sweetener and grains in', () => {
    expect(formulate(recipeOf()).of('roomPerMilk')).toBeCloseTo(1 + sugar + grains, 7);
  });

  test.each([
    ['grains typed by weight', [typed('grainMass', 40)], 1 + sugar, 40 / 1.05],
    ['sweetener typed by weight', [typed('sweetenerMass', 20)], 1 + grains, 20 * room],
    ['both', [typed('sweetenerMass', 20), typed('grainMass', 40)], 1, 20 * room + 40 / 1.05],
  ] as const)('fills less with %s, which count once', (_, given, perMilk, fixed) => {
    const formulation = formulate(recipeOf({ given }));
    expect(formulation.of('roomPerMilk')).toBeCloseTo(perMilk, 7);
    expect(formulation.of('fixedRoom')).toBeCloseTo(fixed, 6);
  });

  test('gives 1.002 mL to drink, less what clings to its grains', () => {
    expect(formulate(recipeOf()).of('drinkPerMilk')).toBeCloseTo(1 + sugar - 0.054 * 0.25, 7);
    const { of } = formulate(recipeOf({ given: [typed('grainMass', 40)] }));
    expect(of('drinkFixed')).toBeCloseTo(-10, 9);
  });

  test('with a sweetener that feeds nothing has grains alone beside it', () => {
    const stevia = formulate(recipeOf({ sweetener: [{ id: 'stevia', share: 1 }] }));
    expect(stevia.of('roomPerMilk')).toBeCloseTo(1 + grains, 12);
    expect(stevia.of('fixedRoom')).toBe(0);
  });
});

describe('the headspace to keep', () => {
  test('is the usual, or the one typed as a depth or as a room', () => {
    expect(formulate(recipeOf({ yours: twoInches })).of('headspaceAsked')).toBe(5);
    expect(formulate(recipeOf({ vessel: 'pint' })).of('headspaceAsked')).toBe(2.5);
    expect(formulate(recipeOf({ given: [typed('headspaceDepth', 3)] })).of('headspaceAsked')).toBe(3);
    const byRoom = formulate(recipeOf({ given: [typed('headspaceVolume', 102.0703453)] }));
    expect(byRoom.of('headspaceAsked')).toBeCloseTo(2.25, 6);
  });

  test('leaves what each jar may be filled with', () => {
    expect(formulate(recipeOf({ yours: twoInches, given: [typed('milkVolume', 200)] })).of('fillAllowed')).toBeCloseTo(
      740.19,
      2,
    );
  });
});
