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

  test('says for a comma and a point what this cook’s setting makes of them', () => {
    expect(explain('1,5 L', 'volume')).toContain('such as 1.5, or 1,000 for a thousand');
    expect(explain('1.000 L', 'volume', true)).toContain('Write 1000 for a thousand, or 1,0 for one');
  });

  test('speaks of no thousand where nobody has one', () => {
    expect(explain('4,5', 'acidity')).toBe(
      'Can’t tell what the comma in “4,5” means. Write a point before the decimals, such as 4.5.',
    );
    expect(explain('21,5 °C', 'temperature')).toMatch(/such as 21\.5\.$/);
    expect(explain('4.500', 'acidity', true)).toMatch(/Write a comma before the decimals, such as 4,5\.$/);
    expect(explain('4,5', 'acidity', true)).toBe('read as 4.5');
  });

  test('says what to do about every problem, in whole sentences without jargon', () => {
    const texts = [
      '',
      '=1',
      'overnight',
      '1/2/3',
      '1/0',
      '1,5',
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
