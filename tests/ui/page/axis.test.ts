import fc from 'fast-check';
import { expect, test } from 'vitest';
import { axisOver, placeOn } from '../../../src/ui/page/axis';

function* doubling() {
  for (let step = 1; ; step *= 2) yield step;
}

test('an axis has the first steps that come to six at most, and ends at one of them', () => {
  expect(axisOver(5.2, doubling())).toEqual({ most: 6, lines: [0, 1, 2, 3, 4, 5, 6] });
  expect(axisOver(6.1, doubling())).toEqual({ most: 8, lines: [0, 2, 4, 6, 8] });
  expect(axisOver(0, doubling())).toEqual({ most: 1, lines: [0, 1] });
  expect(() => axisOver(7, [1])).toThrow('come to an end');
});

test('an axis holds what it is made for, by even steps', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1e9, noNaN: true }), (highest) => {
      const { most, lines } = axisOver(highest, doubling());
      expect(most).toBeGreaterThanOrEqual(highest);
      expect(lines.length).toBeLessThanOrEqual(7);
      expect([lines[0], lines.at(-1)]).toEqual([0, most]);
    }),
  );
});

test('a value stands by its share of the way between the ends', () => {
  expect(placeOn({ from: 16, to: 30 }, 23)).toBe(50);
  expect(placeOn({ from: 0, to: 36 }, 9)).toBe(25);
});
