import { describe, expect, test } from 'vitest';
import { describeReadProblem } from '../../src/measure/read-problem-words';
import { readQuantity } from '../../src/measure/read-quantity';
import { baseUnits, type Kind } from '../../src/measure/units';

function explain(text: string, kind: Kind, decimalComma = false): string {
  const result = readQuantity(text, { kind, bareUnit: baseUnits[kind], cups: 'us', decimalComma });
  return result.ok ? `read as ${result.reading.amount}` : describeReadProblem(result.problem);
}

const said: readonly (readonly [string, Kind, string])[] = [
  ['17o', 'mass', 'Can’t read “17o”. Write a number and a unit, such as 170 g.'],
  ['', 'count', 'Nothing is written here yet. Write a number, such as 2.'],
  [
    '2 cups',
    'length',
    '“cups” measures a volume, and this is a length. Write a number and a unit, such as 2.5 cm or 1 in.',
  ],
  ['1 lb 3', 'mass', 'Which unit does “3” have? Write the unit after it too.'],
  [
    '2 heaped tbsp',
    'volume',
    'Nobody agrees on what “heaped” holds. Write level spoons and cups, or weigh it in grams.',
  ],
];

describe('describeReadProblem', () => {
  test.each(said)('explains %j in a %s row', (text, kind, sentence) => {
    expect(explain(text, kind)).toBe(sentence);
  });

  test('names both numbers where a mark leaves them open', () => {
    expect(explain('1.250 L', 'volume')).toBe('“1.250 L” may be 1.25 L or 1250 L. Write the one you mean.');
    expect(explain('1.250 L', 'volume', true)).toBe('“1.250 L” may be 1,25 L or 1250 L. Write the one you mean.');
  });

  test('names the units, and the ratios, where the text leaves them open', () => {
    const mass = { kind: 'mass', bareUnit: 'oz', cups: 'us', decimalComma: false } as const;
    const result = readQuantity('2', { ...mass, also: ['volume'], askUnit: ['tbsp', 'cup', 'oz'] });
    expect(result.ok ? '' : describeReadProblem(result.problem)).toBe(
      '“2” may be 2 tbsp, 2 cups or 2 oz. Write the unit too.',
    );
    expect(explain('5:1', 'ratio')).toContain('“5:1” may be 5 or 0.2 of water to 1 of the nut or seed.');
  });

  test('says in this cook’s way how to write decimals', () => {
    expect(explain('1,2,3 L', 'volume')).toContain('such as 1.5.');
    expect(explain('1,2,3 L', 'volume', true)).toContain('such as 1,5.');
    expect(explain('4,5,6', 'acidity')).toMatch(/such as 4\.5\.$/);
  });

  test('says what to do about every problem, in whole sentences without jargon', () => {
    const texts = [
      '',
      '=1',
      'overnight',
      '1/2/3',
      '1/0',
      '1,2,3',
      '1,250',
      '1.2.3',
      '1-2',
      '1e999',
      '5 foo',
      '1 g 3',
      '2 cm',
      '1 g + 1 cm',
    ];
    for (const text of [...texts, '1 g x 2 g', '1 heaping g', '1 g sugar', 'x'.repeat(201)]) {
      const sentence = explain(text, 'mass');
      expect(sentence).toMatch(/^\S.+[.]$/);
      expect(sentence).toMatch(/Write|Which/);
      expect(sentence).not.toMatch(/undefined|null|NaN|token|parse|invalid/i);
    }
    expect(explain('20 C + 5 C', 'temperature')).toContain('Write the one number you want.');
  });
});
