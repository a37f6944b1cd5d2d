import fc from 'fast-check';
import type { Batch, Cell, GivenCell, Logged, Settings, SheetDocument } from '../src/batch/document/document';
import { coefficientIds, coefficients } from '../src/formula/recipe/coefficients';
import { isOnHandRow, measuredRows, type NumericRowId, stockIds, stockRows } from '../src/formula/recipe/order';
import { numericRows } from '../src/formula/rows/sheet';
import { usualScoopSet } from '../src/measure/scoops';
import { baseUnits, cupStandards, type Kind } from '../src/measure/units';
import { grainIds, jarIds, numericRowIds, sensibleAmount, sourceIds, sweetenerIds } from './batches';
import { anyLists, withLists } from './kept-lists';

// Whatever the check of a document lets through, not only what edits make: every row with every kind of unit, numbers
// that JSON can hold and no kitchen has, figures of the cook's own that no page takes.

const kinds = Object.keys(baseUnits).filter((kind): kind is Kind => kind in baseUnits);
const extreme = [
  ...[0, -0, 1, -1, 0.5, 1.5, 3, 1e3, 1e6, 1e9, 1e15, -1e15, 1e154, 1e300, -1e300, 1e-3, 1e-9, 1e-300],
  ...[Number.MAX_VALUE, -Number.MAX_VALUE, Number.MIN_VALUE, Number.MAX_SAFE_INTEGER, Number.EPSILON],
];
/** Any number that JSON can hold. */
const anyNumber = fc.oneof(fc.constantFrom(...extreme), fc.double({ noNaN: true, noDefaultInfinity: true }));

function within(least: number, most: number): fc.Arbitrary<number> {
  const inside = extreme.filter((one) => one >= least && one <= most);
  return fc.oneof(fc.constantFrom(least, most, ...inside), fc.double({ min: least, max: most, noNaN: true }));
}

const anyName = fc.constantFrom('A', 'Kefir', 'Grüße 😀', ' ', 'x'.repeat(200), '<b>', '=1+1');
const anyKind = fc.constantFrom(...kinds);

/** Nine in ten as a cook might type it, so that most of a batch can be worked out and what is odd goes far. */
function cellOf(row: NumericRowId): fc.Arbitrary<Cell> {
  const sensible = fc.tuple(fc.constant(numericRows[row].kind), sensibleAmount(row));
  const odd = fc.tuple(
    fc.oneof({ weight: 3, arbitrary: fc.constant(numericRows[row].kind) }, { weight: 2, arbitrary: anyKind }),
    fc.oneof({ weight: 3, arbitrary: anyNumber }, { weight: 1, arbitrary: sensibleAmount(row) }),
  );
  return fc
    .tuple(
      fc.oneof({ weight: 8, arbitrary: sensible }, { weight: 1, arbitrary: odd }),
      fc.oneof({ weight: 30, arbitrary: fc.constant(false) }, { weight: 1, arbitrary: fc.constant(true) }),
    )
    .map(([[kind, amount], isUnread]) => ({ text: `${amount} ${kind}`, kind, amount: isUnread ? null : amount }));
}

function givenOf(row: NumericRowId): fc.Arbitrary<GivenCell> {
  const use = isOnHandRow(row) ? fc.boolean() : fc.constant(false);
  return fc
    .tuple(cellOf(row), use)
    .map(([cell, isOnHand]) => ({ ...cell, row, ...(isOnHand ? { use: 'onHand' } : {}) }));
}

const anyGiven = fc
  .oneof(
    { weight: 4, arbitrary: fc.uniqueArray(fc.constantFrom(...numericRowIds), { maxLength: 6 }) },
    { weight: 1, arbitrary: fc.shuffledSubarray([...numericRowIds]) },
  )
  .chain((rows) => fc.tuple(...rows.map(givenOf)));

function recordOf<K extends string, V>(keys: readonly K[], of: (key: K) => fc.Arbitrary<V>) {
  return fc
    .subarray([...keys])
    .chain((some) => fc.tuple(...some.map((key) => of(key).map((value) => [key, value] as const))))
    .map((entries): Partial<Record<K, V>> => Object.assign({}, ...entries.map(([key, value]) => ({ [key]: value }))));
}

const rarely = <T>(value: fc.Arbitrary<T>, otherwise: T, weight = 3) =>
  fc.oneof({ weight, arbitrary: fc.constant(otherwise) }, { weight: 1, arbitrary: value });

const anyShare = fc.oneof(fc.constantFrom(1, 0.5, 1 / 3), within(0, 100));
const anySweetener = fc.oneof(
  { weight: 4, arbitrary: fc.constantFrom(...sweetenerIds).map((id) => [{ id, share: 1 }]) },
  {
    weight: 1,
    arbitrary: fc.array(fc.record({ id: fc.constantFrom(...sweetenerIds), share: anyShare }), {
      minLength: 1,
      maxLength: 5,
    }),
  },
);

const dates = ['2026-11-29T08:00', '2026-03-29T02:30', '0000-01-01T00:00', '9999-12-31T23:59', '2026-02-31T12:00'];
const anyMinute = fc.oneof(
  fc.constantFrom(...dates),
  fc.integer({ min: 0, max: 60 * 24 * 20 }).map((minutes) => {
    return new Date(Date.UTC(2026, 10, 20) + 60_000 * minutes).toISOString().slice(0, 16);
  }),
);
const anyTimeOfDay = fc.integer({ min: 0, max: 24 * 60 - 1 }).map((minute) => {
  return [Math.floor(minute / 60), minute % 60].map((part) => String(part).padStart(2, '0')).join(':');
});

function sugarOf(given: readonly GivenCell[]): string | undefined {
  return given.find(({ row }) => row === 'bottleSugar')?.text;
}

function batchOf(id: string): fc.Arbitrary<Batch> {
  return fc
    .record({
      name: anyName,
      vessel: fc.constantFrom(...jarIds),
      source: fc.constantFrom(...sourceIds),
      sweetener: anySweetener,
      grains: fc.constantFrom(...grainIds),
      given: anyGiven,
      measured: rarely(recordOf(measuredRows, cellOf), {}, 1),
      heat: rarely(
        fc.record({
          what: fc.constantFrom('source', 'milk'),
          temperature: fc.oneof(fc.constant(90), anyNumber),
          minutes: within(0, Number.MAX_VALUE),
        }),
        null,
      ),
      onHand: rarely(
        recordOf(stockIds, (stock) => cellOf(stockRows[stock])),
        {},
      ),
      when: rarely(fc.record({ by: fc.constantFrom('start', 'drink'), at: anyMinute }), undefined, 1),
      extras: rarely(fc.array(anyName, { minLength: 1, maxLength: 3 }), undefined),
      fruit: rarely(
        fc.record({
          name: anyName,
          amount: anyName,
          grams: within(0, 100000),
          sugar: anyName,
        }),
        undefined,
      ),
      opened: rarely(fc.record({ days: fc.integer({ min: 1, max: 14 }) }), undefined),
      carton: rarely(anyName, undefined),
    })
    .map(({ when, opened, fruit, extras, carton, ...batch }) => ({
      ...{ ...batch, id },
      ...(when === undefined ? {} : { when }),
      ...(extras === undefined ? {} : { extras }),
      // Of what the bottle's sugar says, as it is kept, or of what it said once.
      ...(fruit === undefined ? {} : { fruit: { ...fruit, sugar: sugarOf(batch.given) ?? fruit.sugar } }),
      ...(opened === undefined ? {} : { opened }),
      ...(carton === undefined ? {} : { carton }),
    }));
}

const owners = {
  kitchen: ['kitchen'],
  vessel: [...jarIds, 'own@b1', 'own@b2'],
  source: sourceIds,
  grains: grainIds,
} as const;

/** Figures of the cook's own, a few for every choice there is, so that they are met whatever is chosen. */
const anyYours: fc.Arbitrary<SheetDocument['yours']> = fc
  .uniqueArray(
    fc.constantFrom(...coefficientIds).chain((id) => {
      const { least, most } = coefficients[id];
      const value = fc.oneof({ weight: 4, arbitrary: within(least, most) }, { weight: 1, arbitrary: anyNumber });
      return fc.record({ id: fc.constant(id), value, how: fc.constantFrom('typed', 'measured', 'learned') });
    }),
    { maxLength: 6, selector: ({ id }) => id },
  )
  .map((figures) =>
    Object.fromEntries(
      figures.flatMap(({ id, value, how }) =>
        owners[coefficients[id].owner].map((owner) => [`${owner}.${id}`, { value, how }]),
      ),
    ),
  );

const anyRate = fc.option(within(0, Number.MAX_VALUE));
const anyRecipeThen = fc.record({
  source: fc.constantFrom(...sourceIds),
  grains: fc.constantFrom(...grainIds),
  sweetener: anySweetener,
  sugarRate: anyRate,
  startingSugar: anyRate,
  grainRate: anyRate,
});

const anyLogged: fc.Arbitrary<Logged> = fc
  .record({
    batch: fc.constantFrom('b1', 'b2', 'gone'),
    name: anyName,
    at: anyMinute,
    found: fc.constantFrom('flat', 'ready', 'sour', 'looked'),
    hours: fc.option(within(0, 10_000)),
    expected: fc.option(within(Number.MIN_VALUE, Number.MAX_VALUE)),
    temperature: fc.option(anyNumber),
    acidity: fc.option(within(0, 14)),
    note: anyName,
    carton: fc.option(fc.boolean(), { nil: undefined }),
    holds: fc.option(fc.constantFrom('just', 'while'), { nil: undefined }),
    leftOut: fc.option(fc.constant(true as const), { nil: undefined }),
    gaveUp: fc.option(fc.constant(true as const), { nil: undefined }),
    was: fc.option(anyRecipeThen, { nil: undefined }),
  })
  .map(({ carton, holds, leftOut, gaveUp, was, ...entry }) => ({
    ...entry,
    ...(carton === undefined ? {} : { carton }),
    ...(holds === undefined ? {} : { holds }),
    ...(leftOut === undefined ? {} : { leftOut }),
    ...(gaveUp === undefined ? {} : { gaveUp }),
    ...(was === undefined ? {} : { was }),
  }));

const cupIds = Object.keys(cupStandards).filter((id): id is Settings['cups'] => id in cupStandards);

const anySettings: fc.Arbitrary<Settings> = fc
  .record({
    leads: fc.constantFrom('metric', 'us'),
    cups: fc.constantFrom(...cupIds),
    scoops: fc.record({
      cups: fc.subarray([...usualScoopSet.cups]),
      tablespoon: fc.boolean(),
      teaspoons: fc.subarray([...usualScoopSet.teaspoons]),
    }),
    decimalComma: fc.boolean(),
    scale: fc.constantFrom(undefined, 0.1, 1, 5),
    quiet: fc.record({ from: anyTimeOfDay, to: anyTimeOfDay }),
  })
  .map(({ scale, ...settings }) => (scale === undefined ? settings : { ...settings, scale }));

/** Any document that the check lets through, of one batch or two. */
export const anyAllowedDocument: fc.Arbitrary<SheetDocument> = fc
  .tuple(
    fc.record({
      version: fc.constant(2),
      batches: fc.oneof(fc.tuple(batchOf('b1')), fc.tuple(batchOf('b1'), batchOf('b2'))),
      yours: rarely(anyYours, {}, 1),
      settings: anySettings,
      log: fc.array(anyLogged, { maxLength: 5 }),
      ownFoods: fc.array(
        fc.record({
          name: fc.constantFrom('Oats', 'x'),
          grams: within(5e-324, 1e300),
          millilitres: within(5e-324, 1e300),
        }),
        { maxLength: 2 },
      ),
    }),
    anyLists,
  )
  .map(([document, lists]) => withLists(document, lists));

/** How many runs a fuzzer makes: few at each run of the tests, as many as `FUZZ_RUNS` says where that is set. */
export function fuzzRuns(usual: number): number {
  const asked = Number(process.env.FUZZ_RUNS ?? '');
  return Number.isInteger(asked) && asked > 0 ? asked : usual;
}
