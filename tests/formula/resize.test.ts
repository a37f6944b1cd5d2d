import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Formulation, formulate } from '../../src/formula/engine/formulate';
import { amountRows, type NumericRowId } from '../../src/formula/recipe/order';
import type { TermId } from '../../src/formula/rows/row';
import { numericRows } from '../../src/formula/rows/sheet';
import { numericRowIds, plainRecipe, recipeOf, sensibleRecipe, typed } from '../batches';
import { agrees, codesAt, differences, numberIn } from '../results';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

const amounts: readonly TermId[] = [
  ...(['sourceMass', 'soakWater', 'soakedMass', 'blendWater', 'pulpMass', 'milkVolume'] as const),
  ...(['sweetenerMass', 'caneEquivalent', 'grainMass', 'drinkVolume', 'servings'] as const),
  ...(['totalFill', 'slurryMass', 'slurryVolume', 'milkMass', 'lost', 'leached', 'ownLiquid'] as const),
];
const rates: readonly TermId[] = [
  ...(['waterRatio', 'milkSolids', 'sugarRate', 'startingSugar', 'grainRate', 'servingSize', 'soakTime'] as const),
  ...(['milkDensity', 'nativeSugar', 'heldBack', 'milkPerGram', 'roomPerMilk', 'drinkPerMilk'] as const),
];
const ofRates: readonly NumericRowId[] = ['waterRatio', 'milkSolids', 'sugarRate', 'startingSugar', 'grainRate'];
const ofSugar: readonly NumericRowId[] = ['sugarRate', 'sweetenerMass', 'caneEquivalent', 'startingSugar'];

/** Rows that may be typed and have a number here. */
function typable(formulation: Formulation): readonly NumericRowId[] {
  return numericRowIds.filter((id) => {
    const { typed: how } = numericRows[id];
    if (how === 'never' || how === 'measured' || typeof formulation.rows[id].value !== 'number') return false;
    return formulation.of('fermentable') > 0 || !ofSugar.includes(id);
  });
}

describe('resizing is exact', () => {
  test('twice the milk is twice of every amount, at the same rates', () => {
    const withRates = sensibleRecipe.map((recipe) => ({
      ...recipe,
      given: recipe.given.filter(({ row }) => ofRates.includes(row)),
    }));
    fc.assert(
      fc.property(withRates, fc.integer({ min: 50, max: 5000 }), (recipe, milk) => {
        const [one, two] = [milk, 2 * milk].map((volume) =>
          formulate({ ...recipe, given: [...recipe.given, typed('milkVolume', volume)] }),
        );
        for (const id of amounts) {
          const [before, after] = [one?.of(id) ?? 0, two?.of(id) ?? 0];
          expect(agrees(after, 2 * before) || Number.isNaN(before), `${id}: ${before} → ${after}`).toBe(true);
        }
        for (const id of rates) {
          const [before, after] = [one?.of(id) ?? 0, two?.of(id) ?? 0];
          expect(agrees(after, before) || Number.isNaN(before), `${id}: ${before} → ${after}`).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('a worked-out value, typed as it stands, changes nothing else', () => {
    fc.assert(
      fc.property(plainRecipe, fc.nat(), (recipe, pick) => {
        const before = formulate(recipe);
        const rows = typable(before);
        const row = rows[pick % rows.length] ?? 'milkVolume';
        const after = formulate({ ...recipe, given: [typed(row, numberIn(before, row))] });
        expect(after.rows[row].status).toBe('given');
        expect(differences(before, after), row).toEqual([]);
      }),
      { numRuns: 2500 },
    );
  });

  test('a worked-out value, typed beside one that is given, changes nothing else', () => {
    const ofOne = sensibleRecipe.map((recipe) => ({ ...recipe, given: recipe.given.slice(0, 1) }));
    fc.assert(
      fc.property(ofOne, fc.nat(), (recipe, pick) => {
        const before = formulate(recipe);
        const rows = typable(before).filter((row) => row !== recipe.given[0]?.row);
        const row = rows[pick % rows.length] ?? 'milkVolume';
        const { value } = before.rows[row];
        fc.pre(typeof value === 'number');
        // What is worked out may lie outside what a cell takes; what none of is there can't be sized from.
        const { least, most } = numericRows[row].range;
        fc.pre(value > 0 && value >= least && value <= most && before.rows.milkVolume.value !== null);
        // With a jar fuller than its headspace allows, the same amount in jars that keep it is another batch.
        fc.pre(numberIn(before, 'fillVolume') <= before.of('fillAllowed') * (1 + 1e-9));
        // A pinned headspace guesses the number of jars from usual rates; among more than ten the guess may be one off.
        fc.pre(numberIn(before, 'vesselCount') <= 10);
        const after = formulate({ ...recipe, given: [...recipe.given, typed(row, value)] });
        expect(differences(before, after), row).toEqual([]);
      }),
      { numRuns: 2500 },
    );
  });

  test('sized from A, B is read; sized from that B, A comes back', () => {
    const pairs = fc.record({
      recipe: plainRecipe,
      from: fc.constantFrom(...amountRows),
      to: fc.constantFrom(...amountRows),
      amount: fc.integer({ min: 50, max: 5000 }),
    });
    fc.assert(
      fc.property(pairs, ({ recipe, from, to, amount }) => {
        fc.pre(from !== to && from !== 'vesselCount' && to !== 'vesselCount');
        const there = formulate({ ...recipe, given: [typed(from, from === 'servings' ? amount / 100 : amount)] });
        const read = there.rows[to].value;
        const { value } = there.rows[from];
        fc.pre(typeof read === 'number' && typeof value === 'number');
        // A fill says how full one jar is, not how many there are; water alone says nothing of a poured source.
        fc.pre(numberIn(there, 'vesselCount') === 1 || (from !== 'fillVolume' && to !== 'fillVolume'));
        fc.pre(numberIn(there, 'fillVolume') <= there.of('fillAllowed') * (1 + 1e-9));
        fc.pre(there.choices.source.form === 'solid' || (from !== 'blendWater' && to !== 'blendWater'));
        const back = formulate({ ...recipe, given: [typed(to, read)] });
        expect(agrees(numberIn(back, from), value), `${from} ${value} → ${back.rows[from].value}`).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });
});

describe('cups and grams', () => {
  test('of any weighed solid come back as they went', () => {
    const rows = ['sourceMass', 'sweetenerMass', 'caneEquivalent', 'grainMass', 'milkVolume', 'blendWater'] as const;
    fc.assert(
      fc.property(plainRecipe, fc.constantFrom(...rows), fc.integer({ min: 10, max: 900 }), (recipe, row, amount) => {
        const [from, to] = numericRows[row].kind === 'mass' ? ['volume', 'mass'] : ['mass', 'volume'];
        const kind = from === 'volume' ? 'volume' : 'mass';
        const once = formulate({ ...recipe, given: [typed(row, amount, kind)] });
        fc.pre(!codesAt(once, row).includes('noCupWeight') && typeof once.rows[row].typed === 'number');
        const read = once.rows[row].typed ?? Number.NaN;
        const weight = to === 'mass' ? read / amount : amount / read;
        expect(agrees(to === 'mass' ? read / weight : read * weight, amount)).toBe(true);
        expect(differences(once, formulate({ ...recipe, given: [typed(row, read)] }))).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });

  test('a cup of almonds weighs 143 g, half of it half', () => {
    const cup = 236.5882365;
    for (const share of [1, 0.5]) {
      const formulation = formulate(recipeOf({ given: [typed('sourceMass', share * cup, 'volume')] }));
      expect(numberIn(formulation, 'sourceMass')).toBeCloseTo(share * 143, 9);
    }
  });
});
