import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawFizz } from '../../../src/ui/fizz/fizz-picture';

describe('the drawing of a bottle', () => {
  test('of 1 to 4 and 3 to 9 bar against 6 bar goes to 10 by 2', () => {
    const bottles = [
      { likely: 1, most: 4 },
      { likely: 3, most: 9 },
    ];
    const { most, ticks, pressures, line } = drawFizz(bottles, 6, 'bar');
    expect(most).toBe(10);
    expect(ticks.map(({ at }) => at)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(pressures).toEqual([
      { width: 10, reach: 40 },
      { width: 30, reach: 90 },
    ]);
    expect(line).toBe(60);
  });

  test('in psi has even steps of psi: 9 bar are 130.5 psi', () => {
    const { unit, ticks, pressures } = drawFizz([{ likely: 1, most: 9 }], 2, 'psi');
    expect(unit).toBe('psi');
    expect(ticks.map(({ at }) => at)).toEqual([0, 50, 100, 150]);
    expect(pressures[0]?.reach).toBeCloseTo(87.02, 2);
  });

  test('of nothing known still has a scale, to what it would be held against', () => {
    expect(drawFizz([], 2, 'bar')).toMatchObject({ most: 2, pressures: [], line: 100 });
  });

  test('keeps all within its width, in order and in proportion, by few even steps', () => {
    const bar = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(bar, bar, bar, fc.constantFrom('bar', 'psi'), (one, other, line, unit) => {
        const bottle = { likely: Math.min(one, other), most: Math.max(one, other) };
        const { most, ticks, pressures, line: at } = drawFizz([bottle], line, unit);
        const { width, reach } = pressures[0] ?? expect.fail('not drawn');
        for (const length of [width, reach, at]) {
          expect(length).toBeGreaterThan(0);
          expect(length).toBeLessThanOrEqual(100 + 1e-9);
        }
        expect(ticks.length).toBeLessThanOrEqual(7);
        expect(ticks.at(-1)).toEqual({ at: most, left: 100 });
        expect(width / reach / (bottle.likely / bottle.most)).toBeCloseTo(1, 9);
      }),
    );
  });
});
