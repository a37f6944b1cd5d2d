import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeGrams } from '../../src/interchange/typed-texts';
import { readQuantity } from '../../src/measure/read-quantity';

describe('an amount written as a cook would type it', () => {
  test('is to the hundredth of a gram, in plain characters', () => {
    expect(writeGrams(22.9914, false)).toBe('22.99 g');
    expect(writeGrams(22.9914, true)).toBe('22,99 g');
    expect(writeGrams(20, false)).toBe('20 g');
    expect(writeGrams(1234567.5, false)).toBe('1234567.5 g');
  });

  test('is read again as that, with either decimal sign', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), fc.boolean(), (amount, decimalComma) => {
        const text = writeGrams(amount, decimalComma);
        const read = readQuantity(text, { kind: 'mass', bareUnit: 'g', cups: 'us', decimalComma });
        if (!read.ok) throw new Error(`${text} is not read`);
        expect(Math.abs(read.reading.amount - amount)).toBeLessThanOrEqual(0.005 + 1e-6);
      }),
    );
  });
});
