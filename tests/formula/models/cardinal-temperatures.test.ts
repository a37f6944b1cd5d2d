// The cardinal temperature model with inflection. Its printed example is in tests/published/references/growth.ts; the
// table of growth and of times here was worked apart from the program, in double precision, by the same formula.
import { describe, expect, it, test } from 'vitest';
import { growthAt, timesAsLong } from '../../../src/formula/models/ripening';
import { cardinalTemperatures } from '../../../src/reference/fermenting';

describe.each(Object.values(cardinalTemperatures))('$name', (organism) => {
  const { minimum, optimum, maximum } = organism;
  test('does not grow at its least and its greatest temperature, and grows best at its optimum', () => {
    expect(growthAt(minimum.value, organism)).toBe(0);
    expect(growthAt(maximum.value, organism)).toBe(0);
    expect(growthAt(optimum.value, organism)).toBeCloseTo(1, 12);
    for (const off of [-3, -0.01, 0.01, 3]) expect(growthAt(optimum.value + off, organism)).toBeLessThan(1);
  });
});

describe('growth as a share of growth at the optimum: yeast, starter, plantarum', () => {
  it.each([
    [16, 0.3944, 0.2175, 0.2111],
    [18, 0.4949, 0.2889, 0.2927],
    [20, 0.5965, 0.3672, 0.3846],
    [22, 0.6955, 0.4508, 0.4846],
    [26, 0.8692, 0.6266, 0.6973],
    [30, 0.9802, 0.797, 0.8943],
  ])('at %s °C: %s, %s, %s', (celsius, yeast, starter, plantarum) => {
    expect(growthAt(celsius, cardinalTemperatures.yeast)).toBeCloseTo(yeast, 4);
    expect(growthAt(celsius, cardinalTemperatures.starter)).toBeCloseTo(starter, 4);
    expect(growthAt(celsius, cardinalTemperatures.plantarum)).toBeCloseTo(plantarum, 4);
  });
});

describe('times as long as at 22 °C: likely, least and most of the models', () => {
  it.each([
    [16, 2.296, 1.722, 2.296],
    [18, 1.655, 1.405, 1.655],
    [20, 1.26, 1.166, 1.26],
    [24, 0.821, 0.821, 0.883],
    [26, 0.695, 0.695, 0.8],
    [30, 0.542, 0.501, 0.71],
  ])('at %s °C: %s, %s to %s', (celsius, likely, least, most) => {
    const spread = timesAsLong(celsius, 22);
    expect(spread.likely).toBeCloseTo(likely, 3);
    expect(spread.least).toBeCloseTo(least, 3);
    expect(spread.most).toBeCloseTo(most, 3);
  });
});
