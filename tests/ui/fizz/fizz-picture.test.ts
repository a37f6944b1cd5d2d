import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawFizz } from '../../../src/ui/fizz/fizz-picture';

describe('the drawing of a bottle', () => {
  test('of 1, 9 and a limit of 6 bar goes to 10 by 2', () => {
    const { most, ticks, pressures, limit } = drawFizz(1, 9, 6, 'bar');
    expect(most).toBe(10);
    expect(ticks.map(({ at }) => at)).toEqual([0, 2, 4, 6, 8, 10]);
    expect(pressures).toEqual([
      { id: 'likely', bar: 1, width: 10 },
      { id: 'forgotten', bar: 9, width: 90 },
    ]);
    expect(limit).toEqual({ bar: 6, left: 60 });
  });

  test('in psi has even steps of psi: 9 bar are 130.5 psi', () => {
    const { unit, ticks, pressures } = drawFizz(1, 9, null, 'psi');
    expect(unit).toBe('psi');
    expect(ticks.map(({ at }) => at)).toEqual([0, 50, 100, 150]);
    expect(pressures[1]?.width).toBeCloseTo(87.02, 2);
  });

  test('leaves out what is not known', () => {
    const { pressures, limit } = drawFizz(null, 3, null, 'bar');
    expect(pressures.map(({ id }) => id)).toEqual(['forgotten']);
    expect(limit).toBeNull();
  });

  test('of no pressure at all still has a scale', () => {
    expect(drawFizz(0, 0, null, 'bar')).toMatchObject({ most: 1, pressures: [{ width: 0 }, { width: 0 }] });
  });

  test('keeps all within its width, in order and in proportion, by few even steps', () => {
    const bar = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(bar, bar, fc.option(bar), fc.constantFrom('bar', 'psi'), (likely, forgotten, limit, unit) => {
        const { most, ticks, pressures, limit: line } = drawFizz(likely, forgotten, limit, unit);
        const lengths = [...pressures.map(({ width }) => width), ...(line === null ? [] : [line.left])];
        for (const length of lengths) {
          expect(length).toBeGreaterThan(0);
          expect(length).toBeLessThanOrEqual(100 + 1e-9);
        }
        expect(ticks.length).toBeLessThanOrEqual(7);
        expect(ticks.at(-1)).toEqual({ at: most, left: 100 });
        const [one, other] = pressures;
        expect((one?.width ?? 0) / (other?.width ?? 0) / (likely / forgotten)).toBeCloseTo(1, 9);
      }),
    );
  });
});
