import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Habits, normaliseLines, readRecipe, takeByHand } from '../../src/interchange/recipe-text';

const habits: Habits = { cups: 'us', decimalComma: false };

const cup = 946.352946 / 4;
const units = {
  volume: [
    { words: ['cup', 'c.', 'C', 'cups'], of: cup },
    { words: ['tbsp', 'Tbsp.', 'T', 'tablespoons'], of: cup / 16 },
    { words: ['tsp', 'tsp.', 'teaspoons'], of: cup / 48 },
    { words: ['ml', 'mL', 'millilitres'], of: 1 },
    { words: ['qt', 'qt.', 'quarts'], of: cup * 4 },
    { words: ['L', 'litres'], of: 1000 },
  ],
  mass: [
    { words: ['g', 'grams', 'gr.'], of: 1 },
    { words: ['kg', 'kilograms'], of: 1000 },
    { words: ['oz', 'oz.', 'ounces'], of: 453.59237 / 16 },
    { words: ['lb', 'lbs.', 'pounds'], of: 453.59237 },
  ],
} as const;

const solids = [
  { words: 'almonds', key: '12061' },
  { words: 'raw cashews', key: '12087' },
  { words: 'hazelnuts', key: '12120' },
  { words: 'hulled sunflower seeds', key: '12036' },
  { words: 'cane sugar', key: '19335' },
  { words: 'brown sugar', key: '19334', turned: 'sugar (brown)' },
  { words: 'water kefir grains', key: 'grains.water', turned: 'kefir grains (water)' },
  { words: 'milk kefir grains', key: 'grains.milk', turned: 'kefir grains, milk' },
  { words: 'blanched almonds', key: '12062', turned: 'almonds, blanched' },
  { words: 'honey', key: '19296' },
  { words: 'maple syrup', key: '19353' },
] as const;
const liquids = [
  { words: 'water', key: '14411' },
  { words: 'filtered water', key: '14411' },
  { words: 'coconut water', key: '12119' },
  { words: 'almond milk', key: 'source.cartonPlain', turned: 'milk (almond)' },
] as const;

const numbers = [
  { text: '1', value: 1 },
  { text: '2', value: 2 },
  { text: '12', value: 12 },
  { text: '150', value: 150 },
  { text: '1.5', value: 1.5 },
  { text: '1/2', value: 0.5 },
  { text: '½', value: 0.5 },
  { text: '1 ½', value: 1.5 },
  { text: '1½', value: 1.5 },
  { text: '3 1/4', value: 3.25 },
  { text: '3-1/4', value: 3.25 },
  { text: '2 and ¾', value: 2.75 },
  { text: '⅔', value: 2 / 3 },
  { text: 'two', value: 2 },
  { text: 'two and a half', value: 2.5 },
  { text: 'a quarter', value: 0.25 },
] as const;

interface Item {
  readonly amount: string;
  readonly words: string;
  readonly turned: string;
  readonly key: string;
  readonly low: number;
  readonly high: number;
  readonly kind: 'mass' | 'volume';
}

const item: fc.Arbitrary<Item> = fc
  .record({
    kind: fc.constantFrom('mass' as const, 'volume' as const),
    number: fc.constantFrom(...numbers),
    end: fc.option(fc.constantFrom(...numbers.slice(0, 4)), { nil: null, freq: 4 }),
    joint: fc.constantFrom('-', '–', ' to ', ' or '),
    unit: fc.nat(),
    word: fc.nat(),
    solid: fc.constantFrom(...solids),
    liquid: fc.constantFrom(...liquids),
    pour: fc.boolean(),
  })
  .map(({ kind, number, end, joint, unit, word, solid, liquid, pour }) => {
    // A liquid is poured: an ounce of it would be a fluid one.
    const food = pour && kind === 'volume' ? liquid : solid;
    const { words, of } = units[kind][unit % units[kind].length] ?? units[kind][0];
    const written = words[word % words.length] ?? words[0];
    const last = end !== null && end.value > number.value && /^\d+$/.test(number.text) ? end : null;
    const amount = `${number.text}${last === null ? '' : `${joint}${last.text}`} ${written}`;
    return {
      amount,
      words: food.words,
      turned: 'turned' in food ? food.turned : food.words,
      key: food.key,
      low: number.value * of,
      high: (last ?? number).value * of,
      kind,
    };
  });

type Style = (item: Item) => string;

const styles: Readonly<Record<string, Style>> = {
  plain: ({ amount, words }) => `${amount} ${words}`,
  'with of': ({ amount, words }) => `${amount} of ${words}`,
  bullet: ({ amount, words }) => `• ${amount} ${words}`,
  'box to tick': ({ amount, words }) => `☐ ${amount} ${words}`,
  numbered: ({ amount, words }) => `3) ${amount} ${words}`,
  'name first': ({ amount, words }) => `${words}: ${amount}`,
  dots: ({ amount, words }) => `${words} ........ ${amount}`,
  'spaced dots': ({ amount, words }) => `${words} . . . . ${amount}`,
  dash: ({ amount, words }) => `${words} – ${amount}`,
  'kind in brackets': ({ amount, turned }) => `${turned} ${amount}`,
  capitals: ({ amount, turned }) => `${turned.toUpperCase()}, ${amount}`,
  table: ({ amount, words }) => `| ${words} | ${amount} |`,
  note: ({ amount, words }) => `${amount} ${words}, at room temperature`,
  more: ({ amount, words }) => `${amount} ${words}, plus more for later`,
  bracket: ({ amount, words }) => `${words} (${amount})`,
};

const sentences: Readonly<Record<string, (items: readonly Item[]) => string>> = {
  'a list on one line': (items) => items.map(({ amount, words }) => `${amount} ${words}`).join(', '),
  'a list with a semicolon': (items) => items.map(({ amount, words }) => `${amount} ${words}`).join('; '),
  'a turned list': (items) => items.map(({ amount, words }) => `${words} ${amount}`).join(', '),
  'you will need': (items) => `You will need ${items.map(({ amount, words }) => `${amount} ${words}`).join(', ')}.`,
  take: (items) => `Take ${items.map(({ amount, words }) => `${amount} ${words}`).join(' and ')} and mix well.`,
  steps: (items) => items.map(({ amount, words }) => `Add ${amount} of ${words} and stir.`).join(' '),
  'a long way': (items) =>
    items.map(({ amount, words }) => `Now, with care, pour in ${amount} ${words} and wait for 10 minutes;`).join(' '),
};

/** Foods with their amounts, to a thousandth, in the order of the text. */
function found(text: string): readonly string[] {
  return readRecipe(text, habits).lines.flatMap(({ ingredients }) =>
    ingredients.map(({ food, amount, kind }) => say(food?.key ?? '?', kind, amount?.low ?? 0, amount?.high ?? 0)),
  );
}

const digits = 4;

function say(key: string, kind: string, low: number, high: number): string {
  return `${key} ${kind} ${low.toPrecision(digits)} ${high.toPrecision(digits)}`;
}

function known(items: readonly Item[]): readonly string[] {
  return items.map(({ key, kind, low, high }) => say(key, kind, low, high));
}

describe('a known list of ingredients comes back', () => {
  test.each(Object.entries(styles))('from lines written as %s', (_, write) => {
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 6 }), (items) => {
        expect(found(`Kefir\n${items.map(write).join('\n')}`)).toEqual(known(items));
      }),
      { numRuns: 150 },
    );
  });

  test('from lines in every style at once, with other lines between', () => {
    const style = fc.constantFrom(...Object.values(styles));
    const between = fc.constantFrom('', 'Blend until smooth.', 'For the milk:', 'Wait 24 hours at 21 °C.', 'Serves 4');
    const written = fc.array(fc.tuple(item, style, between), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(written, (lines) => {
        const text = lines.map(([one, write, other]) => `${write(one)}\n${other}`).join('\n');
        expect(found(`Kefir\n${text}`)).toEqual(known(lines.map(([one]) => one)));
      }),
      { numRuns: 300 },
    );
  });

  test.each(Object.entries(sentences))('from a sentence: %s', (_, write) => {
    fc.assert(
      fc.property(fc.array(item, { minLength: 1, maxLength: 4 }), (items) => {
        expect(found(`Kefir\n${write(items)}`)).toEqual(known(items));
      }),
      { numRuns: 150 },
    );
  });
});

test('whatever is read and told, the lines are the text again, and parts stand in them in their order', () => {
  const line = fc.oneof(
    fc.tuple(item, fc.constantFrom(...Object.values(styles))).map(([one, write]) => write(one)),
    fc
      .tuple(fc.array(item, { minLength: 1, maxLength: 3 }), fc.constantFrom(...Object.values(sentences)))
      .map(([items, write]) => write(items)),
    fc.string({ unit: 'binary', maxLength: 60 }),
  );
  const told = fc.record({
    line: fc.nat(6),
    at: fc.nat(2),
    meaning: fc.constantFrom(
      null,
      'none' as const,
      'jar' as const,
      'soaking' as const,
      'extra' as const,
      '12061' as const,
    ),
    amount: fc.constantFrom('', '1 cup', '150 g', 'lots', '1/0', '½'),
  });
  fc.assert(
    fc.property(fc.array(line, { maxLength: 6 }), fc.array(told, { maxLength: 4 }), (lines, said) => {
      const text = lines.join('\n');
      const read = takeByHand(readRecipe(text, habits), said, habits);
      expect(read.lines.map((each) => each.text).join('\n')).toBe(normaliseLines(text));
      for (const { text: whole, ingredients } of read.lines) {
        let from = 0;
        for (const part of ingredients) {
          const at = whole.indexOf(part.text, from);
          expect(at, `${part.text} of ${whole}`).toBeGreaterThanOrEqual(from);
          from = at + part.text.length;
        }
      }
    }),
    { numRuns: 500 },
  );
});
