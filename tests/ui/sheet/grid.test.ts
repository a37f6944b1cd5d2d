import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeOf, gridRows, placeIn, spotAt } from '../../../src/ui/sheet/grid';
import { moveByKey } from '../../../src/ui/sheet/grid-keys';
import type { Spot } from '../../../src/ui/sheet/sheet-state';
import { visibleLines } from '../../../src/ui/sheet/visible-lines';

const rows = gridRows(visibleLines({ unfolded: new Set(), all: true, telling: new Set(), only: null }));
const batches = ['b1', 'b2', 'b3'];
const columns = 2 * batches.length + 1;

function press(key: string, from: Spot): Spot {
  const place = placeIn(rows, batches, from) ?? expect.fail(`${from.at} is not in the grid`);
  const move = { key, ctrlKey: false, metaKey: false };
  const to = moveByKey(move, edgeOf(rows, place, key), { rows: rows.length, columns, page: 6 });
  return to === null ? from : (spotAt(rows, batches, to) ?? expect.fail('there is nothing'));
}

const walk = (keys: readonly string[], from: Spot): Spot => keys.reduce((spot, key) => press(key, spot), from);

describe('a cell over both columns of its batch', () => {
  test.each([
    ['soakTime', ['ArrowDown', 'ArrowUp']],
    ['soakWater', ['ArrowDown', 'ArrowDown', 'ArrowUp', 'ArrowUp']],
    ['soakWater', ['PageDown', 'PageUp']],
    ['sourceMass', ['PageDown', 'PageUp']],
    ['line:soak', ['ArrowDown', 'ArrowUp']],
  ] as const)('leads from %s and back by %j to the same column', (at, keys) => {
    const batch = at === 'line:soak' ? 'b1' : 'b2';
    expect(walk(keys, { at, batch })).toMatchObject({ at, batch });
  });

  test('is one step from its neighbours, whatever column it was come to in', () => {
    for (const at of ['soakTime', 'soakWater'] as const) {
      const detail = press('ArrowDown', { at, batch: 'b2' });
      expect(detail).toMatchObject({ at: 'soakedMass', batch: 'b2' });
      expect(press('ArrowRight', detail)).toMatchObject({ at: 'soakedMass', batch: 'b3' });
      expect(press('ArrowLeft', detail)).toMatchObject({ at: 'soakedMass', batch: 'b1' });
    }
  });

  test('is where it is for one who pointed at it', () => {
    expect(press('ArrowUp', { at: 'soakedMass', batch: 'b2' })).toMatchObject({ at: 'soakTime', batch: 'b2' });
  });
});

test('each place of the grid is where its spot is found', () => {
  fc.assert(
    fc.property(fc.nat(rows.length - 1), fc.nat(columns - 1), (row, column) => {
      const spot = spotAt(rows, batches, { row, column });
      expect(spot).not.toBeNull();
      if (spot !== null) expect(placeIn(rows, batches, spot)).toEqual({ row, column });
    }),
  );
});

test('what is not drawn has no place', () => {
  expect(placeIn(rows, batches, { at: 'source', batch: 'gone' })).toBeNull();
  expect(placeIn([], batches, { at: 'source', batch: 'b1' })).toBeNull();
  expect(spotAt(rows, [], { row: 0, column: 1 })).toBeNull();
});
