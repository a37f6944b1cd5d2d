import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ReadProblemCode } from '../../src/measure/read-problem';
import { type Reading, type ReadOptions, readQuantity } from '../../src/measure/read-quantity';
import { baseUnits, cupStandards, type Kind, units } from '../../src/measure/units';
import { big } from '../big';

const cup = 236.5882365;
const tbsp = cup / 16;
const pound = 453.59237;

function optionsFor(kind: Kind, more: Partial<ReadOptions> = {}): ReadOptions {
  return { kind, bareUnit: baseUnits[kind], cups: 'us', decimalComma: false, ...more };
}

function read(text: string, kind: Kind, more: Partial<ReadOptions> = {}): Reading | ReadProblemCode {
  const result = readQuantity(text, optionsFor(kind, more));
  return result.ok ? result.reading : result.problem.code;
}

/** The texts that a text may stand for. */
function meanings(text: string, kind: Kind, more: Partial<ReadOptions> = {}): readonly string[] | null {
  const result = readQuantity(text, optionsFor(kind, more));
  return !result.ok && 'readings' in result.problem ? result.problem.readings : null;
}

function amountOf(text: string, kind: Kind, more: Partial<ReadOptions> = {}): number | ReadProblemCode {
  const reading = read(text, kind, more);
  return typeof reading === 'string' ? reading : reading.amount;
}

describe('volumes as they are typed', () => {
  const typed: readonly (readonly [string, number])[] = [
    ['1 1/2 cups', 1.5 * cup],
    ['1½ c', 1.5 * cup],
    ['1-1/2 cups', 1.5 * cup],
    ['1 and 1/2 cups', 1.5 * cup],
    ['1 + 1/2 cups', 1.5 * cup],
    ['3 ¼', 3.25],
    ['1 1/2', 1.5],
    ['3¼ cups', 3.25 * cup],
    ['⅓ cup', cup / 3],
    ['⅞ cup', (7 * cup) / 8],
    ['⅚ cup', (5 * cup) / 6],
    ['1/2 cup', cup / 2],
    ['3⁄4 cup', 0.75 * cup],
    ['6 oz', 0.75 * cup],
    ['2 x 0.95 L', 1900],
    ['2 × 1 qt', 8 * cup],
    ['2x1qt', 8 * cup],
    ['2 * ½ cup', cup],
    ['2 cups x 3', 6 * cup],
    ['2 cups + 2 tbsp + 2 tsp', 2 * cup + 2 * tbsp + (2 * tbsp) / 3],
    ['2 cups plus 2 tbsp', 2 * cup + 2 * tbsp],
    ['2 cups 2 tbsp', 2 * cup + 2 * tbsp],
    ['.5 L', 500],
    ['1,000.0 mL', 1000],
    ['1 000 mL', 1000],
    ['a cup', cup],
    ['A cup', cup],
    ['two cups', 2 * cup],
    ['half a cup', cup / 2],
    ['half cup', cup / 2],
    ['½ a cup', cup / 2],
    ['⅓ of a cup', cup / 3],
    ['one and a half cups', 1.5 * cup],
    ['two and a half cups', 2.5 * cup],
    ['two thirds of a cup', (2 * cup) / 3],
    ['three-quarters of a cup', 0.75 * cup],
    ['a cup + two tbsp', cup + 2 * tbsp],
    ['about a cup', cup],
    ['a couple of cups', 2 * cup],
    ['quarter cup', cup / 4],
    ['a fourth of a cup', cup / 4],
    ['three eighths of a cup', (3 * cup) / 8],
    ['two and three quarters cups', 2.75 * cup],
    ['half a dozen cups', 6 * cup],
    ['two x 1 L', 2000],
    ['two', 2],
    ['12\u2009345 mL', 12345],
    ['1 250/1000 L', 1250],
    ['2 T', 2 * tbsp],
    ['2 Tbsp.', 2 * tbsp],
    ['3 t', tbsp],
    ['1 C', cup],
    ['１２０ｍＬ', 120],
    ['1\u00A0½\u00A0cups', 1.5 * cup],
    ['~ 2 cups', 2 * cup],
    ['about 2 cups', 2 * cup],
    ['ca. 2 cups', 2 * cup],
    ['2 level tbsp', 2 * tbsp],
    ['1e3 mL', 1000],
    ['-3 mL', -3],
  ];

  test.each(typed)('reads %j as %d mL', (text, millilitres) => {
    expect(amountOf(text, 'volume')).toBeCloseTo(millilitres, 9);
  });

  test('keeps three thirds exactly one', () => {
    const reading = read('3 x 1/3 cup', 'volume');
    expect(typeof reading === 'string' ? reading : big(reading.exact).toFixed()).toBe('236.5882365');
  });

  test('takes the cook’s cups at their word', () => {
    const amounts = (['us', 'us-label', 'metric', 'metric-20'] as const).map((cups) =>
      amountOf('1 cup + 1 tbsp', 'volume', { cups }),
    );
    expect(amounts).toEqual([251.37500128125, 255, 265, 270]);
  });
});

describe('other kinds as they are typed', () => {
  const typed: readonly (readonly [string, Kind, number])[] = [
    ['170g', 'mass', 170],
    ['6 oz', 'mass', 170.09713875],
    ['1 lb 3 oz', 'mass', (pound * 19) / 16],
    ['1 lb, 3 oz', 'mass', (pound * 19) / 16],
    ['2 x 1 lb 3 oz', 'mass', (pound * 38) / 16],
    ['-1 lb 3 oz', 'mass', (pound * -19) / 16],
    ['1 000 g', 'mass', 1000],
    ['-3 g', 'mass', -3],
    ['68F', 'temperature', 20],
    ['68 °F', 'temperature', 20],
    ['68 degrees Fahrenheit', 'temperature', 20],
    ['-40 F', 'temperature', -40],
    ['20 C', 'temperature', 20],
    ['20 ℃', 'temperature', 20],
    ['20 degrees', 'temperature', 20],
    ['9 F', 'temperatureDifference', 5],
    ['12 hours', 'time', 12],
    ['90 min', 'time', 1.5],
    ['1 h 30 min', 'time', 1.5],
    ['1:30', 'time', 1.5],
    ['8h30', 'time', 8.5],
    ['10 h 05', 'time', 10 + 5 / 60],
    ['2 days', 'time', 48],
    ['1 ½ in', 'length', 3.81],
    ['1"', 'length', 2.54],
    ['50 g per litre', 'concentration', 50],
    ['5 %', 'share', 5],
    ['4.5', 'ratio', 4.5],
    ['2 jars', 'count', 2],
    ['pH 4.6', 'acidity', 4.6],
    ['100 kPa', 'pressure', 1],
  ];

  test.each(typed)('reads %j as a %s of %d', (text, kind, amount) => {
    expect(amountOf(text, kind)).toBeCloseTo(amount, 9);
  });

  test.each<[string, number | ReadProblemCode]>([
    ['1:5', 5],
    ['1 : 4.5', 4.5],
    ['2:9', 4.5],
    ['1:1', 1],
    ['about 1:5', 5],
    ['1:0', 'divisionByZero'],
    ['0:3', 'divisionByZero'],
    ['1:5 cups', 'unexpected'],
    ['1:5:2', 'unexpected'],
    ['1:', 'noNumber'],
    ['5:1', 'eitherWay'],
    ['4.5 parts', 4.5],
    ['1 part', 1],
    ['4.5 parts to 1', 4.5],
    ['4 ½ parts water to 1 of almonds, by weight', 4.5],
    ['4.5 g/g', 4.5],
    ['4.5 parts to 2', 'unknownUnit'],
  ])('takes %j in a ratio row for source to water', (text, ratio) => {
    expect(amountOf(text, 'ratio')).toBe(ratio);
  });

  test('takes nothing for granted where the text says which is the water', () => {
    expect(read('4.5 parts', 'ratio')).not.toHaveProperty('assumed');
    expect(read('1:4.5', 'ratio')).toMatchObject({ assumed: 'proportion' });
  });

  test.each<[string, number]>([
    ['about ¾ cup, 4 % short', 0.75 * 236.5882365],
    ['about 2 tbsp + 1 tsp, 12 % over', (7 * 236.5882365) / 48],
    ['about ¾ cup, −4 %', 0.75 * 236.5882365],
    ['1 cup', 236.5882365],
  ])('reads %j as what the scoops hold, however far that is off', (text, amount) => {
    expect(amountOf(text, 'volume')).toBeCloseTo(amount, 9);
  });

  test('asks which is which where there is more in front than behind', () => {
    expect(meanings('5:1', 'ratio')).toEqual(['5', '0.2']);
    expect(meanings('8:1', 'ratio', { decimalComma: true })).toEqual(['8', '0,1250']);
  });

  test('takes the ounces of a weight for weights and those of a volume for fluid, in any row', () => {
    const both = { also: ['mass', 'volume'] } as const;
    expect(read('2 lb 3.3 oz', 'volume', both)).toMatchObject({ kind: 'mass', amount: (pound * 35.3) / 16 });
    expect(read('3.3 oz + 2 lb', 'volume', both)).toMatchObject({ kind: 'mass' });
    expect(read('1 pt 4 oz', 'mass', both)).toMatchObject({ kind: 'volume', amount: 2.5 * cup });
    expect(read('2 lb 3.3 oz', 'volume', both)).not.toHaveProperty('assumed');
  });

  test('takes plain ounces for weights in a volume row that asks to weigh', () => {
    const weighed = { also: ['mass'], plainOunce: 'mass' } as const;
    expect(read('35.3 oz', 'volume', weighed)).toMatchObject({ kind: 'mass', assumed: 'weightOunce' });
    expect(read('35.3 fl oz', 'volume', weighed)).toMatchObject({ kind: 'volume' });
    expect(read('1 qt 2 oz', 'volume', weighed)).toMatchObject({ kind: 'volume' });
  });

  test('asks for the unit of a bare number where the row leaves a choice, and of no other', () => {
    const asks = { also: ['volume'], askUnit: ['cup', 'oz'], bareUnit: 'oz' } as const;
    expect(meanings('2', 'mass', asks)).toEqual(['2 cups', '2 oz']);
    expect(meanings('1/2', 'mass', asks)).toEqual(['1/2 cup', '1/2 oz']);
    expect(meanings('two', 'mass', asks)).toEqual(['two cups', 'two oz']);
    expect(amountOf('2 g', 'mass', asks)).toBe(2);
    expect(read('2 + 1/2 cups', 'mass', asks)).toMatchObject({ amount: 2.5 * cup });
  });

  test('says which unit was written last and what was taken for granted', () => {
    const volume = { also: ['volume'] } as const;
    expect(read('6 oz', 'mass')).toMatchObject({ unit: 'oz', assumed: 'weightOunce' });
    expect(read('6 oz', 'volume')).toMatchObject({ unit: 'flOz', assumed: 'fluidOunce' });
    expect(read('6 fl oz', 'mass', volume)).toMatchObject({ kind: 'volume', unit: 'flOz' });
    expect(read('6 fl oz', 'mass', volume)).not.toHaveProperty('assumed');
    expect(read('2 cups', 'mass', volume)).toMatchObject({ kind: 'volume', unit: 'cup' });
    expect(read('170', 'mass')).toMatchObject({ unit: null, assumed: 'bareUnit' });
    expect(read('20°', 'temperature')).toMatchObject({ unit: null, assumed: 'bareUnit' });
  });

  test('takes a number and bare degrees in the row’s own unit', () => {
    expect(amountOf('68', 'temperature', { bareUnit: '°F' })).toBe(20);
    expect(amountOf('68 degrees', 'temperature', { bareUnit: '°F' })).toBe(20);
    expect(amountOf('2', 'volume', { bareUnit: 'cup' })).toBe(2 * cup);
  });
});

describe('commas and points', () => {
  const comma = { decimalComma: true };

  test.each<[string, number | ReadProblemCode]>([
    ['1,5 L', 1500],
    ['1.5 L', 1500],
    ['0,500 L', 500],
    ['0.950 L', 950],
    [',5 L', 500],
    ['1,0000 L', 1000],
    ['1250,500 mL', 1250.5],
    ['12,345.6 mL', 12345.6],
    ['12.345,6 mL', 12345.6],
    ['1.000.000 mL', 1_000_000],
    ['1,000,000 mL', 1_000_000],
    ['1 250,5 mL', 1250.5],
    ['1,2,3', 'unclearComma'],
    ['1.2.3', 'unclearPoint'],
    ['1,00.5', 'unclearComma'],
  ])('can mean only one thing in %j, whatever the cook’s habit: %s', (text, expected) => {
    expect(amountOf(text, 'volume')).toBe(expected);
    expect(amountOf(text, 'volume', comma)).toBe(expected);
  });

  test.each([
    ['1,250 kg', ['1.25 kg', '1250 kg']],
    ['1.500 kg', ['1.5 kg', '1500 kg']],
    ['1,000 kg', ['1 kg', '1000 kg']],
    ['about 12.345 kg', ['about 12.3450 kg', 'about 12345 kg']],
    ['1,250 kg + 1.500 kg', ['1.25 kg + 1.5 kg', '1250 kg + 1500 kg']],
    ['2 x 1,250 g', ['2 x 1.25 g', '2 x 1250 g']],
    ['1.250e1 g', ['1.25e1 g', '1250e1 g']],
  ])('are asked about in %j', (text, readings) => {
    expect(meanings(text, 'mass')).toEqual(readings);
  });

  test('are asked about in words that this cook writes', () => {
    expect(meanings('1.250 kg', 'mass', comma)).toEqual(['1,25 kg', '1250 kg']);
    expect(meanings('1.234 kg', 'mass', comma)).toEqual(['1,2340 kg', '1234 kg']);
  });

  test('are settled for a comma by a cook who has said that it is before decimals', () => {
    expect(amountOf('1,250 kg', 'mass', comma)).toBe(1250);
    expect(amountOf('1.250 kg', 'mass', comma)).toBe('eitherNumber');
  });

  test('are settled where only one of the numbers can stand', () => {
    const within = { least: 0, most: 14 };
    expect(amountOf('4,500', 'acidity', { within })).toBe(4.5);
    expect(amountOf('4.500', 'acidity', { within })).toBe(4.5);
    expect(amountOf('2,500', 'count', { within: { least: 1000, most: 3000 } })).toBe(2500);
    expect(amountOf('2,500', 'count', { within: { least: 0, most: 3000 } })).toBe('eitherNumber');
    expect(amountOf('2,500', 'count', { within: { least: 0, most: 1 } })).toBe('malformedNumber');
  });
});

describe('what cannot be read', () => {
  const refused: readonly (readonly [string, Kind, ReadProblemCode, number, string])[] = [
    ['', 'mass', 'empty', 0, ''],
    ['  ', 'mass', 'empty', 0, ''],
    ['=2+2', 'mass', 'equalsSign', 0, '='],
    ['overnight', 'time', 'noNumber', 0, 'overnight'],
    ['1:75', 'time', 'unexpected', 1, ':75'],
    ['2 cups +', 'volume', 'noNumber', 8, ''],
    ['1/2/3 cup', 'volume', 'malformedNumber', 0, '1/2/3'],
    ['1 2 3 cups', 'volume', 'malformedNumber', 0, '1 2 3 cups'],
    ['0 500 g', 'mass', 'malformedNumber', 0, '0 500 g'],
    ['  1/0 cup', 'volume', 'divisionByZero', 2, '1/0'],
    ['0/0', 'mass', 'divisionByZero', 0, '0/0'],
    ['1-2 cups', 'volume', 'range', 0, '1-2 cups'],
    ['1 to 2 cups', 'volume', 'range', 0, '1 to 2 cups'],
    ['1e999 g', 'mass', 'beyondNumbers', 0, '1e999'],
    ['1e200 x 1e200 g', 'mass', 'beyondNumbers', 0, '1e200 x 1e200 g'],
    ['17o', 'mass', 'unknownUnit', 2, 'o'],
    ['5 parsecs', 'length', 'unknownUnit', 2, 'parsecs'],
    ['1 lb 3', 'mass', 'missingUnit', 5, '3'],
    ['1 lb + 3', 'mass', 'missingUnit', 7, '3'],
    ['20 °F', 'volume', 'wrongKind', 3, '°F'],
    ['2 cups', 'mass', 'wrongKind', 2, 'cups'],
    ['1 cup + 3 g', 'volume', 'mixedKinds', 10, 'g'],
    ['2 cups × 3 cups', 'volume', 'twoUnits', 9, '3 cups'],
    ['20 C + 5 C', 'temperature', 'noArithmetic', 0, '20 C + 5 C'],
    ['2 x 20 C', 'temperature', 'noArithmetic', 0, '2 x 20 C'],
    ['a', 'volume', 'noNumber', 0, 'a'],
    ['an almond', 'mass', 'unknownUnit', 3, 'almond'],
    ['a cup and a half', 'volume', 'missingUnit', 10, 'a half'],
    ['2 heaped tbsp', 'volume', 'heaped', 2, 'heaped'],
    ['a heaped tbsp', 'volume', 'heaped', 2, 'heaped'],
    ['2 tbsp, rounded', 'volume', 'heaped', 8, 'rounded'],
    ['1 scant cup', 'volume', 'heaped', 2, 'scant'],
    ['170 g sugar', 'mass', 'unexpected', 6, 'sugar'],
    ['2²', 'count', 'unexpected', 1, '²'],
    ['4 - x', 'count', 'unexpected', 2, '- x'],
  ];

  test.each(refused)('refuses %j in a %s row: %s', (text, kind, code, at, offending) => {
    const result = readQuantity(text, optionsFor(kind));
    expect(result).toMatchObject({ ok: false, problem: { code, at, text: offending, wanted: kind } });
  });

  test('refuses a text over 200 characters and quotes only its start', () => {
    const result = readQuantity(`1${' '.repeat(300)}g`, optionsFor('mass'));
    expect(result).toMatchObject({ ok: false, problem: { code: 'tooLong', limit: 200 } });
    expect(result.ok ? '' : result.problem.typed.length).toBeLessThan(50);
  });

  test('refuses a volume and a weight in one sum where the row takes both', () => {
    const result = readQuantity('1 cup + 3 g', optionsFor('mass', { also: ['volume'] }));
    expect(result).toMatchObject({ ok: false, problem: { code: 'mixedKinds', earlier: 'volume', found: 'mass' } });
  });
});

const anyKind = fc.constantFrom(...Object.values(units).map((unit) => unit.kind));
const anyOptions = fc
  .tuple(anyKind, fc.boolean(), fc.constantFrom(...Object.values(cupStandards).map((standard) => standard.id)))
  .map(([kind, decimalComma, cups]) => optionsFor(kind, { decimalComma, cups, also: ['volume', 'mass'] }));
const nearlyAmount = fc
  .array(
    fc.oneof(
      fc.constantFrom(...'0123456789.,/+-×x*=½⅓⅞ e°CFTtc²'),
      fc.constantFrom(
        '1,250',
        '1.500',
        ':',
        'half a ',
        'two ',
        'cups',
        'g/L',
        ' fl oz',
        'e99',
        'heaped',
        ' and ',
        '\u2009',
        '\uD800',
        '1e300',
        ' x ',
      ),
    ),
    { maxLength: 20 },
  )
  .map((pieces) => pieces.join(''));

describe('what may be read in several ways', () => {
  test('is asked in texts each of which is read in one way, and not alike', () => {
    let asked = 0;
    fc.assert(
      fc.property(nearlyAmount, anyOptions, (text, options) => {
        const result = readQuantity(text, options);
        if (result.ok || !('readings' in result.problem)) return;
        asked += 1;
        const { readings } = result.problem;
        expect(readings.length).toBeGreaterThan(1);
        expect(new Set(readings).size).toBe(readings.length);
        for (const reading of readings) {
          const again = readQuantity(reading, options);
          expect(again.ok || again.problem.code !== result.problem.code, `${text}: ${reading}`).toBe(true);
        }
      }),
      { numRuns: 5000 },
    );
    expect(asked).toBeGreaterThan(0);
  });
});

describe('any text at all', () => {
  test.each([
    ['of any characters', fc.string({ unit: 'binary', maxLength: 260 })],
    ['of any letters', fc.string({ unit: 'grapheme', maxLength: 60 })],
    ['that looks like an amount', nearlyAmount],
  ])('%s gives a finite reading or a problem with its place', (_, texts) => {
    fc.assert(
      fc.property(texts, anyOptions, (text, options) => {
        const result = readQuantity(text, options);
        if (result.ok) {
          expect(Number.isFinite(result.reading.amount)).toBe(true);
          expect(Object.is(result.reading.amount, -0)).toBe(false);
          expect(big(result.reading.exact).toNumber()).toBeCloseTo(result.reading.amount);
        } else {
          expect(result.problem.at).toBeGreaterThanOrEqual(0);
          expect(result.problem.at).toBeLessThanOrEqual(text.length);
        }
      }),
      { numRuns: 2000 },
    );
  });
});
