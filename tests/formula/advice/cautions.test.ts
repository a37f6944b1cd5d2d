import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cautionTopics } from '../../../src/formula/advice/caution-conditions';
import { allergensOf, cautionsAbout, cautionsAt, findCaution } from '../../../src/formula/advice/cautions';
import { formulate } from '../../../src/formula/engine/formulate';
import { type RowId, rowOrder } from '../../../src/formula/recipe/order';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { cautions } from '../../../src/reference/cautions';
import { sources } from '../../../src/reference/sources';
import { anyRecipe, bottledRecipe as recipeOf, sourceIds, typed } from '../../batches';

function at(row: RowId, changes: Partial<Recipe> = {}): readonly string[] {
  return cautionsAt(row, formulate(recipeOf(changes))).map(({ id }) => id);
}

function foot(changes: Partial<Recipe> = {}): readonly string[] {
  return cautionsAbout(cautionTopics, formulate(recipeOf(changes))).map(({ id }) => id);
}

function sentenceFor(changes: Partial<Recipe>): string {
  return allergensOf(formulate(recipeOf(changes))).sentence;
}

const honey = { sweetener: [{ id: 'honey', share: 1 }] } as const;
const unbottled = { given: [typed('bottleTime', 0)] } as const;
const heated = { heat: { what: 'milk', temperature: 85, minutes: 5 } } as const;

describe('a caution at a row', () => {
  test.each<readonly [id: string, row: RowId, holds: Partial<Recipe>, not: Partial<Recipe>]>([
    ['treatedNuts', 'source', { source: 'peanut' }, { source: 'coconutFresh' }],
    ['treatedNuts', 'source', { source: 'flax' }, { source: 'cartonPlain' }],
    ['bitterAlmonds', 'source', { source: 'almondBlanched' }, { source: 'cashew' }],
    ['soakCold', 'soakTime', { source: 'cashew' }, { source: 'hemp' }],
    ['soakWarmGrowth', 'soakTime', { source: 'cashew' }, { source: 'coconutDried' }],
    ['soakWalnuts', 'soakTime', { source: 'walnut' }, { source: 'almond' }],
    ['coolBeforeGrains', 'blendWater', { source: 'coconutDried' }, { source: 'almond' }],
    ['coolBeforeGrains', 'blendWater', heated, { heat: null }],
    ['honeyInfants', 'sweetener', honey, {}],
    ['milkProtein', 'grains', { grains: 'milk' }, { grains: 'water' }],
    ['acidityLine', 'finalPH', { source: 'coconutMilk' }, { source: 'cartonSweetened' }],
    ['sweetener:agave', 'sweetener', { sweetener: [{ id: 'agave', share: 1 }] }, {}],
    ['brazilNut:0', 'source', { source: 'brazilNut' }, {}],
    ['sealedGlass', 'bottleTime', {}, unbottled],
    ['passedOnly', 'bottleTime', {}, unbottled],
    ['testBottle', 'bottleTime', {}, unbottled],
    ['openBottles', 'bottleTime', { given: [typed('bottleTime', 3)] }, unbottled],
    ['forgottenBottles', 'bottlePressureForgotten', {}, unbottled],
    ['yeastGoesOn', 'bottlePressureForgotten', {}, unbottled],
    ['limitMeans', 'bottleLimit', {}, unbottled],
    ['sugarReading', 'sugarLeft', {}, unbottled],
  ])('%s stands at %s only where it applies', (id, row, holds, not) => {
    expect(at(row, holds)).toContain(id);
    expect(at(row, not)).not.toContain(id);
    expect(foot(not)).not.toContain(id);
  });

  test('stands at the jar whatever is in it', () => {
    expect(at('vessel')).toEqual(['jarsUnrated']);
    expect(at('headspaceDepth')).toEqual(['headspace']);
  });

  test('of a blend holds for each of its parts', () => {
    const sweetener = [
      { id: 'caneWhite', share: 0.9 },
      { id: 'honey', share: 0.1 },
    ] as const;
    expect(at('sweetener', { sweetener })).toContain('honeyInfants');
  });

  test('about bottles stands where their time can’t be read: there may be one', () => {
    expect(at('bottleTime', { given: [typed('bottleTime', null)] })).toContain('sealedGlass');
  });

  test('about acidity says how to test it, whatever the milk', () => {
    expect(at('finalPH')).toEqual(['acidityLine', 'acidityLimits', 'howToTest']);
    expect(at('finalPH', { source: 'cartonPlain' })).toContain('howToTest');
  });

  test('about time out of the fridge stands at the days it keeps', () => {
    expect(at('keepDays')).toEqual(['throwOut', 'keepCold', 'timeOut']);
  });

  test('is not said a second time in the words of the choice', () => {
    expect(at('sweetener', honey)).toEqual(['honeyInfants']);
    expect(at('source').filter((id) => id.startsWith('almond:'))).toEqual([]);
  });

  test('of the source comes with its origin', () => {
    const [own] = cautionsAt('source', formulate(recipeOf({ source: 'brazilNut' }))).filter(({ id }) =>
      id.startsWith('brazilNut:'),
    );
    expect(own?.text).toContain('selenium');
    expect(own?.origin).toEqual({ kind: 'from memory' });
  });
});

describe('the foot', () => {
  test('says everything that holds at a row or a step, once', () => {
    fc.assert(
      fc.property(anyRecipe, (recipe) => {
        const formulation = formulate(recipe);
        const ids = cautionsAbout(cautionTopics, formulation).map(({ id }) => id);
        const atRows = rowOrder.flatMap((row) => cautionsAt(row, formulation).map(({ id }) => id));
        expect(ids).toEqual(expect.arrayContaining(atRows));
        expect(new Set(ids).size).toBe(ids.length);
        expect(new Set(atRows).size).toBe(atRows.length);
      }),
    );
  });

  test('goes from pressure over spoilage, allergens, infants, alcohol and people to the law', () => {
    const ids = foot({ ...honey, grains: 'milk' });
    const places = [
      'sealedGlass',
      'throwOut',
      'allergen:almond',
      'allergen:milk',
      'honeyInfants',
      'traceAlcohol',
      'higherRisk',
      'localLaw',
    ].map((id) => ids.indexOf(id));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  test('takes the cautions of rows that are not on the sheet', () => {
    const rows: readonly string[] = rowOrder;
    const homeless = cautions.filter(({ id, at: place }) => !rows.includes(place) && id !== 'waitOnlyCartons');
    expect(homeless.length).toBeGreaterThan(0);
    expect(foot(heated)).toEqual(expect.arrayContaining(homeless.map(({ id }) => id)));
  });

  test('lets a carton wait and a homemade milk not', () => {
    expect(foot({ source: 'cartonPlain' })).toContain('waitOnlyCartons');
    expect(foot({ source: 'almond' })).not.toContain('waitOnlyCartons');
    expect(foot({ source: 'almond' })).toContain('acidityLine');
  });

  test('claims nothing to be safe', () => {
    for (const source of sourceIds) {
      const texts = cautionsAbout(cautionTopics, formulate(recipeOf({ source, ...heated }))).map(({ text }) => text);
      for (const text of texts.filter((one) => /\bsafe\b/.test(one))) expect(text).toMatch(/\bno\b|\bnot\b/i);
    }
  });
});

test('a caution is found by its id only where it holds', () => {
  expect(findCaution('soakCold', formulate(recipeOf()))?.text).toContain('8 h at most');
  expect(findCaution('soakCold', formulate(recipeOf({ source: 'hemp' })))).toBeNull();
});

describe('allergens', () => {
  test('of a nut are on both lists', () => {
    const { entries, sentence } = allergensOf(formulate(recipeOf()));
    expect(entries).toMatchObject([{ id: 'almond', from: 'source', us: true, eu: true }]);
    expect(sentence).toBe('Allergens. Almond (tree nut) is on the US list and the EU list.');
  });

  test('of milk grains come with them', () => {
    const { entries } = allergensOf(formulate(recipeOf({ grains: 'milk' })));
    expect(entries.map(({ id, from }) => [id, from])).toEqual([
      ['almond', 'source'],
      ['milk', 'grains'],
    ]);
    expect(sentenceFor({ grains: 'milk' })).toContain('Milk, from the grains, is on the US list and the EU list.');
  });

  test('name both works they were read in', () => {
    const [almond] = allergensOf(formulate(recipeOf())).entries;
    expect(almond?.origin).toMatchObject({ work: 'fda-tree-nuts-2025' });
    expect(almond?.origin).toMatchObject({ note: expect.stringContaining('1169/2011') });
  });

  test.each(sourceIds.filter((id) => sources[id].family === 'coconut'))('of %s are on neither list', (source) => {
    expect(allergensOf(formulate(recipeOf({ source }))).entries).toMatchObject([{ us: false, eu: false }]);
    expect(sentenceFor({ source })).toMatch(/by the US and EU lists: on neither list since .+2025/);
  });

  test('of a seed on no list are said to be on none', () => {
    expect(sentenceFor({ source: 'hemp' })).toBe(
      'Allergens. Hemp hearts are on neither the US list nor the EU list. Read the packet all the same.',
    );
  });

  test('of a carton are those printed on it', () => {
    expect(sentenceFor({ source: 'cartonPlain' })).toContain('printed on the carton');
  });
});
