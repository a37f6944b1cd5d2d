import { HyperFormula } from 'hyperformula';
import { describe } from 'vitest';
import { demo, startBatch } from '../../src/batch/document/demo';
import { type Batch, recipeOf } from '../../src/batch/document/document';
import { sources } from '../../src/reference/sources';
import { sourceIds } from '../batches';
import { buildForNode } from './build-for-node';
import { report, timeInTurn } from './in-turn';
import { sharedRows, writeInFormulas } from './sheet-in-formulas';

// One edit of a headspace in one batch among many, then every row of that batch read. HyperFormula 3.5.0 computes the
// same rows by the same steps (`tests/formula/formula-engine.test.ts` holds it to our numbers), but is handed a plain
// number; ours reads the text as typed, keeps it for undo, and looks for everything there is to say about each cell.

// Where a row is absent (no soak), ours has no number and theirs one that means nothing.
const soaked = sourceIds.filter((id) => sources[id].soak?.drained === true);

function batchesOf(count: number): readonly Batch[] {
  return Array.from({ length: count }, (_, at) => ({
    ...startBatch(`b${at}`, `Batch ${at}`),
    source: soaked[at % soaked.length] ?? 'almond',
  }));
}

const depths = [3, 3.5, 4, 4.5];
const depthAt = (round: number): number => depths[round % depths.length] ?? 5;

const { createStore } = await buildForNode();

function editOurs(batches: readonly Batch[]): (round: number) => number {
  const store = createStore({ ...demo, batches });
  for (const batch of batches) store.formulationOf(batch);
  const at = batches.length - 1;
  const id = batches[at]?.id ?? '';
  return (round) => {
    store.typeCell(id, 'headspaceDepth', `${depthAt(round)} cm`);
    const batch = store.document.value.batches[at];
    if (batch === undefined) throw new Error('the batch is gone');
    const { rows } = store.formulationOf(batch);
    return sharedRows.reduce((sum, row) => sum + Number(rows[row].value), 0);
  };
}

function editTheirs(batches: readonly Batch[]): (round: number) => number {
  const { table, rowOf } = writeInFormulas(batches.map((batch) => recipeOf(demo, batch)));
  const engine = HyperFormula.buildFromArray(table, { licenseKey: 'gpl-v3', smartRounding: false });
  const col = batches.length - 1;
  const depth = { sheet: 0, row: rowOf('headspaceDepth'), col };
  const read = sharedRows.map((row) => ({ sheet: 0, row: rowOf(row), col }));
  return (round) => {
    engine.setCellContents(depth, depthAt(round));
    return read.reduce((sum, cell) => sum + Number(engine.getCellValue(cell)), 0);
  };
}

describe('one edit', () => {
  for (const count of [1, 100, 1000]) {
    report(`with ${count} batches`, () => {
      const [ours, theirs] = [editOurs(batchesOf(count)), editTheirs(batchesOf(count))];
      const sums = { ours: 0, theirs: 0 };
      const contenders = {
        ours: (round: number) => {
          sums.ours += ours(round);
        },
        theirs: (round: number) => {
          sums.theirs += theirs(round);
        },
      };
      const took = timeInTurn(contenders, { warmUps: 4000, rounds: 2000 });
      // The sums are used, so that nothing read can be left out; and a slip in either would set them apart.
      if (Math.abs(sums.ours - sums.theirs) > 1e-9 * sums.theirs) throw new Error('the two do not agree');
      const times = took('theirs') / took('ours');
      return `an edit, ${count} batches: ours ${took('ours').toFixed(4)} ms, HyperFormula ${took('theirs').toFixed(4)} ms, ${times.toFixed(1)} times as long`;
    });
  }
});
