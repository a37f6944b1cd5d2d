import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { cautionTopics } from '../../../src/formula/advice/caution-conditions';
import { cautionsAbout } from '../../../src/formula/advice/cautions';
import { waysOut } from '../../../src/formula/advice/ways-out';
import { formulate } from '../../../src/formula/engine/formulate';
import { fizzOf } from '../../../src/formula/fizz/fizz';
import { type NumericRowId, rowOrder } from '../../../src/formula/recipe/order';
import type { Given } from '../../../src/formula/recipe/recipe';
import { drawJar } from '../../../src/formula/steps/drawing';
import { labelOfBatch } from '../../../src/formula/steps/label-text';
import { describeProblem } from '../../../src/formula/words/words';
import { recipeOf } from '../../batches';
import { codesAt, problemAt } from '../../results';

// No such row: nothing that the check of a document lets through, so that rules fail over it.
const unknown: readonly Given[] = JSON.parse('[{ "row": "moonPhase", "amount": 1, "kind": "mass" }]');
const broken = recipeOf({ source: 'hazelnut', given: unknown });

describe('a batch over which working out fails', () => {
  test('is given back as failed, with its choices and without a number', () => {
    const { failed, rows, sizedFrom, recipe } = formulate(broken);
    expect(failed).toBe(true);
    expect(recipe).toBe(broken);
    expect(sizedFrom).toBe('jar');
    expect(rows.source).toMatchObject({ status: 'choice', value: 'hazelnut' });
    for (const id of rowOrder.filter((row): row is NumericRowId => rows[row].kind !== 'choice')) {
      expect(rows[id]).toMatchObject({ id, status: 'refused', value: null, from: null });
    }
  });

  test('says so at its first row, for which all others wait', () => {
    const formulation = formulate(broken);
    const problem = problemAt(formulation, 'vessel', 'notWorkedOut');
    expect(describeProblem(problem, demo.settings)).toMatch(/can’t be worked out.*Everything in it is kept/);
    expect(waysOut(problem, formulation)).toEqual([]);
    expect(problemAt(formulation, 'milkVolume', 'waits')).toMatchObject({ for: 'vessel' });
    expect(codesAt(formulation, 'source')).toEqual([]);
  });

  test('can be asked for all that a batch can, none of which tells a number', () => {
    const formulation = formulate(broken);
    expect(formulation.of('milkVolume')).toBeNaN();
    expect(formulation.of('nativeSugar')).toBeNaN();
    expect(drawJar(formulation)).toBeNull();
    expect(fizzOf(formulation)).toBeNull();
    expect(cautionsAbout(cautionTopics, formulation).length).toBeGreaterThan(0);
    const days = { made: null, tasteBy: null, useBy: null };
    expect(labelOfBatch(formulation, { name: 'Broken', days })[0]).toEqual({ id: 'name', text: 'Broken' });
  });
});
