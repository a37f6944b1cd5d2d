import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import { type Kitchen, mostBatches, recipeOf, type SheetDocument } from '../../../src/batch/document/document';
import { mostClasses, mostKitchens } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { kitchenBatch, taughtBy } from '../../../src/batch/edits/class-batches';
import * as edits from '../../../src/batch/edits/class-edits';
import { correct, typeCell } from '../../../src/batch/edits/edits';
import { readCell } from '../../../src/batch/reading/read-cell';
import { formulate } from '../../../src/formula/engine/formulate';
import { grainIds, jarIds } from '../../batches';
import '../../seed';

const ana: Kitchen = { name: 'Ana', vessel: 'twoLitre', temperature: 24, leads: 'us', grains: 'milk' };
const ben: Kitchen = { name: 'Ben', vessel: 'quartWide', temperature: null, leads: 'metric', grains: 'water' };
const only = ({ classes }: SheetDocument) => classes?.[0] ?? expect.fail('there is no class');
const withClass = (document: SheetDocument, kitchens: readonly Kitchen[]): SheetDocument =>
  edits.addKitchens(edits.addClass(document, 'b1'), 'k1', kitchens);
const open = (document: SheetDocument) => readDocument(JSON.parse(JSON.stringify(document)));

const two = withClass(demo, [ana, ben]);

describe('a class', () => {
  test('is added, renamed, planned and taken away, and a sheet with it can be saved', () => {
    expect(only(two)).toMatchObject({ key: 'k1', name: 'Class', of: 'b1', kitchens: [ana, ben] });
    const other = edits.addClass(two, 'b1');
    expect(other.classes?.[1]).toMatchObject({ key: 'k2', name: 'Class 2' });
    const named = edits.renameClass(two, 'k1', '  Monday\nevening ');
    expect(only(named).name).toBe('Monday evening');
    const planned = edits.planClass(named, 'k1', { by: 'drink', at: '2026-12-05T16:00' });
    expect(only(planned).when?.by).toBe('drink');
    expect(only(edits.planClass(planned, 'k1', null)).when).toBeUndefined();
    expect(open(planned)).toMatchObject({ ok: true, document: planned });
    expect(edits.removeClass(planned, 'k1').classes).toEqual([]);
  });

  test('stays the same object where nothing changes', () => {
    const same = [
      edits.renameClass(two, 'k1', ' '),
      edits.renameClass(two, 'k1', 'Class'),
      edits.chooseRecipe(two, 'k1', 'b1'),
      edits.chooseRecipe(two, 'k1', 'gone'),
      edits.planClass(two, 'k1', null),
      edits.planClass(two, 'k1', { by: 'start', at: 'soon' }),
      edits.changeKitchen(two, 'k1', 0, { name: ' ' }),
      edits.changeKitchen(two, 'k1', 0, { vessel: 'twoLitre' }),
      edits.changeKitchen(two, 'k1', 0, { temperature: Number.NaN }),
      edits.changeKitchen(two, 'k1', 7, { vessel: 'pint' }),
      edits.removeKitchen(two, 'k1', 2),
      edits.addKitchens(two, 'k9', [ana]),
      edits.removeClass(two, 'k9'),
      edits.makeBatches(two, 'k9'),
    ];
    for (const one of same) expect(one).toBe(two);
  });

  test('holds no more kitchens and a sheet no more classes than can be saved', () => {
    const full = edits.addKitchens(
      two,
      'k1',
      Array.from({ length: 150 }, () => ben),
    );
    expect(only(full).kitchens).toHaveLength(mostKitchens);
    expect(edits.addKitchens(full, 'k1', [ana])).toBe(full);
    let many = demo;
    for (let one = 0; one <= mostClasses; one += 1) many = edits.addClass(many, 'b1');
    expect(many.classes).toHaveLength(mostClasses);
    expect(open(many)).toMatchObject({ ok: true });
  });

  test('changes one kitchen and leaves the others the same objects', () => {
    const warm = edits.changeKitchen(two, 'k1', 0, { temperature: null, name: 'Anna' });
    expect(only(warm).kitchens[0]).toEqual({ ...ana, name: 'Anna', temperature: null });
    expect(only(warm).kitchens[1]).toBe(only(two).kitchens[1]);
    expect(only(edits.removeKitchen(two, 'k1', 0)).kitchens).toEqual([ben]);
  });

  test('says of a recipe that is gone that there is none', () => {
    const gone = { ...two, batches: [startBatch('b7', 'Another')] };
    expect(taughtBy(gone, only(gone))).toBeNull();
    expect(edits.makeBatches(gone, 'k1')).toBe(gone);
    expect(taughtBy(edits.chooseRecipe(gone, 'k1', 'b7'), only(edits.chooseRecipe(gone, 'k1', 'b7')))?.batch.id).toBe(
      'b7',
    );
  });
});

describe('the batches of a class', () => {
  test('are made behind the recipe in the order of the class, as a sheet that can be saved, and the recipe stays', () => {
    const made = edits.makeBatches(edits.planClass(two, 'k1', { by: 'start', at: '2026-12-05T10:00' }), 'k1');
    expect(made.batches.map(({ name }) => name)).toEqual([
      'Saturday almond',
      'Ana: Saturday almond',
      'Ben: Saturday almond',
    ]);
    expect(made.batches[0]).toBe(demo.batches[0]);
    expect(made.batches[1]).toMatchObject({
      vessel: 'twoLitre',
      grains: 'milk',
      when: { by: 'start', at: '2026-12-05T10:00' },
    });
    expect(made.batches[1]?.given).toEqual([
      { row: 'roomTemperature', text: '75.2 °F', amount: expect.closeTo(24, 9), kind: 'temperature' },
    ]);
    expect(new Set(made.batches.map(({ id }) => id)).size).toBe(3);
    expect(open(made)).toMatchObject({ ok: true, document: made });
  });

  test('are not made where the sheet can’t take them all', () => {
    const [first] = demo.batches;
    if (first === undefined) throw new Error('there is no batch');
    const others = Array.from({ length: mostBatches - 2 }, (_, at) => ({ ...first, id: `c${at}` }));
    const full = { ...two, batches: [first, ...others] };
    expect(edits.makeBatches(full, 'k1')).toBe(full);
  });

  test('have the shape of one’s own jar where the recipe has one', () => {
    const own = correct(
      { ...demo, batches: demo.batches.map((batch) => ({ ...batch, vessel: 'own' as const })) },
      'own@b1.neckDiameter',
      5,
      'typed',
    );
    const made = edits.makeBatches(withClass(own, [{ ...ben, vessel: 'own' }]), 'k1');
    const [recipe, copy] = made.batches.map((batch) => formulate(recipeOf(made, batch)));
    expect(copy?.of('brimful')).toBe(recipe?.of('brimful'));
    expect(copy?.of('headspaceVolume')).toBe(recipe?.of('headspaceVolume'));
    expect(made.yours[`own@${made.batches[1]?.id}.neckDiameter`]?.value).toBe(5);
  });

  test('have cells whose texts read as their amounts, and the rates of the recipe', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...jarIds),
        fc.constantFrom(...grainIds),
        fc.constantFrom('metric' as const, 'us' as const),
        fc.boolean(),
        fc.option(fc.double({ min: 16, max: 30, noNaN: true })),
        fc.constantFrom('90 g', '1/3 kg', '7 oz'),
        fc.constantFrom('500 mL', '3 cups'),
        (vessel, culture, leads, decimalComma, temperature, source, water) => {
          const settled = { ...demo, settings: { ...demo.settings, decimalComma } };
          const typed = typeCell(typeCell(settled, 'b1', 'sourceMass', source), 'b1', 'blendWater', water);
          const document = withClass(typed, [{ name: 'A', vessel, leads, temperature, grains: culture }]);
          const kept = only(document);
          const taught = taughtBy(document, kept) ?? expect.fail('it can’t be taught');
          const [kitchen = ben] = kept.kitchens;
          const { batch } = kitchenBatch(document, taught, kitchen, undefined);
          for (const { row, text, amount } of batch.given)
            expect(readCell(row, text, document.settings).amount, text).toBe(amount);
          const there = formulate(recipeOf(document, batch));
          const { planned } = taught.lesson;
          expect(there.of('waterRatio') / planned.of('waterRatio')).toBeCloseTo(1, 8);
          expect(there.of('sugarRate')).toBeCloseTo(planned.of('sugarRate'), 6);
          expect(there.of('roomTemperature')).toBeCloseTo(temperature ?? planned.of('roomTemperature'), 2);
        },
      ),
    );
  });

  test('of thirty kitchens are worked out at once', () => {
    const many = withClass(
      demo,
      Array.from({ length: 30 }, (_, at) => ({ ...ana, name: `Kitchen ${at}`, temperature: 18 + at / 5 })),
    );
    const kept = only(many);
    const taught = taughtBy(many, kept) ?? expect.fail('it can’t be taught');
    const hours = kept.kitchens.map((one) =>
      formulate(recipeOf(many, kitchenBatch(many, taught, one, undefined).batch)).of('readyTime'),
    );
    expect(hours).toEqual([...hours].sort((one, other) => other - one));
    expect(new Set(hours).size).toBe(30);
  });
});

test('each step has a name', () => {
  expect(edits.classSteps.changeKitchen(ana, 'temperature')).toBe('Change the room of Ana');
  expect(edits.classSteps.addKitchens(5)).toBe('Add 5 kitchens');
  expect(edits.classSteps.addKitchens(1)).toBe('Add a kitchen');
  expect(edits.classSteps.makeBatches(only(two))).toBe('Make 2 batches of the class');
  expect(edits.classSteps.rename('x'.repeat(90)).length).toBeLessThan(70);
  expect(edits.nextKitchen(only(edits.changeKitchen(two, 'k1', 0, { name: 'Kitchen 3' })), ben, 'us').name).toBe(
    'Kitchen 4',
  );
});
