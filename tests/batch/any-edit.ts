import fc from 'fast-check';
import { demo } from '../../src/batch/document/demo';
import type { Batch, Settings, SheetDocument } from '../../src/batch/document/document';
import { hottestHeat, longestHeat } from '../../src/batch/document/document-limits';
import * as list from '../../src/batch/edits/batch-list';
import * as edits from '../../src/batch/edits/edits';
import { pasteInto } from '../../src/batch/edits/paste';
import { stockUp, takeChanges } from '../../src/batch/edits/take-changes';
import { changeSettings } from '../../src/batch/reading/settings';
import type { Change } from '../../src/formula/advice/typed-change';
import { coefficientIds } from '../../src/formula/recipe/coefficients';
import { choiceRows, measuredRows, rowOrder, stockIds } from '../../src/formula/recipe/order';
import type { cupStandards } from '../../src/measure/units';
import { anySweetener, grainIds, jarIds, numericRowIds, sourceIds, sweetenerIds } from '../batches';
import { anyLists, withLists } from '../kept-lists';

export type Edit = (document: SheetDocument) => SheetDocument;

/** What cooks type, and what nobody expects. */
export const anyText: fc.Arbitrary<string> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc
      .tuple(fc.integer({ min: 0, max: 3000 }), fc.constantFrom('', ' g', ' mL', ' cups', ' oz', 'F', ' h', ' %', ' ½'))
      .map(([number, unit]) => `${number}${unit}`),
  },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      '',
      '  ',
      '1,5',
      '1 1/2 cups',
      '=A1',
      '2 x 0.95 L',
      'heaped tbsp',
      '3-4',
      '9'.repeat(250),
    ),
  },
  { weight: 2, arbitrary: fc.string({ unit: 'binary', maxLength: 260 }) },
);

export const anySettings: fc.Arbitrary<Partial<Settings>> = fc.record(
  {
    leads: fc.constantFrom('metric', 'us'),
    cups: fc.constantFrom(
      ...(['us', 'us-label', 'metric', 'metric-20'] as const satisfies (keyof typeof cupStandards)[]),
    ),
    decimalComma: fc.boolean(),
  },
  { requiredKeys: [] },
);

const number = fc.oneof(fc.double({ min: 0, max: 100, noNaN: true }), fc.double());
/** As the page reads it: what is beyond that can't be saved. */
const anyHeat = fc.record({
  what: fc.constantFrom('source', 'milk'),
  temperature: fc.double({ min: 0, minExcluded: true, max: hottestHeat, noNaN: true }),
  minutes: fc.double({ min: 0, minExcluded: true, max: longestHeat, noNaN: true }),
});
const how = fc.constantFrom('typed', 'measured', 'learned');
const anyRow = fc.constantFrom(...numericRowIds);
const anyMeasuredRow = fc.constantFrom(...measuredRows);
const anyKey = fc
  .tuple(
    fc.constantFrom('kitchen', 'constructor', 'own@b1', 'own@b2', ...sourceIds, ...jarIds, ...grainIds),
    fc.constantFrom(...coefficientIds),
  )
  .map(([owner, id]) => `${owner}.${id}`);
const anyId = fc.constantFrom('constructor', '__proto__', ...sourceIds, ...jarIds, ...grainIds, ...sweetenerIds);

/** An edit of the batch at a place that wraps round, so that sequences find batches to work on. */
function ofBatch(
  make: fc.Arbitrary<(document: SheetDocument, id: string, batch: Batch) => SheetDocument>,
): fc.Arbitrary<Edit> {
  return fc.tuple(fc.nat(5), make).map(([place, edit]) => (document) => {
    const batch = document.batches[place % document.batches.length];
    return batch === undefined ? document : edit(document, batch.id, batch);
  });
}

const anyStock = fc.constantFrom(...stockIds);
const anyWayChange: fc.Arbitrary<Change> = fc.oneof(
  anyRow.map((row): Change => ({ do: 'clear', row })),
  fc.tuple(anyRow, anyText, fc.boolean()).map(
    ([row, text, all]): Change => ({
      do: 'type',
      row,
      text,
      kind: 'mass',
      amount: null,
      ...(all ? { use: 'onHand' } : {}),
    }),
  ),
  anyMeasuredRow.map((row): Change => ({ do: 'unmeasure', row })),
  fc
    .tuple(anyMeasuredRow, anyText)
    .map(([row, text]): Change => ({ do: 'measure', row, text, kind: 'mass', amount: null })),
  fc.constantFrom(...jarIds).map((vessel): Change => ({ do: 'vessel', vessel })),
  anyStock.map((stock): Change => ({ do: 'forget', stock })),
);

/** Edits of several cells at once, and what is on hand. */
const anyWideEdit: fc.Arbitrary<Edit> = fc.oneof(
  ofBatch(
    fc.tuple(anyStock, anyText).map(
      ([stock, text]) =>
        (d, id) =>
          stockUp(d, id, stock, text),
    ),
  ),
  ofBatch(fc.array(anyWayChange, { maxLength: 4 }).map((changes) => (d, id) => takeChanges(d, id, changes))),
  fc.tuple(fc.nat(rowOrder.length - 1), fc.array(fc.array(anyText, { maxLength: 3 }), { maxLength: 4 })).map(
    ([from, lines]): Edit =>
      (d) =>
        pasteInto(d, lines, {
          rows: rowOrder.slice(from),
          batches: d.batches.map(({ id }) => id),
          shown: () => '',
        }).document,
  ),
  fc.uniqueArray(anyRow, { maxLength: 6 }).map(
    (rows): Edit =>
      (d) =>
        edits.clearCells(
          d,
          d.batches.map(({ id }) => id),
          rows,
        ),
  ),
);

/** Any edit that undo takes back. */
export const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 3, arbitrary: anyWideEdit },
  {
    weight: 8,
    arbitrary: ofBatch(
      fc.tuple(anyRow, anyText).map(
        ([row, text]) =>
          (d, id) =>
            edits.typeCell(d, id, row, text),
      ),
    ),
  },
  ofBatch(anyRow.map((row) => (d, id) => edits.clearCell(d, id, row))),
  ofBatch(
    fc.tuple(anyMeasuredRow, anyText).map(
      ([row, text]) =>
        (d, id) =>
          edits.measureCell(d, id, row, text),
    ),
  ),
  ofBatch(anyMeasuredRow.map((row) => (d, id) => edits.clearMeasured(d, id, row))),
  ofBatch(
    fc.tuple(fc.constantFrom(...choiceRows), anyId).map(
      ([row, to]) =>
        (d, id) =>
          edits.choose(d, id, row, to),
    ),
  ),
  ofBatch(anySweetener.map((parts) => (d, id) => edits.blendSweeteners(d, id, parts))),
  ofBatch(number.map((share) => (d, id) => edits.blendSweeteners(d, id, [{ id: 'honey', share }]))),
  ofBatch(
    fc.tuple(fc.constantFrom('sweetenerMass', 'grainMass'), fc.constantFrom('onHand', undefined)).map(
      ([row, use]) =>
        (d, id) =>
          edits.setUse(d, id, row, use),
    ),
  ),
  ofBatch(fc.option(anyHeat).map((heat) => (d, id) => edits.setHeat(d, id, heat))),
  fc.tuple(anyKey, number, how).map(
    ([key, value, by]): Edit =>
      (d) =>
        edits.correct(d, key, value, by),
  ),
  anyKey.map(
    (key): Edit =>
      (d) =>
        edits.giveBack(d, key),
  ),
  ofBatch(anyText.map((name) => (d, id) => list.renameBatch(d, id, name))),
  ofBatch(fc.boolean().map((last) => (d, id) => (last ? list.addBatch(d) : list.addBatch(d, id)))),
  ofBatch(fc.constant((d, id) => list.copyBatch(d, id))),
  ofBatch(fc.oneof(fc.integer({ min: -2, max: 6 }), fc.double()).map((to) => (d, id) => list.moveBatch(d, id, to))),
  ofBatch(fc.constant((d, id) => list.removeBatch(d, id))),
);

/** Any edit, settings too. */
export const anyChange: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 6, arbitrary: anyEdit },
  {
    weight: 1,
    arbitrary: anySettings.map(
      (changes): Edit =>
        (document) =>
          changeSettings(document, changes),
    ),
  },
);

/** Any document that edits lead to from the demo. */
export const anyDocument: fc.Arbitrary<SheetDocument> = fc
  .tuple(fc.array(anyChange, { maxLength: 25 }), anyLists)
  .map(([changes, lists]) => changes.reduce((document, change) => change(document), withLists(demo, lists)));

/** Freezes data all through, so that an edit that wrote into its document would throw. */
export function freeze<T>(data: T): T {
  if (typeof data === 'object' && data !== null && !Object.isFrozen(data)) {
    Object.freeze(data);
    for (const inner of Object.values(data)) freeze(inner);
  }
  return data;
}

/** The first batch of a document. */
export function first(document: SheetDocument): Batch {
  const [batch] = document.batches;
  if (batch === undefined) throw new Error('a document has a batch');
  return batch;
}
