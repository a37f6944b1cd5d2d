import Big from 'big.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allot, currencyOf, inCoins, sumOf, writeMoney } from '../../../src/formula/cost/money';
import { type Exact, exactly } from '../../../src/measure/exact';

// A constructor of our own, so that no other user of the library changes the places.
const Decimal = Big();
Decimal.DP = 40;

const euros = currencyOf('1 €');

describe('money as it is written', () => {
  test.each([
    ['$1', 435n, '$4.35'],
    ['1 €', 435n, '4.35\u00A0€'],
    ['€', 5n, '€0.05'],
    ['kr', 100n, '1.00\u00A0kr'],
    ['', 1234567n, '12\u202F345.67'],
    ['¥1', 350n, '¥350'],
    ['1 KWD', 1500n, '1.500\u00A0KWD'],
    ['CHF 1', 0n, 'CHF\u00A00.00'],
  ])('by %s', (sample, coins, written) => {
    expect(writeMoney(coins, currencyOf(sample), false)).toBe(written);
  });

  test('has a comma where the cook has one', () => {
    expect(writeMoney(435n, euros, true)).toBe('4,35\u00A0€');
  });
});

describe('rounding', () => {
  test('is once, a half up', () => {
    expect(inCoins(exactly('0.005'), euros)).toBe(1n);
    expect(inCoins(exactly('0.0049999999'), euros)).toBe(0n);
    // A double would have this at 1.00499999999999989…
    expect(inCoins(exactly('1.005'), euros)).toBe(101n);
  });

  test('shares a coin that is left over out to the largest remainder, of equal ones to the first', () => {
    const thirds = [1, 1, 1].map((one) => exactly(one).div(3));
    expect(allot(thirds, euros)).toEqual({ total: 100n, lines: [34n, 33n, 33n] });
    expect(allot([exactly('0.004'), exactly('0.009')], euros)).toEqual({ total: 1n, lines: [0n, 1n] });
    expect(allot([], euros)).toEqual({ total: 0n, lines: [] });
  });
});

/** An amount as grams of a package at a price, and the same by another library, to 40 digits. */
const amount = fc
  .record({
    cents: fc.integer({ min: 0, max: 99_999 }),
    places: fc.integer({ min: 0, max: 4 }),
    grams: fc.integer({ min: 0, max: 5_000_000 }).map((milligrams) => milligrams / 1000),
    held: fc.integer({ min: 1, max: 5000 }),
  })
  .map(({ cents, places, grams, held }) => ({
    exact: exactly(`${cents}e-${places}`).times(exactly(grams)).div(held),
    big: new Decimal(`${cents}e-${places}`).times(String(grams)).div(held),
  }));

/** Whole coins by the other library, a half up. */
const bigCoins = (sum: Big): bigint => BigInt(sum.round(2, Big.roundHalfUp).times(100).toFixed(0));

test('no coin is lost over 10,000 lists, held against big.js', () => {
  let uneven = 0;
  fc.assert(
    fc.property(fc.array(amount, { maxLength: 12 }), (list) => {
      const exact: readonly Exact[] = list.map((one) => one.exact);
      const { total, lines } = allot(exact, euros);
      const sum = list.reduce((all, { big }) => all.plus(big), new Decimal(0));
      const added = lines.reduce((all, line) => all + line, 0n);
      // Asked of the lists themselves: ten thousand times, an expectation of each line would take a minute.
      const isWhole = total === bigCoins(sum) && added === total;
      const isNear = list.every(({ big }, at) => new Decimal(String(lines[at])).div(100).minus(big).abs().lt('0.01'));
      if (lines.some((line, at) => line !== bigCoins(list[at]?.big ?? new Decimal(0)))) uneven += 1;
      return isWhole && isNear;
    }),
    { numRuns: 10_000 },
  );
  // Lines that are each rounded by themselves often do not add up: there was something to share out.
  expect(uneven).toBeGreaterThan(1000);
}, 60_000);

test('a long sum stays short', () => {
  const sum = sumOf(Array.from({ length: 3000 }, (_, at) => exactly(at).div(7000)));
  expect(String(sum.denominator).length).toBeLessThan(6);
});
