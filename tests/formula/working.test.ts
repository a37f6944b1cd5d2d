import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { coefficients } from '../../src/formula/coefficients';
import { termOf } from '../../src/formula/evaluate';
import { type Formulation, formulate } from '../../src/formula/formulate';
import { intermediateIds } from '../../src/formula/order';
import { Recorder } from '../../src/formula/recorder';
import { type Working, workingIn, workingOf } from '../../src/formula/working';
import { anyRecipe, measuredRecipe, numericRowIds, recipeOf, sensibleRecipe, typed } from '../batches';
import { agrees } from '../results';

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

/** Reads a formula that is arithmetic and nothing else, with the numbers put in; null for one that says more. */
function calculate({ formula, inputs }: Working): number | null {
  const tokens = formula.match(/\{\w+\}|[\d.]+|[()×÷+−]|[^\s]/g) ?? [];
  const values = new Map(inputs.map(({ id, value }) => [`{${id}}`, value]));
  let at = 0;
  const next = (): string => tokens[at] ?? '';
  const product = (): number => {
    let value = factor();
    while (next() === '×' || next() === '÷') value = tokens[at++] === '×' ? value * factor() : value / factor();
    return value;
  };
  const sum = (): number => {
    let value = next() === '−' ? 0 : product();
    while (next() === '+' || next() === '−') value += tokens[at++] === '+' ? product() : -product();
    return value;
  };
  const factor = (): number => {
    const token = tokens[at++] ?? '';
    if (token !== '(') return values.get(token) ?? Number.parseFloat(token);
    const value = sum();
    at += 1;
    return value;
  };
  const isArithmetic = tokens.every((token) => /^(\{\w+\}|[\d.]+|[()×÷+−])$/.test(token));
  return isArithmetic && tokens.length > 0 ? sum() : null;
}

describe('a working', () => {
  test('puts in a number for everything its formula names', () => {
    fc.assert(
      fc.property(anything, (recipe) => {
        for (const { id, formula, inputs } of workingsOf(formulate(recipe))) {
          const missing = placeholders(formula).filter((name) => !inputs.some((input) => input.id === name));
          expect(missing, `${id}: ${formula}`).toEqual([]);
          for (const input of inputs) expect(Number.isFinite(input.value), `${id} of ${input.id}`).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('gives its value again when the formula is reckoned out', () => {
    let reckoned = 0;
    fc.assert(
      fc.property(anything, (recipe) => {
        for (const working of workingsOf(formulate(recipe))) {
          const value = calculate(working);
          if (value === null) continue;
          reckoned += 1;
          // A difference of two nearly equal numbers is no better than they are.
          const size = Math.max(...working.inputs.map((input) => Math.abs(input.value)), 1);
          const same = agrees(value, working.value) || Math.abs(value - working.value) < 1e-9 * size;
          expect(same, `${working.id}: ${working.formula} is ${value}, not ${working.value}`).toBe(true);
        }
      }),
      { numRuns: 2000 },
    );
    expect(reckoned).toBeGreaterThan(10_000);
  });

  test('gives its value again when the rule is run again', () => {
    fc.assert(
      fc.property(anything, (recipe) => {
        const formulation = formulate({ ...recipe, measured: {} });
        for (const { id, how, value } of workingsOf(formulation)) {
          if (how === 'rule') expect(new Recorder(formulation.evaluation).run(id), id).toBe(value);
        }
      }),
      { numRuns: 500 },
    );
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
      termOf('totalFill').label,
      termOf('grainMass').label,
      coefficients.grainDensity.label,
      coefficients.cling.label,
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
    const inside = workingOf('milkPerGram', weighed.evaluation).inputs.find(({ id }) => id === 'pulpMoisture');
    expect(inside).toMatchObject({ coefficient: { origin: { kind: 'yours', how: 'measured' } } });
  });

  test('leaves out of the fill what was typed by weight, and puts it where it belongs', () => {
    const { evaluation } = formulate(recipeOf({ given: [typed('sweetenerMass', 20)] }));
    expect(placeholders(workingOf('roomPerMilk', evaluation).formula)).toEqual(['grainRate', 'grainDensity']);
    expect(placeholders(workingOf('fixedRoom', evaluation).formula)).toEqual(['sweetenerMass', 'sweetenerRoom']);
  });
});
