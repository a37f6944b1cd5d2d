import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { amountRows, isOnHandRow } from '../../../src/formula/recipe/order';
import type { Given } from '../../../src/formula/recipe/recipe';
import { workingIn } from '../../../src/formula/working/working';
import { numericRowIds, onHand, tightBag as recipeOf, typed } from '../../batches';
import { codesAt, differences, numberIn, problemAt } from '../../results';

function sheet(...given: readonly Given[]) {
  return formulate(recipeOf({ given }));
}

const plain = sheet();

describe('a chosen jar', () => {
  test('is a default: with no amount given the batch fills it to its headspace', () => {
    expect(plain.sizedFrom).toBe('jar');
    expect(numberIn(plain, 'headspaceDepth')).toBe(5);
    expect(plain.of('totalFill')).toBeCloseTo(numberIn(plain, 'fillVolume'), 9);
  });

  test('stays the size when only rates are typed', () => {
    const formulation = sheet(typed('waterRatio', 6), typed('sugarRate', 20), typed('grainRate', 60));
    expect(formulation.sizedFrom).toBe('jar');
    expect(numberIn(formulation, 'fillVolume')).toBe(numberIn(plain, 'fillVolume'));
  });
});

describe('the first amount typed', () => {
  test.each([
    ['vesselCount', 3],
    ['fillVolume', 600],
    ['sourceMass', 100],
    ['blendWater', 500],
    ['milkVolume', 500],
    ['drinkVolume', 500],
    ['servings', 2],
  ] as const)('%s resizes the batch, which names it', (row, amount) => {
    const formulation = sheet(typed(row, amount));
    expect(formulation.sizedFrom).toBe(row);
    expect(formulation.rows[row]).toMatchObject({ status: 'given', value: amount, problems: [] });
    const scale = numberIn(formulation, 'milkVolume') / numberIn(plain, 'milkVolume');
    expect(scale).not.toBeCloseTo(1, 2);
    for (const id of ['sourceMass', 'blendWater', 'sweetenerMass', 'grainMass', 'drinkVolume'] as const) {
      expect(numberIn(formulation, id), id).toBeCloseTo(scale * numberIn(plain, id), 6);
    }
    expect(numberIn(formulation, 'waterRatio')).toBeCloseTo(4.5, 9);
  });

  test('is every amount of scale there is', () => {
    expect(amountRows.map((row) => sheet(typed(row, 2)).sizedFrom)).toEqual([...amountRows]);
  });

  test('cleared leaves the batch to the second; the last cleared, it fills the jar again', () => {
    const given = [typed('sourceMass', 400), typed('milkVolume', 900), typed('soakTime', 9)];
    const left = given.filter(({ row }) => row !== 'sourceMass');
    expect(sheet(...given).sizedFrom).toBe('sourceMass');
    expect(sheet(...left).sizedFrom).toBe('milkVolume');
    expect(numberIn(sheet(...left), 'waterRatio')).toBe(4.5);
    const none = sheet(...left.filter(({ row }) => row !== 'milkVolume'));
    expect(none.sizedFrom).toBe('jar');
    expect(differences(plain, none)).toEqual(['soakTime: 10 → 9']);
  });
});

describe('a second amount makes the rate between the two', () => {
  test('source and water: (700 mL × 0.99820) ÷ 140 g', () => {
    const formulation = sheet(typed('sourceMass', 140), typed('blendWater', 700));
    expect(numberIn(formulation, 'waterRatio')).toBeCloseTo((700 * 0.9982) / 140, 4);
    expect(formulation.sizedFrom).toBe('sourceMass');
  });

  test.each([
    ['milkVolume', 700],
    ['drinkVolume', 700],
    ['fillVolume', 740],
  ] as const)('source and %s: both stand, and the water gives way', (row, amount) => {
    const formulation = sheet(typed('sourceMass', 140), typed(row, amount));
    expect(formulation.rows.sourceMass).toMatchObject({ status: 'given', value: 140 });
    expect(formulation.rows[row]).toMatchObject({ status: 'given', value: amount, problems: [] });
    expect(numberIn(formulation, 'waterRatio')).toBeGreaterThan(4.5);
    expect(workingIn(formulation.rows.waterRatio)?.words).toContain('both amounts you typed');
  });

  test('water and milk, too', () => {
    const formulation = sheet(typed('blendWater', 700), typed('milkVolume', 720));
    expect(formulation.rows.blendWater).toMatchObject({ status: 'given', value: 700 });
    expect(formulation.rows.milkVolume).toMatchObject({ status: 'given', value: 720 });
    expect(numberIn(formulation, 'waterRatio')).toBeLessThan(4.5);
  });

  test.each(['sourceMass', 'blendWater'] as const)('milk first and %s second: the same ratio', (row) => {
    const [milk, other] = [typed('milkVolume', 720), typed(row, row === 'sourceMass' ? 150 : 700)];
    const formulation = sheet(milk, other);
    expect(formulation.rows[row]).toMatchObject({ status: 'given', problems: [] });
    expect(differences(formulation, sheet(other, milk))).toEqual([]);
  });

  test('source and headspace: the jar is pinned, and the water gives way', () => {
    const formulation = sheet(typed('sourceMass', 140), typed('headspaceDepth', 4));
    expect(formulation.rows.headspaceDepth).toMatchObject({ status: 'given', value: 4, problems: [] });
    expect(formulation.of('totalFill')).toBeCloseTo(numberIn(formulation, 'fillVolume'), 6);
    expect(numberIn(formulation, 'waterRatio')).not.toBeCloseTo(4.5, 1);
  });

  test('a fill and a source that usually takes no water: the jars nearest to what there is', () => {
    // 1900 g of a drink that weighs 1.02 to 1.04 g a millilitre, sweetened and with its grains, are 2 L in all.
    const given = [typed('sourceMass', 1900), typed('fillVolume', 700)];
    expect(numberIn(formulate(recipeOf({ source: 'cartonPlain', given })), 'vesselCount')).toBe(3);
  });

  test('water for a source that usually takes none: the jar is filled, the source let down', () => {
    const formulation = formulate(recipeOf({ source: 'cartonPlain', given: [typed('blendWater', 200)] }));
    expect(formulation.rows.blendWater).toMatchObject({ status: 'given', value: 200 });
    expect(numberIn(formulation, 'headspaceDepth')).toBe(5);
    expect(formulation.of('totalFill')).toBeCloseTo(numberIn(formulation, 'fillVolume'), 6);
    expect(numberIn(formulation, 'sourceMass')).toBeGreaterThan(400);
  });

  test('milk and glasses: the glass is worked out, not a second size', () => {
    const formulation = sheet(typed('milkVolume', 1000), typed('servings', 5));
    expect(formulation.rows.servings).toMatchObject({ status: 'given', value: 5 });
    expect(numberIn(formulation, 'servingSize')).toBeCloseTo(numberIn(formulation, 'drinkVolume') / 5, 9);
    expect(formulation.sizedFrom).toBe('milkVolume');
  });

  test('glasses first and milk second: the same, named after the milk', () => {
    const [one, other] = [
      sheet(typed('servings', 5), typed('milkVolume', 1000)),
      sheet(typed('milkVolume', 1000), typed('servings', 5)),
    ];
    expect(differences(one, other)).toEqual([]);
    expect(one.sizedFrom).toBe('milkVolume');
  });

  test('glasses and a fill: the number of jars keeps the glass nearest to usual', () => {
    // 12 glasses of 250 mL are 3 L, and a fill of 750 mL gives about 704 mL to drink: 4 jars, 235 mL a glass.
    const formulation = sheet(typed('servings', 12), typed('fillVolume', 750));
    expect(numberIn(formulation, 'vesselCount')).toBe(4);
    expect(numberIn(formulation, 'servingSize')).toBeCloseTo(234.7, 0);
  });

  test('jars and source: the headspace is worked out, the number of jars never changed', () => {
    const formulation = sheet(typed('vesselCount', 2), typed('sourceMass', 200));
    expect(formulation.rows.vesselCount).toMatchObject({ status: 'given', value: 2, problems: [] });
    expect(numberIn(formulation, 'fillVolume')).toBeCloseTo(formulation.of('totalFill') / 2, 9);
    expect(numberIn(formulation, 'headspaceDepth')).toBeGreaterThan(5);
    expect(formulation.sizedFrom).toBe('sourceMass');
    const crowded = sheet(typed('vesselCount', 1), typed('sourceMass', 200));
    expect(numberIn(crowded, 'vesselCount')).toBe(1);
    expect(numberIn(crowded, 'headspaceDepth')).toBeLessThan(5);
  });
});

describe('a third amount that no rate can join', () => {
  test('is a contradiction that names the two and how far off it is', () => {
    const formulation = sheet(typed('sourceMass', 140), typed('blendWater', 700), typed('milkVolume', 600));
    const { value, status, typed: asTyped } = formulation.rows.milkVolume;
    expect(status).toBe('workedOut');
    expect(asTyped).toBe(600);
    expect(problemAt(formulation, 'milkVolume', 'conflict')).toEqual({
      code: 'conflict',
      at: 'milkVolume',
      typed: 600,
      computed: value,
      with: ['sourceMass', 'blendWater'],
    });
  });

  test('is no contradiction where it agrees', () => {
    const two = sheet(typed('sourceMass', 140), typed('blendWater', 700));
    const milk = numberIn(two, 'milkVolume');
    const three = sheet(typed('sourceMass', 140), typed('blendWater', 700), typed('milkVolume', milk));
    expect(codesAt(three, 'milkVolume')).toEqual([]);
    expect(differences(two, three)).toEqual([]);
  });

  test.each([
    ['milk and drink', typed('milkVolume', 700), typed('drinkVolume', 500), ['milkVolume']],
    ['milk and fill', typed('milkVolume', 700), typed('fillVolume', 500), ['milkVolume']],
    ['solids beside a water ratio', typed('waterRatio', 6), typed('milkSolids', 12), ['waterRatio']],
    ['room beside a depth', typed('headspaceDepth', 3), typed('headspaceVolume', 300), ['headspaceDepth']],
    ['sugar at the start beside a rate', typed('sugarRate', 20), typed('startingSugar', 60), ['sugarRate']],
    ['cane sugar beside a sweetener', typed('sweetenerMass', 20), typed('caneEquivalent', 40), ['sweetenerMass']],
    ['grains beside a dose', typed('grainRate', 50), typed('grainMass', 90), ['grainRate']],
  ] as const)('or rate: %s', (_, first, second, against) => {
    const formulation = sheet(first, second);
    expect(formulation.rows[first.row]).toMatchObject({ status: 'given', value: first.amount });
    expect(problemAt(formulation, second.row, 'conflict')).toMatchObject({ typed: second.amount, with: against });
  });
});

describe('sized from anything but the jar', () => {
  test('the fewest jars keep the headspace, filled equally, and the real one is worked out', () => {
    const formulation = sheet(typed('sourceMass', 400));
    const jars = numberIn(formulation, 'vesselCount');
    expect(numberIn(formulation, 'headspaceDepth')).toBeGreaterThanOrEqual(5);
    expect(formulation.of('totalFill') / (jars - 1)).toBeGreaterThan(formulation.of('fillAllowed'));
    expect(codesAt(formulation, 'vesselCount')).toEqual(['severalJars']);
  });

  test('a typed headspace is the least to keep where the water is settled', () => {
    const formulation = sheet(typed('milkVolume', 500), typed('headspaceDepth', 2.5));
    expect(problemAt(formulation, 'headspaceDepth', 'headspaceKept')).toMatchObject({ asked: 2.5 });
    expect(numberIn(formulation, 'headspaceDepth')).toBeGreaterThan(2.5);
  });

  test('a headspace typed twice is the one typed first: 150 mL are in the shoulder of the jar, 3.19 cm deep', () => {
    const sized = typed('milkVolume', 2000);
    const [room, depth] = [typed('headspaceVolume', 150), typed('headspaceDepth', 7)];
    expect(sheet(sized, room, depth).of('headspaceAsked')).toBeCloseTo(3.193, 3);
    expect(sheet(sized, depth, room).of('headspaceAsked')).toBe(7);
  });

  test('a headspace that a typed number of jars cannot keep is a contradiction', () => {
    const formulation = sheet(typed('milkVolume', 850), typed('vesselCount', 1), typed('headspaceDepth', 5));
    expect(problemAt(formulation, 'headspaceDepth', 'conflict')).toMatchObject({ typed: 5, with: ['milkVolume'] });
  });
});

describe('a typed brimful capacity', () => {
  test('makes the jar an own jar and is not a size', () => {
    const formulation = sheet(typed('brimful', 1500));
    expect(formulation.sizedFrom).toBe('jar');
    expect(formulation.of('totalFill')).toBeCloseTo(1500 * 0.8, 2);
  });
});

describe('sweetener and grains by weight', () => {
  test('change the rate, and the size stays', () => {
    const formulation = sheet(typed('sweetenerMass', 30), typed('grainMass', 50));
    expect(formulation.sizedFrom).toBe('jar');
    expect(numberIn(formulation, 'fillVolume')).toBe(numberIn(plain, 'fillVolume'));
    expect(numberIn(formulation, 'grainRate')).toBeCloseTo(50_000 / numberIn(formulation, 'milkVolume'), 9);
  });

  test('on hand size the batch at their rates', () => {
    const grains = sheet(onHand('grainMass', 27));
    expect(grains.sizedFrom).toBe('grainMass');
    expect(numberIn(grains, 'milkVolume')).toBeCloseTo(500, 9);
    const sugar = sheet(onHand('sweetenerMass', 50), typed('sugarRate', 25));
    expect(sugar.sizedFrom).toBe('sweetenerMass');
    expect(numberIn(sugar, 'milkVolume')).toBeCloseTo((50 * 1.050524 * 1000) / 25, 2);
    expect(numberIn(sugar, 'sugarRate')).toBe(25);
  });

  test('on hand can be said of sweetener and grains alone: of any other row it says nothing', () => {
    for (const row of numericRowIds.filter((id) => !isOnHandRow(id))) {
      for (const source of ['almond', 'cartonPlain'] as const) {
        const cell = typed(row, row === 'roomTemperature' ? 21 : 2);
        const marked = formulate(recipeOf({ source, given: [{ ...cell, use: 'onHand' }] }));
        expect(differences(formulate(recipeOf({ source, given: [cell] })), marked), row).toEqual([]);
        expect(marked.failed, row).toBe(false);
      }
    }
  });

  test('on hand and a typed source contradict each other, whichever came first', () => {
    const first = sheet(onHand('grainMass', 27), typed('sourceMass', 300));
    expect(problemAt(first, 'sourceMass', 'conflict')).toMatchObject({ with: ['grainMass'] });
    const second = sheet(typed('sourceMass', 300), onHand('grainMass', 27));
    expect(problemAt(second, 'grainMass', 'conflict')).toMatchObject({ with: ['sourceMass'] });
  });

  test('on hand cannot size a batch that needs none', () => {
    const sweet = formulate(recipeOf({ source: 'coconutDriedSweetened', given: [onHand('sweetenerMass', 20)] }));
    expect(problemAt(sweet, 'milkVolume', 'noRatio')).toMatchObject({ rows: ['sweetenerMass', 'sugarRate'] });
  });

  test('on hand, without anything to ferment in it, do not turn glasses into a share', () => {
    const stevia = recipeOf({ sweetener: [{ id: 'stevia', share: 1 }] });
    const formulation = formulate({ ...stevia, given: [onHand('sweetenerMass', 20), typed('servings', 8)] });
    expect(formulation.sizedFrom).toBe('servings');
    expect(numberIn(formulation, 'drinkVolume')).toBe(2000);
  });
});
