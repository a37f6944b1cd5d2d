import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { listFoods, ownKey } from '../../src/formula/foods/look-up';
import { type LookUpResult, lookUpAmount } from '../../src/interchange/look-up-amount';
import type { Habits } from '../../src/interchange/recipe-text';

const habits: Habits = { cups: 'us', decimalComma: false };

function found(text: string, food: string, form: string | null = null, how = habits) {
  const result = lookUpAmount(text, food, form, how);
  if (!result.ok) throw new Error(result.why);
  return result;
}

function refusal(result: LookUpResult): string {
  if (result.ok) throw new Error('it was not refused');
  return result.why;
}

describe('an amount of a food, looked up the other way', () => {
  test('is grams for a cup and cups for grams', () => {
    // USDA 12061: 1 cup of whole almonds is 143 g.
    const cup = found('1 ¼ cups', '12061');
    expect(cup.typed.kind).toBe('volume');
    expect(cup.other.spread.likely).toBeCloseTo(178.75, 9);
    expect(cup.other.by.origin.kind).toBe('published');
    const grams = found('143 g', '12061');
    expect(grams.typed).toEqual({ kind: 'mass', amount: 143 });
    expect(grams.other.spread.likely).toBeCloseTo(236.588, 3);
  });

  test('takes a number without a unit for grams', () => {
    expect(found('143', '12061').typed).toEqual({ kind: 'mass', amount: 143 });
  });

  test('is of the cut or packing named', () => {
    // USDA 19334: 220 g packed, 145 g unpacked.
    expect(found('1 cup', '19334', 'packed').other.spread.likely).toBeCloseTo(220, 9);
    expect(found('1 cup', '19334', 'unpacked').other.spread.likely).toBeCloseTo(145, 9);
    const { low, high } = found('1 cup', '19334').other.spread;
    expect(low).toBeLessThanOrEqual(145);
    expect(high).toBeGreaterThanOrEqual(220);
  });

  test('is by the cook’s own cup and decimal sign', () => {
    const metric = found('1 cup', '12061', null, { ...habits, cups: 'metric' });
    expect(metric.typed).toEqual({ kind: 'volume', amount: 250 });
    expect(found('71,5 g', '12061', null, { ...habits, decimalComma: true }).typed.amount).toBe(71.5);
  });

  test('is by the cook’s own weighing where there is one, and says so', () => {
    const ownFoods = [{ name: 'Sprouted oats', grams: 90, millilitres: 250 }];
    const { other } = found('500 mL', ownKey('Sprouted oats'), null, { ...habits, ownFoods });
    expect(other.spread.likely).toBeCloseTo(180, 9);
    expect(other.by.origin.kind).toBe('yours');
  });

  test('is refused in words where it can’t be had', () => {
    expect(refusal(lookUpAmount('-1 cup', '12061', null, habits))).toMatch(/less than 0/);
    expect(refusal(lookUpAmount('', '12061', null, habits))).toMatch(/\.$/);
    expect(refusal(lookUpAmount('17o g', '12061', null, habits))).toMatch(/17o/);
    expect(refusal(lookUpAmount('3 h', '12061', null, habits))).toMatch(/\.$/);
    expect(refusal(lookUpAmount('1 cup', 'no such food', null, habits))).toMatch(/Weigh a cup/);
  });

  test('never throws, and gives its range in order, whatever is typed', () => {
    const anyFood = fc.oneof(fc.constantFrom(...listFoods().map(({ key }) => key)), fc.string());
    const anyText = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.tuple(fc.double(), fc.constantFrom(' cup', ' g', ' oz', ' tbsp')).map(([amount, unit]) => `${amount}${unit}`),
    );
    fc.assert(
      fc.property(anyText, anyFood, fc.option(fc.constantFrom('packed', 'sliced', 'whole', '')), (text, food, form) => {
        const result = lookUpAmount(text, food, form, habits);
        if (!result.ok) {
          expect(result.why).toMatch(/\S/);
          return;
        }
        const { low, likely, high } = result.other.spread;
        expect(low).toBeLessThanOrEqual(likely);
        expect(likely).toBeLessThanOrEqual(high);
        expect(low).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 300 },
    );
  });
});
