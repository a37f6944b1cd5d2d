import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recipeOf as recipeIn, type SheetDocument } from '../../../src/batch/document/document';
import * as edits from '../../../src/batch/edits/edits';
import { stockUp, takeChanges } from '../../../src/batch/edits/take-changes';
import { type WayOut, waysOut } from '../../../src/formula/advice/ways-out';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import { isMeasuredRow, type NumericRowId, rowOrder, stockIds, stockRows } from '../../../src/formula/recipe/order';
import type { Problem } from '../../../src/formula/recipe/problem';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { labelOf } from '../../../src/formula/words/labels';
import { jars } from '../../../src/reference/jars';
import { first } from '../../batch/any-edit';
import { anyRecipe, jarIds, numericRowIds, tightBag as recipeOf, sensibleRecipe, typed } from '../../batches';
import { codesAt, problemAt } from '../../results';
import { anyOnHand, documentOf } from '../../stocked';

const stocked = fc
  .tuple(fc.oneof(anyRecipe, sensibleRecipe), anyOnHand)
  .map(([recipe, onHand]): Recipe => ({ ...recipe, onHand }));

function eachWay(recipe: Recipe, see: (way: WayOut, problem: Problem, before: SheetDocument) => void): void {
  const before = documentOf(recipe);
  const formulation = formulate(recipe);
  for (const row of rowOrder) {
    for (const problem of formulation.rows[row].problems) {
      for (const way of waysOut(problem, formulation)) see(way, problem, before);
    }
  }
}

function workOut(document: SheetDocument): Formulation {
  return formulate(recipeIn(document, first(document)));
}

function rowLabelled(label: string | undefined): NumericRowId {
  const row = numericRowIds.find((id) => labelOf(id) === label);
  if (row === undefined) throw new Error(`no row is called ${label}`);
  return row;
}

/** What a label says, done by the edits themselves. */
function doAsSaid(label: string, problem: Problem, before: SheetDocument): SheetDocument {
  const said = (pattern: RegExp) => pattern.exec(label);
  const goes = said(/^Clear “(.+)”$/);
  if (goes) return edits.clearCell(before, 'b1', rowLabelled(goes[1]));
  const forgets = said(/^Forget what was measured for “(.+)”$/);
  if (forgets) {
    const row = rowLabelled(forgets[1]);
    return isMeasuredRow(row) ? edits.clearMeasured(before, 'b1', row) : before;
  }
  const uses = said(/^(?:Use|Keep) (\d+) jars?$/);
  if (uses) return edits.typeCell(before, 'b1', 'vesselCount', uses[1] ?? '');
  const takes = said(/^Take “(.+?)”(?: and clear “(.+)”)?(?: and use (\d+) jars)?$/);
  if (takes) {
    const vessel = jarIds.find((id) => jars[id].name === takes[1]) ?? '';
    const cleared = takes[2] === undefined ? before : edits.clearCell(before, 'b1', rowLabelled(takes[2]));
    const chosen = edits.choose(cleared, 'b1', 'vessel', vessel);
    return takes[3] === undefined ? chosen : edits.typeCell(chosen, 'b1', 'vesselCount', takes[3]);
  }
  const nothingToo = said(/^Add nothing to the bottle, and (.)(.+)$/);
  if (nothingToo) {
    const cleared = edits.clearCell(before, 'b1', 'bottleSugar');
    return doAsSaid(`${nothingToo[1]?.toUpperCase()}${nothingToo[2]}`, problem, cleared);
  }
  const ofBottle = ofBottleAsSaid(label);
  if (ofBottle !== null) return edits.typeCell(before, 'b1', ...ofBottle);
  const grams = said(/^Use only (\d+ g) for “(.+)”$/);
  if (grams) return edits.typeCell(before, 'b1', rowLabelled(grams[2]), grams[1] ?? '');
  const degrees = said(/^Make it ([\d.]+ °[CF])$/);
  if (degrees) {
    const ofBottle =
      problem.at === 'bottlePressureLikely' && first(before).given.some(({ row }) => row === 'bottleTemperature');
    return edits.typeCell(
      before,
      'b1',
      problem.at === 'bottleTemperature' || ofBottle ? 'bottleTemperature' : 'roomTemperature',
      degrees[1] ?? '',
    );
  }
  const meant = said(/^Make it ([\d.]+ (?:g|mL))$/);
  if (meant && isMeasuredRow(problem.at)) return edits.measureCell(before, 'b1', problem.at, meant[1] ?? '');
  const ratio = said(/^Make it ([\d.]+ parts)$/);
  if (ratio) return edits.typeCell(before, 'b1', 'waterRatio', ratio[1] ?? '');
  const lost = said(/^Forget the (\w+) on hand$/);
  const stock = stockIds.find((id) => id === (lost?.[1] ?? (problem.code === 'moreThanOnHand' ? problem.stock : '')));
  if (stock === undefined) throw new Error(`who knows what “${label}” does`);
  if (lost) return stockUp(before, 'b1', stock, '');
  return makeAsSaid(label.replace('Make the largest batch from ', ''), stockRows[stock], before);
}

const bottleLabels: readonly (readonly [RegExp, NumericRowId, string])[] = [
  [/^Add only (\d+) g\/L to the bottle$/, 'bottleSugar', 'g/L'],
  [/^Add only (\d+) g of sugar to each bottle$/, 'bottleSugar', 'g'],
  [/^Start with only (\d+) g\/L of sugar$/, 'startingSugar', 'g/L'],
  [/^Sweeten the milk with only (\d+) g\/L$/, 'sugarRate', 'g/L'],
  [/^Leave (\d+) mL of the bottle empty$/, 'bottleHeadspace', 'mL'],
  [/^I can keep the room at (\d+) °C/, 'roomTemperature', '°C'],
  [/^I can keep the bottle at (\d+) °C/, 'bottleTemperature', '°C'],
];

/** What a label about a bottle says is typed where; a blank text clears. */
function ofBottleAsSaid(label: string): [NumericRowId, string] | null {
  if (label === 'Leave out the second ferment') return ['bottleTime', '0 h'];
  if (label === 'Add nothing to the bottle') return ['bottleSugar', ''];
  for (const [pattern, row, unit] of bottleLabels) {
    const found = pattern.exec(label);
    if (found !== null) return [row, `${found[1]} ${unit}`];
  }
  return null;
}

const amounts = [
  'vesselCount',
  'fillVolume',
  'sourceMass',
  'blendWater',
  'milkVolume',
  'drinkVolume',
  'servings',
  'sweetenerMass',
  'caneEquivalent',
  'grainMass',
] as const;

function makeAsSaid(text: string, row: NumericRowId, before: SheetDocument): SheetDocument {
  const has = (...rows: readonly NumericRowId[]) => first(before).given.some((cell) => rows.includes(cell.row));
  let made = before;
  for (const amount of amounts) made = edits.clearCell(made, 'b1', amount);
  if (row === 'sourceMass' && has('headspaceDepth', 'headspaceVolume') && !has('waterRatio', 'milkSolids')) {
    // The ratio is typed to stay what it is without the amounts, which a typed headspace would else settle.
    const ratio = workOut(made).rows.waterRatio.value;
    if (typeof ratio === 'number') made = edits.typeCell(made, 'b1', 'waterRatio', String(ratio));
  }
  made = edits.typeCell(made, 'b1', row, text);
  return row === 'sweetenerMass' || row === 'grainMass' ? edits.setUse(made, 'b1', row, 'onHand') : made;
}

describe('every way out of anything', () => {
  test('takes its problem away from its row', () => {
    fc.assert(
      fc.property(stocked, (recipe) => {
        eachWay(recipe, ({ label, changes }, { at, code }, before) => {
          const after = workOut(takeChanges(before, 'b1', changes));
          expect(codesAt(after, at), `${label}, at ${at}`).not.toContain(code);
        });
      }),
      { numRuns: 300 },
    );
  });

  test('asks for no number of jars that can’t be typed', () => {
    const hardlyAnySugar = given({ ...typed('sweetenerMass', 2), use: 'onHand' }, typed('sugarRate', 1e-300));
    for (const row of rowOrder) {
      for (const problem of formulate(hardlyAnySugar).rows[row].problems) {
        for (const { label } of waysOut(problem, formulate(hardlyAnySugar))) expect(label).not.toMatch(/e\+|\d{5}/);
      }
    }
  });

  test('does what its label says and nothing else', () => {
    fc.assert(
      fc.property(stocked, (recipe) => {
        eachWay(recipe, ({ label, changes }, problem, before) => {
          expect(takeChanges(before, 'b1', changes), label).toEqual(doAsSaid(label, problem, before));
        });
      }),
      { numRuns: 300 },
    );
  });

  test('has a label of its own among those of its problem', () => {
    fc.assert(
      fc.property(stocked, (recipe) => {
        const formulation = formulate(recipe);
        for (const row of rowOrder) {
          for (const problem of formulation.rows[row].problems) {
            const labels = waysOut(problem, formulation).map(({ label }) => label);
            expect(new Set(labels).size).toBe(labels.length);
          }
        }
      }),
    );
  });
});

function labels(recipe: Recipe, row: NumericRowId, code: Problem['code']): readonly string[] {
  const formulation = formulate(recipe);
  return waysOut(problemAt(formulation, row, code), formulation).map(({ label }) => label);
}

const given = (...cells: Recipe['given']): Recipe => recipeOf({ given: cells });
const letGo = (row: NumericRowId) => `Clear “${labelOf(row)}”`;

describe('the ways out', () => {
  const third = given(typed('sourceMass', 170), typed('blendWater', 750), typed('milkVolume', 900));
  test.each<[string, Recipe, NumericRowId, Problem['code'], readonly string[]]>([
    [
      'of a third amount let any of the three go',
      third,
      'milkVolume',
      'conflict',
      [letGo('milkVolume'), letGo('sourceMass'), letGo('blendWater')],
    ],
    [
      'of a batch over the brim give it room',
      given(typed('vesselCount', 1), typed('sourceMass', 300)),
      'headspaceVolume',
      'overBrim',
      ['Use 2 jars', 'Take “Half-gallon, wide mouth”', letGo('vesselCount'), letGo('sourceMass')],
    ],
    [
      'of a batch over the brim are the same at the jars that were typed',
      given(typed('vesselCount', 1), typed('sourceMass', 300)),
      'vesselCount',
      'runsOver',
      ['Use 2 jars', 'Take “Half-gallon, wide mouth”', letGo('vesselCount'), letGo('sourceMass')],
    ],
    [
      'of a second jar are a bigger one alone, where one would be too full',
      given(typed('milkVolume', 900)),
      'vesselCount',
      'severalJars',
      ['Take “Litre-and-a-half jar”'],
    ],
    [
      'of many jars are a bigger kind, in as many as it takes',
      given(typed('milkVolume', 3000)),
      'vesselCount',
      'severalJars',
      ['Take “Litre jar” and use 4 jars'],
    ],
    [
      'of a second jar for a headspace that was typed do not go under it',
      given(typed('milkVolume', 750), typed('headspaceDepth', 5)),
      'vesselCount',
      'severalJars',
      ['Take “Litre-and-a-half jar”'],
    ],
    [
      'of what nearly agrees clear it',
      given(typed('drinkVolume', 600), typed('milkVolume', 600)),
      'milkVolume',
      'nearlyAgrees',
      [letGo('milkVolume')],
    ],
    [
      'of a headspace too small for the batch',
      given(typed('milkVolume', 880), typed('vesselCount', 1), typed('headspaceDepth', 6)),
      'headspaceDepth',
      'conflict',
      ['Use 2 jars', 'Take “Litre-and-a-half jar”', letGo('headspaceDepth'), letGo('milkVolume')],
    ],
    [
      'of a headspace under the wise one',
      given(typed('headspaceVolume', 5)),
      'headspaceDepth',
      'headspaceUnderWise',
      [letGo('headspaceVolume')],
    ],
    [
      'of a jar no deeper than its headspace',
      recipeOf({ vessel: 'gallon', given: [typed('brimful', 506)] }),
      'headspaceDepth',
      'headspaceTooDeep',
      [letGo('brimful')],
    ],
    [
      'of too little water',
      given(typed('waterRatio', 0.1)),
      'waterRatio',
      'gels',
      ['Make it 1.2 parts', letGo('waterRatio')],
    ],
    [
      'of amounts that no water joins',
      given(typed('sourceMass', 100), typed('milkVolume', 20)),
      'waterRatio',
      'noRatio',
      [letGo('sourceMass'), letGo('milkVolume')],
    ],
    [
      'of grains that leave no room',
      given(typed('grainMass', 2000)),
      'milkVolume',
      'noRoomForMilk',
      [letGo('grainMass')],
    ],
    [
      'of a room too warm for any are the same number in °F, or let it go',
      given(typed('roomTemperature', 70)),
      'roomTemperature',
      'tooLarge',
      ['Make it 70 °F', letGo('roomTemperature')],
    ],
    [
      'of a room colder than a freezer are the same number in °C',
      given(typed('roomTemperature', -55 / 9)),
      'readyTime',
      'outsideModels',
      ['Make it 21 °C', 'I can keep the room at 16 °C (61\u00a0°F)', letGo('roomTemperature')],
    ],
    [
      'of a room too warm in either degrees let it go',
      given(typed('roomTemperature', 100)),
      'roomTemperature',
      'tooLarge',
      [letGo('roomTemperature')],
    ],
    ['of less than none', given(typed('sourceMass', -1)), 'sourceMass', 'negative', [letGo('sourceMass')]],
    ['of what can’t be read', given(typed('sourceMass', null)), 'sourceMass', 'unreadable', [letGo('sourceMass')]],
    [
      'of a row that can’t be typed',
      given(typed('blenderLoads', 2)),
      'blenderLoads',
      'notTyped',
      [letGo('blenderLoads')],
    ],
    [
      'of an impossible measurement',
      recipeOf({ measured: { pulpMass: { kind: 'mass', amount: 5000 } } }),
      'pulpMass',
      'measuredImpossible',
      ['Forget what was measured for “Wet pulp left in the bag”'],
    ],
    [
      'of kilograms read as grams',
      recipeOf({ measured: { milkVolume: { kind: 'volume', amount: 0.7 } } }),
      'milkVolume',
      'unitMeant',
      ['Make it 700 mL', 'Forget what was measured for “Milk after straining”'],
    ],
    [
      'of more out than in',
      recipeOf({
        measured: { milkVolume: { kind: 'volume', amount: 750 }, pulpMass: { kind: 'mass', amount: 400 } },
      }),
      'pulpMass',
      'moreOutThanIn',
      [
        'Forget what was measured for “Milk after straining”',
        'Forget what was measured for “Wet pulp left in the bag”',
      ],
    ],
    [
      'of a measurement that can’t be read',
      recipeOf({ measured: { milkVolume: { kind: 'volume', amount: null } } }),
      'milkVolume',
      'unreadable',
      ['Forget what was measured for “Milk after straining”'],
    ],
    [
      'of a batch that takes more than there is',
      { ...given(typed('sourceMass', 300)), onHand: { source: { text: '250 g', kind: 'mass', amount: 250 } } },
      'sourceMass',
      'moreThanOnHand',
      ['Make the largest batch from 250 g', 'Forget the source on hand'],
    ],
  ])('%s', (_, recipe, row, code, ways) => {
    expect(labels(recipe, row, code)).toEqual(ways);
  });

  test('are none where a problem only tells', () => {
    const formulation = formulate(recipeOf({ sweetener: [{ id: 'stevia', share: 1 }] }));
    expect(waysOut(problemAt(formulation, 'sweetener', 'nothingToFerment'), formulation)).toEqual([]);
  });
});
