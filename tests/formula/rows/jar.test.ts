import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { recipeOf, tightBag, twoInches, typed } from '../../batches';
import { codesAt, numberIn, problemAt, worked } from '../../results';

// The wide-mouth quart by hand: brimful 946.352946 × 1.06 = 1003.134 mL. Neck 7.6 cm across and 2.25 cm high:
// π × 3.8² × 2.25 = 102.070 mL. Shoulder 1.5 cm, radius 3.8 to 4.5: π × 1.5 × (3.8² + 3.8 × 4.5 + 4.5²)/3 = 81.351 mL.
// Body 9 cm across: π × 4.5² = 63.617 mL a cm.
const quart = recipeOf({ yours: twoInches });

describe('number of jars', () => {
  test('is one, unless something asks for more', () => {
    expect(worked(quart, 'vesselCount')).toBe(1);
  });

  test('is the fewest that keep the headspace: 3 L of milk fill 3200.8 mL, and 740.19 mL go in each', () => {
    const formulation = formulate({ ...quart, given: [typed('milkVolume', 3000)] });
    expect(formulation.of('totalFill')).toBeCloseTo(3200.8, 0);
    expect(numberIn(formulation, 'vesselCount')).toBe(5);
    expect(codesAt(formulation, 'vesselCount')).toEqual(['severalJars']);
  });

  test('does not take another jar for a hair of rounding', () => {
    const two = worked(recipeOf({ given: [typed('vesselCount', 2)] }), 'milkVolume');
    expect(worked(recipeOf({ given: [typed('milkVolume', two)] }), 'vesselCount')).toBe(2);
  });

  test.each([
    ['caneWhite', 300],
    ['caneWhite', 330],
    ['none', 300],
    ['none', 330],
  ] as const)(
    'of a typed fill, sweetened with %s, is the whole number nearest to what %s g usually fill',
    (id, grams) => {
      const given = [typed('sourceMass', grams), typed('fillVolume', 700)];
      const formulation = formulate(recipeOf({ given, sweetener: [{ id, share: 1 }] }));
      // Almonds usually give 5.0884 mL a gram; 25 g/L of sugar ÷ 1.0505 take 0.62 mL a gram, 54 g/L of grains 1 ÷ 1.03.
      const sweetened = id === 'none' ? 0 : (0.025 / 1.0505) * 0.62;
      const usual = grams * 5.0884 * (1 + sweetened + 0.054 / 1.03);
      expect(numberIn(formulation, 'vesselCount')).toBe(Math.round(usual / 700));
    },
  );

  test('of a typed fill is one at least, however little there is to fill it', () => {
    for (const id of ['caneWhite', 'none'] as const) {
      const given = [typed('sourceMass', 10), typed('fillVolume', 700)];
      expect(worked(recipeOf({ given, sweetener: [{ id, share: 1 }] }), 'vesselCount')).toBe(1);
    }
  });

  test.each([1.5, 2.001])('refuses %s jars', (jars) => {
    expect(codesAt(formulate(recipeOf({ given: [typed('vesselCount', jars)] })), 'vesselCount')).toEqual(['notWhole']);
  });

  test('refuses none and a thousand and one', () => {
    expect(codesAt(formulate(recipeOf({ given: [typed('vesselCount', 0)] })), 'vesselCount')).toEqual(['notPositive']);
    expect(codesAt(formulate(recipeOf({ given: [typed('vesselCount', 1001)] })), 'vesselCount')).toEqual(['tooLarge']);
  });
});

describe('brimful capacity', () => {
  test('is that of the kind of jar', () => {
    expect(worked(quart, 'brimful')).toBeCloseTo(946.352946 * 1.06, 6);
  });

  test('typed makes it a jar of its own, with the shape of its kind', () => {
    const formulation = formulate({ ...quart, given: [typed('brimful', 1200)] });
    expect(numberIn(formulation, 'brimful')).toBe(1200);
    expect(numberIn(formulation, 'headspaceVolume')).toBeCloseTo(262.94, 2);
    expect(numberIn(formulation, 'fillVolume')).toBeCloseTo(1200 - 262.94, 2);
  });

  test('is read from the weight of the water it holds', () => {
    const weighed = formulate(recipeOf({ given: [typed('brimful', 1000, 'mass')] }));
    expect(numberIn(weighed, 'brimful')).toBeCloseTo(1000 / 0.9982, 1);
  });

  test('refuses a jar smaller than its neck and shoulder, and says what those hold', () => {
    const small = formulate(recipeOf({ given: [typed('brimful', 150)] }));
    expect(problemAt(small, 'brimful', 'jarTooSmall')).toMatchObject({ least: expect.closeTo(183.42, 2) });
    expect(problemAt(small, 'milkVolume', 'waits')).toMatchObject({ for: 'brimful' });
  });
});

describe('headspace', () => {
  test('is a fifth of the jar', () => {
    // 0.2 × 1003.134 = 200.627 mL: 17.206 mL into the body, 17.206 ÷ 63.617 = 0.270 cm below 3.75 cm.
    const usual = formulate(recipeOf());
    expect(numberIn(usual, 'headspaceVolume')).toBeCloseTo(200.627, 2);
    expect(numberIn(usual, 'headspaceDepth')).toBeCloseTo(4.02, 2);
    const large = formulate(recipeOf({ vessel: 'fiveLitre' }));
    expect(numberIn(large, 'headspaceVolume') / numberIn(large, 'brimful')).toBeCloseTo(0.2, 9);
  });

  test('is never under 2.5 cm: a pint keeps more than its fifth', () => {
    const pint = formulate(recipeOf({ vessel: 'pint' }));
    expect(numberIn(pint, 'headspaceDepth')).toBe(2.5);
    expect(numberIn(pint, 'headspaceVolume') / numberIn(pint, 'brimful')).toBeGreaterThan(0.2);
  });

  test('gives way to the least that is wise before a batch takes one jar more, and says so', () => {
    // 170 g almonds, 3 ¼ cups of water, 18 g sugar, 38 g grains: a quart batch.
    const given = [
      typed('sourceMass', 170),
      typed('blendWater', 769),
      typed('sweetenerMass', 18),
      typed('grainMass', 38),
    ];
    const full = formulate(tightBag({ given, yours: { 'kitchen.headspaceUsual': { value: 2.5, how: 'typed' } } }));
    expect(full.of('totalFill')).toBeCloseTo(817, -1);
    expect(numberIn(full, 'vesselCount')).toBe(1);
    expect(full.of('totalFill')).toBeGreaterThan(full.of('fillAllowed'));
    expect(codesAt(full, 'headspaceDepth')).toEqual(['fullerThanUsual']);
    // With the bag of the table, which passes more, it is a little over what is wise: so much is kept to drink.
    const fuller = formulate(recipeOf({ given }));
    expect(numberIn(fuller, 'vesselCount')).toBe(1);
    expect(problemAt(fuller, 'headspaceDepth', 'headspaceUnderWise')).toMatchObject({ over: expect.closeTo(24, -1) });
    expect(codesAt(formulate(recipeOf({ given: [typed('drinkVolume', 700)] })), 'headspaceDepth')).toEqual([]);
  });

  test('below that least, by depth or by share, takes another jar', () => {
    // The wide quart at 2.5 cm has 113.7 mL free, more than a tenth of it: 889.4 mL go in.
    const fits = formulate(recipeOf({ given: [typed('fillVolume', 800)] })).of('fillMost');
    expect(fits).toBeCloseTo(889.4, 0);
    // In five litres a tenth is deeper than 2.5 cm.
    expect(formulate(recipeOf({ vessel: 'fiveLitre' })).of('fillMost')).toBeCloseTo(0.9 * 5300, 6);
    expect(worked(recipeOf({ given: [typed('milkVolume', 900)] }), 'vesselCount')).toBe(2);
    const brim = formulate(recipeOf({ vessel: 'fiveLitre', given: [typed('headspaceDepth', 2.5)] }));
    expect(codesAt(brim, 'headspaceDepth')).toEqual(['headspaceUnderWise']);
  });

  test('is 5 cm, which reaches 1.25 cm into the body: 102.070 + 81.351 + 1.25 × 63.617 = 262.94 mL', () => {
    const formulation = formulate(quart);
    expect(numberIn(formulation, 'headspaceDepth')).toBe(5);
    expect(numberIn(formulation, 'headspaceVolume')).toBeCloseTo(262.94, 2);
  });

  test('typed as depth gives its room; typed as room gives its depth', () => {
    expect(worked(recipeOf({ given: [typed('headspaceDepth', 2.25)] }), 'headspaceVolume')).toBeCloseTo(102.07, 2);
    expect(worked(recipeOf({ given: [typed('headspaceVolume', 102.0703453)] }), 'headspaceDepth')).toBeCloseTo(2.25, 6);
  });

  test('of nothing at all fills to the brim, with a caution', () => {
    const brim = formulate(recipeOf({ given: [typed('headspaceDepth', 0)] }));
    expect(numberIn(brim, 'headspaceVolume')).toBe(0);
    expect(numberIn(brim, 'fillVolume')).toBe(numberIn(brim, 'brimful'));
    expect(codesAt(brim, 'headspaceDepth')).toEqual(['headspaceUnderWise']);
  });

  test('refuses a depth that leaves no jar, and says how deep it is', () => {
    // (1003.134 − 183.421) ÷ 63.617 = 12.885 cm of body under 3.75 cm of neck and shoulder.
    const deep = formulate(recipeOf({ given: [typed('headspaceDepth', 17)] }));
    expect(problemAt(deep, 'headspaceDepth', 'headspaceTooDeep')).toMatchObject({ depth: expect.closeTo(16.635, 3) });
  });

  test('that is usual, but deeper than a small jar of one’s own, is refused at its root', () => {
    const squat = formulate({ ...quart, given: [typed('brimful', 200), typed('sourceMass', 100)] });
    expect(codesAt(squat, 'headspaceDepth')).toEqual(['headspaceTooDeep']);
    expect(problemAt(squat, 'vesselCount', 'waits')).toMatchObject({ for: 'headspaceDepth' });
    const filled = formulate({ ...quart, given: [typed('brimful', 200)] });
    expect(codesAt(filled, 'headspaceDepth')).toEqual(['headspaceTooDeep']);
    expect(problemAt(filled, 'milkVolume', 'waits')).toMatchObject({ for: 'headspaceDepth' });
  });

  test('refuses a room as large as the jar', () => {
    const all = formulate(recipeOf({ given: [typed('headspaceVolume', 1100)] }));
    expect(problemAt(all, 'headspaceVolume', 'roomTooLarge')).toMatchObject({ brimful: expect.closeTo(1003.13, 2) });
  });

  test('waits for a brimful capacity that cannot be read', () => {
    const formulation = formulate(recipeOf({ given: [typed('brimful', null), typed('headspaceVolume', 200)] }));
    expect(codesAt(formulation, 'brimful')).toEqual(['unreadable']);
    expect(problemAt(formulation, 'fillVolume', 'waits')).toMatchObject({ for: 'brimful' });
  });
});

describe('fill', () => {
  test('is brimful less the room left: 1003.13 − 262.94 = 740.19 mL', () => {
    expect(worked(quart, 'fillVolume')).toBeCloseTo(740.19, 2);
  });

  test('is shared equally among several jars', () => {
    const formulation = formulate({ ...quart, given: [typed('milkVolume', 3000)] });
    expect(numberIn(formulation, 'fillVolume')).toBeCloseTo(formulation.of('totalFill') / 5, 9);
  });

  test('to the very brim is taken, a drop more is refused', () => {
    const brim = 946.352946 * 1.06;
    expect(worked(recipeOf({ given: [typed('fillVolume', brim)] }), 'headspaceVolume')).toBe(0);
    const over = formulate(recipeOf({ given: [typed('fillVolume', brim + 0.01)] }));
    expect(codesAt(over, 'fillVolume')).toEqual(['fillOverBrim']);
  });

  test('that runs over is told where the room would be', () => {
    const over = formulate(recipeOf({ given: [typed('vesselCount', 1), typed('milkVolume', 1500)] }));
    const fill = numberIn(over, 'fillVolume');
    expect(problemAt(over, 'headspaceVolume', 'overBrim')).toMatchObject({ over: expect.closeTo(fill - 1003.134, 2) });
    expect(problemAt(over, 'headspaceDepth', 'waits')).toMatchObject({ for: 'headspaceVolume' });
    expect(numberIn(over, 'vesselCount')).toBe(1);
  });
});
