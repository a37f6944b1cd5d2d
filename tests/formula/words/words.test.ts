import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import type { RowId } from '../../../src/formula/recipe/order';
import type { Problem } from '../../../src/formula/recipe/problem';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { describeProblem } from '../../../src/formula/words/words';
import { recipeOf, typed } from '../../batches';
import { problemAt } from '../../results';

function said(recipe: Partial<Recipe>, at: RowId, code: Problem['code']): string {
  const problem = problemAt(formulate(recipeOf(recipe)), at, code);
  return describeProblem(problem, demo.settings).replaceAll(/[\u00A0\u202F\u2009]/g, ' ');
}

describe('the sheet says', () => {
  test('that what nearly agrees is as near as a kitchen measures', () => {
    expect(
      said({ given: [typed('drinkVolume', 600), typed('milkVolume', 600)] }, 'milkVolume', 'nearlyAgrees'),
    ).toMatch(
      /^You typed 600 mL \(.+\); with “Kefir to drink” it comes to 599 mL \(.+\), which is as near as a kitchen measures\.$/,
    );
  });

  test('no hundreds of digits of a number beyond all sense', () => {
    const deep = (depth: number) => said({ given: [typed('headspaceDepth', depth)] }, 'headspaceDepth', 'tooLarge');
    expect(deep(Number.MAX_VALUE)).toMatch(/^This is more than this sheet takes \(200\.0 cm .*\)\. Check the unit\.$/);
    expect(deep(300)).toMatch(/^300\.0 cm .* is more than this sheet takes/);
  });

  test('by how much jars run over, in the same words at each row', () => {
    const over = { given: [typed('vesselCount', 1), typed('milkVolume', 1200)] };
    const sentence = said(over, 'headspaceVolume', 'overBrim');
    expect(sentence).toMatch(
      /^Each jar would run over by \d+ mL.*: it holds 1003 mL.* to the rim\. Use more jars, a bigger jar, or make less\.$/,
    );
    for (const row of ['vesselCount', 'milkVolume'] as const) expect(said(over, row, 'runsOver')).toBe(sentence);
  });

  test('how much headspace was asked for, and how much is left', () => {
    expect(
      said({ given: [typed('headspaceDepth', 3), typed('milkVolume', 600)] }, 'headspaceDepth', 'headspaceKept'),
    ).toMatch(/^You asked for at least 3\.0 cm \(1 ⅛ in\); this batch leaves \d\.\d cm \(.+ in\)\.$/);
  });

  test('what there is as it was typed', () => {
    const onHand = { sweetener: { text: '10 g', kind: 'mass', amount: 10 } } as const;
    expect(said({ given: [typed('sweetenerMass', 20)], onHand }, 'sweetenerMass', 'moreThanOnHand')).toMatch(
      /^You have 10 g, and this batch takes 20 g \(.+\)\. Make less, or get more\.$/,
    );
  });

  test('how to measure a jar of one’s own', () => {
    expect(said({ vessel: 'own' }, 'brimful', 'weighWater')).toBe(
      'Fill your jar with water to the very rim, weigh the water, and type that weight here, such as 1050 g.',
    );
  });
});
