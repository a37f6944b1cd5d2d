import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import type { Recipe, WithContext } from 'schema-dts';
import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import { formulate } from '../../src/formula/engine/formulate';
import {
  type RecipeMarkup,
  recipeMarkup,
  writeMarkupFile,
  writeMarkupSnippet,
} from '../../src/interchange/recipe-markup';
import { anyRecipe, recipeOf, typed } from '../batches';

// The vocabulary, as generated from schema.org by schema-dts. That this compiles is a test of its own.
const almonds: WithContext<Recipe> = recipeMarkup(formulate(recipeOf()), 'Saturday almond', demo.settings);

const vocabulary = readFileSync('node_modules/schema-dts/dist/schema.d.ts', 'utf8');

/** The properties that a type of the vocabulary has by itself or takes from those above it. */
function propertiesOf(type: string): ReadonlySet<string> {
  const found = new RegExp(`\\binterface ${type}Base extends ([^{]+)\\{([\\s\\S]*?)\\n\\s*\\}`).exec(vocabulary);
  if (found === null) return new Set();
  const [, above = '', body = ''] = found;
  const own = Array.from(body.matchAll(/^\s*"?(\w+)"?\??:/gm), ([, name = '']) => name);
  const inherited = Array.from(above.matchAll(/(\w+)Base\b/g), ([, name = '']) => [...propertiesOf(name)]).flat();
  return new Set([...own, ...inherited]);
}

function markup(changes: Parameters<typeof recipeOf>[0] = {}): RecipeMarkup {
  return recipeMarkup(formulate(recipeOf(changes)), 'Saturday almond', demo.settings);
}

describe('recipe markup', () => {
  test('has types and properties of the vocabulary only', () => {
    const known = propertiesOf('Recipe');
    expect([...known]).toEqual(expect.arrayContaining(['recipeYield', 'prepTime', 'name']));
    expect(known.has('recipeColour')).toBe(false);
    const full = markup({ heat: { what: 'milk', temperature: 80, minutes: 5 } });
    expect(Object.keys(full).filter((key) => !key.startsWith('@') && !known.has(key))).toEqual([]);
    const ofStep = propertiesOf('HowToStep');
    for (const step of full.recipeInstructions) {
      expect(step['@type']).toBe('HowToStep');
      expect(Object.keys(step).filter((key) => !key.startsWith('@') && !ofStep.has(key))).toEqual([]);
    }
    expect(almonds).toMatchObject({ '@context': 'https://schema.org', '@type': 'Recipe', name: 'Saturday almond' });
  });

  test('says the amounts of the sheet in both units', () => {
    const { recipeIngredient, recipeYield } = markup({
      given: [typed('sourceMass', 143), typed('blendWater', 473.176)],
    });
    expect(recipeIngredient).toContain('143 g (1 cup · 5 oz) almonds');
    expect(recipeIngredient).toContain('473 mL (2 cups) water');
    expect(recipeIngredient.some((line) => /^\d+(\.\d+)? g \(.*\) cane sugar, white$/.test(line))).toBe(true);
    expect(recipeYield).toMatch(/^\d+ mL \(.*\) of kefir$/);
  });

  test('leads with US measure where the cook does', () => {
    const us = recipeMarkup(formulate(recipeOf({ given: [typed('sourceMass', 143)] })), 'x', {
      ...demo.settings,
      leads: 'us',
    });
    expect(us.recipeIngredient).toContain('1 cup · 5 oz (143 g) almonds');
  });

  test('has the steps of the sheet in their order', () => {
    const { recipeInstructions } = markup();
    expect(recipeInstructions.length).toBeGreaterThan(5);
    for (const { name, text } of recipeInstructions) {
      expect(name).not.toBe('');
      expect(text).toMatch(/\.$/);
    }
  });

  test('says times as ISO 8601 durations, and only those that are known', () => {
    expect(markup({ given: [typed('soakTime', 8.5)] }).prepTime).toBe('PT8H30M');
    expect(markup({ given: [typed('soakTime', 12)] }).prepTime).toBe('PT12H');
    expect(markup({ source: 'hemp' }).prepTime).toBeUndefined();
    expect(markup().cookTime).toBeUndefined();
    expect(markup({ heat: { what: 'milk', temperature: 80, minutes: 5 } }).cookTime).toBe('PT5M');
    expect(Object.keys(markup())).not.toContain('totalTime');
    expect(JSON.stringify(markup())).not.toContain('suitableForDiet');
  });

  test('of any recipe holds no number that is none, and durations that are some', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const { prepTime = 'PT1M', ...rest } = recipeMarkup(formulate(recipe), 'x', demo.settings);
        expect(prepTime).toMatch(/^PT(\d+H)?(\d+M)?$/);
        expect(JSON.stringify(rest)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 200 },
    );
  });

  test('as a piece of a page can’t be ended by a name', () => {
    const name = '</script><script>alert(1)</script><!-- & \u2028';
    const piece = writeMarkupSnippet({ ...markup(), name });
    expect(piece.match(/<\/?script/g)).toHaveLength(2);
    const inner = piece.replace(/^<script[^>]*>/, '').replace(/<\/script>\n$/, '');
    expect(JSON.parse(inner)).toMatchObject({ name });
    expect(JSON.parse(writeMarkupFile({ ...markup(), name }))).toMatchObject({ name });
  });
});
