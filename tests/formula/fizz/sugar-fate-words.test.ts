import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import { fateOfFirst } from '../../../src/formula/fizz/sugar-fate';
import {
  describeAlcohol,
  describeNoSecond,
  describeSweetness,
  fateLines,
  fateOrigins,
} from '../../../src/formula/fizz/sugar-fate-words';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { bottledRecipe as recipeOf, typed } from '../../batches';

const kitchen = demo.settings;
const plain = (text: string): string => text.replaceAll('\u00A0', ' ');

function fateOf(changes: Partial<Recipe> = {}) {
  const fate = fateOfFirst(formulate(recipeOf(changes)));
  if (fate === null) expect.fail('no account');
  return fate;
}
const added = (rate: number): Partial<Recipe> => ({ source: 'cartonPlain', given: [typed('sugarRate', rate)] });
const labelRead: Partial<Recipe> = { yours: { 'cartonPlain.labelSugar': { value: 0, how: 'typed' } } };

describe('the account of the sugar', () => {
  test('has a line for each figure, with its range and its unit', () => {
    const lines = fateLines(fateOf(added(30)), kitchen);
    const shown = Object.fromEntries(
      lines.map(({ label, likely, range }) => [label, [likely, range].map(String).map(plain)]),
    );
    const { low, likely, high } = fateOf(added(30)).start;
    const start = likely.toFixed(1);
    expect(shown['Sugar at the start']).toEqual([
      `${start} g/L`,
      `${low.toFixed(1)} to ${high.toFixed(1)} g/L; likely 0.0 of the milk, ${start} added`,
    ]);
    expect(high).toBeGreaterThan(low + 4);
    const exact = fateLines(fateOf(), kitchen).find(({ label }) => label === 'Sugar at the start');
    expect(plain(String(exact?.range))).toMatch(/^\d+\.\d of the milk, \d+\.\d added$/);
    expect(shown['Sugar left']?.[0]).toMatch(/^\d+\.\d g\/L$/);
    expect(shown['Sugar left']?.[1]).toMatch(/^\d+\.\d to \d+\.\d g\/L$/);
    expect(shown['The same by volume']?.[0]).toMatch(/^0\.\d\d % ABV$/);
    expect(lines).toHaveLength(6);
  });

  test('has no range for what was measured', () => {
    const measured = { sugarLeft: { kind: 'concentration', amount: 15 } } as const;
    const left = fateLines(fateOf({ measured }), kitchen).find(({ label }) => label === 'Sugar left');
    expect(left).toEqual({ label: 'Sugar left', likely: '15.0\u00A0g/L', range: null });
  });

  test('takes the cook’s decimal mark', () => {
    for (const { likely } of fateLines(fateOf(), { ...kitchen, decimalComma: true })) expect(likely).toMatch(/\d,\d/);
  });
});

describe('sweetness', () => {
  test('is said as it likely is, and what else it could be, once each', () => {
    expect(describeSweetness(fateOf({ ...added(80), ...labelRead }))).toBe('Likely clearly sweet.');
    expect(describeSweetness(fateOf({ ...added(14), ...labelRead }))).toBe('Likely tart, with a little sweetness.');
    expect(describeSweetness(fateOf({ ...added(21), ...labelRead }))).toBe(
      'Likely balanced, sweet and sour. It could also be tart, with a little sweetness.',
    );
  });

  test('names both ends where they differ from the likely', () => {
    const fate = { ...fateOf(), sweetness: 'balanced', sweetnessEnds: { least: 'dry: hardly any', most: 'sweet' } };
    expect(describeSweetness(fate)).toBe('Likely balanced. It could also be sweet, or dry.');
  });
});

describe('alcohol', () => {
  test('lies under, about or over the line, which is named', () => {
    expect(plain(describeAlcohol(fateOf(added(3)), kitchen))).toBe(
      'All of this estimate is under the line of 0.5 % ABV.',
    );
    expect(plain(describeAlcohol(fateOf(added(30)), kitchen))).toMatch(
      /^It may pass the line of 0\.5 % ABV: the estimate reaches 0\.\d\d %\.$/,
    );
    const yours = { 'water.yeastShare': { value: 0.9, how: 'typed' } } as const;
    expect(plain(describeAlcohol(fateOf({ ...added(60), yours }), kitchen))).toMatch(/^All of this estimate is over/);
  });
});

test('the line of the law and the words for sweetness say where they are from', () => {
  const [line, words] = fateOrigins;
  expect(line?.text).toMatch(/^Published: /);
  expect(words?.text).toMatch(/^A judgement of this sheet: /);
});

describe('no second ferment', () => {
  const say = (...given: Recipe['given']) => plain(describeNoSecond(formulate(recipeOf({ given })), kitchen));

  test('is said where there is none', () => {
    expect(say(typed('bottleTime', 0))).toBe('No second ferment.');
  });

  test('says why it can’t be told', () => {
    expect(say(typed('roomTemperature', 35))).toMatch(/^The second ferment can’t be told\. At 35 °C/);
    expect(say(typed('bottleTemperature', 4))).toMatch(/^The second ferment can’t be told\. At 4 °C/);
    expect(say(typed('bottleTime', null))).toMatch(/^The second ferment can’t be told\. This can’t be read/);
  });
});
