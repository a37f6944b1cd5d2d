import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { fizzOf, tightLidOf } from '../../../src/formula/fizz/fizz';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { anyRecipe, tightBag as recipeOf, sensibleRecipe, typed } from '../../batches';
import { codesAt, rounding, worked } from '../../results';

const given = (...cells: Recipe['given']): Recipe => recipeOf({ given: cells });
const fizz = (recipe: Recipe) => fizzOf(formulate(recipe)) ?? expect.fail('there is no bottle');
const lid = (recipe: Recipe) => tightLidOf(formulate(recipe)) ?? expect.fail('there is no jar');
const places = (recipe: Recipe) => fizz(recipe).warming.map(({ place, celsius }) => [place, celsius]);

describe('a sealed bottle', () => {
  test('has the pressures of its rows', () => {
    const { likely, forgotten } = fizz(recipeOf());
    expect(likely?.pressure).toBeCloseTo(worked(recipeOf(), 'bottlePressureLikely'), 9);
    expect(likely?.celsius).toBe(21);
    expect(forgotten.pressure).toBeCloseTo(worked(recipeOf(), 'bottlePressureForgotten'), 9);
    expect(forgotten.celsius).toBe(30);
  });

  test('is shown from the fridge over its room to a warm kitchen', () => {
    expect(places(recipeOf())).toEqual([
      ['fridge', 4],
      ['bottle', 21],
      ['warm', 30],
    ]);
  });

  test('fermented elsewhere is shown in the room as well, from cold to warm', () => {
    expect(places(given(typed('bottleTemperature', 18)))).toEqual([
      ['fridge', 4],
      ['bottle', 18],
      ['room', 21],
      ['warm', 30],
    ]);
    expect(places(given(typed('bottleTemperature', 2))).map(([place]) => place)).toEqual([
      'bottle',
      'fridge',
      'room',
      'warm',
    ]);
  });

  test('warm already is shown warm once, under the name of where it ferments', () => {
    expect(places(given(typed('bottleTemperature', 34)))).toEqual([
      ['fridge', 4],
      ['room', 21],
      ['bottle', 34],
    ]);
  });

  // By hand: 29.890 mol/m³ of liquid; at 4 °C 6.482e-4 × 0.89482 + 0.0526316 ÷ (8.314463 × 277.15) = 6.0286e-4:
  // 0.4958 bar, of which 49 580 × 5.8002e-4 = 28.76 mol/m³ dissolved, × 44.0095 ÷ 1000 ÷ 1.977 = 0.640 volumes.
  test('in the fridge has 0.496 bar of the 0.825 of its room, and 0.64 volumes', () => {
    const [cold] = fizz(recipeOf()).warming;
    expect(cold?.likely?.pressure).toBeCloseTo(0.4958, 3);
    expect(cold?.likely?.volumes).toBeCloseTo(0.64, 2);
  });

  test('gains pressure and loses volumes with each warmer place, never under the likely', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleRecipe, anyRecipe), (recipe) => {
        const found = fizzOf(formulate(recipe));
        if (found === null || found.warming.some(({ celsius }) => celsius < 0)) return;
        found.warming.forEach(({ likely, forgotten }, at) => {
          const before = found.warming[at - 1]?.forgotten;
          if (before !== undefined) {
            expect(forgotten.pressure).toBeGreaterThan(before.pressure);
            expect(forgotten.volumes).toBeLessThan(before.volumes);
          }
          if (likely !== null) expect(forgotten.pressure).toBeGreaterThanOrEqual(likely.pressure * (1 - rounding));
        });
        expect(found.forgotten.pressure).toBe(Math.max(...found.warming.map((step) => step.forgotten.pressure)));
      }),
    );
  });

  test('too warm for the models has no likely figure anywhere, and is bounded all the same', () => {
    const { likely, forgotten, warming } = fizz(given(typed('bottleTemperature', 34)));
    expect(likely).toBeNull();
    expect(warming.every((step) => step.likely === null)).toBe(true);
    expect(forgotten.pressure).toBeGreaterThan(0);
  });

  test('is none without a second ferment, and none while its rows wait', () => {
    expect(fizzOf(formulate(given(typed('bottleTime', 0))))).toBeNull();
    expect(fizzOf(formulate(given(typed('bottleHeadspace', 1))))).toBeNull();
  });
});

describe('the verdict', () => {
  // With 8 g/L left, by measure, a forgotten bottle comes to 4.386 bar; 0.4 + 0.006 × 4.386² = 0.515 may be left out.
  const measured = (limit: number | null) =>
    fizz({
      ...given(...(limit === null ? [] : [typed('bottleLimit', limit)])),
      measured: { sugarLeft: { kind: 'concentration', amount: 8 } },
    });
  test.each([
    ['noLimit', null],
    ['over', 4.38],
    ['close', 4.4],
    ['close', 4.79],
    ['holds', 4.92],
  ] as const)('is %s at %s bar', (verdict, limit) => {
    expect(measured(limit).verdict).toBe(verdict);
  });

  test('is never that it holds where the pressure is beyond the formula', () => {
    expect(fizz(given(typed('bottleLimit', 16))).verdict).toBe('rough');
    expect(fizz(given(typed('bottleLimit', 14))).verdict).toBe('over');
  });

  test('is never that it holds in more warmth than what is left out was worked out for', () => {
    const warm = (limit: number, celsius: number) =>
      fizz({
        ...given(typed('bottleLimit', limit), typed('bottleTemperature', celsius)),
        measured: { sugarLeft: { kind: 'concentration', amount: 8 } },
      }).verdict;
    expect(warm(9, 30)).toBe('holds');
    expect(warm(9, 31)).toBe('rough');
  });

  test('and the sheet’s own problem agree at any limit', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleRecipe, anyRecipe), fc.integer({ min: 1, max: 300 }), (recipe, tenths) => {
        const rest = recipe.given.filter(({ row }) => row !== 'bottleLimit');
        const formulation = formulate({ ...recipe, given: [...rest, typed('bottleLimit', tenths / 10)] });
        const found = fizzOf(formulation);
        if (found === null) return;
        const isOver = codesAt(formulation, 'bottlePressureForgotten').includes('overLimit');
        expect(isOver).toBe(found.verdict === 'over' || found.verdict === 'close');
      }),
    );
  });

  test('goes with the most sugar under the limit', () => {
    expect(fizz(recipeOf())).toMatchObject({ limit: null, sugarMost: null });
    const limited = given(typed('bottleLimit', 6));
    expect(fizz(limited)).toMatchObject({ limit: 6, sugarMost: worked(limited, 'bottleSugarMost') });
  });
});

describe('a jar with a tight lid', () => {
  // By hand: 740.19 mL of 1003.05 filled, so 262.9 mL over 704.51 mL of liquid: 0.37317 per mL. When ready, 0.35 × 0.4
  // of 33.788 g/L is gone through yeast: 52.51 mol/m³, in 3.8107e-4 × 0.89482 + 0.37317 ÷ (8.314463 × 294.15) =
  // 4.9357e-4: 1.064 bar. Forgotten, 375.10 in 2.6898e-4 + 0.37317 ÷ 2520.5 = 4.1704e-4: 8.994 bar.
  test('comes to 1.06 bar when ready, and up to 8.99 if forgotten', () => {
    const { likely, forgotten, tooFull } = lid(recipeOf());
    expect(likely?.pressure).toBeCloseTo(1.0638, 3);
    expect(forgotten.pressure).toBeCloseTo(8.994, 2);
    expect(tooFull).toBe(false);
  });

  test('filled to within 3 % is too full as well', () => {
    expect(lid(given(typed('headspaceVolume', 20))).tooFull).toBe(true);
    expect(lid(given(typed('headspaceVolume', 40))).tooFull).toBe(false);
  });

  test('is bounded in a room where no time is told', () => {
    const { likely, forgotten } = lid(given(typed('roomTemperature', 34)));
    expect(likely).toBeNull();
    expect(forgotten).toMatchObject({ celsius: 34 });
  });

  test('is as hard whether or not there is a second ferment', () => {
    expect(lid(given(typed('bottleTime', 0)))).toEqual(lid(recipeOf()));
  });

  test('never has less forgotten than likely, and only figures', () => {
    fc.assert(
      fc.property(fc.oneof(sensibleRecipe, anyRecipe), (recipe) => {
        const found = tightLidOf(formulate(recipe));
        if (found === null) return;
        expect(Number.isFinite(found.forgotten.pressure)).toBe(true);
        if (found.likely !== null) {
          expect(found.forgotten.pressure).toBeGreaterThanOrEqual(found.likely.pressure * (1 - rounding));
        }
      }),
    );
  });
});
