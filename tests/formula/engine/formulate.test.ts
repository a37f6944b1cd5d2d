import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { isRow } from '../../../src/formula/engine/evaluate';
import { type Formulation, formulate, type RowResult } from '../../../src/formula/engine/formulate';
import { isMeasuredRow, type NumericRowId, type RowId, rowOrder } from '../../../src/formula/recipe/order';
import { type Problem, severities } from '../../../src/formula/recipe/problem';
import { workingIn } from '../../../src/formula/working/working';
import {
  anyRecipe,
  bottledRecipe,
  measuredRecipe,
  numericRowIds,
  recipeOf,
  sensibleRecipe,
  typed,
} from '../../batches';
import { agrees, codesAt, numberIn, problemAt } from '../../results';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 180_000 });

const anything = fc.oneof(
  { weight: 3, arbitrary: anyRecipe },
  { weight: 1, arbitrary: sensibleRecipe },
  { weight: 1, arbitrary: measuredRecipe },
);

function refuses(problem: Problem): boolean {
  return severities[problem.code] === 'refusal';
}

function everyRow(check: (result: RowResult, formulation: Formulation) => void): void {
  fc.assert(
    fc.property(anything, (recipe) => {
      const formulation = formulate(recipe);
      for (const id of rowOrder) check(formulation.rows[id], formulation);
    }),
    { numRuns: 2000 },
  );
}

describe('whatever is typed', () => {
  test('works out without throwing, workings and all', () => {
    everyRow((result) => {
      const working = workingIn(result);
      if (working !== null) expect(working.id).toBe(result.id);
    });
  });

  test('every cell holds a finite number, a choice or nothing, and never a negative amount', () => {
    everyRow(({ id, kind, value }) => {
      if (typeof value !== 'number') return;
      const least = kind === 'temperature' ? Number.NEGATIVE_INFINITY : 0;
      expect(Number.isFinite(value) && value >= least && !Object.is(value, -0), `${id} is ${value}`).toBe(true);
    });
  });

  test('every number in a problem is finite', () => {
    everyRow(({ id, problems }) => {
      for (const problem of problems) {
        const numbers = Object.values(problem).filter((part) => typeof part === 'number');
        expect(numbers.every(Number.isFinite), `${id}: ${JSON.stringify(problem)}`).toBe(true);
      }
    });
  });

  test('every problem stands at its own row', () => {
    everyRow(({ id, problems }) => {
      for (const problem of problems) expect(problem.at).toBe(id);
    });
  });

  test('a cell has no value exactly when it is refused or absent, and says why', () => {
    everyRow(({ id, status, value, problems, absence }) => {
      expect(value === null, id).toBe(status === 'refused' || status === 'absent');
      expect(absence !== null, id).toBe(status === 'absent');
      if (status === 'refused') expect(problems.some(refuses), `${id}: ${JSON.stringify(problems)}`).toBe(true);
    });
  });

  test('what waits names a row that has a refusal of its own', () => {
    everyRow(({ id, problems }, formulation) => {
      for (const problem of problems) {
        if (problem.code !== 'waits') continue;
        const root = formulation.rows[problem.for];
        const own = root.problems.filter((other) => refuses(other) && other.code !== 'waits');
        expect(own, `${id} waits for ${problem.for}`).not.toEqual([]);
      }
    });
  });

  test('only what could not be read is called unreadable', () => {
    everyRow(({ id, problems }, { recipe }) => {
      if (!problems.some(({ code }) => code === 'unreadable')) return;
      const entries = [
        ...recipe.given.filter(({ row }) => row === id),
        ...(isMeasuredRow(id) ? [recipe.measured[id]] : []),
      ];
      const vast = 1e300;
      expect(
        entries.some((entry) => entry?.amount === null || Math.abs(entry?.amount ?? 0) > vast),
        id,
      ).toBe(true);
    });
  });

  test('a given cell holds what was typed, and nothing is said twice', () => {
    everyRow(({ id, status, value, typed: asTyped, problems }, { evaluation }) => {
      if (status === 'given') {
        // What could not be joined to the rest is given too where the rest comes to it.
        if (isRow(id) && evaluation.plan.accepted.has(id)) expect(value, id).toBe(asTyped);
        else expect(agrees(Number(value), Number(asTyped)), id).toBe(true);
      }
      expect(new Set(problems.map((problem) => JSON.stringify(problem))).size, id).toBe(problems.length);
    });
  });

  test('the same recipe gives the same result', () => {
    fc.assert(
      fc.property(anything, (recipe) => {
        const [once, again] = [formulate(recipe), formulate(structuredClone(recipe))];
        for (const id of rowOrder) {
          expect(again.rows[id].value).toBe(once.rows[id].value);
          expect(again.rows[id].problems).toEqual(once.rows[id].problems);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('a cell', () => {
  const plain = formulate(recipeOf());

  test('is a choice where a table is chosen from', () => {
    const choices: readonly RowId[] = rowOrder.filter((id) => plain.rows[id].status === 'choice');
    expect(choices).toEqual(['vessel', 'source', 'sweetener', 'grains']);
    expect(plain.rows.source).toMatchObject({ kind: 'choice', value: 'almond', from: null });
  });

  test('names every sweetener of a blend', () => {
    const blend = recipeOf({
      sweetener: [
        { id: 'honey', share: 0.5 },
        { id: 'caneWhite', share: 0.5 },
      ],
    });
    expect(formulate(blend).rows.sweetener.value).toBe('honey + caneWhite');
  });

  test('is worked out, with its working, where nothing is typed', () => {
    expect(plain.rows.milkVolume).toMatchObject({ status: 'workedOut', typed: null, planned: null, absence: null });
    expect(workingIn(plain.rows.milkVolume)?.how).toBe('rule');
  });

  test('is given, as typed, where its amount counts', () => {
    const { rows } = formulate(recipeOf({ given: [typed('milkVolume', 500)] }));
    expect(rows.milkVolume).toMatchObject({ status: 'given', value: 500, typed: 500 });
    expect(workingIn(rows.milkVolume)?.how).toBe('typed');
  });

  test('is measured, beside what was planned', () => {
    const { rows } = formulate(recipeOf({ measured: { milkVolume: { kind: 'volume', amount: 650 } } }));
    expect(rows.milkVolume).toMatchObject({ status: 'measured', value: 650, planned: plain.rows.milkVolume.value });
    expect(workingIn(rows.milkVolume)?.how).toBe('measured');
  });

  test('is absent with its reason, without a working', () => {
    const { rows } = formulate(recipeOf({ source: 'hemp' }));
    expect(rows.soakWater).toMatchObject({ status: 'absent', value: null, absence: 'notSoaked', from: null });
  });

  test('is refused where it cannot be read, and what it feeds waits for it', () => {
    const formulation = formulate(recipeOf({ given: [typed('milkVolume', null)] }));
    expect(formulation.rows.milkVolume).toMatchObject({ status: 'refused', value: null, from: null });
    expect(codesAt(formulation, 'milkVolume')).toEqual(['unreadable']);
    expect(problemAt(formulation, 'sweetenerMass', 'waits')).toMatchObject({ for: 'milkVolume' });
    expect(formulation.rows.brimful.status).toBe('workedOut');
  });

  test('waits for the very row that feeds it, where several can’t be read', () => {
    const formulation = formulate(
      bottledRecipe({
        given: [typed('milkVolume', null), typed('roomTemperature', null), typed('bottleVolume', null)],
      }),
    );
    expect(problemAt(formulation, 'grainMass', 'waits')).toMatchObject({ for: 'milkVolume' });
    expect(problemAt(formulation, 'readyTime', 'waits')).toMatchObject({ for: 'roomTemperature' });
    expect(problemAt(formulation, 'bottleHeadspace', 'waits')).toMatchObject({ for: 'bottleVolume' });
  });

  test('says once what is wrong with what was typed and with what was measured alike', () => {
    const given = [typed('grainMass', 0)];
    const formulation = formulate(recipeOf({ given, measured: { grainMass: { kind: 'mass', amount: 0 } } }));
    expect(codesAt(formulation, 'grainMass')).toEqual(['notPositive']);
  });

  test('has a working where it is only there because it was typed or measured', () => {
    const measured = formulate(recipeOf({ measured: { finalPH: { kind: 'acidity', amount: 4.2 } } }));
    expect(workingIn(measured.rows.finalPH)?.how).toBe('measured');
    const soaked = formulate(recipeOf({ source: 'macadamia', given: [typed('soakTime', 4)] }));
    expect(workingIn(soaked.rows.soakTime)?.how).toBe('typed');
  });

  test('that cannot be typed says so', () => {
    const never: readonly NumericRowId[] = ['blenderLoads', 'soakedMass', 'pulpMass', 'finalPH'];
    for (const id of never) {
      const formulation = formulate(recipeOf({ given: [typed(id, 3)] }));
      expect(codesAt(formulation, id)).toEqual(['notTyped']);
      expect(numberIn(formulation, 'milkVolume')).toBe(plain.rows.milkVolume.value);
    }
  });

  test('of every row refuses another kind of unit', () => {
    for (const id of numericRowIds) {
      const kind = plain.rows[id].kind === 'temperature' ? 'mass' : 'temperature';
      const said = codesAt(formulate(recipeOf({ given: [typed(id, 20, kind)] })), id);
      expect(said, id).toEqual([said.includes('notTyped') ? 'notTyped' : 'wrongKind']);
    }
  });
});
