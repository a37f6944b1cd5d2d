import { describe, expect, test } from 'vitest';
import { readCoefficient } from '../../../src/batch/reading/read-coefficient';

describe('a figure of the cook’s own', () => {
  test('is in the coefficient’s unit where none is typed, and may have another of its kind', () => {
    expect(readCoefficient('neckDiameter', '7.6', 'cm', false)).toEqual({ ok: true, value: 7.6 });
    expect(readCoefficient('neckDiameter', '3 in', 'cm', false)).toEqual({ ok: true, value: 7.62 });
    expect(readCoefficient('blenderCapacity', '1.5 L', 'mL', false)).toEqual({ ok: true, value: 1500 });
    expect(readCoefficient('uptake', '0,6', 'g/g', true)).toEqual({ ok: true, value: 0.6 });
  });

  test('of a share may be typed in per cent', () => {
    expect(readCoefficient('pulpMoisture', '70 %', 'share', false)).toEqual({ ok: true, value: 0.7 });
    expect(readCoefficient('pulpMoisture', '0.7', 'share', false)).toEqual({ ok: true, value: 0.7 });
  });

  test('is refused, with what to do, where it can’t be read or can’t be', () => {
    expect(readCoefficient('pulpMoisture', 'wet', 'share', false)).toMatchObject({ ok: false });
    expect(readCoefficient('pulpMoisture', '130 %', 'share', false)).toEqual({
      ok: false,
      why: 'Type a number between 0 and 0.99.',
    });
    expect(readCoefficient('neckDiameter', '3 g', 'cm', false)).toMatchObject({ ok: false });
  });
});
