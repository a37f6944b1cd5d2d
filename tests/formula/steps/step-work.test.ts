import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { movedBy } from '../../../src/formula/advice/measured-effect';
import { formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { stepsOf } from '../../../src/formula/steps/steps';
import { anyRecipe, bottledRecipe as recipeOf, typed } from '../../batches';

const mark = (row: string): string => `<${row}> (other)`;
const stepsFor = (changes: Partial<Recipe>) => stepsOf(formulate(recipeOf(changes)), mark);
const stepOf = (id: string, changes: Partial<Recipe> = {}) => stepsFor(changes).find((step) => step.id === id);

describe('the parts of a step', () => {
  test('are its sentences, with each amount apart in the unit that leads', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        for (const { parts, text, perJar } of stepsOf(formulate(recipe), mark)) {
          expect(parts.map((part) => part.text).join('')).toBe(perJar === undefined ? text : `${text} ${perJar}`);
          for (const part of parts) expect(part.text).not.toMatch(part.isAmount ? /\(other\)/ : /<\w+>/);
        }
      }),
    );
  });
});

describe('the wait of a step', () => {
  test('is that of its row, or of the table', () => {
    const waits = stepsFor({ given: [typed('soakTime', 10)] }).map(({ id, wait }) => [id, wait] as const);
    expect(Object.fromEntries(waits)).toMatchObject({ choose: null, soak: 10, drain: null, chill: 4, keep: null });
    expect(stepOf('blend')?.wait).toBeCloseTo(120 / 3600, 6);
  });

  test('is that of the heat step in hours', () => {
    const heat = { what: 'milk', temperature: 85, minutes: 30 } as const;
    expect(stepOf('heatMilk', { heat })?.wait).toBeCloseTo(0.5, 6);
  });

  test('ends at the first taste, not when it is likely ready', () => {
    const { rows } = formulate(recipeOf({}));
    expect(stepOf('wait')?.wait).toBe(rows.readyTime.range?.low);
  });

  test('is none where no time can be told or none is asked for', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        for (const { wait } of stepsOf(formulate(recipe), mark))
          if (wait !== null) expect(wait > 0 && Number.isFinite(wait)).toBe(true);
      }),
    );
  });
});

describe('what is measured at a step', () => {
  test('is what leaves it, and the milk of a carton where it is poured', () => {
    expect(stepOf('drain')?.measured).toEqual(['soakedMass']);
    expect(stepOf('strain')?.measured).toEqual(['milkVolume', 'pulpMass']);
    expect(stepOf('blend')?.measured).toEqual([]);
    expect(stepOf('blend', { source: 'coconutMilk' })?.measured).toEqual(['milkVolume']);
  });
});

describe('what a measurement moves', () => {
  test('are the amounts that are still to be weighed, with what they were', () => {
    const measured = { milkVolume: { kind: 'volume', amount: 600 } } as const;
    const moved = movedBy('milkVolume', formulate(recipeOf({ measured })), demo.settings);
    expect(moved.map(({ row }) => row)).toEqual(expect.arrayContaining(['sweetenerMass', 'grainMass']));
    expect(moved.map(({ row }) => row)).not.toContain('milkVolume');
    for (const { from, to } of moved) expect(from).not.toBe(to);
  });

  test('is nothing where nothing was measured', () => {
    expect(movedBy('milkVolume', formulate(recipeOf({})), demo.settings)).toEqual([]);
  });
});
