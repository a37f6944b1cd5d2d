import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { packageProblem, readPackage } from '../../../src/batch/reading/read-package';
import { readPrice } from '../../../src/batch/reading/read-price';

const { settings } = demo;

describe('a package', () => {
  test.each([
    ['500 g', 'mass', 500],
    ['bag 500 g', 'mass', 500],
    ['a bag of 500 g', 'mass', 500],
    ['1 kg', 'mass', 1000],
    ['can 400 mL', 'volume', 400],
    ['carton 1 L', 'volume', 1000],
    ['jar of honey 350 g', 'mass', 350],
    ['1 cup', 'volume', 236.5882365],
    ['6 × 1 L', 'volume', 6000],
    ['2 lb', 'mass', 907.18474],
    ['2 cans', 'count', 2],
    ['a tin', 'count', 1],
    ['250', 'mass', 250],
  ] as const)('of %s', (text, kind, amount) => {
    const read = readPackage(text, settings);
    expect(read).toMatchObject({ text, kind });
    expect(read.amount).toBeCloseTo(amount, 9);
    expect(packageProblem(text, settings)).toBeNull();
  });

  test('is in ounces where those lead', () => {
    expect(readPackage('16', { ...settings, leads: 'us' }).amount).toBeCloseTo(453.59237, 9);
  });

  test.each(['', 'a handful', '0 g', '20 °C', '1,250 kg'])('of %s is refused in words, and kept as typed', (text) => {
    expect(packageProblem(text, settings)).toMatch(/\.$/);
    expect(readPackage(text, settings).text).toBe(text);
  });
});

describe('a price', () => {
  test.each([
    ['4.35', '4.35', null],
    ['4,35', '4.35', null],
    [' 12 ', '12', null],
    ['$4.35', '4.35', '$1'],
    ['4,35 €', '4.35', '1 €'],
    ['CHF 4.50', '4.5', 'CHF 1'],
    ['1’250.00', '1250', null],
    ['.5', '0.5', null],
    ['0', '0', null],
    ['0.1234567', '0.1234567', null],
  ])('%s is %s', (text, price, currency) => {
    expect(readPrice(text, false)).toEqual({ ok: true, price, currency });
  });

  test('with a comma for decimals', () => {
    expect(readPrice('1,250', true)).toEqual({ ok: true, price: '1.25', currency: null });
  });

  test.each([
    '',
    'dear',
    '-3',
    '1,250',
    '$4 €',
    '4.35 dollars each',
    '5 × 2',
    '1/3',
    '9.50 g',
    '2 cups',
    'free',
    'NaN',
    '1e999',
    '9'.repeat(60),
  ])('%s is refused in words', (text) => {
    const read = readPrice(text, false);
    expect(read.ok).toBe(false);
    expect(read.ok ? '' : read.why).toMatch(/\.$/);
  });
});
