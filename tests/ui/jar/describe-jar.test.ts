import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { describeJar } from '../../../src/ui/jar/describe-jar';
import { recipeOf, typed } from '../../batches';

const kitchen = demo.settings;

function describeOf(changes: Partial<Recipe> = {}, leads: 'metric' | 'us' = 'metric'): string {
  return describeJar(formulate(recipeOf(changes)), { ...kitchen, leads }).replaceAll(/\s+/g, ' ');
}

describe('describeJar', () => {
  test('says the jar, its fill, the headspace and where the grains are', () => {
    expect(describeOf()).toMatch(
      /^One jar: Quart, wide mouth, filled with \d+ mL \(.*cups.*\) to 4\.0 cm \(1 ⅝ in\) below the rim, the grains lying at the bottom\.$/,
    );
  });

  test('leads with the unit the cook leads with', () => {
    expect(describeOf({}, 'us')).toMatch(/filled with .*cups.* \(\d+ mL\) to 1 ⅝ in \(4\.0 cm\) below/);
  });

  test('milk grains float', () => {
    expect(describeOf({ grains: 'milk' })).toContain('the grains floating at the top');
  });

  test('of several jars it is one', () => {
    expect(describeOf({ given: [typed('vesselCount', 3)] })).toMatch(/^One of 3 jars: /);
  });

  test('says that none can be drawn where a number is missing', () => {
    expect(describeOf({ given: [typed('headspaceDepth', 60)] })).toMatch(/^No jar can be drawn yet/);
  });
});
