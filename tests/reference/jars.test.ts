import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Jar, jars } from '../../src/reference/jars';
import { kitchen } from '../../src/reference/kitchen';

const entries = Object.entries(jars);

/** Volumes of neck and shoulder, mL, and the height of the body below them, cm. */
function measure({ brimful, neckDiameter, neckHeight, shoulderHeight, bodyDiameter }: Jar) {
  const a = neckDiameter.value / 2;
  const b = bodyDiameter.value / 2;
  const neck = Math.PI * a * a * neckHeight.value;
  const shoulder = (Math.PI * shoulderHeight.value * (a * a + a * b + b * b)) / 3;
  return { neck, shoulder, bodyArea: Math.PI * b * b, body: (brimful.value - neck - shoulder) / (Math.PI * b * b) };
}

describe('jars', () => {
  it('have unique names', () => {
    expect(new Set(entries.map(([, { name }]) => name)).size).toBe(entries.length);
  });

  it('are of a plausible height for their width', () => {
    fc.assert(
      fc.property(fc.constantFrom(...entries), ([, jar]) => {
        const height = measure(jar).body + jar.neckHeight.value + jar.shoulderHeight.value;
        expect(height / jar.bodyDiameter.value).toBeGreaterThan(1.2);
        expect(height / jar.bodyDiameter.value).toBeLessThan(2.3);
        expect(jar.neckDiameter.value).toBeLessThan(jar.bodyDiameter.value);
      }),
      { numRuns: 200 },
    );
  });

  it('have the least usual headspace below the neck, and keep over 70 % of a pint below it', () => {
    const { pint } = jars;
    const { neck, shoulder } = measure(pint);
    expect(kitchen.headspaceDepth.value).toBeGreaterThan(pint.neckHeight.value);
    expect(1 - (neck + shoulder) / pint.brimful.value).toBeGreaterThan(0.6);
  });

  it('start an own jar as the litre jar, to be measured', () => {
    for (const part of ['brimful', 'neckDiameter', 'neckHeight', 'shoulderHeight', 'bodyDiameter'] as const) {
      expect(jars.own[part].value).toBe(jars.litre[part].value);
      expect(jars.own[part].origin.kind).toBe('judgement');
    }
  });
});
