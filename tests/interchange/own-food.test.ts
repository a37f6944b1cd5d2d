import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { longestName } from '../../src/batch/document/document-limits';
import { readOwnFood } from '../../src/interchange/own-food';
import type { Habits } from '../../src/interchange/recipe-text';

const habits: Habits = { cups: 'us', decimalComma: false };

describe('a food weighed once, as typed', () => {
  test('is its name, the measure filled and what that weighs', () => {
    const read = readOwnFood('  Sprouted oats ', '½ cup', '1.5 oz', habits);
    if (!read.ok) throw new Error(read.why);
    expect(read.food.name).toBe('Sprouted oats');
    expect(read.food.millilitres).toBeCloseTo(118.294, 3);
    expect(read.food.grams).toBeCloseTo(42.524, 3);
  });

  test('takes numbers without units for mL and g, by the cook’s own cup and decimal sign', () => {
    const plain = readOwnFood('Oats', '250', '90', habits);
    expect(plain).toEqual({ ok: true, food: { name: 'Oats', millilitres: 250, grams: 90 } });
    const comma = readOwnFood('Oats', '1 cup', '90,5 g', { cups: 'metric', decimalComma: true });
    expect(comma).toEqual({ ok: true, food: { name: 'Oats', millilitres: 250, grams: 90.5 } });
  });

  test.each([
    ['no name', ' ', '1 cup', '90 g', /name/],
    ['an endless name', 'x'.repeat(longestName + 1), '1 cup', '90 g', /short name/],
    ['no measure', 'Oats', '', '90 g', /\.$/],
    ['a measure that weighs', 'Oats', '90 g', '90 g', /\.$/],
    ['no weight', 'Oats', '1 cup', '', /\.$/],
    ['a weight that measures', 'Oats', '1 cup', '1 cup', /\.$/],
    ['a weight of nothing', 'Oats', '1 cup', '0 g', /more than 0/],
    ['a weight below zero', 'Oats', '1 cup', '-90 g', /more than 0/],
    ['a measure of nothing', 'Oats', '0 mL', '90 g', /more than 0/],
    ['a slip of the finger', 'Oats', '1 cup', '9o g', /9o/],
  ])('with %s is refused with what to do', (_, name, measure, weight, says) => {
    const read = readOwnFood(name, measure, weight, habits);
    expect(read.ok ? 'not refused' : read.why).toMatch(says);
  });

  test('never throws, and never keeps what can’t be saved', () => {
    const text = fc.oneof(fc.string({ unit: 'binary' }), fc.double().map(String));
    fc.assert(
      fc.property(text, text, text, (name, measure, weight) => {
        const read = readOwnFood(name, measure, weight, habits);
        if (!read.ok) {
          expect(read.why).toMatch(/\S/);
          return;
        }
        expect(read.food.name.trim()).not.toBe('');
        expect(read.food.name.length).toBeLessThanOrEqual(longestName);
        for (const amount of [read.food.grams, read.food.millilitres]) {
          expect(amount).toBeGreaterThan(0);
          expect(Number.isFinite(amount)).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });
});
