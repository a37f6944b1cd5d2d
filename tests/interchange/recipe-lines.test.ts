import { describe, expect, test } from 'vitest';
import { type Habits, readRecipe } from '../../src/interchange/recipe-text';
import { type Part, recipeLines } from './recipe-lines';

const habits: Habits = { cups: 'us', decimalComma: false };

/** What was read of a line that stands below a title. */
function read(text: string): readonly Part[] {
  const [, line] = readRecipe(`Kefir\n${text}`, habits).lines;
  if (line === undefined) throw new Error('no line was read');
  return line.ingredients.map(({ amount, kind, food, statedMass, statedVolume, aside, problem }) => {
    const stated = (statedMass ?? statedVolume)?.low;
    return {
      amount: amount === null ? null : amount.low === amount.high ? amount.low : [amount.low, amount.high],
      kind,
      food: food?.key ?? null,
      ...(food?.form ? { form: food.form } : {}),
      ...(stated === undefined ? {} : { stated }),
      ...(food?.soaking ? { soaking: true } : {}),
      ...(aside ? { aside: true } : {}),
      ...(problem === null ? {} : { problem: problem.code }),
    };
  });
}

/** The same with its numbers to a thousandth, to be compared as text. */
function round(parts: readonly Part[]): string {
  return parts
    .map((part) =>
      JSON.stringify(part, (_, value) => (typeof value === 'number' ? Number(value.toPrecision(4)) : value)),
    )
    .join('\n');
}

test('the lines are more than two hundred', () => {
  expect(Object.values(recipeLines).flat().length).toBeGreaterThan(200);
});

describe.each(Object.entries(recipeLines))('%s', (_, lines) => {
  test.each(lines)('%s', (text, parts) => {
    expect(round(read(text))).toBe(round(parts));
  });

  test.each(lines)('%s, whose parts stand in it in their order', (text) => {
    const [line] = readRecipe(text, habits).lines.slice(-1);
    let from = 0;
    for (const part of line?.ingredients ?? []) {
      const at = text.indexOf(part.text, from);
      expect(at, part.text).toBeGreaterThanOrEqual(from);
      from = at + part.text.length;
    }
  });
});
