import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/demo';
import { recipeOf } from '../../src/batch/document';
import { typeCell } from '../../src/batch/edits';
import { planFromRecipe } from '../../src/interchange/recipe-batch';
import { describeRecipeProblem, type Habits, readRecipe } from '../../src/interchange/recipe-text';

const habits: Habits = { cups: 'us', decimalComma: false };

function plan(text: string, how: Habits = habits) {
  return planFromRecipe(readRecipe(text, how), how);
}

const whole = `Weekday almond kefir

For a 2 L jar:
- 1 cup (170 g) almonds, soaked overnight
- 3 cups water for soaking
- 3 1/4 cups water
- 1 tbsp honey and 1 tbsp maple syrup
- 45 g water kefir grains
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
      'sourceMass: 170 g',
      'blendWater: 769 mL',
      'sweetenerMass: 41 g',
      'grainMass: 45 g',
    ]);
    expect(extras).toEqual(['a pinch of salt']);
  });

  test('compares ratio, sugar and dose with the usual', () => {
    const { compared, formulation } = plan(whole);
    expect(compared.map(({ row, verdict }) => [row, verdict])).toEqual([
      ['waterRatio', 'usual'],
      ['sugarRate', 'usual'],
      ['grainRate', 'usual'],
    ]);
    expect(compared[0]?.value).toBeCloseTo(formulation.of('waterRatio'), 9);
    expect(compared[0]?.value).toBeCloseTo(769 / 170, 1);
    expect(plan('100 g almonds\n2 L water').compared[0]?.verdict).toBe('above');
    expect(plan('1 cup almonds').compared).toEqual([]);
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
    expect(codes('1 cup almonds\nMakes 3 litres.')).toContain('makes');
    expect(codes('1 cup almonds in a 2.7 L jar')).toContain('jarNotListed');
    for (const remark of plan(`${whole}\n1 cup cashews\n2 tbsp milk kefir grains`).remarks)
      expect(describeRecipeProblem(remark)).toMatch(/\.$/);
  });

  test('takes a carton by volume and a can by weight', () => {
    expect(plan('1 litre almond milk').cells).toMatchObject([{ row: 'sourceMass', text: '1000 mL' }]);
    expect(plan('1 litre almond milk').formulation.rows.sourceMass.status).toBe('given');
    expect(plan('1 (400 mL) can coconut milk').cells).toMatchObject([{ row: 'sourceMass', kind: 'mass' }]);
  });

  test('fills what it makes where no amount sizes it', () => {
    expect(plan('Almond kefir\nMakes 1 litre.').cells).toMatchObject([{ row: 'milkVolume', text: '1000 mL' }]);
  });
});
