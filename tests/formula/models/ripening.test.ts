import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { growthAt, isWithinModels, timesAsLong, usedAfter } from '../../../src/formula/models/ripening';
import { cardinalTemperatures, fermenting } from '../../../src/reference/fermenting';

const [coolest, warmest] = [fermenting.ripeningCoolest.value, fermenting.ripeningWarmest.value];
const within = fc.double({ min: coolest, max: warmest, noNaN: true });
const anywhere = fc.double({ min: -30, max: 80, noNaN: true });
const organism = fc.constantFrom(...Object.values(cardinalTemperatures));

describe('growth at a temperature', () => {
  test('is a share of the best, and none where nothing grows', () => {
    fc.assert(
      fc.property(anywhere, organism, (celsius, cardinals) => {
        const growth = growthAt(celsius, cardinals);
        expect(growth).toBeGreaterThanOrEqual(0);
        expect(growth).toBeLessThanOrEqual(1 + 1e-12);
        const isAlive = celsius > cardinals.minimum.value && celsius < cardinals.maximum.value;
        if (!isAlive) expect(growth).toBe(0);
      }),
    );
  });

  test('rises with warmth to the optimum, and falls beyond it', () => {
    fc.assert(
      fc.property(anywhere, anywhere, organism, (one, other, cardinals) => {
        const [cool, warm] = [Math.min(one, other), Math.max(one, other)];
        const [lower, upper] = [growthAt(cool, cardinals), growthAt(warm, cardinals)];
        if (warm <= cardinals.optimum.value) expect(upper).toBeGreaterThanOrEqual(lower - 1e-12);
        if (cool >= cardinals.optimum.value) expect(upper).toBeLessThanOrEqual(lower + 1e-12);
      }),
    );
  });
});

describe('times as long', () => {
  test('is 1 at the reference itself, by every model', () => {
    fc.assert(
      fc.property(within, (celsius) => {
        const { least, likely, most } = timesAsLong(celsius, celsius);
        for (const times of [least, likely, most]) expect(times).toBeCloseTo(1, 12);
      }),
    );
  });

  test('never rises with warmth where the models hold, and lies between its ends', () => {
    fc.assert(
      fc.property(within, within, (one, other) => {
        const [cool, warm] = [timesAsLong(Math.min(one, other), 21), timesAsLong(Math.max(one, other), 21)];
        for (const end of ['least', 'likely', 'most'] as const)
          expect(warm[end]).toBeLessThanOrEqual(cool[end] * (1 + 1e-12));
        expect(cool.least).toBeLessThanOrEqual(cool.likely);
        expect(cool.likely).toBeLessThanOrEqual(cool.most);
        expect(cool.least).toBeGreaterThan(0);
      }),
    );
  });

  test('by Arrhenius alone the warmer end is the slowest of the models: worked by hand for 30 °C against 20 °C', () => {
    // exp(64300 ÷ 8.314462618 × (1 ÷ 303.15 − 1 ÷ 293.15)) = 0.4189; the cardinal models give more.
    const { least, most } = timesAsLong(30, 20);
    expect(Math.exp((64300 / 8.314462618) * (1 / 303.15 - 1 / 293.15))).toBeCloseTo(0.4189, 3);
    expect(least).toBeCloseTo(0.4189, 3);
    expect(most).toBeCloseTo(0.5965 / 0.9802, 3);
  });
});

describe('the temperatures of the models', () => {
  test.each([
    [15.9, false],
    [16, true],
    [21, true],
    [30, true],
    [30.1, false],
    [Number.NaN, false],
  ])('%s °C: %s', (celsius, holds) => {
    expect(isWithinModels(celsius)).toBe(holds);
  });
});

describe('sugar used after a share of the ready time', () => {
  test('is none at the start, and as when ready at the ready time', () => {
    expect(usedAfter(0, 0.35)).toBe(0);
    expect(usedAfter(1, 0.35)).toBeCloseTo(0.35, 12);
    // What is left halves again: 1 − 0.65².
    expect(usedAfter(2, 0.35)).toBeCloseTo(0.5775, 12);
  });

  test('rises with time and with what is used when ready, and never takes more than there is', () => {
    const share = fc.double({ min: 0, max: 0.99, noNaN: true });
    const time = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(time, time, share, share, (t1, t2, s1, s2) => {
        const least = usedAfter(Math.min(t1, t2), Math.min(s1, s2));
        const most = usedAfter(Math.max(t1, t2), Math.max(s1, s2));
        expect(least).toBeGreaterThanOrEqual(0);
        expect(most).toBeGreaterThanOrEqual(least - 1e-12);
        expect(most).toBeLessThanOrEqual(1);
      }),
    );
  });
});
