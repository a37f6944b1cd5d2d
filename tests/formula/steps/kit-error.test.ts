import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { worstError } from '../../../src/formula/steps/kit-error';
import { onScale } from '../../../src/formula/words/on-scale';
import { type Kitchen, writeRow } from '../../../src/formula/words/write-row';
import { usualScoopSet } from '../../../src/measure/scoops';
import { tightBag as recipeOf, typed } from '../../batches';

const metric: Kitchen = { leads: 'metric', cups: 'us', scoops: usualScoopSet, decimalComma: false };
const us: Kitchen = { ...metric, leads: 'us' };
const batch = formulate(recipeOf({ given: [typed('sourceMass', 152)] }));

describe('a scale', () => {
  test('shows a mass to what it reads to, and never as nothing', () => {
    expect([onScale(17.34, undefined), onScale(17.34, 0.1), onScale(17.34, 1), onScale(17.34, 5)]).toEqual(
      [17.34, 17.3, 17, 15].map((value) => expect.closeTo(value, 9)),
    );
    expect(onScale(1.2, 5)).toBe(1.2);
  });

  test('is at most half of what it reads to off', () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 5000, noNaN: true }), fc.constantFrom(0.1, 1, 5), (grams, scale) => {
        expect(Math.abs(onScale(grams, scale) - grams)).toBeLessThanOrEqual(scale / 2 + 1e-9);
      }),
    );
  });

  test('writes the amounts of the sheet as it shows them', () => {
    expect(writeRow(batch, 'sourceMass', { ...metric, scale: 5 })?.metric).toBe('150\u00A0g');
    expect(writeRow(batch, 'sourceMass', { ...metric, scale: 1 })?.metric).toBe('152\u00A0g');
  });
});

describe('the worst error of a kit', () => {
  test('is not told where no scale was named', () => {
    expect(worstError(batch, metric)).toBeNull();
  });

  test('is that of the smallest amounts on a coarse scale', () => {
    const worst = worstError(batch, { ...metric, scale: 5 });
    expect(['sweetenerMass', 'grainMass']).toContain(worst?.row);
    // 152 g of almonds take about 17 g of sugar, which a 5 g scale shows as 15 g.
    expect(worst?.error).toBeCloseTo(0.128, 2);
  });

  // A cup is at most 8 % off and a spoonful 15 %, one up and the other down.
  test('is within what level scoops repeat where they lead, with all scoops owned', () => {
    const owned = worstError(batch, us)?.error ?? Number.NaN;
    expect(owned).toBeLessThan(1.15 / 0.92 - 1);
    const fewScoops = { cups: ['1'], tablespoon: true, teaspoons: [] } as const;
    expect(worstError(batch, { ...us, scoops: fewScoops })?.error).toBeGreaterThan(owned);
  });

  test('leaves out what is weighed, since no spoon is small enough', () => {
    const pinch = formulate(recipeOf({ given: [typed('sourceMass', 2)] }));
    const worst = worstError(pinch, us);
    expect(writeRow(pinch, 'sweetenerMass', us)?.us).toBe('0.01\u00A0oz, weigh\u00A0it');
    expect(worst?.error).toBeLessThan(1.15 / 0.85 - 1);
  });
});
