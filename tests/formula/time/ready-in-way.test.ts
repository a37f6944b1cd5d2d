import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { Settings } from '../../../src/batch/document/document';
import { createStore } from '../../../src/batch/store/store';
import { type Formulation, formulate } from '../../../src/formula/engine/formulate';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { readyIn } from '../../../src/formula/time/ready-in';
import { type ReadyInWay, wayToBeReady } from '../../../src/formula/time/ready-in-way';
import { plainRecipe, recipeOf, typed } from '../../batches';
import { documentOf } from '../../stocked';

const settings: Settings = demo.settings;

function wayFor(recipe: Recipe, row: string, hours: number, kitchen: Settings = settings): ReadyInWay | null {
  const formulation = formulate(recipe);
  const offer = readyIn(formulation, hours)?.find((one) => one.row === row);
  return offer === undefined ? null : wayToBeReady(offer, formulation, kitchen);
}

/** The batch after the way is taken in a sheet with these settings, read from the text as anything typed is. */
function taken(
  recipe: Recipe,
  way: ReadyInWay,
  kitchen: Settings,
): { readonly after: Formulation; undone: () => unknown } {
  const store = createStore({ ...documentOf(recipe), settings: kitchen });
  store.takeWayOut('b1', way);
  const [batch] = store.document.value.batches;
  if (batch === undefined) throw new Error('the sheet has no batch');
  return {
    after: store.formulationOf(batch),
    undone: () => {
      store.undo();
      return store.undoName.value;
    },
  };
}

describe('an offer as it is typed', () => {
  test('reads back to what it says, in either unit and with either decimal mark, as one step', () => {
    fc.assert(
      fc.property(
        plainRecipe,
        fc.integer({ min: 60, max: 240 }).map((tenth) => tenth / 10),
        fc.constantFrom<Settings['leads']>('metric', 'us'),
        fc.boolean(),
        (recipe, hours, leads, decimalComma) => {
          const kitchen = { ...settings, leads, decimalComma };
          const formulation = formulate(recipe);
          for (const offer of readyIn(formulation, hours) ?? []) {
            const way = wayToBeReady(offer, formulation, kitchen);
            if (way === null || way.changes.length === 0) continue;
            const { after, undone } = taken(recipe, way, kitchen);
            const said = way.after.rows.readyTime.value;
            expect(after.rows[offer.row].status).toBe('given');
            expect(after.rows.readyTime.value).toBe(said);
            // A tenth of a degree or of a g/L is all that the text is rounded by.
            const wanted = offer.nearest?.hours ?? hours;
            expect(Math.abs(Number(said) / wanted - 1)).toBeLessThan(0.01);
            expect(undone()).toBeNull();
          }
        },
      ),
      { numRuns: 40 },
    );
  });

  test('is in the unit that leads', () => {
    expect(wayFor(recipeOf(), 'roomTemperature', 9)?.text).toMatch(/^2\d(\.\d)? °C$/);
    expect(wayFor(recipeOf(), 'roomTemperature', 9, { ...settings, leads: 'us' })?.text).toMatch(/^7\d(\.\d)? °F$/);
    expect(wayFor(recipeOf(), 'grainRate', 11, { ...settings, decimalComma: true })?.text).toMatch(/^\d\d,\d g\/L$/);
  });

  test('changes nothing where it says what is', () => {
    expect(wayFor(recipeOf(), 'grainRate', 12)).toMatchObject({ text: '54 g/L', changes: [] });
  });

  test('lets go what is typed against it, and says so', () => {
    const given = [typed('grainMass', 40)];
    const way = wayFor(recipeOf({ given }), 'grainRate', 12);
    expect(way?.label).toMatch(/^Use .* g\/L for “Culture per litre” and clear “Culture to add”$/);
    expect(way?.changes.map((change) => change.do)).toEqual(['clear', 'type']);
    const sugar = wayFor(recipeOf({ given: [typed('sweetenerMass', 10)] }), 'startingSugar', 12);
    expect(sugar?.label).toContain('clear “Sweetener to add”');
  });

  test('stands beside grains on hand, which size the batch and stay', () => {
    const given = [{ ...typed('grainMass', 40), use: 'onHand' as const }];
    const way = wayFor(recipeOf({ given }), 'grainRate', 11);
    expect(way?.changes.map((change) => change.do)).toEqual(['type']);
    expect(way?.after.rows.grainMass.value).toBe(40);
  });

  test('is the nearest usual end where no more is usual', () => {
    const way = wayFor(recipeOf(), 'roomTemperature', 3);
    expect(way?.text).toBe('24 °C');
    expect(way?.after.rows.roomTemperature.problems).toEqual([]);
  });

  test('is not offered where what was measured stands', () => {
    const measured = { grainMass: { kind: 'mass', amount: 40 } } as const;
    expect(wayFor(recipeOf({ measured }), 'grainRate', 11)).toBeNull();
    expect(wayFor(recipeOf({ measured }), 'roomTemperature', 11)).not.toBeNull();
  });
});
