// Solids of elementary geometry: cylinder πr²h, cone frustum πh(r₁² + r₁r₂ + r₂²)/3. The check values were worked apart
// from the program in double precision: a neck 7.0 cm wide and 2.54 cm (1 in) deep holds 97.75 mL; a frustum of radius
// 3.5 to 4.5 cm, 2 cm high, holds 101.05 mL.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { depthBelowRim, frustumVolume, type JarProfile, roomAbove, wholeDepth } from '../../src/formula/models/vessel';
import { type Jar, jars } from '../../src/reference/jars';

function profileOf(jar: Jar): JarProfile {
  return {
    brimful: jar.brimful.value,
    neckDiameter: jar.neckDiameter.value,
    neckHeight: jar.neckHeight.value,
    shoulderHeight: jar.shoulderHeight.value,
    bodyDiameter: jar.bodyDiameter.value,
  };
}

const jar: JarProfile = { brimful: 1000, neckDiameter: 7, neckHeight: 2.54, shoulderHeight: 2, bodyDiameter: 9 };

describe('worked slices', () => {
  it('an inch of a 7.0 cm neck is 97.75 mL', () => {
    expect(roomAbove(jar, 2.54)).toBeCloseTo(97.75, 2);
    expect(depthBelowRim(jar, 97.75)).toBeCloseTo(2.54, 3);
  });

  it('a frustum from radius 3.5 to 4.5 cm, 2 cm high, is 101.05 mL', () => {
    expect(frustumVolume(7, 9, 2)).toBeCloseTo(101.05, 2);
    expect(roomAbove(jar, 4.54)).toBeCloseTo(97.75 + 101.05, 1);
  });

  it('a frustum that does not widen is a cylinder, and one that ends in a point a cone', () => {
    expect(frustumVolume(8, 8, 3)).toBeCloseTo(Math.PI * 16 * 3, 9);
    expect(frustumVolume(0, 6, 4)).toBeCloseTo((Math.PI * 9 * 4) / 3, 9);
  });
});

describe.each(Object.entries(jars))('%s', (_, entry) => {
  const profile = profileOf(entry);

  it('turns any depth into its room and back', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1, noNaN: true }), (share) => {
        const depth = share * wholeDepth(profile);
        expect(depthBelowRim(profile, roomAbove(profile, depth))).toBeCloseTo(depth, 8);
      }),
      { numRuns: 500 },
    );
  });

  it('is brimful at its floor, and deeper than its neck and shoulder', () => {
    expect(roomAbove(profile, wholeDepth(profile))).toBeCloseTo(profile.brimful, 6);
    expect(wholeDepth(profile)).toBeGreaterThan(profile.neckHeight + profile.shoulderHeight);
  });
});
