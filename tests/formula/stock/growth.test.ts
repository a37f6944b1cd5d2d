import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { studentQuantile } from '../../../src/formula/models/student';
import { expectedIn, growthBySource, growthFrom, growthIn } from '../../../src/formula/stock/growth';
import { expectedGrowth } from '../../../src/reference/stock-growth';

const { inPlantMilk, milkInSoy, waterInSugarWater } = expectedGrowth;
const round = (before: number, after: number) => ({ before, after });
const logged = (before: number, after: number, at: number, source: 'soy' | 'almond') => ({
  ...{ before, after, from: at - 1, at, source, medium: null, name: null },
});

describe('growth from rounds that were weighed', () => {
  test('is what is expected, with its range, without any', () => {
    expect(growthFrom([], inPlantMilk)).toMatchObject({ low: 0.95, likely: 1, high: 1.05, from: 0, own: null });
    const noRange = growthFrom([], expectedGrowth.waterInCoconutWater);
    expect(noRange.low).toBeCloseTo(1.31 / 1.2, 12);
    expect(noRange.high).toBeCloseTo(1.31 * 1.2, 12);
  });

  test('of two batches comes to what is worked by hand', () => {
    // Expected ×1, 0.95 to 1.05 at 1.28 deviations: its deviation ln(1.05 ÷ 0.95) ÷ 2.56 = 0.0390951, so it counts as
    // (0.06 ÷ 0.0390951)² = 2.355362 batches. 50 → 55 and 50 → 60: logs 0.0953102 and 0.1823216, mean 0.1388159.
    // Middle 2 × 0.1388159 ÷ 4.355362 = 0.0637449. Scatter 2 × 0.0435057² = 0.00378549; apart
    // 2.355362 × 2 ÷ 4.355362 × 0.1388159² = 0.0208420. Variance (4 × 0.0036 + 0.00378549 + 0.0208420) ÷ 6 = 0.00650458.
    // Half √(0.00650458 ÷ 4.355362) × 1.439756 (t, 6 degrees, 0.9) = 0.0556401.
    const growth = growthFrom([round(50, 55), round(50, 60)], inPlantMilk);
    expect(growth.weight).toBeCloseTo(2.355362, 5);
    expect(growth.own).toBeCloseTo(Math.exp(0.1388159), 6);
    expect(growth.likely).toBeCloseTo(Math.exp(0.0637449), 5);
    expect(growth.low).toBeCloseTo(Math.exp(0.0637449 - 0.0556401), 5);
    expect(growth.high).toBeCloseTo(Math.exp(0.0637449 + 0.0556401), 5);
  });

  test('lies between what is expected and what was weighed, and nears it with more', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.6, max: 1.8, noNaN: true }), fc.integer({ min: 1, max: 20 }), (ratio, count) => {
        const rounds = Array.from({ length: count }, () => round(100, 100 * ratio));
        const few = growthFrom(rounds, inPlantMilk);
        const least = Math.min(1, ratio) - 1e-9;
        const most = Math.max(1, ratio) + 1e-9;
        expect(few.likely >= least && few.likely <= most).toBe(true);
        expect(few.low).toBeLessThanOrEqual(few.likely);
        expect(few.high).toBeGreaterThanOrEqual(few.likely);
        const more = growthFrom([...rounds, round(100, 100 * ratio)], inPlantMilk);
        if (count < 20)
          expect(Math.abs(Math.log(more.likely / ratio))).toBeLessThanOrEqual(
            Math.abs(Math.log(few.likely / ratio)) + 1e-12,
          );
      }),
    );
  });

  test('with many batches and hardly an expectation is the plain t interval of the logarithms', () => {
    const vague = { ...waterInSugarWater, low: 0.01, high: 169 };
    const rounds = Array.from({ length: 20 }, (_, place) => round(100, place % 2 === 0 ? 110 : 125));
    const logs = rounds.map(({ after }) => Math.log(after / 100));
    const mean = logs.reduce((sum, log) => sum + log, 0) / 20;
    const deviation = Math.sqrt(logs.reduce((sum, log) => sum + (log - mean) ** 2, 0) / 19);
    const growth = growthFrom(rounds, vague);
    expect(growth.likely).toBeCloseTo(Math.exp(mean), 3);
    const half = (studentQuantile(0.9, 19) * deviation) / Math.sqrt(20);
    expect(Math.log(growth.high) - Math.log(growth.likely)).toBeCloseTo(half, 2);
  });

  test('does not count lost grains or a slip of the scale', () => {
    const plain = growthFrom([round(50, 55)], inPlantMilk);
    expect(growthFrom([round(50, 55), round(50, 5), round(50, 550)], inPlantMilk)).toEqual(plain);
  });

  test('looks at the latest batches alone', () => {
    const latest = Array.from({ length: 20 }, () => round(100, 105));
    expect(growthFrom([round(100, 200), ...latest], inPlantMilk)).toEqual(growthFrom(latest, inPlantMilk));
  });

  test('holds the true growth about four times in five, in 400 kitchens drawn from what is expected', () => {
    let seed = 7;
    const chance = () => {
      seed = (seed * 16807) % 2147483647;
      return seed / 2147483647;
    };
    const normal = () => Math.sqrt(-2 * Math.log(chance())) * Math.cos(2 * Math.PI * chance());
    const own = Math.log(1.05 / 0.95) / 2.56;
    let held = 0;
    for (let kitchen = 0; kitchen < 400; kitchen += 1) {
      const truth = own * normal();
      const rounds = Array.from({ length: 1 + (kitchen % 6) }, () =>
        round(100, 100 * Math.exp(truth + 0.06 * normal())),
      );
      const { low, high } = growthFrom(rounds, inPlantMilk);
      if (Math.log(low) <= truth && truth <= Math.log(high)) held += 1;
    }
    expect(held / 400).toBeGreaterThan(0.74);
    expect(held / 400).toBeLessThan(0.88);
  });
});

describe('growth by source', () => {
  test('keeps milks and liquids apart, the latest first, and counts slips', () => {
    const lines = growthBySource('milk', [
      logged(50, 60, 1, 'soy'),
      logged(50, 51, 2, 'almond'),
      logged(50, 500, 3, 'soy'),
      { ...logged(50, 55, 4, 'soy'), source: null, medium: 'dairy' },
      { ...logged(50, 55, 5, 'soy'), source: null },
    ]);
    expect(lines.map((line) => line.in)).toEqual([{ medium: 'dairy' }, { source: 'soy' }, { source: 'almond' }]);
    expect(lines[1]).toMatchObject({ slips: 1, growth: { from: 1 } });
    expect(growthIn('milk', lines, { source: 'soy' })).toBe(lines[1]?.growth);
    expect(growthIn('milk', lines, { source: 'hemp' })).toMatchObject({ from: 0, likely: 1 });
  });

  test('expects growth where some was found, and none elsewhere', () => {
    expect(expectedIn('milk', { source: 'soy' })).toBe(milkInSoy);
    expect(expectedIn('water', { source: 'soy' })).toBe(inPlantMilk);
    expect(expectedIn('milk', { medium: 'dairy' })).toBe(expectedGrowth.milkInDairy);
    expect(expectedIn('water', { medium: 'dairy' })).toBe(inPlantMilk);
    expect(expectedIn('water', { medium: 'sugarWater' })).toBe(waterInSugarWater);
    expect(expectedIn('milk', { source: 'coconutMilk' })).toBe(expectedGrowth.inCoconut);
    expect(expectedIn('water', { source: 'coconutWater' })).toBe(expectedGrowth.waterInCoconutWater);
  });
});
