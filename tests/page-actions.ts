import fc from 'fast-check';
import { demo } from '../src/batch/document/demo';
import type { Batch, SheetDocument } from '../src/batch/document/document';
import { keepOwnFood } from '../src/batch/edits/larder';
import { addEntry, expectedHours, openCarton, removeEntry } from '../src/batch/edits/log-edits';
import { typePrice } from '../src/batch/edits/package-edits';
import { pasteInto } from '../src/batch/edits/paste';
import { swapSweetener } from '../src/batch/edits/swap-sweetener';
import { readLogEntry } from '../src/batch/reading/read-log-entry';
import { clearWhen, drinkAt, setQuiet, setWhen } from '../src/batch/store/plan-edits';
import type { Store } from '../src/batch/store/store';
import { largestBatch, makeFrom } from '../src/formula/advice/on-hand';
import { waysOut } from '../src/formula/advice/ways-out';
import { measuredRows, rowOrder, stockIds } from '../src/formula/recipe/order';
import { anySettings, anyText } from './batch/any-edit';
import { anySweetener, grainIds, jarIds, numericRowIds, sourceIds, sweetenerIds } from './batches';

/** One thing that a cook does to an open sheet. */
export interface Action {
  readonly name: string;
  readonly act: (store: Store) => void;
}

/** What nobody expects to be typed: beyond every range, signs and blanks of all kinds, and words of programs. */
const hostile = fc.constantFrom(
  ...['0', '-1', '1e309', '1e-320', '-0', '0.0000001', '999999999999', '1/0', '0/0', '½', '1,5', '1.234,5', '1 000 g'],
  ...['\u200B', '\u202E5 g', '１２', '5 g\n', '=1+1', '<b>5</b>', '{{5}}', '$&', '5 x 5 x 5', '64F', '−5 °C', '13:30'],
  ...['1 lb 2 oz', 'constructor', '__proto__', '9'.repeat(250), 'W'.repeat(250), '', '   '],
);
const text = fc.oneof({ weight: 3, arbitrary: anyText }, { weight: 2, arbitrary: hostile });
const row = fc.constantFrom(...numericRowIds);
const measured = fc.constantFrom(...measuredRows);
const stock = fc.constantFrom(...stockIds);
const minute = fc
  .integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2028, 0, 1) })
  .map((time) => new Date(time).toISOString().slice(0, 16));
const hour = fc.nat(23).map((at) => `${String(at).padStart(2, '0')}:00`);
const place = fc.nat(5);
const price = fc.constantFrom('', '4.35', '12 €', '$3', '0', '1,250');
const foods = ['source.almond', 'sweetener.caneWhite', 'sweetener.honey', 'carton.Green one', 'fruit.mango'] as const;

function action(name: string, act: Action['act']): Action {
  return { name, act };
}

/** An action on the batch at a place that wraps round. */
function on<T>(
  name: string,
  what: fc.Arbitrary<T>,
  act: (store: Store, batch: Batch, what: T) => void,
): fc.Arbitrary<Action> {
  return fc.tuple(place, what).map(([at, chosen]) =>
    action(`${name} ${at} ${JSON.stringify(chosen)}`, (store) => {
      const { batches } = store.document.peek();
      const batch = batches[at % batches.length];
      if (batch !== undefined) act(store, batch, chosen);
    }),
  );
}

/** An edit of the whole document, as one step. */
function edit<T>(
  name: string,
  what: fc.Arbitrary<T>,
  make: (document: SheetDocument, batch: Batch, what: T) => SheetDocument,
): fc.Arbitrary<Action> {
  return on(name, what, (store, batch, chosen) =>
    store.takeEdit(make(store.document.peek(), batch, chosen), `Do ${name}`),
  );
}

const noneOf = fc.constant(null);

const choice = fc.oneof(
  fc.tuple(fc.constant('source' as const), fc.constantFrom(...sourceIds)),
  fc.tuple(fc.constant('vessel' as const), fc.constantFrom(...jarIds)),
  fc.tuple(fc.constant('sweetener' as const), fc.constantFrom(...sweetenerIds)),
  fc.tuple(fc.constant('grains' as const), fc.constantFrom(...grainIds)),
);

const logForm = fc.record({
  found: fc.constantFrom('flat', 'ready', 'sour', 'looked'),
  hours: fc.oneof(fc.constantFrom('12', '13:30', '0', '999'), text),
  when: fc.oneof(fc.constant(''), minute),
  temperature: fc.oneof(fc.constantFrom('', '21', '70F'), text),
  acidity: fc.oneof(fc.constantFrom('', '4.2', '14'), text),
  note: text,
});

const took = 'Take what is offered';

/** Any action, by the store's own edits: every kind of edit that the page makes, undo and redo among them. */
export const anyAction: fc.Arbitrary<Action> = fc.oneof(
  { weight: 6, arbitrary: on('type', fc.tuple(row, text), (s, { id }, [at, typed]) => s.typeCell(id, at, typed)) },
  { weight: 3, arbitrary: on('choose', choice, (s, { id }, [at, to]) => s.choose(id, at, to)) },
  {
    weight: 3,
    arbitrary: on('measure', fc.tuple(measured, text), (s, { id }, [at, typed]) => s.measureCell(id, at, typed)),
  },
  { weight: 3, arbitrary: fc.constant(action('undo', (store) => store.undo())) },
  { weight: 2, arbitrary: fc.constant(action('redo', (store) => store.redo())) },
  on('forget', measured, (s, { id }, at) => s.clearMeasured(id, at)),
  on('clear', row, (s, { id }, at) => s.clearCell(id, at)),
  on('blend', anySweetener, (s, { id }, parts) => s.blendSweeteners(id, parts)),
  on('size from', fc.constantFrom('sweetenerMass', 'grainMass'), (s, { id }, at) => s.setUse(id, at, 'onHand')),
  on('heat', fc.option(fc.tuple(fc.double({ min: 1, max: 100, noNaN: true }), fc.nat(1000))), (s, { id }, heat) =>
    s.setHeat(id, heat === null ? null : { what: 'milk', temperature: heat[0], minutes: heat[1] + 1 }),
  ),
  on('rename', text, (s, { id }, name) => s.renameBatch(id, name)),
  on('add', noneOf, (s, { id }) => s.addBatch(id)),
  on('copy', noneOf, (s, { id }) => s.copyBatch(id)),
  on('remove', noneOf, (s, { id }) => s.removeBatch(id)),
  on('move', place, (s, { id }, to) => s.moveBatch(id, to)),
  { weight: 2, arbitrary: on('on hand', fc.tuple(stock, text), (s, { id }, [of, typed]) => s.stockUp(id, of, typed)) },
  on('make the largest', noneOf, (store, batch) => {
    const formulation = store.formulationOf(batch);
    const largest = largestBatch(formulation, batch.onHand ?? {});
    if (largest === null) return;
    store.takeWayOut(batch.id, { label: took, changes: makeFrom(largest.limitedBy, formulation) });
  }),
  on('take a way out', fc.nat(), (store, batch, at) => {
    const formulation = store.formulationOf(batch);
    const all = Object.values(formulation.rows).flatMap(({ problems }) => problems);
    const ways = all.flatMap((problem) => waysOut(problem, formulation));
    const way = ways[at % Math.max(ways.length, 1)];
    if (way !== undefined) store.takeWayOut(batch.id, way);
  }),
  edit('swap', fc.tuple(anySweetener, text), (d, { id }, [parts, mass]) => swapSweetener(d, id, parts, mass)),
  edit('wait', fc.option(fc.integer({ min: 0, max: 15 })), (d, { id }, days) => openCarton(d, id, days)),
  edit('plan', fc.tuple(fc.constantFrom('start', 'drink'), minute), (d, { id }, [by, at]) =>
    setWhen(d, id, { by, at }),
  ),
  edit('plan to drink', fc.tuple(fc.nat(3e7), fc.nat(5000)), (d, { id }, [at, back]) => drinkAt(d, id, at, at - back)),
  edit('leave the plan', noneOf, (d, { id }) => clearWhen(d, id)),
  edit('log', logForm, (d, batch, form) => {
    const read = readLogEntry(form, d.settings, '2026-11-29T08:00');
    if (!read.ok) return d;
    const expected = expectedHours(d, batch, read.found.temperature);
    return addEntry(d, { ...read.found, batch: batch.id, name: batch.name, expected });
  }),
  edit('forget the log', noneOf, (d) => removeEntry(d, 0)),
  edit('weigh a food', fc.tuple(text, fc.integer({ min: 1, max: 999 })), (d, _, [name, grams]) =>
    name.trim() === '' ? d : keepOwnFood(d, { name: name.slice(0, 200), grams, millilitres: 240 }),
  ),
  edit('price', fc.tuple(fc.constantFrom(...foods), text, fc.oneof(text, price)), (d, _, [food, held, typed]) => {
    const read = typePrice(d, food, held, typed);
    return read.ok ? read.document : d;
  }),
  edit(
    'paste',
    fc.tuple(fc.nat(rowOrder.length - 1), fc.array(fc.array(text, { maxLength: 3 }), { maxLength: 4 })),
    (d, _, [from, lines]) =>
      pasteInto(d, lines, {
        ...{ rows: rowOrder.slice(from), batches: d.batches.map(({ id }) => id) },
        shown: () => '',
      }).document,
  ),
  anySettings.map((changes) => action(`set ${JSON.stringify(changes)}`, (store) => store.changeSettings(changes))),
  fc
    .record({ from: hour, to: hour })
    .map((quiet) =>
      action(`quiet ${quiet.from} ${quiet.to}`, (store) =>
        store.changeSettings(setQuiet(store.document.peek(), quiet).settings),
      ),
    ),
);

/** What a sequence begins with: the sheet of a first visit. */
export const firstSheet: SheetDocument = demo;
