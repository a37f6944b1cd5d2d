import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ReadOptions, readQuantity } from '../../src/measure/read-quantity';
import { baseUnits, type Kind, units } from '../../src/measure/units';
import { writeMetric, writeUS } from '../../src/measure/write-quantity';

const anyKind = fc.constantFrom(...Object.values(units).map((unit) => unit.kind));

function optionsFor(kind: Kind, decimalComma: boolean): ReadOptions {
  return { kind, bareUnit: baseUnits[kind], cups: 'us', decimalComma };
}

describe('what is written', () => {
  /** Half of the last place that the writer prints for a value of this kind and size. */
  function roundingOf(kind: Kind, value: number): number {
    const size = Math.abs(value);
    switch (kind) {
      case 'mass':
      case 'volume':
        return size < 1 ? 0.005 : size < 10 ? 0.05 : size < 9999.5 ? 0.5 : 5;
      case 'temperature':
      case 'temperatureDifference':
        return 0.25;
      case 'time':
        return size < 0.9 ? 0.5 / 60 : 0.05;
      case 'pressure':
        return size < 9.95 ? 0.05 : 0.5;
      case 'ratio':
      case 'acidity':
        return 0.005;
      default:
        return 0.05;
    }
  }

  test('in metric is read back within the rounding of print', () => {
    fc.assert(
      fc.property(
        anyKind,
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.boolean(),
        (kind, value, decimalComma) => {
          const written = writeMetric(value, kind, decimalComma);
          const result = readQuantity(written, optionsFor(kind, decimalComma));
          if (kind === 'acidity' && value < 0) return;
          expect(result.ok ? Math.abs(result.reading.amount - value) : written).toBeLessThanOrEqual(
            roundingOf(kind, value) * (1 + 1e-9) + 1e-9,
          );
        },
      ),
      { numRuns: 2000 },
    );
  });

  test('in US units is read back within the rounding of print', () => {
    const rounding = { mass: 28.35 / 20, length: 2.54 / 16, temperature: 5 / 18, pressure: 0.0689476 / 2 };
    const kinds = fc.constantFrom('mass', 'length', 'temperature', 'pressure');
    fc.assert(
      fc.property(kinds, fc.double({ min: -1e5, max: 1e5, noNaN: true }), fc.boolean(), (kind, value, decimalComma) => {
        const written = writeUS(value, kind, decimalComma) ?? '';
        const result = readQuantity(written, optionsFor(kind, decimalComma));
        expect(result.ok ? Math.abs(result.reading.amount - value) : written).toBeLessThanOrEqual(
          rounding[kind] * 1.0001,
        );
      }),
      { numRuns: 2000 },
    );
  });
});
