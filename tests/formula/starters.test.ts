import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import { careTopics } from '../../src/formula/advice/care-topics';
import { allergensOf, findCaution } from '../../src/formula/advice/cautions';
import { formulate } from '../../src/formula/engine/formulate';
import { fateOfFirst } from '../../src/formula/fizz/sugar-fate';
import { drawJar } from '../../src/formula/steps/drawing';
import { labelOfBatch } from '../../src/formula/steps/label-text';
import { stepsOf } from '../../src/formula/steps/steps';
import { writeRow } from '../../src/formula/words/write-row';
import { grains, isGrains } from '../../src/reference/grains';
import { grainIds, recipeOf, sourceIds, typed } from '../batches';
import { agrees } from '../results';

const starters = grainIds.filter((id) => !isGrains(id));
const words = (grains: (typeof grainIds)[number]) =>
  stepsOf(formulate(recipeOf({ grains })), (row) => `<${row}>`)
    .map(({ title, text, notes }) => `${title}. ${text} ${notes.map((note) => note.text).join(' ')}`)
    .join('\n');

describe.each(starters)('a batch started with %s', (culture) => {
  test('is drunk whole: nothing is strained out of it', () => {
    for (const source of sourceIds) {
      const { of } = formulate(recipeOf({ source, grains: culture }));
      expect(agrees(of('drinkVolume'), of('totalFill')), source).toBe(true);
      expect(agrees(of('liquid'), of('totalFill')), source).toBe(true);
    }
  });

  test('is found again from what is wanted to drink, from its source or from its glasses', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sourceIds), fc.integer({ min: 200, max: 3000 }), (source, wanted) => {
        const { of } = formulate(recipeOf({ source, grains: culture, given: [typed('drinkVolume', wanted)] }));
        expect(agrees(of('milkVolume') + (of('totalFill') - of('milkVolume')), wanted)).toBe(true);
        const both = [typed('sourceMass', of('sourceMass')), typed('drinkVolume', wanted)];
        const joined = formulate(recipeOf({ source, grains: culture, given: both }));
        expect(Math.abs(joined.of('milkVolume') / of('milkVolume') - 1)).toBeLessThan(1e-6);
      }),
    );
  });

  test('has no grains to drain, rinse, strain out, rest or draw', () => {
    const text = words(culture);
    expect(text).not.toMatch(/\b[Tt]he grains\b|resting jar|sieve|Milk grains|Water grains/);
    expect(text).toMatch(/nothing to strain out/);
    expect(drawJar(formulate(recipeOf({ grains: culture })))?.grains).toBeNull();
  });

  test('may hold milk, says so at its step, on its label and among the allergens, and is called vegan nowhere', () => {
    const formulation = formulate(recipeOf({ grains: culture }));
    const days = { made: null, tasteBy: null, useBy: null };
    const label = labelOfBatch(formulation, { name: 'Friday', days });
    expect(label.find(({ id }) => id === 'dairy')?.text).toMatch(/^May hold milk/);
    expect(allergensOf(formulation).sentence).toContain('Milk, which the starter may bring,');
    expect(findCaution('starterMilk', formulation)).not.toBeNull();
    expect(findCaution('milkProtein', formulation)).toBeNull();
    expect(words(culture)).toMatch(/milk/);
    const all = [words(culture), ...label.map(({ text }) => text), ...careTopics(formulation).map(({ name }) => name)];
    expect(all.join(' ')).not.toMatch(/vegan/i);
    expect(careTopics(formulation).map(({ name }) => name)).toContain('Starter');
  });

  test('brings its own sugar, acid and alcohol along', () => {
    const of = (amount: number) => {
      const given = [typed('grainRate', amount)];
      const formulation = formulate(recipeOf({ grains: culture, given }));
      return { formulation, fate: fateOfFirst(formulation) };
    };
    const [less, more] = [of(5), of(80)];
    const { evaluation, of: value } = more.formulation;
    const brought = (1000 * evaluation.c('starterSugar') * value('grainMass')) / value('liquid');
    const without = (value('startingSugar') * value('milkVolume')) / value('liquid');
    expect(value('drinkSugar')).toBeCloseTo(without + brought, 9);
    expect(value('drinkSugarMost')).toBeGreaterThan(value('drinkSugar'));
    if (culture === 'kefir') {
      const ethanol = (fate: typeof more.fate) => (fate === null ? Number.NaN : fate.ethanol.high / fate.used.high);
      expect(ethanol(more.fate)).toBeGreaterThan(ethanol(less.fate));
    }
  });
});

test('grains are strained out, and their liquid and room with them', () => {
  for (const culture of ['water', 'milk'] as const) {
    const { of } = formulate(recipeOf({ grains: culture }));
    const { density, cling } = grains[culture];
    const gone = of('grainMass') / density.value + of('grainMass') * cling.value;
    expect(of('drinkVolume')).toBeCloseTo(of('totalFill') - gone, 9);
  }
});

test('powder is counted in packets, and finished kefir in spoons', () => {
  const litre = [typed('milkVolume', 1000)];
  const write = (culture: 'powder' | 'kefir') =>
    writeRow(formulate(recipeOf({ grains: culture, given: litre })), 'grainMass', demo.settings);
  expect(write('powder')).toMatchObject({ metric: '3.0\u00A0g', us: '1\u00A0packet' });
  // 3 % of 1000 g is 30 g, about 2 tbsp (29.6 mL).
  expect(write('kefir')?.spoons).toMatch(/2.tbsp/);
});
