import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { rangeBetween } from '../../../src/ui/sheet/grid-range';
import { isRowSpot, type Spot } from '../../../src/ui/sheet/sheet-state';

const rows = ['vessel', 'vesselCount', 'source', 'sourceMass'] as const;
const spots = [...rows, 'line:jar', 'line:source'] as const;
const batches = ['b1', 'b2', 'b3'];

function range(a: Spot, b: Spot) {
  return rangeBetween(a, b, rows, batches);
}

describe('rangeBetween', () => {
  test('is the one cell where both corners are one', () => {
    const spot = { at: 'source', batch: 'b2' } as const;
    expect(range(spot, spot)).toEqual({ rows: ['source'], batches: ['b2'] });
  });

  test('goes from the top and from the left, whichever corner comes first', () => {
    const all = { rows: ['vesselCount', 'source', 'sourceMass'], batches: ['b1', 'b2'] };
    expect(range({ at: 'vesselCount', batch: 'b2' }, { at: 'sourceMass', batch: 'b1' })).toEqual(all);
    expect(range({ at: 'sourceMass', batch: 'b1' }, { at: 'vesselCount', batch: 'b2' })).toEqual(all);
  });

  test('holds no rows where a corner is the label of a line', () => {
    expect(range({ at: 'line:jar', batch: 'b1' }, { at: 'source', batch: 'b1' }).rows).toEqual([]);
  });

  test('is empty where a corner is no longer there', () => {
    expect(range({ at: 'source', batch: 'b9' }, { at: 'source', batch: 'b1' }).batches).toEqual([]);
    expect(range({ at: 'servings', batch: 'b1' }, { at: 'source', batch: 'b1' }).rows).toEqual([]);
  });

  test('holds both its corners and nothing outside them', () => {
    const spot = fc.record({ at: fc.constantFrom(...spots), batch: fc.constantFrom(...batches) });
    fc.assert(
      fc.property(spot, spot, (a, b) => {
        const found = range(a, b);
        expect(found).toEqual(range(b, a));
        const cells = isRowSpot(a.at) && isRowSpot(b.at);
        for (const { at, batch } of [a, b]) {
          if (cells) expect(found.rows).toContain(at);
          expect(found.batches).toContain(batch);
        }
        expect(found.batches.length).toBe(Math.abs(batches.indexOf(a.batch) - batches.indexOf(b.batch)) + 1);
      }),
    );
  });
});
