import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { recipeOf as recipeIn } from '../../../src/batch/document/document';
import * as edits from '../../../src/batch/edits/edits';
import { stockUp, takeChanges } from '../../../src/batch/edits/take-changes';
import { changeSettings } from '../../../src/batch/reading/settings';
import { createStore } from '../../../src/batch/store/store';
import { changeRecipe } from '../../../src/formula/advice/typed-change';
import { waysOut } from '../../../src/formula/advice/ways-out';
import { formulate } from '../../../src/formula/engine/formulate';
import { stockIds } from '../../../src/formula/recipe/order';
import { anyRecipe } from '../../batches';
import { anyOnHand, documentOf } from '../../stocked';
import { anyDocument, anyText, first, freeze } from '../any-edit';

const start = freeze(demo);

describe('takeChanges', () => {
  test('takes them in their order', () => {
    const typed = edits.typeCell(start, 'b1', 'milkVolume', '1 L');
    const taken = takeChanges(typed, 'b1', [
      { do: 'clear', row: 'milkVolume' },
      { do: 'type', row: 'grainMass', text: '60 g', kind: 'mass', amount: 60, use: 'onHand' },
      { do: 'vessel', vessel: 'litre' },
    ]);
    expect(first(taken)).toEqual({
      ...first(start),
      vessel: 'litre',
      given: [{ row: 'grainMass', text: '60 g', amount: 60, kind: 'mass', use: 'onHand' }],
    });
  });

  test('sizes a batch only from sweetener or grains', () => {
    const taken = takeChanges(start, 'b1', [
      { do: 'type', row: 'sourceMass', text: '90 g', kind: 'mass', amount: 90, use: 'onHand' },
    ]);
    expect(first(taken).given).toEqual([{ row: 'sourceMass', text: '90 g', amount: 90, kind: 'mass' }]);
  });

  test('measures, forgets what was measured, and what is on hand', () => {
    const measured = edits.measureCell(start, 'b1', 'milkVolume', '700 mL');
    expect(takeChanges(measured, 'b1', [{ do: 'unmeasure', row: 'milkVolume' }])).toEqual(start);
    const read = takeChanges(start, 'b1', [
      { do: 'measure', row: 'milkVolume', text: '700 mL', kind: 'volume', amount: 700 },
    ]);
    expect(read).toEqual(measured);
    const stocked = stockUp(start, 'b1', 'jars', '3');
    expect(first(takeChanges(stocked, 'b1', [{ do: 'forget', stock: 'jars' }])).onHand).toEqual({});
  });

  test('of none, or of what changes nothing, gives the same document', () => {
    expect(takeChanges(start, 'b1', [])).toBe(start);
    expect(
      takeChanges(start, 'b1', [
        { do: 'clear', row: 'sourceMass' },
        { do: 'forget', stock: 'jars' },
      ]),
    ).toBe(start);
    expect(takeChanges(start, 'b9', [{ do: 'vessel', vessel: 'litre' }])).toBe(start);
  });

  test('works out as the changes of the recipe do, before they are taken', () => {
    fc.assert(
      fc.property(anyRecipe, anyOnHand, (plain, onHand) => {
        const document = documentOf({ ...plain, onHand });
        const recipe = recipeIn(document, first(document));
        const formulation = formulate(recipe);
        for (const { problems } of Object.values(formulation.rows)) {
          for (const { changes } of problems.flatMap((problem) => waysOut(problem, formulation))) {
            const taken = takeChanges(document, 'b1', changes);
            const values = (of: typeof recipe) => Object.values(formulate(of).rows).map(({ value }) => value);
            expect(values(recipeIn(taken, first(taken)))).toEqual(values(changeRecipe(recipe, changes)));
          }
        }
      }),
    );
  });

  test('as a way out is one step with the label for its name', () => {
    const store = createStore(start);
    store.takeWayOut('b1', {
      label: 'Use 2 jars',
      changes: [
        { do: 'clear', row: 'brimful' },
        { do: 'type', row: 'vesselCount', text: '2', kind: 'count', amount: 2 },
        { do: 'vessel', vessel: 'litre' },
      ],
    });
    expect(store.undoName.value).toBe('Use 2 jars');
    store.undo();
    expect(store.document.value).toEqual(start);
  });
});

describe('stockUp', () => {
  test('keeps the text and how it was read, and sizes nothing', () => {
    const stocked = stockUp(start, 'b1', 'source', '1½ kg');
    expect(first(stocked)).toEqual({
      ...first(start),
      onHand: { source: { text: '1½ kg', amount: 1500, kind: 'mass' } },
    });
  });

  test('keeps what can’t be read, with no amount, until it can', () => {
    const stocked = stockUp(start, 'b1', 'source', '1,500 g');
    const comma = changeSettings(stockUp(start, 'b1', 'source', '1,5 kg'), { decimalComma: true });
    expect(first(comma).onHand?.source?.amount).toBe(1500);
    expect(first(stocked).onHand?.source?.text).toBe('1,500 g');
  });

  test('forgets one thing by a blank text, and leaves the others', () => {
    const both = stockUp(stockUp(start, 'b1', 'source', '1 kg'), 'b1', 'grains', '60 g');
    expect(Object.keys(first(stockUp(both, 'b1', 'source', ' ')).onHand ?? {})).toEqual(['grains']);
    expect(stockUp(start, 'b1', 'source', '')).toBe(start);
  });

  test('gives the same document for the same text, and never throws', () => {
    fc.assert(
      fc.property(anyDocument, fc.constantFrom(...stockIds), anyText, (document, stock, text) => {
        const { id } = first(document);
        const stocked = stockUp(freeze(document), id, stock, text);
        expect(stockUp(stocked, id, stock, text)).toBe(stocked);
      }),
    );
  });
});
