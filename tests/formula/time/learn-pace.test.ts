import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type LearnedPace, learnPaces, teaches } from '../../../src/formula/time/learn-pace';
import type { Look } from '../../../src/formula/time/looks';
import { learning } from '../../../src/reference/pace';

const { kitchenSpread, batchSpread, ripeSpan, justSpan, likelyWidth } = learning;

/** The pace of the kitchen, of looks that say neither grains nor source. */
function learnPace(looks: readonly Look[]): (LearnedPace & { readonly count: number }) | null {
  const paces = learnPaces(looks);
  return paces === null ? null : { ...paces.of({}), count: paces.makes.length };
}

let makes = 0;
/** One look at a make of its own. */
function alone(found: Look['found'], hours: number | null, expected: number | null = 12): Look {
  makes += 1;
  return { batch: `b${makes}`, found, at: 1000, hours, expected, acidity: null };
}

/** Looks at one make, whose grains went in at 0. */
function together(batch: string, all: readonly (readonly [Look['found'], number])[], expected = 12): Look[] {
  return all.map(([found, hours]) => ({ batch, found, at: hours, hours, expected, acidity: null }));
}

function paceOf(looks: readonly Look[]): number {
  return learnPace(looks)?.pace ?? 1;
}

/** The integral of sech²(z ÷ 2) ÷ 4 by Simpson’s rule: the chance of an interval, found another way than the code’s. */
function chance(from: number, to: number): number {
  const [low, high] = [Math.max(from, -60), Math.min(to, 60)];
  if (low >= high) return 0;
  const pieces = 6000;
  const width = (high - low) / pieces;
  let sum = 0;
  for (let n = 0; n <= pieces; n += 1) {
    const z = low + n * width;
    sum += (n === 0 || n === pieces ? 1 : n % 2 === 1 ? 4 : 2) / Math.cosh(z / 2) ** 2;
  }
  return (sum * width) / 12;
}

/** The log posterior of u = ln k, of ready times between `soonest` and `latest` where `expected` was. */
function logPosterior(
  u: number,
  all: readonly { readonly soonest: number; readonly latest: number; readonly expected: number }[],
): number {
  const sigma = (batchSpread.value * Math.sqrt(3)) / Math.PI;
  return all.reduce(
    (sum, { soonest, latest, expected }) =>
      sum + Math.log(chance((Math.log(soonest / expected) + u) / sigma, (Math.log(latest / expected) + u) / sigma)),
    -(u ** 2) / (2 * kitchenSpread.value ** 2),
  );
}

/** Where a function is greatest, by ever finer grids, the last one with the top of a parabola through three points. */
function greatest(of: (u: number) => number): number {
  let [middle, step] = [0, 0.05];
  for (let round = 0; round < 4; round += 1) {
    let best = { u: middle, value: Number.NEGATIVE_INFINITY };
    for (let n = -60; n <= 60; n += 1) {
      const u = middle + n * step;
      const value = of(u);
      if (value > best.value) best = { u, value };
    }
    middle = best.u;
    if (round < 2) step /= 20;
  }
  const [before, at, after] = [of(middle - step), of(middle), of(middle + step)];
  return middle + (step * (before - after)) / (2 * (before - 2 * at + after));
}

describe('learnPace', () => {
  test('of nothing, of looks that teach nothing, is nothing', () => {
    expect(learnPace([])).toBeNull();
    expect(learnPace([alone('looked', 12), alone('ready', null), alone('flat', 12, null)])).toBeNull();
    expect(learnPace([alone('flat', 0), alone('ready', Number.NaN), alone('sour', 12, 0)])).toBeNull();
    expect(teaches(alone('ready', 9))).toBe(true);
  });

  test('agrees with the posterior on a fine grid, worked out another way', () => {
    const late = ripeSpan.value;
    const cases = [
      { looks: [alone('flat', 14)], bounds: [{ soonest: 14, latest: 1e6, expected: 12 }] },
      { looks: [alone('ready', 9)], bounds: [{ soonest: 9 / late, latest: 9, expected: 12 }] },
      {
        looks: [{ ...alone('ready', 9), holds: 'just' as const }],
        bounds: [{ soonest: 9 / justSpan.value, latest: 9, expected: 12 }],
      },
      { looks: [alone('sour', 12)], bounds: [{ soonest: 1e-6, latest: 12 / late, expected: 12 }] },
      {
        looks: [
          ...together('b1', [
            ['flat', 10],
            ['ready', 14],
          ]),
          alone('flat', 13),
          alone('sour', 22, 11),
        ],
        bounds: [
          { soonest: 10, latest: 14, expected: 12 },
          { soonest: 13, latest: 1e6, expected: 12 },
          { soonest: 1e-6, latest: 22 / late, expected: 11 },
        ],
      },
    ];
    for (const { looks, bounds } of cases) {
      const u = greatest((x) => logPosterior(x, bounds));
      expect(Math.abs(Math.log(paceOf(looks)) - u)).toBeLessThan(1e-6);
    }
  });

  test('has a range by the curvature of the posterior at its top', () => {
    const learned = learnPace([alone('ready', 9), alone('ready', 10), alone('flat', 7)]);
    const bounds = [9, 10].map((latest) => ({ soonest: latest / ripeSpan.value, latest, expected: 12 }));
    const of = (u: number) => logPosterior(u, [...bounds, { soonest: 7, latest: 1e6, expected: 12 }]);
    const top = Math.log(learned?.pace ?? Number.NaN);
    const step = 1e-3;
    const curvature = -(of(top + step) - 2 * of(top) + of(top - step)) / step ** 2;
    const half = likelyWidth.value / Math.sqrt(curvature);
    expect(Math.log(learned?.low ?? Number.NaN)).toBeCloseTo(top - half, 4);
    expect(Math.log(learned?.high ?? Number.NaN)).toBeCloseTo(top + half, 4);
    expect(learned?.count).toBe(3);
  });

  test('takes looks at one make for one interval: flat at 10 and ready at 14 is between', () => {
    const both = learnPace(
      together('b1', [
        ['flat', 10],
        ['ready', 14],
      ]),
    );
    expect(both?.count).toBe(1);
    expect(both?.pace).toBeLessThan(paceOf([alone('ready', 14)]));
    expect(both?.pace).toBeGreaterThan(paceOf([alone('flat', 10)]));
    const again = together('b1', [
      ['ready', 9],
      ['ready', 9],
    ]);
    expect(learnPace(again)).toEqual(learnPace(again.slice(1)));
  });

  test('takes looks that contradict each other for a time between them', () => {
    // Too sour at 9 h means ready before 6 h; flat at 10 h after that.
    const torn = learnPace(
      together('b1', [
        ['sour', 9],
        ['flat', 10],
      ]),
    );
    const bounds = [{ soonest: 9 / ripeSpan.value, latest: 10, expected: 12 }];
    expect(Math.log(torn?.pace ?? Number.NaN)).toBeCloseTo(
      greatest((u) => logPosterior(u, bounds)),
      6,
    );
    expect(torn?.count).toBe(1);
  });

  test('grows surer with every batch', () => {
    const widths = [1, 2, 5, 20].map((count) => {
      const learned = learnPace(Array.from({ length: count }, () => alone('ready', 9)));
      return Math.log((learned?.high ?? 0) / (learned?.low ?? 1));
    });
    expect(widths).toEqual([...widths].sort((one, other) => other - one));
    expect(widths[3]).toBeLessThan((widths[0] ?? 0) / 1.9);
  });

  test('with twice the hours of many batches, is half', () => {
    const of = (times: number) =>
      paceOf(Array.from({ length: 400 }, (_, n) => alone('ready', times * (8 + (n % 3)), 12)));
    expect(of(1) / of(2)).toBeCloseTo(2, 1);
  });
});

const anyFound = fc.constantFrom('flat', 'ready', 'sour', 'looked');
const anyLook: fc.Arbitrary<Look> = fc.record({
  batch: fc.constantFrom('b1', 'b2', 'b3'),
  found: anyFound,
  at: fc.integer({ min: 0, max: 60 }),
  hours: fc.oneof(
    { weight: 5, arbitrary: fc.double({ min: 1, max: 40, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(null) },
  ),
  expected: fc.oneof(
    { weight: 5, arbitrary: fc.double({ min: 5, max: 30, noNaN: true }) },
    { weight: 1, arbitrary: fc.constant(null) },
  ),
  acidity: fc.constant(null),
});
const anyLooks = fc.array(anyLook, { maxLength: 12 });
const rounding = 1e-9;

describe('whatever is logged', () => {
  test('finding a jar still flat never makes k larger, finding it too sour never smaller', () => {
    const alike = fc.record({ batch: fc.constantFrom('b1', 'b2'), hours: fc.double({ min: 1, max: 40, noNaN: true }) });
    const ofMakes = fc.array(
      fc.tuple(alike, anyFound).map(
        ([{ batch, hours }, found]): Look => ({
          ...{ batch, hours, found, at: hours, expected: 12, acidity: null },
        }),
      ),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(ofMakes, alike, (looks, { batch, hours }) => {
        const one = { batch, hours, at: hours, expected: 12, acidity: null };
        const before = paceOf(looks);
        const taught = looks.some(teaches) ? before : 1;
        expect(paceOf([...looks, { ...one, found: 'flat' }])).toBeLessThanOrEqual(taught * (1 + rounding));
        expect(paceOf([...looks, { ...one, found: 'sour' }])).toBeGreaterThanOrEqual(taught * (1 - rounding));
      }),
    );
  });

  test('the order of the looks does not matter', () => {
    fc.assert(
      fc.property(
        anyLooks.chain((looks) =>
          fc.tuple(fc.constant(looks), fc.shuffledSubarray(looks, { minLength: looks.length })),
        ),
        ([looks, shuffled]) => {
          const [one, other] = [learnPace(looks), learnPace(shuffled)];
          expect(other?.count).toBe(one?.count);
          expect((other?.pace ?? 1) / (one?.pace ?? 1)).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test('the pace lies in its range, and no hours, however extreme, give a number that is none', () => {
    const extreme = fc.oneof(fc.double({ min: 0 }), fc.constantFrom(Number.MIN_VALUE, Number.MAX_VALUE, 1e-9, 1e9, -1));
    const extremeLook = fc.record({
      ...{ batch: fc.constantFrom('b1', 'b2'), found: anyFound, at: fc.double({ min: -1e6, max: 1e6, noNaN: true }) },
      ...{ hours: extreme, expected: extreme, acidity: fc.constant(null) },
    });
    fc.assert(
      fc.property(fc.array(fc.oneof(anyLook, extremeLook), { maxLength: 8 }), (looks) => {
        const learned = learnPace(looks);
        if (learned === null) return;
        expect(learned.pace).toBeGreaterThanOrEqual(learned.low);
        expect(learned.pace).toBeLessThanOrEqual(learned.high);
        expect(learned.low).toBeGreaterThan(0);
        expect(Number.isFinite(learned.high)).toBe(true);
        expect(learned.count).toBeGreaterThan(0);
      }),
    );
  });
});
