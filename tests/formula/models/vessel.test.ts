import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import {
  depthBelowRim,
  frustumVolume,
  type JarProfile,
  roomAbove,
  wholeDepth,
} from '../../../src/formula/models/vessel';

// Thousands of recipes take longer than one example does.
vi.setConfig({ testTimeout: 60_000 });

const straight: JarProfile = { brimful: 1000, neckDiameter: 8, neckHeight: 2, shoulderHeight: 1, bodyDiameter: 8 };

const size = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((tenth) => tenth / 10);
const anyJar: fc.Arbitrary<JarProfile> = fc
  .record({
    neckDiameter: size(2, 12),
    neckHeight: size(0, 5),
    shoulderHeight: size(0, 5),
    bodyDiameter: size(2, 20),
    body: size(10, 5000),
  })
  .map(({ body, ...shape }) => ({
    ...shape,
    brimful: body + roomAbove({ ...shape, brimful: Number.POSITIVE_INFINITY }, shape.neckHeight + shape.shoulderHeight),
  }));

describe('a jar', () => {
  test('without a shoulder is a cylinder: 3 cm of 8 cm are π × 16 × 3', () => {
    expect(roomAbove(straight, 3)).toBeCloseTo(Math.PI * 48, 9);
    expect(depthBelowRim(straight, Math.PI * 48)).toBeCloseTo(3, 9);
    expect(wholeDepth(straight)).toBeCloseTo(1000 / (Math.PI * 16), 9);
  });

  test('may narrow towards the bottom', () => {
    const bowl: JarProfile = { brimful: 500, neckDiameter: 10, neckHeight: 1, shoulderHeight: 4, bodyDiameter: 6 };
    const halfway = Math.PI * 25 + frustumVolume(10, 8, 2);
    expect(roomAbove(bowl, 3)).toBeCloseTo(halfway, 9);
    expect(depthBelowRim(bowl, halfway)).toBeCloseTo(3, 9);
  });

  test('at or above the rim has no room, below its floor no more than it holds', () => {
    expect([roomAbove(straight, 0), roomAbove(straight, -2), depthBelowRim(straight, -1)]).toEqual([0, 0, 0]);
    expect(roomAbove(straight, 1000)).toBe(1000);
    expect(depthBelowRim(straight, 5000)).toBe(wholeDepth(straight));
  });

  test('of any shape turns depth into room and back', () => {
    fc.assert(
      fc.property(anyJar, fc.integer({ min: 0, max: 1000 }), (jar, step) => {
        const depth = (wholeDepth(jar) * step) / 1000;
        expect(depthBelowRim(jar, roomAbove(jar, depth))).toBeCloseTo(depth, 7);
      }),
      { numRuns: 3000 },
    );
  });

  test('of any shape has more room the deeper', () => {
    fc.assert(
      fc.property(anyJar, fc.integer({ min: 0, max: 999 }), (jar, step) => {
        const whole = wholeDepth(jar);
        expect(roomAbove(jar, (whole * (step + 1)) / 1000)).toBeGreaterThan(roomAbove(jar, (whole * step) / 1000));
      }),
      { numRuns: 2000 },
    );
  });
});
