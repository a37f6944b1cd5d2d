import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formulate } from '../../../src/formula/engine/formulate';
import { fateOfFirst } from '../../../src/formula/fizz/sugar-fate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { type LabelLine, labelDaysOf, labelOfBatch } from '../../../src/formula/steps/label-text';
import { sources } from '../../../src/reference/sources';
import { grainIds, recipeOf, sourceIds, sweetenerIds, typed } from '../../batches';

const days = { made: '28 Mar 2026', tasteBy: '3 Apr 2026', useBy: '5 Apr 2026' };

function labelOf(changes: Partial<Recipe> = {}, more: { extra?: string; leads?: 'us' } = {}): readonly LabelLine[] {
  return labelOfBatch(formulate(recipeOf(changes)), { name: 'Saturday', days, ...more });
}

const lineOf = (lines: readonly LabelLine[], id: LabelLine['id']) => lines.find((line) => line.id === id)?.text ?? null;

describe('a label', () => {
  test('of almonds and water grains says what it is, its days, its allergen and how to keep it', () => {
    expect(labelOf().map(({ text }) => text)).toEqual([
      'Saturday',
      'Plant-milk kefir of almonds, made with water kefir grains.',
      'Made 28 Mar 2026',
      'Taste by 3 Apr 2026, use up by 5 Apr 2026',
      'Contains almond (tree nut): on the US and EU allergen lists.',
      'Keep it at 5 °C (41 °F) or less.',
      'Contains live cultures. Open slowly.',
      'May hold more than 0.5 % alcohol.',
    ]);
  });

  test('begins temperatures with the unit that leads', () => {
    expect(lineOf(labelOf({}, { leads: 'us' }), 'keep')).toBe('Keep it at 41 °F (5 °C) or less.');
  });

  test('says little of alcohol only where the whole estimate lies under the line that law draws', () => {
    const weak = { given: [typed('startingSugar', 9), typed('bottleTime', 0)] };
    expect(fateOfFirst(formulate(recipeOf(weak)))?.line).toBe('under');
    expect(lineOf(labelOf(weak), 'alcohol')).toBe('Holds a little alcohol.');
  });

  test('takes a bottle that no model covers for one that may hold more', () => {
    const strong = [typed('startingSugar', 9), typed('bottleSugar', 60), typed('bottleTime', 24)] as const;
    const hot = { given: [...strong, typed('bottleTemperature', 33)] };
    expect(fateOfFirst(formulate(recipeOf(hot)))?.line).toBe('under');
    expect(lineOf(labelOf(hot), 'alcohol')).toBe('May hold more than 0.5 % alcohol.');
  });

  test('speaks of traces of milk with milk grains only', () => {
    expect(lineOf(labelOf({ grains: 'milk' }), 'dairy')).toBe(
      'Traces of milk, from the grains: on the US and EU allergen lists.',
    );
    expect(lineOf(labelOf({ grains: 'water' }), 'dairy')).toBeNull();
  });

  test('keeps honey from infants, in a blend too', () => {
    expect(lineOf(labelOf({ sweetener: [{ id: 'honey', share: 1 }] }), 'infants')).toMatch(/under 12 months/);
    const blend: Recipe['sweetener'] = [
      { id: 'caneWhite', share: 0.9 },
      { id: 'honey', share: 0.1 },
    ];
    expect(lineOf(labelOf({ sweetener: blend }), 'infants')).toMatch(/under 12 months/);
    expect(lineOf(labelOf(), 'infants')).toBeNull();
  });

  test('says which list names what: both, or neither', () => {
    expect(lineOf(labelOf({ source: 'coconutDried' }), 'allergens')).toMatch(/^Contains coconut: on neither .* react/);
    expect(lineOf(labelOf({ source: 'hemp' }), 'allergens')).toBe(
      'Allergens: hemp hearts are on neither the US nor the EU list.',
    );
    expect(lineOf(labelOf({ source: 'brazilNut' }), 'allergens')).toMatch(/^Contains Brazil nut/);
  });

  test('leaves what is in a carton to the carton', () => {
    expect(lineOf(labelOf({ source: 'cartonPlain' }), 'allergens')).toBe(
      'Allergens: those named on the carton it was made from.',
    );
  });

  test('has the cook’s own line last, and none where it is blank', () => {
    expect(labelOf({}, { extra: '  Jar 2 of 3 ' }).at(-1)).toEqual({ id: 'extra', text: 'Jar 2 of 3' });
    expect(lineOf(labelOf({}, { extra: '   ' }), 'extra')).toBeNull();
  });

  test('leaves room for a pen where a day is not known, and names one last day where there is one', () => {
    const write = (made: string | null, tasteBy: string | null, useBy: string | null) => {
      const lines = labelOfBatch(formulate(recipeOf()), { name: 'Saturday', days: { made, tasteBy, useBy } });
      return [lineOf(lines, 'made'), lineOf(lines, 'tasteBy')];
    };
    expect(write(null, null, null)).toEqual(['Made __________', 'Taste by __________']);
    expect(write('1 May 2026', '8 May 2026', '8 May 2026')).toEqual(['Made 1 May 2026', 'Taste by 8 May 2026']);
  });

  test('of any source, sweetener and grains is of distinct full lines, names its allergens and calls nothing kefir alone', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sourceIds),
        fc.constantFrom(...sweetenerIds),
        fc.constantFrom(...grainIds),
        (source, sweetener, grains) => {
          const lines = labelOf({ source, sweetener: [{ id: sweetener, share: 1 }], grains });
          const all = lines.map(({ text }) => text).join('\n');
          expect(all).not.toMatch(/undefined|null|NaN/);
          expect(new Set(lines.map(({ id }) => id)).size).toBe(lines.length);
          expect(lines.every(({ text }) => text.trim() !== '')).toBe(true);
          expect(all).toContain(sources[source].plural);
          expect(lineOf(lines, 'allergens')?.match(/Contains /g)?.length ?? 0).toBe(sources[source].allergens.length);
          // What is left once the culture and the full name are taken out holds the word no more.
          const culture = /(water|milk) kefir grains|(finished|the|that) kefir/g;
          expect(all.replace('Plant-milk kefir', '').replace(culture, '')).not.toMatch(/kefir/i);
        },
      ),
    );
  });
});

describe('the days of a label', () => {
  test('are the whole days of the usual range: a week of nuts, up to ten days of coconut', () => {
    expect(labelDaysOf(formulate(recipeOf()))).toEqual({ best: 6, last: 8 });
    expect(labelDaysOf(formulate(recipeOf({ source: 'coconutMilk' })))).toEqual({ best: 7, last: 10 });
  });

  test('follow the row', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sourceIds), (source) => {
        const formulation = formulate(recipeOf({ source }));
        const found = labelDaysOf(formulation);
        const { value } = formulation.rows.keepDays;
        if (found === null || typeof value !== 'number') throw new Error('every source keeps for a while');
        expect(found.best).toBeLessThanOrEqual(value);
        expect(found.last).toBeGreaterThanOrEqual(Math.floor(value));
        expect(Number.isInteger(found.best) && Number.isInteger(found.last)).toBe(true);
      }),
    );
  });
});
