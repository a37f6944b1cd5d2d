import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { rowOrder } from '../../../src/formula/recipe/order';
import { severities } from '../../../src/formula/recipe/problem';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { leftOutAt } from '../../../src/formula/rows/pressure-left-out';
import { anyRecipe, measuredRecipe, tightBag as recipeOf, sensibleRecipe, typed } from '../../batches';
import { codesAt, differences, numberIn, problemAt, rounding, worked } from '../../results';

const given = (...cells: Recipe['given']): Recipe => recipeOf({ given: cells });
const measured = (amount: number, ...cells: Recipe['given']): Recipe =>
  recipeOf({ given: cells, measured: { sugarLeft: { kind: 'concentration', amount } } });
const noBottle = typed('bottleTime', 0);

/** A value of a row of this recipe where it has one, and of the same recipe with one more cell typed. */
function compareTyped(recipe: Recipe, one: Recipe['given'][number], other: Recipe['given'][number]) {
  const rest = recipe.given.filter(({ row }) => row !== one.row);
  return [one, other].map((cell) => formulate({ ...recipe, given: [...rest, cell] }));
}

describe('sealed for long', () => {
  const codes = (...cells: Recipe['given']) => codesAt(formulate(given(...cells)), 'bottleTime');

  test('and warm is cautioned, cold or for a day is not', () => {
    expect(codes(typed('bottleTime', 120))).toContain('sealedLong');
    expect(codes(typed('bottleTime', 24))).not.toContain('sealedLong');
    expect(codes(typed('bottleTime', 120), typed('bottleTemperature', 4))).not.toContain('sealedLong');
  });
});

describe('sugar left when strained', () => {
  test('is what is likely left: 33.788 g/L × (1 − 0.35) = 21.962', () => {
    expect(worked(recipeOf(), 'sugarLeft')).toBeCloseTo(21.962, 3);
  });

  test('measured takes the place of the whole start if forgotten: (38.612 + 10 × 11.1015) ÷ 2.8986e-4 = 5.162 bar', () => {
    const formulation = formulate(measured(10));
    expect(formulation.rows.sugarLeft).toMatchObject({ status: 'measured', value: 10, problems: [] });
    expect(numberIn(formulation, 'bottlePressureForgotten')).toBeCloseTo(5.162, 2);
  });

  test('measured as none leaves what is dissolved: 38.612 ÷ 2.8986e-4 = 1.332 bar', () => {
    expect(worked(measured(0), 'bottlePressureForgotten')).toBeCloseTo(1.3321, 3);
  });

  test('that is more than there was is said to be a wrong reading, and counts all the same', () => {
    const formulation = formulate(measured(60));
    expect(codesAt(formulation, 'sugarLeft')).toEqual(['measuredImpossible']);
    expect(numberIn(formulation, 'bottlePressureForgotten')).toBeGreaterThan(
      worked(recipeOf(), 'bottlePressureForgotten'),
    );
  });

  test('as much as there was, within a kitchen’s measure, is no wrong reading', () => {
    expect(codesAt(formulate(measured(33.9)), 'sugarLeft')).toEqual([]);
  });

  test('below none is refused, and gives no credit', () => {
    const formulation = formulate(measured(-1));
    expect(codesAt(formulation, 'sugarLeft')).toContain('negative');
    expect(numberIn(formulation, 'bottlePressureForgotten')).toBe(worked(recipeOf(), 'bottlePressureForgotten'));
  });

  test('measured resizes nothing: only the bottle’s pressures move', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 0, max: 60 }), (recipe, amount) => {
        const reading = { ...recipe, measured: { sugarLeft: { kind: 'concentration', amount } } } as const;
        const moved = differences(formulate(recipe), formulate(reading)).map((line) => line.split(':')[0]);
        for (const row of moved) {
          expect(['sugarLeft', 'bottlePressureLikely', 'bottlePressureForgotten']).toContain(row);
        }
      }),
    );
  });
});

describe('sugar added to the bottle', () => {
  test('is none, unless typed', () => {
    expect(formulate(recipeOf()).rows.bottleSugar).toMatchObject({ status: 'workedOut', value: 0 });
  });

  test('of 10 g/L adds 10 × 11.1015 ÷ 2.8986e-4 = 3.830 bar if forgotten', () => {
    const [without, by10] = [recipeOf(), given(typed('bottleSugar', 10))];
    expect(worked(by10, 'bottlePressureForgotten') - worked(without, 'bottlePressureForgotten')).toBeCloseTo(3.83, 2);
  });

  test('below none, or a syrup, is refused', () => {
    expect(codesAt(formulate(given(typed('bottleSugar', -1))), 'bottleSugar')).toContain('negative');
    expect(codesAt(formulate(given(typed('bottleSugar', 301))), 'bottleSugar')).toContain('tooLarge');
  });

  test('never lowers a pressure', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 0, max: 30 }), fc.integer({ min: 1, max: 30 }), (recipe, a, b) => {
        const [less, more] = compareTyped(recipe, typed('bottleSugar', a), typed('bottleSugar', a + b));
        for (const row of ['bottlePressureLikely', 'bottlePressureForgotten'] as const) {
          const [low, high] = [less?.rows[row].value, more?.rows[row].value];
          if (typeof low === 'number' && typeof high === 'number') expect(high).toBeGreaterThanOrEqual(low);
          else expect(typeof low).toBe(typeof high);
        }
      }),
    );
  });
});

describe('the second ferment', () => {
  test('is 8 h; 6 to 10 h pass without a word', () => {
    expect(worked(recipeOf(), 'bottleTime')).toBe(8);
    expect(codesAt(formulate(given(typed('bottleTime', 6))), 'bottleTime')).toEqual([]);
    expect(codesAt(formulate(given(typed('bottleTime', 10))), 'bottleTime')).toEqual([]);
    expect(codesAt(formulate(given(typed('bottleTime', 24))), 'bottleTime')).toEqual(['outsideUsual']);
  });

  test('of no time is no bottle: none of its figures is there, and nothing is complained of', () => {
    const { rows } = formulate(given(noBottle));
    for (const row of [
      'bottleTemperature',
      'bottleVolume',
      'bottleHeadspace',
      'bottleCount',
      'bottlePressureLikely',
      'bottlePressureForgotten',
      'bottleSugarMost',
    ] as const) {
      expect(rows[row]).toMatchObject({ status: 'absent', absence: 'noBottle', value: null, problems: [] });
    }
    expect(rows.bottleTime.problems).toEqual([]);
  });

  test('below no time is refused, and the bottle waits for it', () => {
    const formulation = formulate(given(typed('bottleTime', -2)));
    expect(codesAt(formulation, 'bottleTime')).toEqual(['negative']);
    expect(problemAt(formulation, 'bottlePressureLikely', 'waits')).toMatchObject({ for: 'bottleTime' });
  });

  test('never moves a forgotten bottle, and more of it never lowers the likely pressure', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 1, max: 20 }), fc.integer({ min: 1, max: 20 }), (recipe, a, b) => {
        const [short, long] = compareTyped(recipe, typed('bottleTime', a), typed('bottleTime', a + b));
        expect(long?.rows.bottlePressureForgotten.value).toBe(short?.rows.bottlePressureForgotten.value);
        const [low, high] = [short?.rows.bottlePressureLikely.value, long?.rows.bottlePressureLikely.value];
        if (typeof low === 'number' && typeof high === 'number') expect(high).toBeGreaterThanOrEqual(low);
      }),
    );
  });
});

describe('the temperature of the bottle', () => {
  test('is that of the room, unless typed', () => {
    expect(worked(given(typed('roomTemperature', 24)), 'bottleTemperature')).toBe(24);
    expect(worked(given(typed('roomTemperature', 24), typed('bottleTemperature', 19)), 'bottleTemperature')).toBe(19);
  });

  test('may be that of a cold refrigerator, and of no freezer', () => {
    expect(worked(given(typed('bottleTemperature', -1)), 'bottleTemperature')).toBe(-1);
    expect(codesAt(formulate(given(typed('bottleTemperature', -3))), 'bottleTemperature')).toEqual(['tooSmall']);
  });

  test('under 30 °C leaves a forgotten bottle where it was; over it the bottle’s own counts', () => {
    const usual = worked(recipeOf(), 'bottlePressureForgotten');
    expect(worked(given(typed('bottleTemperature', 29)), 'bottlePressureForgotten')).toBe(usual);
    expect(worked(given(typed('bottleTemperature', 36)), 'bottlePressureForgotten')).toBeGreaterThan(usual);
  });

  test('of 60 °C is the warmest, of 61 °C refused', () => {
    expect(codesAt(formulate(given(typed('bottleTemperature', 60))), 'bottleTemperature')).toEqual([]);
    expect(codesAt(formulate(given(typed('bottleTemperature', 61))), 'bottleTemperature')).toContain('tooLarge');
  });

  test('is told to be outside the models only where the likely pressure needs them', () => {
    const formulation = formulate(given(typed('bottleTemperature', 10)));
    expect(codesAt(formulation, 'bottlePressureLikely')).toEqual(['outsideModels']);
    expect(formulation.rows.bottlePressureForgotten.value).not.toBeNull();
  });

  test('raises both pressures as it rises', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 16, max: 29 }), (recipe, celsius) => {
        const [cool, warm] = compareTyped(
          recipe,
          typed('bottleTemperature', celsius),
          typed('bottleTemperature', celsius + 1),
        );
        const [low, high] = [cool?.rows.bottlePressureLikely.value, warm?.rows.bottlePressureLikely.value];
        if (typeof low === 'number' && typeof high === 'number' && low > 0) expect(high).toBeGreaterThan(low);
      }),
    );
  });
});

describe('one bottle', () => {
  test('holds half a litre, with a twentieth left empty', () => {
    expect(worked(recipeOf(), 'bottleVolume')).toBe(500);
    expect(worked(recipeOf(), 'bottleHeadspace')).toBe(25);
    expect(worked(given(typed('bottleVolume', 750)), 'bottleHeadspace')).toBe(37.5);
  });

  test('of a thimble is refused', () => {
    expect(codesAt(formulate(given(typed('bottleVolume', 49))), 'bottleVolume')).toContain('tooSmall');
  });

  test('of another size with the same share empty has the same pressure', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 5000 }), (volume) => {
        const pressure = worked(given(typed('bottleVolume', volume)), 'bottlePressureForgotten');
        expect(pressure / worked(recipeOf(), 'bottlePressureForgotten')).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('what is left empty', () => {
  test('of 3 % is the least; less is refused, and the pressure waits', () => {
    expect(codesAt(formulate(given(typed('bottleHeadspace', 15))), 'bottleHeadspace')).toEqual([]);
    const fuller = formulate(given(typed('bottleHeadspace', 14.9)));
    expect(problemAt(fuller, 'bottleHeadspace', 'bottleTooFull')).toMatchObject({ least: 15 });
    expect(problemAt(fuller, 'bottlePressureForgotten', 'waits')).toMatchObject({ for: 'bottleHeadspace' });
  });

  test('may be typed as a share', () => {
    expect(worked(given(typed('bottleHeadspace', 10, 'share')), 'bottleHeadspace')).toBeCloseTo(50, 9);
  });

  test('of the whole bottle is refused', () => {
    expect(codesAt(formulate(given(typed('bottleHeadspace', 500))), 'bottleHeadspace')).toEqual(['roomTooLarge']);
  });

  test('lowers both pressures: fuller bottles are the harder ones', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 3, max: 60 }), fc.integer({ min: 1, max: 30 }), (recipe, a, b) => {
        const [full, empty] = compareTyped(
          recipe,
          typed('bottleHeadspace', a, 'share'),
          typed('bottleHeadspace', a + b, 'share'),
        );
        for (const row of ['bottlePressureLikely', 'bottlePressureForgotten'] as const) {
          const [high, low] = [full?.rows[row].value, empty?.rows[row].value];
          if (typeof low === 'number' && typeof high === 'number' && high > 0) expect(low).toBeLessThan(high);
        }
      }),
    );
  });
});

describe('bottles to fill', () => {
  test('are the fewest that take it all: 695 mL into 475 mL each are 2', () => {
    expect(worked(recipeOf(), 'bottleCount')).toBe(2);
  });

  test('are no more where it comes out even', () => {
    expect(worked(given(typed('drinkVolume', 950)), 'bottleCount')).toBe(2);
    expect(worked(given(typed('drinkVolume', 951)), 'bottleCount')).toBe(3);
  });

  test('are none, and not less than none, where there is nothing to drink', () => {
    const recipe = recipeOf({ vessel: 'pint', given: [typed('grainMass', 243)] });
    expect(Object.is(worked(recipe, 'bottleCount'), 0)).toBe(true);
  });

  test('can’t be typed', () => {
    expect(codesAt(formulate(given(typed('bottleCount', 3))), 'bottleCount')).toContain('notTyped');
  });

  test('hold all the kefir, and one fewer would not', () => {
    fc.assert(
      fc.property(sensibleRecipe, (recipe) => {
        const { rows } = formulate(recipe);
        const [count, drink, whole, empty] = [
          rows.bottleCount.value,
          rows.drinkVolume.value,
          rows.bottleVolume.value,
          rows.bottleHeadspace.value,
        ];
        if (typeof count !== 'number' || typeof drink !== 'number') return;
        if (typeof whole !== 'number' || typeof empty !== 'number') return;
        expect(count * (whole - empty)).toBeGreaterThanOrEqual(drink * (1 - rounding));
        if (count > 0) expect((count - 1) * (whole - empty)).toBeLessThan(drink);
      }),
    );
  });
});

// By hand for almonds: water share 0.894819, gas space 25 ÷ 475 = 0.0526316 per mL, 38.612 mol/m³ dissolved at 21 °C.
describe('the likely pressure', () => {
  test('is (0.5 × 38.612 + 2000 × 0.4 × 0.108523 × 21.962 ÷ 180.156) ÷ (3.8107e-4 × 0.894819 + 0.0526316 ÷ (R × 294.15))', () => {
    // 29.890 mol/m³ ÷ 3.6336e-4 = 82 260 Pa.
    expect(worked(recipeOf(), 'bottlePressureLikely')).toBeCloseTo(0.8245, 3);
  });

  test('is not told outside the models, and says where they hold', () => {
    expect(
      problemAt(formulate(given(typed('bottleTemperature', 31))), 'bottlePressureLikely', 'outsideModels'),
    ).toMatchObject({ celsius: 31, coolest: 16, warmest: 30 });
  });
});

describe('the pressure of a forgotten bottle', () => {
  test('is (38.612 + 33.788 × 11.1015) ÷ (3.006e-4 × 0.894819 + 0.0526316 ÷ (R × 303.15)) = 14.27 bar', () => {
    const formulation = formulate(recipeOf());
    expect(numberIn(formulation, 'bottlePressureForgotten')).toBeCloseTo(14.2725, 2);
    expect(problemAt(formulation, 'bottlePressureForgotten', 'beyondFormula')).toMatchObject({ most: 10 });
  });

  test('over a limit says so, what the sums leave out counted', () => {
    const pressure = worked(recipeOf(), 'bottlePressureForgotten');
    const limit = pressure + leftOutAt(pressure);
    const codes = (bar: number) => codesAt(formulate(given(typed('bottleLimit', bar))), 'bottlePressureForgotten');
    expect(codes(limit + 0.01)).not.toContain('overLimit');
    expect(codes(limit - 0.01)).toContain('overLimit');
  });

  test('is never below the likely one', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleRecipe, measuredRecipe, anyRecipe), (recipe) => {
        const { rows } = formulate(recipe);
        const [likely, forgotten] = [rows.bottlePressureLikely.value, rows.bottlePressureForgotten.value];
        if (typeof likely !== 'number' || typeof forgotten !== 'number') return;
        expect(forgotten).toBeGreaterThanOrEqual(likely * (1 - rounding));
      }),
      { numRuns: 500 },
    );
  });
});

describe('the maker’s limit', () => {
  test('is not there until it is typed, and moves nothing but what it allows', () => {
    expect(formulate(recipeOf()).rows.bottleLimit).toMatchObject({ status: 'absent', absence: 'noLimit', value: null });
    const moved = differences(formulate(recipeOf()), formulate(given(typed('bottleLimit', 6))));
    expect(moved.map((line) => line.split(':')[0])).toEqual(['bottleLimit', 'bottleSugarMost']);
  });

  test('of next to nothing is refused', () => {
    expect(codesAt(formulate(given(typed('bottleLimit', 0.05))), 'bottleLimit')).toContain('tooSmall');
    expect(codesAt(formulate(given(typed('bottleLimit', 101))), 'bottleLimit')).toContain('tooLarge');
  });
});

describe('the most sugar under the limit', () => {
  test('is (5.4235e5 × 2.8986e-4 − 38.612) ÷ 11.1015 = 10.683 g/L for 6 bar', () => {
    expect(worked(given(typed('bottleLimit', 6)), 'bottleSugarMost')).toBeCloseTo(10.683, 2);
  });

  test('is none where what is dissolved already reaches it, and says so', () => {
    const formulation = formulate(given(typed('bottleLimit', 1)));
    expect(numberIn(formulation, 'bottleSugarMost')).toBe(0);
    expect(codesAt(formulation, 'bottleSugarMost')).toEqual(['noSugarUnderLimit']);
  });

  test('over what the solubility is published for is said to be rough', () => {
    expect(codesAt(formulate(given(typed('bottleLimit', 11))), 'bottleSugarMost')).toEqual([]);
    expect(codesAt(formulate(given(typed('bottleLimit', 11.1))), 'bottleSugarMost')).toEqual(['beyondFormula']);
  });

  test('brings a forgotten bottle just to the limit, with what the sums leave out', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 20, max: 100 }), (recipe, tenths) => {
        const limit = tenths / 10;
        const rest = recipe.given.filter(({ row }) => row !== 'bottleLimit' && row !== 'bottleSugar');
        const limited = { ...recipe, given: [...rest, typed('bottleLimit', limit)] };
        const most = formulate(limited).rows.bottleSugarMost.value;
        if (typeof most !== 'number' || most === 0 || most > 300) return;
        const sealed = {
          ...limited,
          given: [...limited.given, typed('bottleSugar', most)],
          measured: { sugarLeft: { kind: 'concentration', amount: 0 } },
        } as const;
        const pressure = worked(sealed, 'bottlePressureForgotten');
        expect((pressure + leftOutAt(pressure)) / limit).toBeCloseTo(1, 9);
      }),
    );
  });
});

test('whatever is typed, a bottle has figures or says what to mend', () => {
  fc.assert(
    fc.property(anyRecipe, (recipe) => {
      const { rows } = formulate(recipe);
      for (const id of rowOrder.filter((row) => row.startsWith('bottle'))) {
        const { value, status, problems } = rows[id];
        if (typeof value === 'number') expect(Number.isFinite(value), id).toBe(true);
        if (status === 'refused')
          expect(
            problems.some(({ code }) => severities[code] === 'refusal'),
            id,
          ).toBe(true);
      }
    }),
  );
});
