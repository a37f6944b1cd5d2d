import { HyperFormula } from 'hyperformula';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../src/formula/engine/formulate';
import { sources } from '../../src/reference/sources';
import { grainIds, jarIds, recipeOf, sourceIds, sweetenerIds } from '../batches';
import { sharedRows, writeInFormulas } from '../bench/sheet-in-formulas';
import { agrees } from '../results';

// HyperFormula 3.5.0, a general-purpose formula engine. It evaluates a jar-sized batch from a second writing of the
// formulas, straight from the reference tables, so it catches a slip in our order of work, our algebra or our jar.
// 1e-9 relative: doubles on both sides. Cartons are left out, whose label moves the composition itself.

const recipes = sourceIds
  .filter((source) => sources[source].label === null)
  .flatMap((source) =>
    grainIds.flatMap((grains) =>
      jarIds.map((vessel, at) => {
        const sweetener = sweetenerIds[at % sweetenerIds.length] ?? 'caneWhite';
        return recipeOf({ source, grains, vessel, sweetener: [{ id: sweetener, share: 1 }] });
      }),
    ),
  );

describe('a general-purpose formula engine', () => {
  const { table, rowOf } = writeInFormulas(recipes);
  const engine = HyperFormula.buildFromArray(table, { licenseKey: 'gpl-v3', smartRounding: false });
  const ours = recipes.map((recipe) => formulate(recipe).rows);

  test.each(sharedRows)('agrees on %s of every source, grain and jar', (id) => {
    let compared = 0;
    for (const [col, rows] of ours.entries()) {
      const { value, status } = rows[id];
      if (status === 'absent' || rows.sweetenerMass.status === 'absent') continue;
      const theirs = engine.getCellValue({ sheet: 0, row: rowOf(id), col });
      const both = `${recipes[col]?.source}, ${recipes[col]?.vessel}: ours ${value}, theirs ${theirs}`;
      expect(agrees(Number(value), Number(theirs)), both).toBe(true);
      compared += 1;
    }
    expect(compared).toBeGreaterThan(40);
  });
});
