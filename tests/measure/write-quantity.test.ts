import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { convertNumber, type Kind } from '../../src/measure/units';
import { writeMetric, writeNumber, writeTrimmed, writeUS } from '../../src/measure/write-quantity';

const plain = (text: string | null) => text?.replaceAll('\u00A0', ' ') ?? null;

describe('writeNumber', () => {
  test.each([
    [1.005, 2, '1.01'],
    [-0.001, 1, '0.0'],
    [-40, 0, '−40'],
    [1234, 0, '1234'],
    [12345, 0, '12\u202F345'],
    [1234567.891, 2, '1\u202F234\u202F567.89'],
    [Number.NaN, 1, '–'],
    [Number.NEGATIVE_INFINITY, 1, '–'],
  ])('writes %d to %d places as %j', (value, places, written) => {
    expect(writeNumber(value, places, false)).toBe(written);
  });

  test('writes a decimal comma on request', () => {
    expect(writeNumber(12345.6, 1, true)).toBe('12\u202F345,6');
    expect(writeTrimmed(4.5, 2, true)).toBe('4,5');
    expect(writeTrimmed(40, 2, true)).toBe('40');
  });
});

describe('writeMetric', () => {
  const written: readonly (readonly [number, Kind, string])[] = [
    [0.35, 'mass', '0.35 g'],
    [0.996, 'mass', '1.0 g'],
    [4.93, 'mass', '4.9 g'],
    [9.97, 'mass', '10 g'],
    [170.09713875, 'mass', '170 g'],
    [9999.4, 'mass', '9999 g'],
    [9999.7, 'mass', '10.00 kg'],
    [0, 'mass', '0 g'],
    [512, 'volume', '512 mL'],
    [11356.2, 'volume', '11.36 L'],
    [2.54, 'length', '2.5 cm'],
    [21, 'temperature', '21 °C'],
    [20.3, 'temperature', '20.5 °C'],
    [-0.2, 'temperature', '0 °C'],
    [1 / 6, 'time', '10 min'],
    [0.9999, 'time', '1 h'],
    [12.25, 'time', '12.3 h'],
    [12, 'time', '12 h'],
    [0.005, 'time', '18 s'],
    [1.537, 'pressure', '1.5 bar'],
    [14.24, 'pressure', '14 bar'],
    [9.999, 'pressure', '10 bar'],
    [4.5, 'ratio', '4.5 parts'],
    [1, 'ratio', '1 part'],
    [50, 'concentration', '50.0 g/L'],
    [5, 'share', '5.0 %'],
    [2, 'count', '2'],
    [2.54, 'count', '2.5'],
    [4.6, 'acidity', 'pH 4.60'],
  ];

  test.each(written)('writes %d of %s as %j', (value, kind, text) => {
    expect(plain(writeMetric(value, kind, false))).toBe(text);
  });

  test('joins a number and its unit by a space that does not break', () => {
    expect(writeMetric(512, 'volume', false)).toBe('512\u00A0mL');
    expect(writeMetric(1.5, 'share', true)).toBe('1,5\u00A0%');
  });

  test('writes a dash for what is not finite', () => {
    expect(writeMetric(Number.NaN, 'mass', false)).toBe('–');
    expect(writeUS(Number.POSITIVE_INFINITY, 'mass', false)).toBe('–');
  });
});

describe('writeUS', () => {
  const written: readonly (readonly [number, Kind, string | null])[] = [
    [170.09713875, 'mass', '6 oz'],
    [10, 'mass', '0.35 oz'],
    [100, 'mass', '3.5 oz'],
    [453.59237, 'mass', '1 lb'],
    [452.6, 'mass', '1 lb'],
    [540, 'mass', '1 lb 3 oz'],
    [1000, 'mass', '2 lb 3.3 oz'],
    [-540, 'mass', '−1 lb 3 oz'],
    [2.54, 'length', '1 in'],
    [2, 'length', '¾ in'],
    [3.81, 'length', '1 ½ in'],
    [0, 'length', '0 in'],
    [20, 'temperature', '68 °F'],
    [5, 'temperatureDifference', '9 °F'],
    [1.537, 'pressure', '22 psi'],
    [14.24, 'pressure', '207 psi'],
    [512, 'volume', null],
    [12, 'time', null],
    [4.5, 'ratio', null],
    [2, 'count', null],
    [5, 'share', null],
    [50, 'concentration', null],
    [4.6, 'acidity', null],
  ];

  test.each(written)('writes %d of %s as %j', (value, kind, text) => {
    expect(plain(writeUS(value, kind, false))).toBe(text);
  });

  // 2.25 oz in grams is a double that times a factor in doubles may fall short of 2.25 again.
  test('rounds half a tenth of an ounce up, as the exact number has it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 158 }), (tenths) => {
        const half = convertNumber((tenths + 0.5) / 10, 'oz', 'g');
        expect(plain(writeUS(half, 'mass', false))).toBe(`${(tenths + 1) / 10} oz`);
      }),
    );
  });

  test('never writes sixteen ounces', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), (grams) => {
        expect(writeUS(grams, 'mass', false)).not.toMatch(/(?:^|\D)16\u00A0oz/);
      }),
    );
  });
});
