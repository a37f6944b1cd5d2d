import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { careTopics } from '../../../src/formula/advice/care-topics';
import { cautionTopics } from '../../../src/formula/advice/caution-conditions';
import { cautionsAbout } from '../../../src/formula/advice/cautions';
import { formulate } from '../../../src/formula/engine/formulate';
import { growthIn, neverMixed } from '../../../src/reference/grain-care';
import { grainNotes } from '../../../src/reference/grain-notes';
import { isGrains } from '../../../src/reference/grains';
import { anyRecipe, recipeOf } from '../../batches';

const namesFor = (changes: Parameters<typeof recipeOf>[0]) =>
  careTopics(formulate(recipeOf(changes))).map(({ name }) => name);

describe('care by topic', () => {
  test('has every caution of a batch, each once, and only the keeping of its grains besides', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const formulation = formulate(recipe);
        const told = careTopics(formulation).flatMap(({ cautions }) => cautions);
        const expected = new Set(cautionsAbout(cautionTopics, formulation).map(({ text }) => text));
        expect(new Set(told.map(({ text }) => text)).size).toBe(told.length);
        expect(told.filter(({ text }) => expected.has(text))).toHaveLength(expected.size);
        const kept = isGrains(recipe.grains) ? [growthIn(recipe.source, recipe.grains), neverMixed] : [];
        const ofGrains = [...grainNotes[recipe.grains], ...kept];
        for (const { text } of told.filter((one) => !expected.has(one.text)))
          expect(ofGrains.map((note) => note.text)).toContain(text);
      }),
    );
  });

  test('names what is chosen, and no topic without a word in it', () => {
    expect(namesFor({})).toContain('Almonds and sweetener');
    for (const { cautions } of careTopics(formulate(recipeOf({})))) expect(cautions.length).toBeGreaterThan(0);
    expect(namesFor({}).length).toBeLessThanOrEqual(9);
  });
});
