import { describe, expect, test } from 'vitest';
import { changeRecipe } from '../../../src/formula/advice/typed-change';
import { waysOut } from '../../../src/formula/advice/ways-out';
import { formulate } from '../../../src/formula/engine/formulate';
import type { NumericRowId } from '../../../src/formula/recipe/order';
import type { Problem } from '../../../src/formula/recipe/problem';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { countedUnder } from '../../../src/formula/rows/pressure-left-out';
import { labelOf } from '../../../src/formula/words/labels';
import { onHand, tightBag as recipeOf, typed } from '../../batches';
import { codesAt, problemAt, worked } from '../../results';

function waysOf(recipe: Recipe, row: NumericRowId, code: Problem['code']) {
  const formulation = formulate(recipe);
  return waysOut(problemAt(formulation, row, code), formulation);
}

const given = (...cells: Recipe['given']): Recipe => recipeOf({ given: cells });
const limited = (...cells: Recipe['given']): Recipe => given(typed('bottleLimit', 10), ...cells);
const letGo = (row: NumericRowId) => `Clear “${labelOf(row)}”`;
const sweetened = limited(typed('startingSugar', 15), typed('bottleSugar', 10));

// By hand for `sweetened`: room for gas at 30 °C 3.006e-4 × 0.90722 + 0.0526316 ÷ (8.314463 × 303.15) = 2.9359e-4
// mol/(m³·Pa). Of the 10 bar allowed, 9.1028 are counted, as 0.4 + 0.006 × 9.1028² are left out; they hold 267.2, less
// 38.6 dissolved 228.6 mol/m³, which is 20.60 g/L of hexose. In the liquid there are 14.94 already, so 5.66 may be
// added, or with 10 added 10.60 there to begin with. All of it, 315.5 mol/m³, is under 9.1028 bar with a gas space of
// (315.5 ÷ 9.1028e5 − 2.7271e-4) × 2520.5 = 0.1862 per mL: 15.7 % of 500 mL, 78.5 mL.
// Where the 10 g/L are 4.75 g in each bottle, a mL of space holds 9.1028e5 ÷ (8.314463 × 303.15) = 361.2 mol/m³, one of
// liquid 248.2 and has 204.5 of its own: (361.2 × 500 − 111.0 × 475) ÷ (361.2 + 204.5 − 248.2) = 402.8 mL of fill.
describe('of a bottle over its limit', () => {
  test.each<readonly [string, Recipe, readonly string[]]>([
    [
      'less is added, less there to begin with, more left empty, or nothing sealed',
      sweetened,
      [
        'Add only 5 g/L to the bottle',
        'Add nothing to the bottle',
        'Start with only 10 g/L of sugar',
        'Leave 80 mL of the bottle empty',
        'Leave out the second ferment',
      ],
    ],
    [
      'what goes into each bottle is less by the bottle, and stays the same in more room',
      limited(typed('startingSugar', 15), { row: 'bottleSugar', amount: 4.75, kind: 'mass' }),
      [
        'Add only 2 g of sugar to each bottle',
        'Add nothing to the bottle',
        'Start with only 10 g/L of sugar',
        'Leave 98 mL of the bottle empty',
        'Leave out the second ferment',
      ],
    ],
    [
      'where it is still over with nothing added, less there to begin with as well',
      limited(typed('startingSugar', 25), { row: 'bottleSugar', amount: 4, kind: 'mass' }),
      [
        'Start with only 11 g/L of sugar',
        'Add nothing to the bottle, and start with only 20 g/L of sugar',
        'Leave 183 mL of the bottle empty',
        'Leave out the second ferment',
      ],
    ],
    [
      'the start stays as it was where the sugar that was left is known',
      {
        ...limited(typed('bottleSugar', 30)),
        measured: { sugarLeft: { kind: 'concentration', amount: 10 } },
      },
      [
        'Add only 10 g/L to the bottle',
        'Add nothing to the bottle',
        'Leave 199 mL of the bottle empty',
        'Leave out the second ferment',
      ],
    ],
    [
      'sugar typed per litre stays in that row',
      limited(typed('sugarRate', 30)),
      ['Sweeten the milk with only 12 g/L', 'Leave 184 mL of the bottle empty', 'Leave out the second ferment'],
    ],
    [
      'a typed weight of sweetener is made less in its own row',
      limited(typed('sweetenerMass', 20)),
      [
        `Use only 8 g for “${labelOf('sweetenerMass')}”`,
        'Leave 186 mL of the bottle empty',
        'Leave out the second ferment',
      ],
    ],
    [
      'so is a typed weight of cane sugar',
      limited(typed('caneEquivalent', 20)),
      [
        `Use only 8 g for “${labelOf('caneEquivalent')}”`,
        'Leave 186 mL of the bottle empty',
        'Leave out the second ferment',
      ],
    ],
    [
      'a weight that is what there is stays, and sweetens less of a bigger batch',
      limited(onHand('sweetenerMass', 20)),
      ['Start with only 20 g/L of sugar', 'Leave 160 mL of the bottle empty', 'Leave out the second ferment'],
    ],
    [
      'nothing is sealed where what is dissolved already passes it',
      given(typed('bottleLimit', 0.5)),
      ['Leave out the second ferment'],
    ],
  ])('%s', (_, recipe, labels) => {
    expect(waysOf(recipe, 'bottlePressureForgotten', 'overLimit').map(({ label }) => label)).toEqual(labels);
  });

  test.each([
    ['Add only 5 g/L to the bottle', 'bottleSugar', 6],
    ['Start with only 10 g/L of sugar', 'startingSugar', 11],
  ] as const)('“%s” is as much as whole grams allow', (label, row, more) => {
    const way = waysOf(sweetened, 'bottlePressureForgotten', 'overLimit').find((one) => one.label === label);
    const under = changeRecipe(sweetened, way?.changes ?? []);
    const over = changeRecipe(under, [{ do: 'type', row, text: `${more} g/L`, kind: 'concentration', amount: more }]);
    expect(worked(under, 'bottlePressureForgotten')).toBeLessThanOrEqual(countedUnder(10));
    expect(worked(over, 'bottlePressureForgotten')).toBeGreaterThan(countedUnder(10));
  });

  test('no start under the milk’s own sugar is offered', () => {
    const recipe = given(typed('bottleLimit', 4));
    expect(worked(recipe, 'bottleSugarMost')).toBeLessThan(formulate(recipe).of('nativeSugar'));
    const labels = waysOf(recipe, 'bottlePressureForgotten', 'overLimit').map(({ label }) => label);
    expect(labels).toEqual(['Leave out the second ferment']);
  });

  test('leaving out the second ferment leaves no pressure and no sugar to speak of', () => {
    const { rows } = formulate(given(typed('bottleLimit', 4), typed('bottleTime', 0)));
    expect(rows.bottlePressureForgotten).toMatchObject({ status: 'absent', absence: 'noBottle', problems: [] });
    expect(rows.bottleSugarMost).toMatchObject({ status: 'absent', absence: 'noBottle' });
  });
});

describe('of what else a bottle can have', () => {
  test.each<readonly [string, Recipe, NumericRowId, Problem['code'], readonly string[]]>([
    [
      'no sugar under its limit: nothing is sealed',
      given(typed('bottleLimit', 0.5)),
      'bottleSugarMost',
      'noSugarUnderLimit',
      ['Leave out the second ferment'],
    ],
    [
      'too little left empty: the least, or the usual',
      given(typed('bottleHeadspace', 5)),
      'bottleHeadspace',
      'bottleTooFull',
      ['Leave 15 mL of the bottle empty', letGo('bottleHeadspace')],
    ],
    [
      'a cold room: the coolest that the models know, or the usual one',
      given(typed('roomTemperature', 12)),
      'readyTime',
      'outsideModels',
      ['I can keep the room at 16 °C (61\u00A0°F)', letGo('roomTemperature')],
    ],
    [
      'a bottle kept too warm: the warmest, or that of the room',
      given(typed('bottleTemperature', 34)),
      'bottlePressureLikely',
      'outsideModels',
      ['I can keep the bottle at 30 °C (86\u00A0°F)', letGo('bottleTemperature')],
    ],
  ])('%s', (_, recipe, row, code, labels) => {
    expect(waysOf(recipe, row, code).map(({ label }) => label)).toEqual(labels);
  });

  test('a bottle in a room too warm for any model waits for the room', () => {
    expect(codesAt(formulate(given(typed('roomTemperature', 33))), 'bottlePressureLikely')).toContain('outsideModels');
    expect(waysOf(given(typed('roomTemperature', 33)), 'readyTime', 'outsideModels')[0]?.label).toBe(
      'I can keep the room at 30 °C (86\u00A0°F)',
    );
  });
});
