import { describe, expect, test } from 'vitest';
import { isIntermediate, isRow } from '../../../src/formula/engine/evaluate';
import { waysOf } from '../../../src/formula/engine/ways-of';
import { coefficientIds } from '../../../src/formula/recipe/coefficients';
import {
  amountRows,
  choiceRows as choiceIds,
  measuredRows,
  rowOrder,
  sections,
} from '../../../src/formula/recipe/order';
import { figureValues } from '../../../src/formula/rows/figure-values';
import { choiceRows, numericRows } from '../../../src/formula/rows/sheet';
import { intermediateIds, intermediates } from '../../../src/formula/rows/terms';
import { isFigure } from '../../../src/formula/working/figures';
import { formulaOf } from '../../../src/formula/working/formula-of';
import { writtenOut } from '../../../src/formula/working/told/ripen';
import { told } from '../../../src/formula/working/told/told';
import { numericRowIds } from '../../batches';

const everyTerm = [...numericRowIds, ...intermediateIds];

describe('the sheet', () => {
  test('has one definition for every row of the order, and no other', () => {
    expect(Object.keys({ ...numericRows, ...choiceRows }).sort()).toEqual([...rowOrder].sort());
    expect(Object.keys(intermediates).sort()).toEqual([...intermediateIds].sort());
    expect(rowOrder.length).toBe(sections.reduce((sum, { rows }) => sum + rows.length, 0));
  });

  test('has labels that are unique', () => {
    const labels = [
      ...numericRowIds.map((id) => numericRows[id].label),
      ...choiceIds.map((id) => choiceRows[id].label),
    ];
    expect(new Set(labels).size).toBe(labels.length);
  });

  test('tells each way of each row and intermediate, and no other', () => {
    const rules = everyTerm.map((id) => [id, Object.keys(waysOf(id))]);
    expect(
      Object.entries(told)
        .map(([id, ways]) => [id, Object.keys(ways)])
        .sort(),
    ).toEqual(rules.sort());
  });

  test('has one formula for each way: beside the row, or where code works it out, in what is told', () => {
    for (const id of everyTerm) {
      for (const [name, way] of Object.entries(waysOf(id))) {
        const { words, formula } = told[id][name] ?? expect.fail(`${id} ${name} is not told`);
        expect(words, id).toMatch(/\.$/);
        expect(formula === undefined, `${id} ${name}`).toBe(formulaOf(way) !== null);
      }
    }
  });

  test('names in a formula only what the engine knows', () => {
    const isCoefficient = (name: string) => coefficientIds.some((coefficient) => coefficient === name);
    for (const id of everyTerm) {
      for (const [name, way] of Object.entries(waysOf(id))) {
        const formula = formulaOf(way) ?? told[id][name]?.formula ?? '';
        for (const [, part = ''] of formula.matchAll(/\{(\w+)\}/g)) {
          const isFound = formulaOf(way) === null ? isFigure(part) : Object.hasOwn(figureValues, part);
          expect(isRow(part) || isIntermediate(part) || isCoefficient(part) || isFound, `${id}: ${part}`).toBe(true);
        }
      }
    }
  });

  test('can tell every figure that a formula reckons with, unless it is written out', () => {
    for (const name of Object.keys(figureValues)) {
      expect(isFigure(name) || `{${name}}` in writtenOut, name).toBe(true);
    }
  });

  test('takes a measured entry exactly where a row of the design does', () => {
    const onlyMeasured = numericRowIds.filter((id) => numericRows[id].typed === 'measured');
    for (const id of onlyMeasured) expect(measuredRows).toContain(id);
  });

  test('resizes from every row of scale', () => {
    expect(numericRowIds.filter((id) => numericRows[id].typed === 'amount').sort()).toEqual([...amountRows].sort());
  });

  test('has ranges with two ends in order', () => {
    for (const id of numericRowIds) {
      const { least, most } = numericRows[id].range;
      expect(least, id).toBeLessThan(most);
    }
  });
});
