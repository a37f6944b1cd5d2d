import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { moveByKey, typesCharacter } from '../../../src/ui/sheet/grid-keys';

const size = { rows: 20, columns: 4, page: 8 };
const middle = { row: 10, column: 2 };
const first = { row: 0, column: 0 };
const last = { row: 19, column: 3 };

function press(key: string, command: 'ctrlKey' | 'metaKey' | null = null) {
  return { key, ctrlKey: command === 'ctrlKey', metaKey: command === 'metaKey', shiftKey: false };
}

const moves = ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'Home', 'End', 'PageUp', 'PageDown'];

describe('moveByKey', () => {
  test.each([
    ['ArrowUp', { row: 9, column: 2 }],
    ['ArrowDown', { row: 11, column: 2 }],
    ['ArrowLeft', { row: 10, column: 1 }],
    ['ArrowRight', { row: 10, column: 3 }],
    ['Home', { row: 10, column: 0 }],
    ['End', { row: 10, column: 3 }],
    ['PageUp', { row: 2, column: 2 }],
    ['PageDown', { row: 18, column: 2 }],
  ])('%s from the middle', (key, to) => {
    expect(moveByKey(press(key), middle, size)).toEqual(to);
  });

  test.each(['ctrlKey', 'metaKey'] as const)('Home and End with %s go to the corners', (command) => {
    expect(moveByKey(press('Home', command), middle, size)).toEqual(first);
    expect(moveByKey(press('End', command), middle, size)).toEqual(last);
  });

  test.each(['ArrowUp', 'ArrowLeft', 'PageUp', 'Home'])('%s stays in the first corner', (key) => {
    expect(moveByKey(press(key), first, size)).toEqual(first);
  });

  test.each(['ArrowDown', 'ArrowRight', 'PageDown', 'End'])('%s stays in the last corner', (key) => {
    expect(moveByKey(press(key), last, size)).toEqual(last);
  });

  test('a page that is longer than the way left ends at the edge', () => {
    expect(moveByKey(press('PageUp'), { row: 3, column: 1 }, size)).toEqual({ row: 0, column: 1 });
    expect(moveByKey(press('PageDown'), { row: 15, column: 1 }, size)).toEqual({ row: 19, column: 1 });
  });

  test.each(['Enter', 'F2', 'Escape', 'Tab', 'Delete', 'a', '1', ' ', 'Shift'])('%s moves nowhere', (key) => {
    expect(moveByKey(press(key), middle, size)).toBeNull();
  });

  test('never leaves the grid, from any place in a grid of any size', () => {
    const grid = fc
      .record({
        rows: fc.integer({ min: 1, max: 60 }),
        columns: fc.integer({ min: 1, max: 12 }),
        page: fc.integer({ min: 1, max: 80 }),
      })
      .chain((any) =>
        fc.record({
          size: fc.constant(any),
          from: fc.record({
            row: fc.integer({ min: 0, max: any.rows - 1 }),
            column: fc.integer({ min: 0, max: any.columns - 1 }),
          }),
          presses: fc.array(
            fc.record({ key: fc.constantFrom(...moves), command: fc.constantFrom('ctrlKey', 'metaKey', null) }),
            { maxLength: 20 },
          ),
        }),
      );
    fc.assert(
      fc.property(grid, ({ size: any, from, presses }) => {
        let place = from;
        for (const { key, command } of presses) {
          const to = moveByKey(press(key, command), place, any);
          if (to === null) throw new Error(`${key} moves nowhere`);
          place = to;
          expect(place.row).toBeGreaterThanOrEqual(0);
          expect(place.row).toBeLessThan(any.rows);
          expect(place.column).toBeGreaterThanOrEqual(0);
          expect(place.column).toBeLessThan(any.columns);
        }
      }),
    );
  });

  test('an arrow and its opposite come back, away from the edges', () => {
    const inside = fc.record({ row: fc.integer({ min: 1, max: 18 }), column: fc.integer({ min: 1, max: 2 }) });
    const pairs = [
      ['ArrowUp', 'ArrowDown'],
      ['ArrowLeft', 'ArrowRight'],
    ] as const;
    fc.assert(
      fc.property(inside, fc.constantFrom(...pairs), (from, [there, back]) => {
        const away = moveByKey(press(there), from, size) ?? from;
        expect(away).not.toEqual(from);
        expect(moveByKey(press(back), away, size)).toEqual(from);
      }),
    );
  });
});

describe('typesCharacter', () => {
  const plain = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false };

  test.each(['1', 'a', '½', '.', '-', 'é'])('%s starts an entry', (key) => {
    expect(typesCharacter({ ...plain, key })).toBe(true);
  });

  test.each(['Enter', 'Tab', 'F2', 'ArrowDown', 'Delete', 'Shift', 'Dead', ' '])('%j does not', (key) => {
    expect(typesCharacter({ ...plain, key })).toBe(false);
  });

  test.each(['ctrlKey', 'metaKey', 'altKey'])('a character with %s is a command', (command) => {
    expect(typesCharacter({ ...plain, key: 'c', [command]: true })).toBe(false);
  });
});
