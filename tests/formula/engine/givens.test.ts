import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { isTypable, rowWeight } from '../../../src/formula/engine/givens';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { numericRows } from '../../../src/formula/rows/sheet';
import type { Kind } from '../../../src/measure/units';
import { numericRowIds, tightBag as recipeOf, typed } from '../../batches';
import { codesAt, numberIn, problemAt } from '../../results';

const cup = 236.5882365;
const tablespoon = 14.78676478125;

function read(row: Parameters<typeof typed>[0], amount: number, kind: Kind, changes = {}): number {
  return numberIn(formulate(recipeOf({ ...changes, given: [typed(row, amount, kind)] })), row);
}

describe('a volume typed for a solid', () => {
  test('goes through the published weight of a cup of it', () => {
    expect(read('sourceMass', cup, 'volume')).toBeCloseTo(143, 9);
    expect(read('sourceMass', 3 * tablespoon, 'volume', { source: 'hemp' })).toBeCloseTo(30, 3);
    expect(read('sweetenerMass', tablespoon, 'volume')).toBeCloseTo(200 / 16, 9);
    expect(read('sweetenerMass', cup, 'volume', { sweetener: [{ id: 'honey', share: 1 }] })).toBeCloseTo(339, 9);
    expect(read('caneEquivalent', cup, 'volume', { sweetener: [{ id: 'honey', share: 1 }] })).toBeCloseTo(200, 9);
    expect(read('grainMass', tablespoon, 'volume', { grains: 'milk' })).toBeCloseTo(21.5, 9);
  });

  test('of a blend goes by the volumes of its parts: half honey, half sugar are 1 ÷ (0.5/1.43287 + 0.5/0.84535)', () => {
    const blend = [
      { id: 'honey', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ];
    expect(read('sweetenerMass', 100, 'volume', { sweetener: blend })).toBeCloseTo(106.335, 2);
  });

  test('is refused where no weight of a cup is published', () => {
    const dates = formulate(
      recipeOf({ sweetener: [{ id: 'dates', share: 1 }], given: [typed('sweetenerMass', 30, 'volume')] }),
    );
    expect(codesAt(dates, 'sweetenerMass')).toEqual(['noCupWeight']);
    expect(problemAt(dates, 'sugarRate', 'waits')).toMatchObject({ for: 'sweetenerMass' });
  });
});

describe('a mass typed for a liquid', () => {
  test('goes through its density', () => {
    expect(read('blendWater', 500, 'mass')).toBeCloseTo(500 / 0.9982, 2);
    expect(read('milkVolume', 500, 'mass')).toBeCloseTo(500 / 1.003614, 2);
    // A carton by its parts at 20 °C: 1 ÷ (0.97/0.99574 + 0.006/1.31953 + 0.013/0.91724 + 0.004/1.30418 + …) = 1.00053.
    expect(read('sourceMass', 400, 'volume', { source: 'cartonPlain' })).toBeCloseTo(400 * 1.000526, 2);
  });
});

describe('a weight typed for the sugar of a bottle', () => {
  test('goes into each: 3 g in 500 less 25 mL are 6.3158 g/L', () => {
    expect(read('bottleSugar', 3, 'mass')).toBeCloseTo(6.3158, 4);
  });
});

describe('a share typed for the room left', () => {
  test('is of the brimful capacity, usual or typed', () => {
    expect(read('headspaceVolume', 26, 'share')).toBeCloseTo(0.26 * 946.352946 * 1.06, 6);
    const both = formulate(recipeOf({ given: [typed('headspaceVolume', 25, 'share'), typed('brimful', 1200)] }));
    expect(numberIn(both, 'headspaceVolume')).toBe(300);
  });

  test('is no share of anything elsewhere, nor of more than the jar', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('fillVolume', 25, 'share')] })), 'fillVolume')).toEqual([
      'wrongKind',
    ]);
    const whole = formulate(recipeOf({ given: [typed('headspaceVolume', 100, 'share')] }));
    expect(codesAt(whole, 'headspaceVolume')).toEqual(['roomTooLarge']);
  });

  test('waits for a jar that can’t be read, and all that it feeds waits for that jar', () => {
    const formulation = formulate(recipeOf({ given: [typed('headspaceVolume', 25, 'share'), typed('brimful', null)] }));
    for (const row of ['headspaceVolume', 'fillVolume', 'milkVolume'] as const)
      expect(problemAt(formulation, row, 'waits')).toMatchObject({ for: 'brimful' });
  });
});

describe('what can’t be typed', () => {
  test('is what is measured or only follows', () => {
    const never = numericRowIds.filter((id) => !isTypable(numericRows[id]));
    expect(never.sort()).toEqual([
      'blenderLoads',
      'bottleCount',
      'bottlePressureForgotten',
      'bottlePressureLikely',
      'bottleSugarMost',
      'finalPH',
      'keepDays',
      'pulpMass',
      'readyTime',
      'soakedMass',
      'sugarLeft',
    ]);
  });

  test.each([
    ['a temperature for a length', 'headspaceDepth', 'temperature'],
    ['a mass for a count', 'vesselCount', 'mass'],
    ['a volume for a ratio', 'waterRatio', 'volume'],
    ['a count for a volume', 'milkVolume', 'count'],
    ['a mass for a rate', 'grainRate', 'mass'],
  ] as const)('is %s', (_, row, kind) => {
    const formulation = formulate(recipeOf({ given: [typed(row, 2, kind)] }));
    expect(codesAt(formulation, row)).toEqual(['wrongKind']);
    expect(formulation.rows[row].typed).toBeNull();
  });
});

describe('the ends of a range', () => {
  test.each(numericRowIds.filter((id) => isTypable(numericRows[id])))(
    'of %s are taken, and what lies past them is not',
    (id) => {
      const { least, most, zero } = numericRows[id].range;
      const codes = (amount: number) =>
        codesAt(formulate(recipeOf({ vessel: 'fiveLitre', given: [typed(id, amount)] })), id);
      expect(codes(-1).includes('negative')).toBe(least >= 0);
      expect(codes(0).includes('notPositive')).toBe(zero !== true);
      expect(codes(most * 1.001 + 1)).toEqual(['tooLarge']);
      const outside = ['negative', 'notPositive', 'tooSmall', 'tooLarge', 'unreadable', 'wrongKind'];
      for (const end of [most, ...(least > 0 ? [least] : [])]) {
        expect(codes(end).filter((code) => outside.includes(code))).toEqual([]);
      }
      if (least > 0) expect(codes(least / 2)).toEqual(['tooSmall']);
    },
  );

  test('leave no negative zero', () => {
    const formulation = formulate(recipeOf({ given: [typed('headspaceDepth', -0)] }));
    expect(Object.is(numberIn(formulation, 'headspaceDepth'), 0)).toBe(true);
  });
});

describe('the weight of a millilitre', () => {
  test('is known for rows of solids and liquids, and for no other', () => {
    const { evaluation } = formulate(recipeOf());
    expect(rowWeight(evaluation, numericRows.sourceMass)).toBeCloseTo(143 / cup, 12);
    expect(rowWeight(evaluation, numericRows.waterRatio)).toBeNull();
    const dates = formulate(recipeOf({ sweetener: [{ id: 'dates', share: 1 }] }));
    expect(rowWeight(dates.evaluation, numericRows.sweetenerMass)).toBeNull();
  });
});

test('a can of the source is of the size that the cook keeps, and of what is sold in cans', () => {
  const oneCan = (changes: Partial<Recipe>) =>
    formulate(recipeOf({ given: [typed('sourceMass', 1, 'count')], ...changes }));
  const usual = oneCan({ source: 'coconutMilk' });
  expect(numberIn(usual, 'sourceMass')).toBeCloseTo(400 * usual.of('sourceWeight'), 9);
  const small = oneCan({ source: 'coconutMilk', yours: { 'coconutMilk.canSize': { value: 160, how: 'typed' } } });
  expect(numberIn(small, 'sourceMass')).toBeCloseTo(160 * usual.of('sourceWeight'), 9);
  expect(codesAt(oneCan({ source: 'almond' }), 'sourceMass')).toContain('noCan');
});

test('a packet is of starter powder alone, and of the weight that the cook keeps', () => {
  const packets = (changes: Partial<Recipe>) =>
    formulate(recipeOf({ given: [typed('grainMass', 2, 'count')], ...changes }));
  expect(numberIn(packets({ grains: 'powder' }), 'grainMass')).toBe(6);
  const own = { 'powder.packet': { value: 5, how: 'typed' } } as const;
  expect(numberIn(packets({ grains: 'powder', yours: own }), 'grainMass')).toBe(10);
  for (const grains of ['water', 'milk', 'kefir'] as const)
    expect(codesAt(packets({ grains }), 'grainMass')).toContain('noPacket');
});

test('a share typed for the culture is one of the weight of the milk', () => {
  const formulation = formulate(recipeOf({ grains: 'kefir', given: [typed('grainRate', 3, 'share')] }));
  const milk = formulation.of('milkVolume') * formulation.of('usualMilkDensity');
  expect(numberIn(formulation, 'grainMass')).toBeCloseTo(0.03 * milk, 9);
});
