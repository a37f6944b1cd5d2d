import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  columnCount,
  columnIndex,
  columnsOnScreen,
  type Frame,
  scrollToColumn,
} from '../../../src/ui/sheet/columns-on-screen';

const frame = { scrolled: 0, width: 1000, labels: 200, column: 200 };
const anyFrame: fc.Arbitrary<Frame> = fc.record({
  scrolled: fc.integer({ min: 0, max: 500_000 }),
  width: fc.integer({ min: 200, max: 4000 }),
  labels: fc.integer({ min: 0, max: 300 }),
  column: fc.integer({ min: 80, max: 600 }),
});
const anyCount = fc.integer({ min: 1, max: 2000 });

describe('columnsOnScreen', () => {
  test('draws what is in the frame, and one to either side', () => {
    expect(columnsOnScreen(frame, 100, 6)).toEqual({ from: 0, to: 5, before: 0, after: 95 * 200 });
    expect(columnsOnScreen({ ...frame, scrolled: 2000 }, 100, 6)).toEqual({
      from: 9,
      to: 15,
      before: 1800,
      after: 85 * 200,
    });
    expect(columnsOnScreen({ ...frame, scrolled: 19_200 }, 100, 6)).toMatchObject({ to: 100, after: 0 });
  });

  test('draws a few until the frame is measured', () => {
    expect(columnsOnScreen(null, 100, 6)).toEqual({ from: 0, to: 6, before: 0, after: 0 });
    expect(columnsOnScreen({ ...frame, column: 0 }, 3, 6)).toEqual({ from: 0, to: 3, before: 0, after: 0 });
  });

  test('fills all the width and leaves out none that shows, for any frame', () => {
    fc.assert(
      fc.property(anyFrame, anyCount, (any, count) => {
        const { from, to, before, after } = columnsOnScreen(any, count, 6);
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeGreaterThan(from);
        expect(to).toBeLessThanOrEqual(count);
        expect(before + (to - from) * any.column + after).toBe(count * any.column);
        const [left, right] = [any.scrolled, any.scrolled + any.width - any.labels];
        for (let at = 0; at < count; at += 1) {
          const shows = (at + 1) * any.column > left && at * any.column < right;
          if (shows) expect(at >= from && at < to).toBe(true);
        }
        expect(to - from).toBeLessThanOrEqual(Math.max(1, Math.ceil((any.width - any.labels) / any.column)) + 4);
      }),
    );
  });
});

describe('scrollToColumn', () => {
  test('stays where the column is in the frame', () => {
    expect(scrollToColumn(frame, 3)).toBe(0);
  });

  test('goes no further than it has to', () => {
    expect(scrollToColumn(frame, 4)).toBe(200);
    expect(scrollToColumn({ ...frame, scrolled: 2000 }, 9)).toBe(1800);
  });

  test('brings the column wholly into a frame that is wide enough, and it is drawn', () => {
    fc.assert(
      fc.property(anyFrame, anyCount, fc.nat(1999), (any, count, place) => {
        fc.pre(place < count && any.width - any.labels >= any.column);
        const scrolled = scrollToColumn(any, place);
        expect(place * any.column).toBeGreaterThanOrEqual(scrolled);
        expect((place + 1) * any.column).toBeLessThanOrEqual(scrolled + any.width - any.labels);
        const { from, to } = columnsOnScreen({ ...any, scrolled }, count, 6);
        expect(place >= from && place < to).toBe(true);
      }),
    );
  });
});

test('columns are counted from 1, the labels first and two cells a batch', () => {
  const drawn = { from: 9, to: 15, before: 0, after: 0 };
  expect([columnIndex(drawn, 0), columnIndex(drawn, 0, 'much'), columnIndex(drawn, 5)]).toEqual([20, 21, 30]);
  expect(columnCount(100)).toBe(201);
  expect(columnIndex({ from: 0, to: 100, before: 0, after: 0 }, 99, 'much')).toBe(columnCount(100));
});
