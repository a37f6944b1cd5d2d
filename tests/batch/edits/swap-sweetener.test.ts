import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { choose, setUse, typeCell } from '../../../src/batch/edits/edits';
import { chooseSweetener, swapSweetener } from '../../../src/batch/edits/swap-sweetener';
import { createStore } from '../../../src/batch/store/store';
import { blendMass } from '../../../src/formula/advice/blend-mass';
import { swapsFor } from '../../../src/formula/advice/swap';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import type { Given, SweetenerPart } from '../../../src/formula/recipe/recipe';
import { writeGrams } from '../../../src/interchange/typed-texts';
import { type SweetenerId, sweeteners } from '../../../src/reference/sweeteners';
import { recipeOf as made, onHand, plainRecipe, sweetenerIds, typed } from '../../batches';
import { documentOf } from '../../stocked';

type Document = ReturnType<typeof documentOf>;

const fermentable = sweetenerIds.filter((id) => id !== 'none' && sweeteners[id].refused === undefined);

function workedOut(document: Document): Formulation {
  const [batch] = document.batches;
  if (batch === undefined) throw new Error('there is no batch');
  return formulate(recipeOf(document, batch));
}

/** Hexose that the batch adds, g. */
function sugarOf({ of }: Formulation): number {
  return of('sweetenerMass') * of('fermentable');
}

/** The document with the sweetener swapped as the page does it. */
function swapTo(document: Document, id: SweetenerId): Document {
  const mass = swapsFor(workedOut(document))?.find((swap) => swap.id === id)?.mass?.value;
  if (mass === undefined) throw new Error(`no swap to ${id}`);
  return swapSweetener(document, 'b1', [{ id, share: 1 }], writeGrams(mass, document.settings.decimalComma));
}

function blendTo(document: Document, parts: readonly SweetenerPart[]): Document {
  const mass = blendMass(parts, workedOut(document));
  if (mass === null) throw new Error('no such blend');
  return swapSweetener(document, 'b1', parts, writeGrams(mass, document.settings.decimalComma));
}

// A weight or its cane equivalent holds for the whole batch.
const ways: Readonly<Record<string, readonly Given[]>> = {
  'a typed weight': [typed('sweetenerMass', 20)],
  'a typed cane equivalent': [typed('caneEquivalent', 18)],
  'a weight that is all there is': [onHand('sweetenerMass', 25)],
  'a weight typed beside a source': [typed('sourceMass', 170), typed('sweetenerMass', 35)],
};

// A rate holds for each litre of milk, of which a jar takes less where a syrup takes up more of its room.
const rates: Readonly<Record<string, readonly Given[]>> = {
  'a typed rate': [typed('sugarRate', 22)],
  'the usual rate': [],
};

describe('swapping the sweetener', () => {
  test.each(Object.entries(ways))('keeps the fermentable sugar by %s', (_, given) => {
    fc.assert(
      fc.property(plainRecipe, fc.constantFrom(...fermentable), fc.constantFrom(...fermentable), (plain, from, to) => {
        const document = documentOf({ ...plain, sweetener: [{ id: from, share: 1 }], given });
        const before = workedOut(document);
        if (!(sugarOf(before) > 0)) return;
        const swapped = swapTo(document, to);
        expect(swapped.batches[0]?.sweetener).toEqual([{ id: to, share: 1 }]);
        expect(sugarOf(workedOut(swapped)) / sugarOf(before)).toBeCloseTo(1, 2);
      }),
      { numRuns: 60 },
    );
  });

  test.each(Object.entries(rates))('keeps the fermentable sugar of each litre by %s', (_, given) => {
    fc.assert(
      fc.property(plainRecipe, fc.constantFrom(...fermentable), fc.constantFrom(...fermentable), (plain, from, to) => {
        const document = documentOf({ ...plain, sweetener: [{ id: from, share: 1 }], given });
        const before = workedOut(document);
        if (!(sugarOf(before) > 0)) return;
        const after = workedOut(swapTo(document, to));
        const kept = sugarOf(after) / after.of('milkVolume') / (sugarOf(before) / before.of('milkVolume'));
        expect(kept).toBeCloseTo(1, 9);
      }),
      { numRuns: 60 },
    );
  });

  test.each(Object.entries(ways))('keeps it in a blend by %s', (_, given) => {
    fc.assert(
      fc.property(
        fc.constantFrom(...fermentable),
        fc.constantFrom(...fermentable),
        fc.constantFrom(0.25, 0.5, 0.75),
        (first, second, share) => {
          const document = documentOf(made({ given }));
          const parts = [
            { id: first, share: 1 - share },
            { id: second, share },
          ];
          const blended = blendTo(document, parts);
          expect(blended.batches[0]?.sweetener).toEqual(parts);
          expect(sugarOf(workedOut(blended)) / sugarOf(workedOut(document))).toBeCloseTo(1, 2);
        },
      ),
      { numRuns: 60 },
    );
  });

  test('types a typed weight anew, in its place, and leaves what is on hand on hand', () => {
    const document = documentOf(made({ given: [onHand('sweetenerMass', 18), typed('grainMass', 40)] }));
    const [weight, grains] = swapTo(document, 'honey').batches[0]?.given ?? [];
    // 18 g of cane sugar hold 18 × 0.998 × 1.05263 = 18.909 g of hexose; honey holds 0.82243 g per g.
    expect(weight).toEqual({ row: 'sweetenerMass', text: '22.99 g', amount: 22.99, kind: 'mass', use: 'onHand' });
    expect(grains).toMatchObject({ row: 'grainMass', amount: 40 });
  });

  test('types nothing where nothing was typed', () => {
    const given = [typed('caneEquivalent', 18)];
    const document = documentOf(made({ given }));
    expect(swapTo(document, 'honey').batches[0]?.given).toBe(document.batches[0]?.given);
  });

  test('writes the weight with the cook’s own decimal sign', () => {
    const plain = documentOf(made({ given: [typed('sweetenerMass', 18)] }));
    const document = { ...plain, settings: { ...plain.settings, decimalComma: true } };
    expect(swapTo(document, 'honey').batches[0]?.given).toMatchObject([{ text: '22,99 g', amount: 22.99 }]);
  });

  test('is one step, which undo takes back', () => {
    const document = documentOf(made({ given: [typed('sweetenerMass', 18)] }));
    const store = createStore(document);
    store.takeEdit(swapTo(document, 'honey'), 'Swap');
    expect(store.document.value).not.toBe(document);
    store.undo();
    expect(store.document.value).toBe(document);
    expect(store.undoName.value).toBeNull();
  });

  test('of a batch that is not there, or to an empty blend, changes nothing', () => {
    const document = documentOf(made());
    expect(swapSweetener(document, 'gone', [{ id: 'honey', share: 1 }], '20 g')).toBe(document);
    expect(swapSweetener(document, 'b1', [], '20 g')).toBe(document);
  });
});

describe('choosing another sweetener', () => {
  const of = (document: SheetDocument) => {
    const [batch] = document.batches;
    if (batch === undefined) throw new Error('no batch');
    return sugarOf(formulate(recipeOf(document, batch)));
  };

  test('keeps the fermentable sugar of a weight typed by the spoon, which spoon for spoon would be a third more', () => {
    const typed = typeCell(demo, 'b1', 'sweetenerMass', '2 tbsp');
    const honey = chooseSweetener(typed, 'b1', 'honey');
    // Two level spoons of sugar weigh 25 g, and honey holds about 78 % of their sugar: 32 g.
    expect(honey.batches[0]?.given).toMatchObject([
      { row: 'sweetenerMass', text: expect.stringMatching(/^3[12]\.\d g$/) },
    ]);
    // The weight is typed to a tenth of a gram.
    expect(Math.abs(of(honey) / of(typed) - 1)).toBeLessThan(0.05 / 32);
    expect(of(choose(typed, 'b1', 'sweetener', 'honey')) / of(typed)).toBeGreaterThan(1.2);
  });

  test('leaves what is on hand, and what no other can stand in for', () => {
    const typed = typeCell(demo, 'b1', 'sweetenerMass', '100 g');
    const onHand = setUse(typed, 'b1', 'sweetenerMass', 'onHand');
    expect(chooseSweetener(onHand, 'b1', 'honey').batches[0]?.given[0]?.text).toBe('100 g');
    expect(chooseSweetener(typed, 'b1', 'stevia').batches[0]?.given[0]?.text).toBe('100 g');
  });

  test('is told for as long as it is the last step, and undone in one', () => {
    const store = createStore(typeCell(demo, 'b1', 'sweetenerMass', '2 tbsp'));
    expect(store.justSwapped.value).toBeNull();
    store.choose('b1', 'sweetener', 'honey');
    expect(store.justSwapped.value).toMatchObject({ batch: 'b1', text: '2 tbsp' });
    store.typeCell('b1', 'sweetenerMass', '2 tbsp');
    expect(store.justSwapped.value).toBeNull();
    store.undo();
    store.undo();
    expect(store.document.value.batches[0]).toMatchObject({
      sweetener: [{ id: 'caneWhite' }],
      given: [{ text: '2 tbsp' }],
    });
  });
});
