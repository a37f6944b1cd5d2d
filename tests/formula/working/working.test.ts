import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import { numericRows } from '../../../src/formula/rows/sheet';
import { intermediateIds } from '../../../src/formula/rows/terms';
import { coefficientNames } from '../../../src/formula/words/coefficient-names';
import { sharedNames } from '../../../src/formula/working/told/names';
import { type Working, workingIn, workingOf, workingOfInput } from '../../../src/formula/working/working';
import { anyRecipe, measuredRecipe, numericRowIds, recipeOf, sensibleRecipe, typed } from '../../batches';
import { agrees } from '../../results';
import { reckon } from '../reckon';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 180_000 });

const anything = fc.oneof(anyRecipe, sensibleRecipe, measuredRecipe);

function workingsOf(formulation: Formulation): readonly Working[] {
  const ofRows = numericRowIds.flatMap((id) => workingIn(formulation.rows[id]) ?? []);
  const others = intermediateIds.filter((id) => Number.isFinite(formulation.of(id)));
  return [...ofRows, ...others.map((id) => workingOf(id, formulation.evaluation))];
}

function placeholders(formula: string): readonly string[] {
  return [...formula.matchAll(/\{(\w+)\}/g)].map(([, id = '']) => id);
}

describe('a working', () => {
  test('puts in a number for everything its formula names, and gives its value again when reckoned out', () => {
    let reckoned = 0;
    fc.assert(
      fc.property(anything, (recipe) => {
        for (const { id, formula, inputs, value } of workingsOf(formulate(recipe))) {
          for (const input of inputs) expect(Number.isFinite(input.value), `${id} of ${input.id}`).toBe(true);
          if (formula === '') continue;
          reckoned += 1;
          const values = new Map(inputs.map((input) => [input.id, input.value]));
          const found = reckon(formula, (name) => values.get(name) ?? expect.fail(`${id} does not put in ${name}`));
          const [one, other] = 'value' in found ? [found.value, value] : [found.left, found.right];
          // A difference of two nearly equal numbers is no better than they are.
          const size = Math.max(...inputs.map((input) => Math.abs(input.value)), 1);
          const same = agrees(one, other) || Math.abs(one - other) < 1e-9 * size;
          expect(same, `${id}: ${formula} is ${one}, not ${other}`).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
    expect(reckoned).toBeGreaterThan(10_000);
  });

  test('carries the value of its cell', () => {
    fc.assert(
      fc.property(anything, (recipe) => {
        const { rows } = formulate(recipe);
        for (const id of numericRowIds) {
          const { value } = rows[id];
          const working = workingIn(rows[id]);
          if (working !== null) expect(working.value, id).toBe(value);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('names its inputs in the order of the formula, rows and coefficients with their labels', () => {
    const { rows } = formulate(recipeOf());
    const working = workingIn(rows.drinkVolume);
    expect(working?.inputs.map(({ id }) => id)).toEqual(['totalFill', 'grainMass', 'grainDensity', 'cling']);
    expect(working?.inputs.map(({ from }) => from)).toEqual(['intermediate', 'row', 'coefficient', 'coefficient']);
    expect(working?.inputs.map(({ label }) => label)).toEqual([
      sharedNames.totalFill.label,
      numericRows.grainMass.label,
      coefficientNames.grainDensity.label,
      coefficientNames.cling.label,
    ]);
  });

  test('shows the origin of a coefficient, and under which key a correction of it is kept', () => {
    const { rows } = formulate(recipeOf());
    const uptake = workingIn(rows.soakedMass)?.inputs.find(({ id }) => id === 'uptake');
    expect(uptake).toMatchObject({ key: 'almond.uptake', coefficient: { origin: { kind: 'published' } } });
  });

  test('shows what was typed or measured as the cook’s own', () => {
    const yours = { 'almond.uptake': { value: 0.5, how: 'typed' } } as const;
    const own = workingIn(formulate(recipeOf({ yours })).rows.soakedMass)?.inputs.find(({ id }) => id === 'uptake');
    expect(own).toMatchObject({ value: 0.5, coefficient: { origin: { kind: 'yours', how: 'typed' } } });
    const weighed = formulate(recipeOf({ measured: { pulpMass: { kind: 'mass', amount: 200 } } }));
    const moisture = workingIn(weighed.rows.milkVolume)?.inputs.find(({ id }) => id === 'milkPerGram');
    expect(moisture?.value).toBe(weighed.of('milkPerGram'));
    const held = workingOf('heldBack', weighed.evaluation).inputs.find(({ id }) => id === 'waterPerDry');
    const dry = held === undefined ? null : workingOfInput(held, weighed.evaluation);
    const inside = dry?.inputs.find(({ id }) => id === 'pulpMoisture');
    expect(inside).toMatchObject({ coefficient: { origin: { kind: 'yours', how: 'measured' } } });
  });

  test('leaves out of the fill what was typed by weight, and puts it where it belongs', () => {
    const { evaluation } = formulate(recipeOf({ given: [typed('sweetenerMass', 20)] }));
    expect(placeholders(workingOf('roomPerMilk', evaluation).formula)).toEqual(['grainRate', 'grainDensity']);
    expect(placeholders(workingOf('fixedRoom', evaluation).formula)).toEqual(['sweetenerMass', 'sweetenerRoom']);
  });
});
