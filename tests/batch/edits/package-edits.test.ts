import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { longestName, mostPackages } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import {
  forgetPackage,
  isSameCurrency,
  packageSteps,
  setCurrency,
  setPackage,
  type TypedPackage,
  typePrice,
} from '../../../src/batch/edits/package-edits';

const bag: TypedPackage = { amount: { text: '500 g', amount: 500, kind: 'mass' }, price: '9.90' };
const jar: TypedPackage = { amount: { text: '1 cup', amount: 236.5882365, kind: 'volume' }, price: '6' };

describe('a package', () => {
  test('is kept under its food, and a new price takes the place of the old', () => {
    const one = setPackage(demo, 'source.almond', bag);
    const two = setPackage(one, 'sweetener.honey', jar);
    const dearer = setPackage(two, 'source.almond', { ...bag, price: '11' });
    expect(dearer.packages).toEqual([
      { food: 'source.almond', ...bag, price: '11' },
      { food: 'sweetener.honey', ...jar },
    ]);
    expect(setPackage(dearer, 'source.almond', { ...bag, price: '11' })).toBe(dearer);
    expect(forgetPackage(dearer, 'source.almond').packages).toEqual([{ food: 'sweetener.honey', ...jar }]);
    expect(forgetPackage(demo, 'source.almond')).toBe(demo);
  });

  test('keeps a name of its own when it is priced anew', () => {
    const named: SheetDocument = { ...demo, packages: [{ food: 'source.almond', name: 'Broken ones', ...bag }] };
    expect(setPackage(named, 'source.almond', jar).packages?.[0]?.name).toBe('Broken ones');
  });

  test('of a carton with the longest name can be saved', () => {
    const priced = setPackage(demo, `carton.${'x'.repeat(longestName)}`, bag);
    expect(readDocument(priced)).toEqual({ ok: true, document: priced });
  });

  test('more than a sheet holds is not kept', () => {
    const packages = Array.from({ length: mostPackages }, (_, at) => ({ food: `carton.${at}`, ...bag }));
    const full: SheetDocument = { ...demo, packages };
    expect(setPackage(full, 'source.almond', bag)).toBe(full);
  });

  test('is saved and read again as it was', () => {
    const kept = setCurrency(setPackage(demo, 'source.almond', bag), '1 €');
    const read = readDocument(JSON.parse(JSON.stringify(kept)));
    expect(read).toEqual({ ok: true, document: kept });
  });

  test('names its step', () => {
    expect(packageSteps.set('source.almond', bag)).toBe('Price almonds, whole: 9.90 for 500 g');
    expect(packageSteps.forget('carton.Green one')).toBe('Forget the price of green one');
    const long = packageSteps.set(`carton.${'x'.repeat(200)}`, {
      ...bag,
      amount: { ...bag.amount, text: '1+'.repeat(100) },
    });
    expect(long.length).toBeLessThan(110);
    expect(packageSteps.currency('1 €')).toBe('Write money as 1 €');
    expect(packageSteps.currency(' ')).toBe('Write money without a currency');
  });
});

describe('a price as it is typed', () => {
  const typed = (document: SheetDocument, text: string, held = '500 g') => {
    const read = typePrice(document, 'source.almond', held, text);
    return read.ok ? read.document : read.why;
  };

  test('is kept with its package, and says how money is written the first time', () => {
    const kept = typed(demo, '9.90 €');
    expect(kept).toMatchObject({
      settings: { currency: '1 €' },
      packages: [{ price: '9.9', amount: { amount: 500 } }],
    });
    expect(typed(setCurrency(demo, '€1'), '9.90 €')).toMatchObject({ settings: { currency: '€1' } });
    expect(typed(demo, '9.90')).toMatchObject({ settings: demo.settings });
  });

  test('in another currency, or no price at all, is refused', () => {
    expect(typed(setCurrency(demo, '1 €'), '$3')).toContain('Money is written as 1 € here.');
    expect(typed(demo, 'dear')).toContain('Type a price as a number');
  });

  test('is forgotten by a blank text', () => {
    expect(typed(setPackage(demo, 'source.almond', bag), '  ')).toMatchObject({ packages: [] });
    expect(typed(demo, '')).toBe(demo);
  });

  test('has no room in a sheet that is full of them, and the next press on one that is there has', () => {
    const packages = Array.from({ length: mostPackages }, (_, at) => ({ food: `carton.${at}`, ...bag }));
    expect(typed({ ...demo, packages }, '3')).toBe('The sheet is full of prices. Forget one first.');
    const known: SheetDocument = { ...demo, packages: [{ food: 'source.almond', ...bag, price: '3' }] };
    expect(typed(known, '3')).toBe(known);
  });
});

describe('the currency', () => {
  test('is kept as one of it is written, and forgotten by a blank text', () => {
    const kept = setCurrency(demo, ' $1 ');
    expect(kept.settings.currency).toBe('$1');
    expect(setCurrency(kept, '$1')).toBe(kept);
    expect(setCurrency(kept, '  ').settings).toEqual(demo.settings);
    expect(setCurrency(demo, '')).toBe(demo);
    expect(setCurrency(demo, 'a very long word').settings.currency).toHaveLength(8);
  });

  test.each([
    ['1 €', '€1', true],
    ['$1', '1 $', true],
    ['chf 1', 'CHF', true],
    ['1 €', '$1', false],
  ])('%s and %s', (one, other, same) => {
    expect(isSameCurrency(one, other)).toBe(same);
  });
});
