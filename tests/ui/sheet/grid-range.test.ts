import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isRowLine, rangeBetween } from '../../../src/ui/sheet/grid-range';
import type { Spot } from '../../../src/ui/sheet/sheet-state';

const lines = ['section:jar', 'vessel', 'vesselCount', 'section:milk', 'source', 'sourceMass'] as const;
const batches = ['b1', 'b2', 'b3'];

function range(a: Spot, b: Spot) {
  return rangeBetween(a, b, lines, batches);
}

describe('rangeBetween', () => {
  test('is the one cell where both corners are one', () => {
    const spot = { line: 'source', batch: 'b2' } as const;
    expect(range(spot, spot)).toEqual({ rows: ['source'], batches: ['b2'] });
  });

  test('goes from the top and from the left, whichever corner comes first', () => {
    const all = { rows: ['vesselCount', 'source', 'sourceMass'], batches: ['b1', 'b2'] };
    expect(range({ line: 'vesselCount', batch: 'b2' }, { line: 'sourceMass', batch: 'b1' })).toEqual(all);
    expect(range({ line: 'sourceMass', batch: 'b1' }, { line: 'vesselCount', batch: 'b2' })).toEqual(all);
  });

  test('leaves out names of sections', () => {
    expect(range({ line: 'section:jar', batch: 'b1' }, { line: 'section:milk', batch: 'b1' }).rows).toEqual([
      'vessel',
      'vesselCount',
    ]);
    expect(range({ line: 'section:milk', batch: 'b1' }, { line: 'section:milk', batch: 'b1' }).rows).toEqual([]);
  });

  test('is empty where a corner is no longer there', () => {
    expect(range({ line: 'source', batch: 'b9' }, { line: 'source', batch: 'b1' }).batches).toEqual([]);
    expect(range({ line: 'servings', batch: 'b1' }, { line: 'source', batch: 'b1' }).rows).toEqual([]);
  });

  test('holds both its corners and nothing outside them', () => {
    const spot = fc.record({ line: fc.constantFrom(...lines), batch: fc.constantFrom(...batches) });
    fc.assert(
      fc.property(spot, spot, (a, b) => {
        const found = range(a, b);
        expect(found).toEqual(range(b, a));
        for (const { line, batch } of [a, b]) {
          if (isRowLine(line)) expect(found.rows).toContain(line);
          expect(found.batches).toContain(batch);
        }
        expect(found.batches.length).toBe(Math.abs(batches.indexOf(a.batch) - batches.indexOf(b.batch)) + 1);
      }),
    );
  });
});
