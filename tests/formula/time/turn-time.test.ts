import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { turnTimesAt } from '../../../src/formula/time/turn-time';

describe('turnTimesAt', () => {
  test('is a day in the usual room, less when warmer, and up to a day and a half while it falls when colder', () => {
    expect(turnTimesAt(21)).toEqual({ plain: 24, falling: 24 });
    // (γ at 21) / (γ at 26): 0.2277 / 0.4190, of 24 h.
    // Half as long again of 13.04 h, of 9.09 h, and of 16.2 h, which is cut at 24.
    expect(turnTimesAt(26)).toEqual({ plain: 13, falling: 20 });
    expect(turnTimesAt(30)).toEqual({ plain: 9, falling: 14 });
    expect(turnTimesAt(24)).toEqual({ plain: 16, falling: 24 });
    // 0.2277 / 0.1958 of 24 h is 27.9 h; at 18 °C it would be 39.5 h.
    expect(turnTimesAt(20)).toEqual({ plain: 24, falling: 28 });
    expect(turnTimesAt(18)).toEqual({ plain: 24, falling: 36 });
  });

  test('counts as in the usual room where nobody knows the temperature', () => {
    expect(turnTimesAt(Number.NaN)).toEqual(turnTimesAt(21));
  });

  test('never grows with warmth, and is a number at any temperature', () => {
    const celsius = fc.double({ min: -20, max: 60, noNaN: true });
    fc.assert(
      fc.property(celsius, celsius, (one, other) => {
        const [cool, warm] = [turnTimesAt(Math.min(one, other)), turnTimesAt(Math.max(one, other))];
        expect(warm.plain).toBeLessThanOrEqual(cool.plain);
        expect(warm.falling).toBeLessThanOrEqual(cool.falling);
        expect(warm.plain).toBeGreaterThan(0);
        expect(cool.falling).toBeLessThanOrEqual(36);
        expect(warm.falling).toBeGreaterThanOrEqual(warm.plain);
      }),
    );
  });
});
