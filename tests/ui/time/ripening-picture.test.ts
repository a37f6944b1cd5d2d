import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { ripeningAgainstRoom } from '../../../src/formula/time/ripening-chart';
import { drawRipening, type RipeningPicture } from '../../../src/ui/time/ripening-picture';
import { recipeOf, sensibleRecipe, typed } from '../../batches';

function draw(changes: Partial<Recipe> = {}, decimalComma = false): RipeningPicture {
  const formulation = formulate(recipeOf(changes));
  const picture = drawRipening(ripeningAgainstRoom(formulation) ?? [], formulation, decimalComma);
  if (picture === null) expect.fail('nothing is drawn');
  return picture;
}

/** The places that a path goes through, from the left and the top. */
function placesOf(path: string): readonly (readonly [number, number])[] {
  return [...path.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
}

describe('hours against the room', () => {
  test('stand on axes from 16 to 30 °C, in both units, and from 0 hours up', () => {
    const { celsius, fahrenheit, hours } = draw();
    expect(celsius.map(({ text }) => text)).toEqual(['16', '18', '20', '22', '24', '26', '28', '30']);
    expect(fahrenheit.map(({ text }) => text)).toEqual(['61', '64', '68', '72', '75', '79', '82', '86']);
    expect(celsius.map(({ at }) => at)).toEqual(fahrenheit.map(({ at }) => at));
    expect([celsius[0]?.at, celsius.at(-1)?.at]).toEqual([0, 100]);
    expect(hours.map(({ text }) => text)).toEqual(['0', '6', '12', '18', '24', '30', '36']);
    expect([hours[0]?.at, hours.at(-1)?.at]).toEqual([100, 0]);
  });

  test('fall to the right, the likely line between the ends, and the band is what lies between them', () => {
    const { soonest, likely, latest, band } = draw();
    const [low, middle, high] = [placesOf(soonest), placesOf(likely), placesOf(latest)];
    expect(middle).toHaveLength(15);
    middle.forEach(([x, y], at) => {
      expect(low[at]?.[1]).toBeGreaterThan(y);
      expect(high[at]?.[1]).toBeLessThan(y);
      expect(low[at]?.[0]).toBe(x);
      const next = middle[at + 1];
      if (next !== undefined) expect(next[1]).toBeGreaterThan(y);
    });
    expect(placesOf(band)).toEqual([...high, ...[...low].reverse()]);
  });

  test('keep within the drawing, with few lines across, however long it takes', () => {
    fc.assert(
      fc.property(sensibleRecipe, fc.integer({ min: 2, max: 500 }), (recipe, tenthOfPace) => {
        const yours = { 'kitchen.pace': { value: tenthOfPace / 100, how: 'learned' as const } };
        const formulation = formulate({ ...recipe, yours });
        const points = ripeningAgainstRoom(formulation);
        if (points === null) return;
        const picture = drawRipening(points, formulation, false);
        if (picture === null) expect.fail('nothing is drawn');
        expect(JSON.stringify(picture)).not.toMatch(/NaN|Infinity|null,/);
        expect(picture.hours.length).toBeGreaterThanOrEqual(2);
        expect(picture.hours.length).toBeLessThanOrEqual(7);
        expect(new Set(picture.hours.map(({ text }) => text)).size).toBe(picture.hours.length);
        for (const [x, y] of placesOf(picture.band)) {
          expect(x).toBeGreaterThanOrEqual(0);
          expect(x).toBeLessThanOrEqual(100);
          expect(y).toBeGreaterThanOrEqual(0);
          expect(y).toBeLessThanOrEqual(100);
        }
      }),
    );
  });

  test('have a line across for each hour on the axis', () => {
    const { grid, hours } = draw();
    expect(placesOf(grid).map(([, y]) => y)).toEqual(hours.map(({ at }) => Number(at.toFixed(2))));
  });
});

describe('the point of this batch', () => {
  test('stands on the likely line, over its room, and reaches from the soonest to the latest', () => {
    const { point, likely, soonest, latest } = draw({ given: [typed('roomTemperature', 23)] });
    if (point === null) expect.fail('there is no point');
    expect(point.left).toBeCloseTo(50, 9);
    expect(placesOf(point.dot)).toEqual([placesOf(likely)[7]]);
    expect(placesOf(point.reach)).toEqual([placesOf(soonest)[7], placesOf(latest)[7]]);
  });

  test('moves right and down with warmth, and its text keeps to the side with room', () => {
    const [cool, warm] = [17, 28].map((celsius) => draw({ given: [typed('roomTemperature', celsius)] }).point);
    expect(warm?.left).toBeGreaterThan(cool?.left ?? 100);
    expect(warm?.top).toBeGreaterThan(cool?.top ?? 100);
    expect([cool?.side, warm?.side]).toEqual(['right', 'left']);
    expect(draw({}, false).point?.text).toBe('12\u00A0h');
  });

  test.each([15, 31, null])('is none in a room of %s °C', (celsius) => {
    expect(draw({ given: [typed('roomTemperature', celsius)] }).point).toBeNull();
  });

  test('is written with the cook’s decimal mark', () => {
    const given = [typed('roomTemperature', 18)];
    expect(draw({ given }, true).point?.text).toMatch(/^\d+,\d\u00A0h$/);
  });
});

test('fewer than two temperatures are no drawing', () => {
  const formulation = formulate(recipeOf());
  const [first] = ripeningAgainstRoom(formulation) ?? [];
  expect(drawRipening([], formulation, false)).toBeNull();
  expect(drawRipening(first === undefined ? [] : [first], formulation, false)).toBeNull();
});
