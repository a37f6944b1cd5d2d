import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { foldPrices } from '../../../src/batch/document/fold-prices';
import { readDocument } from '../../../src/batch/document/read-document';

const kilogram = { text: '1 kg', amount: 1000, kind: 'mass' as const };

describe('prices of an earlier page', () => {
  test('become packages of a kilogram as the sheet is opened', () => {
    const read = readDocument(JSON.parse(JSON.stringify({ ...demo, prices: { honey: 9.5, caneWhite: 1.2 } })));
    expect(read.ok && read.document).toEqual({
      ...demo,
      packages: [
        { food: 'sweetener.honey', amount: kilogram, price: '9.5' },
        { food: 'sweetener.caneWhite', amount: kilogram, price: '1.2' },
      ],
    });
  });

  test('give way to a package that is there', () => {
    const honey = { food: 'sweetener.honey', amount: { ...kilogram, text: '340 g', amount: 340 }, price: '5.10' };
    expect(foldPrices({ ...demo, prices: { honey: 9.5 }, packages: [honey] })).toEqual({ ...demo, packages: [honey] });
  });

  test.each([
    [5e-7, '0.0000005'],
    [1e21, '1000000000000000000000'],
    [0, '0'],
  ])('are written in plain digits: %s', (price, text) => {
    expect(foldPrices({ ...demo, prices: { honey: price } }).packages?.[0]?.price).toBe(text);
  });

  test('of none leave the sheet as it is', () => {
    expect(foldPrices(demo)).toBe(demo);
    expect(foldPrices({ ...demo, prices: {} })).toEqual(demo);
  });

  test('beyond all digits are no prices', () => {
    expect(foldPrices({ ...demo, prices: { honey: 1e300 } }).packages).toBeUndefined();
  });
});
