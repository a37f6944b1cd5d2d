// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { drawJar } from '../../../src/formula/steps/drawing';
import { JarDrawing } from '../../../src/ui/jar/JarDrawing';
import { jarIds, recipeOf, typed } from '../../batches';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

function draw(changes: Partial<Recipe> = {}) {
  const drawing = drawJar(formulate(recipeOf(changes)));
  render(<JarDrawing drawing={drawing} words="A jar in words." headspace="5.0 cm" />);
  return screen.getByRole('img', { name: 'A jar in words.' });
}

describe('a jar', () => {
  test.each(jarIds)('%s is drawn with a text equivalent and no number that is none', (vessel) => {
    const image = draw({ vessel });
    expect(image.tagName.toLowerCase()).toBe('svg');
    expect(image.outerHTML).not.toMatch(/NaN|Infinity|undefined/);
    expect(textOf(image)).toBe('5.0 cm');
  });

  test('of a source without fat is drawn too', () => {
    expect(draw({ source: 'coconutWater' }).outerHTML).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('whose capacity is refused is said in words, with the fill typed all the same', () => {
    const image = draw({ given: [typed('brimful', -1), typed('fillVolume', 500)] });
    expect(image.tagName.toLowerCase()).not.toBe('svg');
    expect(textOf(image)).toBe('A jar in words.');
  });

  test('that would run over is said in words in place of a drawing', () => {
    const image = draw({ given: [typed('vesselCount', 1), typed('sourceMass', 900)] });
    expect(image.tagName.toLowerCase()).not.toBe('svg');
    expect(textOf(image)).toBe('A jar in words.');
  });
});

test('on the page the drawing is named in words that follow the batch', async () => {
  const { store } = await openSheet();
  expect(await screen.findByRole('img', { name: /^One jar: Quart, wide mouth, filled with 803\smL/ })).toBeDefined();
  store.choose('b1', 'grains', 'milk');
  expect(await screen.findByRole('img', { name: /the grains floating at the top/ })).toBeDefined();
});

test('on the page a jar that can’t be drawn is drawn as it was before the slip', async () => {
  await openSheet((store) => store.typeCell('b1', 'headspaceDepth', '60 cm'));
  expect(await screen.findByRole('img', { name: /filled with .* below the rim/ })).toBeDefined();
});
