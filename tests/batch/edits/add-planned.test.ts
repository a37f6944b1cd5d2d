import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import { mostBatches, recipeOf } from '../../../src/batch/document/document';
import { readDocument } from '../../../src/batch/document/read-document';
import { addPlanned, type PlannedBatch } from '../../../src/batch/edits/add-planned';
import { createStore } from '../../../src/batch/store/store';
import { formulate } from '../../../src/formula/engine/formulate';
import { stepsOf } from '../../../src/formula/steps/steps';
import { openLink } from '../../../src/interchange/open-link';
import { planFromRecipe } from '../../../src/interchange/recipe-batch';
import { writeRecipe } from '../../../src/interchange/recipe-out';
import { readRecipe } from '../../../src/interchange/recipe-text';
import { linkTo, writeFragment } from '../../../src/interchange/share-link';

const habits = { cups: 'us', decimalComma: false } as const;
const planned: PlannedBatch = {
  name: 'From a friend',
  choices: {
    vessel: 'twoLitre',
    source: 'cashew',
    grains: 'milk',
    sweetener: [
      { id: 'honey', share: 0.5 },
      { id: 'caneWhite', share: 0.5 },
    ],
  },
  cells: [
    { row: 'sourceMass', text: '179 g' },
    { row: 'blendWater', text: '769 mL' },
    { row: 'sweetenerMass', text: '12,500 g' },
    { row: 'grainMass', text: '35 g' },
  ],
};

describe('a planned batch', () => {
  test('gets its name, every choice and every cell, after the batch it is put behind', () => {
    const two = { ...demo, batches: [...demo.batches, startBatch('b2', 'Second')] };
    const { batches } = addPlanned(two, planned, 'b1');
    expect(batches.map(({ id }) => id)).toEqual(['b1', 'b3', 'b2']);
    expect(batches[1]).toMatchObject({ name: planned.name, ...planned.choices });
    expect(batches[1]?.given.map(({ row, text }) => ({ row, text }))).toEqual(planned.cells);
    expect(batches[1]?.given.map(({ amount }) => amount)).toEqual([179, 769, null, 35]);
    expect(batches[0]).toBe(two.batches[0]);
    expect(batches[2]).toBe(two.batches[1]);
  });

  test('keeps what a new batch starts with where the text names nothing', () => {
    const { batches } = addPlanned(demo, { name: 'Bare', choices: {}, cells: [] });
    const start = startBatch('b2', 'Bare');
    expect(batches.at(-1)).toEqual(start);
  });

  test('is read by how this cook measures', () => {
    const comma = { ...demo, settings: { ...demo.settings, decimalComma: true } };
    const sweetener = addPlanned(comma, planned)
      .batches.at(-1)
      ?.given.find(({ row }) => row === 'sweetenerMass');
    expect(sweetener?.amount).toBe(12.5);
  });

  test('is one step, which undo takes back and redo makes again', () => {
    const store = createStore(demo);
    store.takeEdit(addPlanned(demo, planned), 'Make a batch');
    const made = store.document.value;
    expect(made.batches).toHaveLength(demo.batches.length + 1);
    expect(store.undoName.value).toBe('Make a batch');
    store.undo();
    expect(store.document.value).toBe(demo);
    store.redo();
    expect(store.document.value).toBe(made);
  });

  test('is not added to a sheet that is full', () => {
    const batches = Array.from({ length: mostBatches }, (_, at) => startBatch(`b${at}`, `Batch ${at}`));
    const full = { ...demo, batches };
    expect(addPlanned(full, planned)).toBe(full);
  });

  test('of a pasted recipe is worked out on the sheet as it was shown before', () => {
    const text = 'Kefir of the week\nFor a 2 L jar\n1 ¼ cups almonds\n3 ¼ cups water\n1 tbsp honey\n40 g kefir grains';
    const plan = planFromRecipe(readRecipe(text, habits), habits);
    const document = addPlanned(demo, plan);
    const added = document.batches.at(-1);
    if (added === undefined) throw new Error('nothing was added');
    const { rows } = createStore(document).formulationOf(added);
    expect(added.given).toHaveLength(4);
    expect(plan.asks).toEqual([]);
    for (const [id, { value }] of Object.entries(plan.formulation?.rows ?? {}))
      expect(Object.entries(rows).find(([row]) => row === id)?.[1].value, id).toEqual(value);
    const read = readDocument(JSON.parse(JSON.stringify(document)));
    expect(read).toEqual({ ok: true, document });
  });
});

test('what a recipe has for the glass goes with the batch, into its last step, its recipe and its link', async () => {
  const next = addPlanned(demo, { name: 'Mine', choices: {}, cells: [], extras: ['1 tsp vanilla extract'] });
  const batch = next.batches.at(-1);
  if (batch === undefined) throw new Error('nothing was added');
  expect(batch.extras).toEqual(['1 tsp vanilla extract']);
  const formulation = formulate(recipeOf(next, batch));
  const keep = stepsOf(formulation, (row) => row).find(({ id }) => id === 'keep');
  expect(keep?.text).toContain(
    'Flavour the glass at the end, and not the milk. The recipe has besides: 1 tsp vanilla extract.',
  );
  const fragment = await writeFragment(next, batch);
  const read = await openLink(linkTo('https://kitchen.example/', fragment ?? ''));
  expect(read.ok ? read.batch.extras : null).toEqual(['1 tsp vanilla extract']);
  const text = writeRecipe(formulation, 'Mine', 'grams', demo.settings);
  const again = planFromRecipe(readRecipe(text, habits), habits);
  expect(again.extras).toEqual(['1 tsp vanilla extract, to serve']);
});
