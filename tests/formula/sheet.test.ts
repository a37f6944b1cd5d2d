import { describe, expect, test } from 'vitest';
import { coefficientIds } from '../../src/formula/coefficients';
import { isIntermediate, isRow, termOf } from '../../src/formula/evaluate';
import { isFigure } from '../../src/formula/figures';
import {
  amountRows,
  choiceRows as choiceIds,
  intermediateIds,
  measuredRows,
  rowOrder,
  sections,
} from '../../src/formula/order';
import { choiceRows, numericRows } from '../../src/formula/sheet';
import { intermediates } from '../../src/formula/terms';
import { told } from '../../src/formula/told/told';
import { numericRowIds } from '../batches';

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
    const rules = everyTerm.map((id) => [id, Object.keys(termOf(id).ways)]);
    expect(
      Object.entries(told)
        .map(([id, ways]) => [id, Object.keys(ways)])
        .sort(),
    ).toEqual(rules.sort());
  });

  test('names in a formula only what the engine knows', () => {
    for (const id of everyTerm) {
      for (const { formula, words } of Object.values(told[id])) {
        expect(words, id).toMatch(/\.$/);
        for (const [, name = ''] of formula.matchAll(/\{(\w+)\}/g)) {
          const isTerm = isRow(name) || isIntermediate(name);
          const known = isTerm || isFigure(name) || coefficientIds.some((coefficient) => coefficient === name);
          expect(known, `${id}: ${name}`).toBe(true);
        }
      }
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
