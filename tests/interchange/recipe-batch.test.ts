import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import { recipeOf } from '../../src/batch/document/document';
import { typeCell } from '../../src/batch/edits/edits';
import { formulate } from '../../src/formula/engine/formulate';
import { planFromRecipe } from '../../src/interchange/recipe-batch';
import { describeRecipeProblem, type Habits, readRecipe } from '../../src/interchange/recipe-text';

const habits: Habits = { cups: 'us', decimalComma: false };

function plan(text: string, how: Habits = habits) {
  return planFromRecipe(readRecipe(text, how), how);
}

const whole = `Weekday almond kefir

For a 2 L jar:
- 1 1/3 cups (190 g) almonds, soaked overnight
- 3 cups water for soaking
- 3 1/2 cups water
- 1 tbsp honey and 1 tbsp maple syrup
- 48 g water kefir grains
- a pinch of salt

Blend for two minutes.
Strain, sweeten and add the grains.`;

describe('a plan for a batch', () => {
  test('finds the source, the water, the sweeteners, the grains and the jar', () => {
    const { name, choices, cells, extras } = plan(whole);
    expect(name).toBe('Weekday almond kefir');
    expect(choices).toMatchObject({ vessel: 'twoLitre', source: 'almond', grains: 'water' });
    expect(choices.sweetener?.map(({ id }) => id)).toEqual(['honey', 'mapleSyrup']);
    expect(choices.sweetener?.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(cells.map(({ row, text }) => `${row}: ${text}`)).toEqual([
      'sourceMass: 190 g',
      'blendWater: 828 mL',
      'sweetenerMass: 40.9 g',
      'grainMass: 48 g',
    ]);
    expect(extras).toEqual(['a pinch of salt']);
  });

  test('takes out of two cans what is in them', () => {
    const { cells, formulation } = plan('2 cans (400 mL each) coconut milk\n25 g sugar\n30 g milk kefir grains');
    const given = cells.filter(({ row }) => row === 'sourceMass');
    expect(given).toHaveLength(1);
    if (formulation === null) throw new Error('two cans make a batch');
    const neat = { row: 'waterRatio', amount: 0, kind: 'ratio' } as const;
    // But for the rounding of what is typed: a gram.
    expect(Math.abs(formulate({ ...formulation.recipe, given: [...given, neat] }).of('milkVolume') - 800)).toBeLessThan(
      1,
    );
  });

  test('compares ratio, sugar and dose with the usual', () => {
    const { compared, formulation } = plan(whole);
    expect(compared.map(({ row, verdict }) => [row, verdict])).toEqual([
      ['waterRatio', 'usual'],
      ['sugarRate', 'usual'],
      ['grainRate', 'usual'],
    ]);
    expect(compared[0]?.value).toBeCloseTo(formulation?.of('waterRatio') ?? 0, 9);
    expect(compared[0]?.value).toBeCloseTo(828 / 190, 1);
    expect(plan('100 g almonds\n2 L water\n30 g water kefir grains').compared[0]?.verdict).toBe('above');
    expect(plan('1 cup almonds\n30 g water kefir grains').compared.map(({ row }) => row)).toEqual(['grainRate']);
  });

  test('holds texts that the sheet reads as the same amounts', () => {
    for (const decimalComma of [false, true]) {
      const how = { ...habits, decimalComma };
      for (const { row, text, amount } of plan(
        '12.5 g sugar\n143 g almonds\n1 L water\n30 g milk kefir grains'.replace('.', decimalComma ? ',' : '.'),
        how,
      ).cells) {
        const document = typeCell({ ...demo, settings: { ...demo.settings, decimalComma } }, 'b1', row, text);
        const [batch] = document.batches;
        if (batch === undefined) throw new Error('the demo has a batch');
        expect(recipeOf(document, batch).given[0]?.amount, text).toBe(amount);
      }
    }
  });

  test('says what is missing, unsure or left out', () => {
    const codes = (text: string) => plan(text).remarks.map(({ code }) => code);
    expect(codes('Blend and enjoy.')).toEqual(['missing', 'missing', 'missing', 'missing', 'missing']);
    expect(codes(whole)).toEqual(['soakingWater']);
    expect(codes(`${whole}\n2 tbsp kefir grains\n1 cup cashews\n1 tsp stevia`)).toEqual(
      ['severalSources', 'soakingWater', 'refusedSweetener'].toSpliced(2, 0, 'unsureFood'),
    );
    expect(codes('1 heaped cup almonds\n1-2 cups water')).toEqual(
      expect.arrayContaining(['notWeighed', 'middleTaken']),
    );
    expect(codes('1 cup almonds\nMakes 3 litres.\n30 g water kefir grains')).toContain('makes');
    expect(codes('1 cup almonds in a 2.7 L jar')).toContain('jarNotListed');
    for (const remark of plan(`${whole}\n1 cup cashews\n2 tbsp milk kefir grains`).remarks)
      expect(describeRecipeProblem(remark)).toMatch(/\.$/);
  });

  test('takes a carton by volume and a can by weight', () => {
    expect(plan('1 litre almond milk').cells).toMatchObject([{ row: 'sourceMass', text: '1000 mL' }]);
    expect(plan('1 litre almond milk\n20 g milk kefir grains').formulation?.rows.sourceMass.status).toBe('given');
    expect(plan('1 (400 mL) can coconut milk').cells).toMatchObject([{ row: 'sourceMass', kind: 'mass' }]);
  });

  test('fills what it makes where no amount sizes it', () => {
    expect(plan('Almond kefir\nMakes 1 litre.').cells).toMatchObject([{ row: 'milkVolume', text: '1000 mL' }]);
  });
});

describe('what a text does not name', () => {
  test.each([
    ['no source', '3 cups water\n2 tbsp sugar\n2 tbsp water kefir grains', ['source']],
    ['a food that is in no table', '1 cup lentils\n3 cups water\n2 tbsp water kefir grains', ['source']],
    ['a flour of chestnuts', '1 cup chestnut flour\n3 cups water\n2 tbsp water kefir grains', ['source']],
    ['no grains', '1 cup almonds\n3 cups water', ['grains']],
    ['nothing at all', '', ['source', 'grains']],
  ])('is asked for and not made up: %s', (_, text, asks) => {
    const planned = plan(text);
    expect(planned.asks).toEqual(asks);
    expect(planned.formulation).toBeNull();
  });

  test('is what the cook chooses, until the text names one', () => {
    const choose = (text: string) =>
      planFromRecipe(readRecipe(text, habits), habits, {}, { source: 'cashew', grains: 'milk' });
    const chosen = choose('3 cups water\n2 tbsp sugar');
    expect(chosen).toMatchObject({ asks: [], lacking: ['source', 'grains'] });
    expect(chosen.formulation?.recipe).toMatchObject({ source: 'cashew', grains: 'milk' });
    expect(choose('1 cup hazelnuts\n2 tbsp water kefir grains').choices).toMatchObject({
      source: 'hazelnut',
      grains: 'water',
    });
  });
});

describe('amounts in sentences', () => {
  const cellsOf = (text: string) => plan(text).cells.map(({ row, text: typed }) => `${row}: ${typed}`);

  test('make a batch where there is no list', () => {
    const text = `Take 150 g almonds and soak them overnight in 500 ml water.
Drain and blend with 700 ml water, strain, stir in 20 g sugar.
Add 30 g water kefir grains and wait.`;
    expect(cellsOf(text)).toEqual([
      'sourceMass: 150 g',
      'blendWater: 700 mL',
      'sweetenerMass: 20 g',
      'grainMass: 30 g',
    ]);
  });

  test('are not counted again where a list gives them', () => {
    const text = `150 g almonds
700 ml water
20 g sugar
30 g water kefir grains
Blend 150 g almonds with 700 ml water.
Stir in 20 g sugar and the grains.`;
    expect(cellsOf(text)).toEqual([
      'sourceMass: 150 g',
      'blendWater: 700 mL',
      'sweetenerMass: 20 g',
      'grainMass: 30 g',
    ]);
    expect(readRecipe(text, habits).lines[4]).toMatchObject({
      kind: 'method',
      again: ['150 g almonds', '700 ml water'],
    });
  });

  test('are counted where the list does not give that food', () => {
    const text = '150 g almonds\n20 g sugar\n30 g water kefir grains\nBlend with 700 ml water.';
    expect(cellsOf(text)).toContain('blendWater: 700 mL');
  });
});

describe('what is for later', () => {
  test('stays out of the milk, and is remembered', () => {
    const text = `150 g almonds
700 ml water
20 g sugar
30 g water kefir grains

For the second ferment:
2 tbsp honey

To serve:
1 tbsp maple syrup`;
    const { cells, extras, remarks } = plan(text);
    expect(cells.find(({ row }) => row === 'sweetenerMass')?.text).toBe('20 g');
    expect(extras).toEqual(['2 tbsp honey', '1 tbsp maple syrup']);
    expect(remarks.filter(({ code }) => code === 'aside')).toHaveLength(2);
  });

  test('is not all of a recipe whose name speaks of bottles', () => {
    expect(plan('Bottled almond kefir, vanilla flavour:\n150 g almonds').cells).toHaveLength(1);
  });
});

test('a table of nutrients gives no ingredient', () => {
  const text = '150 g almonds\n30 g water kefir grains\n\nNutrition, each glass:\nCalories 120\nSugars: 4 g\nSugar 4 g';
  expect(plan(text).cells.map(({ row }) => row)).toEqual(['sourceMass', 'grainMass']);
});

test('a can without a size is the usual one, and it is said', () => {
  const { cells, remarks } = plan('1 can coconut milk\n20 g milk kefir grains');
  expect(cells[0]).toMatchObject({ row: 'sourceMass' });
  const said = remarks.find(({ code }) => code === 'usualCan');
  expect(said === undefined ? '' : describeRecipeProblem(said)).toMatch(/400\smL/);
});

test.each([
  ['quart jar', 'quartWide'],
  ['1 quart jar', 'quartWide'],
  ['Quart jar, regular mouth', 'quartRegular'],
  ['- A clean one-quart glass jar with a lid', 'quartWide'],
  ['two-litre jar', 'twoLitre'],
  ['A 2 L jar', 'twoLitre'],
  ['half-gallon jar', 'halfGallon'],
  ['2 quart jars', 'quartWide'],
  ['2 x 1 L jars', 'litre'],
  ['two one-quart jars', 'quartWide'],
  ['JAR, 1 QT.', 'quartWide'],
])('the jar of “%s” is found', (text, vessel) => {
  expect(plan(`1 cup almonds\n${text}`).choices.vessel).toBe(vessel);
});

describe('a recipe without grains', () => {
  const cellOf = (text: string, row: string) => plan(text).cells.find((cell) => cell.row === row)?.text;

  test('takes a packet of kefir starter for starter powder, by the packet', () => {
    for (const line of ['1 packet kefir starter', '1 kefir starter packet', '1 sachet kefir starter powder']) {
      const { choices, asks } = plan(`150 g cashews\n700 mL water\n15 g sugar\n${line}`);
      expect([choices.grains, asks], line).toEqual(['powder', []]);
      expect(cellOf(`150 g cashews\n700 mL water\n15 g sugar\n${line}`, 'grainMass'), line).toBe('3 g');
    }
  });

  test('takes spoons of finished kefir for a starter', () => {
    for (const line of ['2 tbsp finished kefir', '2 tbsp kefir from my last batch', '2 tbsp kefir']) {
      const { choices } = plan(`150 g cashews\n700 mL water\n15 g sugar\n${line}`);
      expect(choices.grains, line).toBe('kefir');
    }
    expect(cellOf('150 g cashews\n700 mL water\n2 tbsp finished kefir', 'grainMass')).toBe('30.2 g');
  });

  test('asks for a culture or a source it does not name, and makes no almonds of oats', () => {
    const none = plan('150 g cashews\n700 mL water\n15 g sugar');
    expect([none.asks, none.formulation]).toEqual([['grains'], null]);
    const oats = plan('1 cup rolled oats\n4 cups water\n1 tbsp sugar\n1 packet kefir starter');
    expect([oats.choices.source, oats.asks]).toEqual(['oats', []]);
    const unknown = plan('1 cup quinoa\n4 cups water\n1 tbsp sugar\n1 packet kefir starter');
    expect([unknown.choices.source, unknown.asks, unknown.formulation]).toEqual([undefined, ['source'], null]);
  });
});
