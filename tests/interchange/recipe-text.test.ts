import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planFromRecipe } from '../../src/interchange/recipe-batch';
import {
  describeRecipeProblem,
  type Habits,
  mostCharacters,
  mostLines,
  normaliseLines,
  type RecipeText,
  readRecipe,
  rewriteLine,
} from '../../src/interchange/recipe-text';
import { weighIngredients } from '../../src/interchange/recipe-weigh';
import { ingredientLines, type Wanted } from './ingredient-lines';

const habits: Habits = { cups: 'us', decimalComma: false };

function only(text: string, how: Habits = habits) {
  const [line] = readRecipe(text, how).lines;
  if (line === undefined) throw new Error('no line was read');
  return line;
}

function textOf({ lines }: RecipeText): string {
  return lines.map(({ text }) => text).join('\n');
}

describe('an ingredient line', () => {
  test('is tried in more than a hundred ways', () => {
    expect(ingredientLines.length).toBeGreaterThan(100);
  });

  test.each(ingredientLines)('%s', (text: string, wanted: Wanted) => {
    const line = only(text);
    expect(line).toMatchObject({ text, kind: 'ingredient' });
    expect(line.ingredients).toHaveLength(1);
    const [read] = line.ingredients;
    if (read === undefined) throw new Error('no ingredient was read');
    expect(read.food?.key ?? null).toBe(wanted.food);
    if (wanted.amount === null) expect(read.amount).toBeNull();
    else {
      const [low, high] = typeof wanted.amount === 'number' ? [wanted.amount, wanted.amount] : wanted.amount;
      expect((read.amount?.low ?? Number.NaN) / low).toBeCloseTo(1, 3);
      expect((read.amount?.high ?? Number.NaN) / high).toBeCloseTo(1, 3);
      expect(read.kind).toBe(wanted.kind ?? 'volume');
    }
    expect(read.problem?.code).toBe(wanted.problem);
    expect(read.food?.form ?? undefined).toBe(wanted.form);
    if (wanted.stated === undefined) expect(read.statedMass).toBeNull();
    else expect(read.statedMass?.low).toBeCloseTo(wanted.stated, 2);
    if (wanted.statedVolume === undefined) expect(read.statedVolume).toBeNull();
    else expect(read.statedVolume?.low).toBeCloseTo(wanted.statedVolume, 2);
    if (wanted.sure !== undefined) expect(read.food?.sure).toBe(wanted.sure);
    if (wanted.modifiers !== undefined) expect(read.modifiers).toEqual(wanted.modifiers);
  });

  test('holds several ingredients where it names several', () => {
    const cases: readonly (readonly [string, readonly string[]])[] = [
      ['2 tbsp honey and 1 tbsp lemon juice', ['2 tbsp honey', '1 tbsp lemon juice']],
      ['1 cup almonds, 4 cups water', ['1 cup almonds', '4 cups water']],
      [
        '1 cup almonds, 4 cups water, 2 tbsp sugar and a pinch of salt',
        ['1 cup almonds', '4 cups water', '2 tbsp sugar', 'a pinch of salt'],
      ],
      ['• ½ cup cashews; 3 dates', ['½ cup cashews', '3 dates']],
      ['1 cup almonds with 4 cups water', ['1 cup almonds', '4 cups water']],
      ['2 cups water, plus 3 cups water', ['2 cups water', '3 cups water']],
      ['1 cup almonds (143 g, 5 oz), 4 cups water', ['1 cup almonds (143 g, 5 oz)', '4 cups water']],
    ];
    for (const [text, parts] of cases) expect(only(text).ingredients.map((each) => each.text)).toEqual(parts);
  });

  test('takes a comma or a point for what it can only be, and asks where it may be either', () => {
    const comma = { ...habits, decimalComma: true };
    for (const habit of [habits, comma]) {
      expect(only('1,5 dl water', habit).ingredients[0]?.amount?.low).toBeCloseTo(150, 9);
      expect(only('1.5 dl water', habit).ingredients[0]?.amount?.low).toBeCloseTo(150, 9);
    }
    expect(only('1,250 kg almonds', comma).ingredients[0]?.amount?.low).toBe(1250);
    expect(only('- 1,250 kg almonds')).toMatchObject({
      kind: 'unread',
      why: {
        code: 'eitherNumber',
        text: '1,250',
        readings: [
          { number: '1.25', line: '- 1.25 kg almonds' },
          { number: '1250', line: '- 1250 kg almonds' },
        ],
      },
    });
  });

  test('loses no second amount of a line whose number may be read two ways', () => {
    for (const text of ['1 cup almonds, 1,250 ml water', 'Water: 1.250 ml', 'Blend with 1,250 ml water and strain']) {
      expect(only(text).why, text).toMatchObject({ code: 'eitherNumber' });
    }
    const { why } = only('1,250 g almonds + 2.500 ml water');
    expect(why?.code === 'eitherNumber' ? why.readings.map(({ line }) => line) : []).toEqual([
      '1.25 g almonds + 2.5 ml water',
      '1250 g almonds + 2500 ml water',
    ]);
  });

  test('asks nothing of a number that is no amount of food', () => {
    expect(only('Per glass: 1,250 kJ').why?.code).not.toBe('eitherNumber');
    expect(only('1 cup almonds (page 1.234)').kind).toBe('ingredient');
  });

  test('is written anew at its place in the text, and nowhere else', () => {
    expect(rewriteLine('a\r\nb\nb', 2, 'b', 'c')).toBe('a\nb\nc');
    expect(rewriteLine('new\na\nb', 1, 'b', 'c')).toBe('new\na\nc');
    expect(rewriteLine('a', 0, 'b', 'c')).toBe('a');
  });

  test('counts cups by the cook’s own standard', () => {
    expect(only('2 cups water', { ...habits, cups: 'metric' }).ingredients[0]?.amount?.low).toBe(500);
    expect(only('1 tbsp honey', { ...habits, cups: 'metric-20' }).ingredients[0]?.amount?.low).toBe(20);
  });

  test('says how a plain ounce was taken', () => {
    expect(only('8 oz water').ingredients[0]?.assumed).toBe('fluidOunce');
    expect(only('8 oz almonds').ingredients[0]?.assumed).toBe('weightOunce');
    expect(only('8 fl oz water').ingredients[0]?.assumed).toBeNull();
  });

  test('knows water that only soaks', () => {
    expect(only('3 cups water for soaking').ingredients[0]?.food).toMatchObject({ role: 'water', soaking: true });
    expect(only('3 cups water').ingredients[0]?.food).toMatchObject({ role: 'water', soaking: false });
  });

  test('finds the cook’s own foods before the table’s', () => {
    const own = { ...habits, ownFoods: [{ name: 'Almonds', grams: 150, millilitres: 250 }] };
    expect(only('1 cup almonds', own).ingredients[0]?.food).toMatchObject({
      key: 'own.Almonds',
      role: 'source',
      id: 'almond',
    });
  });
});

describe('other lines', () => {
  const cases: readonly (readonly [text: string, kind: string])[] = [
    ['Ingredients:', 'heading'],
    ['## Method', 'heading'],
    ['For the milk:', 'heading'],
    ['Blend for two minutes.', 'method'],
    ['3. Strain through a bag.', 'method'],
    ['24 hours at room temperature', 'method'],
    ['Soak the almonds overnight in plenty of water.', 'method'],
    ['A jar, a cloth and a spoon', 'heading'],
    ['', 'blank'],
    ['   \t ', 'blank'],
    ['—', 'blank'],
  ];
  test.each(cases)('"%s" is %s', (text, kind) => {
    expect(only(text)).toMatchObject({ kind, ingredients: [], why: null });
  });

  test('that can’t be read keep their text and say why', () => {
    const faulty: readonly (readonly [string, object])[] = [
      ['1/0 cup sugar', { code: 'badNumber', fault: 'divisionByZero' }],
      ['1/2/3 cups water', { code: 'badNumber', fault: 'malformedNumber' }],
      [`1${'0'.repeat(2000)} cups`, { code: 'lineTooLong' }],
    ];
    for (const [text, why] of faulty) expect(only(text)).toMatchObject({ text, kind: 'unread', why });
    const [, second] = readRecipe('My kefir\nGrandmother’s note', habits).lines;
    expect(second).toMatchObject({ kind: 'unread', why: { code: 'nothingRead' } });
  });

  test('name jars and yields', () => {
    const hints: readonly (readonly [string, object])[] = [
      ['For a 2 L jar:', { what: 'jar', volume: 2000, id: 'twoLitre' }],
      ['30 g water kefir grains for a 1-quart jar', { what: 'jar', id: 'quartWide' }],
      ['Pour into a one litre jar and cover.', { what: 'jar', volume: 1000, id: 'litre' }],
      ['Pour into a clean half-gallon glass jar.', { what: 'jar', id: 'halfGallon' }],
      ['1 quart jar', { what: 'jar', id: 'quartWide' }],
      ['In a 2.7 L jar', { what: 'jar', volume: 2700, id: null }],
      ['Makes 1 litre.', { what: 'makes', volume: 1000 }],
      ['Makes about 4 cups', { what: 'makes' }],
      ['Yield: 1 quart', { what: 'makes' }],
    ];
    for (const [text, jar] of hints) expect(only(text).jar, text).toMatchObject(jar);
    for (const text of ['Blend in a jug.', '1 jar honey', 'Ferment for 24 hours', 'A jar, a cloth and a spoon'])
      expect(only(text).jar).toBeNull();
  });
});

describe('any text', () => {
  const piece = fc.constantFrom(
    ...[
      '1',
      '½',
      '1/2',
      ' ',
      '-',
      '–',
      ' to ',
      ' cup',
      ' tbsp',
      ' g',
      'oz',
      '(',
      ')',
      '[',
      ', ',
      ' and ',
      'almonds',
      'water',
    ],
    ...[
      'honey',
      'packed ',
      'heaped ',
      'can ',
      '400 ml',
      '\n',
      '\r\n',
      '\r',
      '. ',
      '• ',
      'a ',
      'pinch of ',
      ' jar',
      ' in a ',
      '9'.repeat(30),
    ],
    ...['\u00a0', '\ud800', '1e300', '0', '/', 'x', ':', '%', 'makes '],
  );
  const recipeLike = fc.array(piece, { maxLength: 40 }).map((pieces) => pieces.join(''));
  const anything = fc.oneof(fc.string({ unit: 'binary', maxLength: 200 }), fc.string({ maxLength: 200 }), recipeLike);

  test('keeps every character, throws nothing and leaves no reason without a sentence', () => {
    fc.assert(
      fc.property(anything, fc.boolean(), (text, decimalComma) => {
        const how: Habits = { cups: 'us', decimalComma };
        const read = readRecipe(text, how);
        expect(textOf(read)).toBe(normaliseLines(text));
        for (const { kind, why, ingredients } of read.lines) {
          expect(why !== null).toBe(kind === 'unread');
          expect(ingredients.length > 0).toBe(kind === 'ingredient');
          if (why !== null) expect(describeRecipeProblem(why)).toMatch(/\.$/);
        }
        for (const { ingredient, grams, millilitres, problem } of weighIngredients(read, how)) {
          expect(text).toContain(ingredient.text.split('\n')[0]);
          for (const spread of [grams, millilitres]) {
            if (spread === null) continue;
            expect(Number.isFinite(spread.high)).toBe(true);
            expect(spread.low).toBeLessThanOrEqual(spread.likely * (1 + 1e-12));
            expect(spread.likely).toBeLessThanOrEqual(spread.high * (1 + 1e-12));
          }
          if (problem !== null) expect(describeRecipeProblem(problem)).toMatch(/\.$/);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('makes a plan without throwing', () => {
    fc.assert(
      fc.property(anything, (text) => {
        const { cells, remarks, name } = planFromRecipe(readRecipe(text, habits), habits);
        expect(name).not.toBe('');
        for (const remark of remarks) expect(describeRecipeProblem(remark)).not.toBe('');
        for (const { amount } of cells) expect(amount).toBeGreaterThan(0);
      }),
      { numRuns: 300 },
    );
  });

  test('beyond the limits is kept as one unread line', () => {
    const many = readRecipe('1 cup almonds\n'.repeat(mostLines + 50), habits);
    expect(many.lines).toHaveLength(mostLines + 1);
    expect(many.lines.at(-1)).toMatchObject({ kind: 'unread', why: { code: 'beyondLimit' } });
    const long = `${'1 cup almonds, soaked\n'.repeat(10)}${'word '.repeat(mostCharacters / 4)}\n1 cup water`;
    expect(textOf(readRecipe(long, habits))).toBe(long);
    expect(readRecipe(long, habits).lines).toHaveLength(11);
  });

  test.each([
    ['digits', '1'.repeat(100_000)],
    ['spaces', `1${' '.repeat(100_000)}cup`],
    ['brackets', '('.repeat(100_000)],
    ['brackets with amounts', '(1 cup '.repeat(14_000)],
    ['short lines of digits', `${'1 '.repeat(499)}\n`.repeat(100)],
    ['short lines of brackets', `1 cup almonds ${'('.repeat(900)}\n`.repeat(100)],
    ['short lines of separators', `1 cup almonds${', 1'.repeat(300)}\n`.repeat(100)],
    ['short lines of ranges', `${'1-'.repeat(490)}\n`.repeat(100)],
    ['short lines of sums', `${'1 cup '.repeat(160)}\n`.repeat(100)],
    ['short lines of words', `almonds ${'soaked in water '.repeat(60)}\n`.repeat(100)],
    ['short lines of names and amounts', `${'a 1 g '.repeat(160)}\n`.repeat(100)],
    ['short lines of names without an end', `${'honey 1 T x '.repeat(80)}\n`.repeat(100)],
    ['short lines of brackets in sentences', `Add ${'salt (1 g) '.repeat(85)}\n`.repeat(100)],
    ['short lines of jars', `in a ${'1 L '.repeat(200)}\n`.repeat(100)],
  ])('of nothing but %s comes to an end', (_, text) => {
    expect(textOf(readRecipe(text, habits))).toBe(text);
  });
});
