import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { recipeOf } from '../../../src/batch/document/document';
import { formulate } from '../../../src/formula/engine/formulate';
import {
  askedBy,
  askedByJar,
  batchesUntil,
  carries,
  doseFor,
  largerJars,
  paceOf,
  portionOf,
  spare,
  withGrains,
} from '../../../src/formula/stock/carries';
import { ledgerOf } from '../../../src/formula/stock/ledger';

const [first] = demo.batches;
if (first === undefined) throw new Error('the demo has a batch');
const recipe = { ...recipeOf(demo, first), grains: 'water' as const, given: [] };
const day = 24 * 60;

describe('what a stock carries', () => {
  test('is its weight over the usual dose', () => {
    expect(carries(62, doseFor('water', null))).toBeCloseTo((1000 * 62) / 54, 9);
    expect(carries(-1, doseFor('water', null))).toBe(0);
  });

  test('goes by the dose of the open batch where that is of the same grains', () => {
    const given = [{ row: 'grainRate', text: '40 g/L', amount: 40, kind: 'concentration' }] as const;
    const batch = formulate({ ...recipe, given });
    expect(doseFor('water', batch)).toEqual({ rate: 40, isBatch: true });
    expect(doseFor('milk', batch)).toEqual({ rate: 31, isBatch: false });
    expect(doseFor('water', formulate(recipe))).toEqual({ rate: 54, isBatch: false });
  });

  test('is held against what a batch and a larger jar ask for', () => {
    const small = askedBy('water', formulate({ ...recipe, vessel: 'litre' })) ?? 0;
    const large = askedByJar(recipe, 'fourLitre') ?? 0;
    expect(large / small).toBeGreaterThan(3);
    expect(askedBy('milk', formulate(recipe))).toBeNull();
    const given = [{ row: 'grainRate', text: '40 g/L', amount: 40, kind: 'concentration' }] as const;
    expect(withGrains({ ...recipe, given }, 'water').given).toBe(given);
    expect(withGrains({ ...recipe, given }, 'milk')).toMatchObject({ grains: 'milk', given: [] });
    const larger = largerJars(recipe, small);
    expect(larger.map(({ asked }) => asked)).toEqual(larger.map(({ asked }) => asked).toSorted((a, b) => a - b));
    expect(larger.every(({ id, asked }) => asked > small && id !== 'own')).toBe(true);
    expect(larger.find(({ id }) => id === 'fourLitre')?.asked).toBe(large);
    expect(largerJars(recipe, 10_000)).toEqual([]);
  });
});

describe('enough', () => {
  const until = (have: number, wanted: number, low: number, likely: number, high: number) =>
    batchesUntil(have, wanted, { low, likely, high });

  test('comes after as many batches as the weight has to be multiplied, rounded up', () => {
    expect(until(50, 100, 1.05, 1.1, 1.2)).toEqual({ soonest: 4, likely: 8, latest: 15 });
    expect(until(50, 50, 0.9, 1, 1.1)).toEqual({ soonest: 0, likely: 0, latest: 0 });
  });

  test('is not in sight where they do not grow, or only in years', () => {
    expect(until(50, 100, 0.95, 1, 1.05)).toEqual({ soonest: 15, likely: null, latest: null });
    expect(until(50, 100, 1, 1.001, 1.002)).toEqual({ soonest: null, likely: null, latest: null });
    expect(until(0, 100, 1, 1.1, 1.2)).toEqual({ soonest: null, likely: null, latest: null });
  });

  test('is there at the batch said, and not one before', () => {
    const growths = fc.double({ min: 1.02, max: 1.9, noNaN: true });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 400 }),
        fc.integer({ min: 1, max: 400 }),
        growths,
        (have, wanted, growth) => {
          const { likely } = until(have, wanted, growth, growth, growth);
          if (likely === null) return;
          expect(have * growth ** likely).toBeGreaterThanOrEqual(wanted * (1 - 1e-9));
          if (likely > 0) expect(have * growth ** (likely - 1)).toBeLessThan(wanted * (1 + 1e-9));
        },
      ),
    );
  });
});

test('the pace is the middle of the times between batches, known from three on', () => {
  const out = (at: number) => ({ at, did: 'out' as const });
  expect(paceOf([out(0), out(2 * day)])).toBeNull();
  expect(paceOf([out(9 * day), out(0), out(2 * day), out(5 * day)])).toBe(3 * day);
});

test('spare is what is at rest beyond the open batch, until its grains are out', () => {
  const got = { at: 0, did: 'got', grams: 70 } as const;
  const out = { at: 1, did: 'out', grams: 54, batch: 'a' } as const;
  expect(spare(ledgerOf([got]), 54, 'a')).toBe(16);
  expect(spare(ledgerOf([got, out]), 54, 'a')).toBe(16);
  expect(spare(ledgerOf([got, out]), 54, 'b')).toBe(-38);
  expect(spare(ledgerOf([got]), null, null)).toBe(70);
  expect(portionOf('water')).toBe(27);
});
