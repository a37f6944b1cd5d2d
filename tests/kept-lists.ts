import fc from 'fast-check';
import type { SheetDocument } from '../src/batch/document/document';
import type { SheetLists } from '../src/batch/document/sheet-lists';
import { grainIds, jarIds, sourceIds } from './batches';

// Whatever the check lets into the lists that not every sheet has, beside batches called b1 and b2.

const anyName = fc.constantFrom('A', 'Kefir', 'Grüße 😀', ' ', 'x'.repeat(200), '<b>', '=1+1');
const anyBatch = fc.constantFrom('b1', 'b2', 'gone');
const anyAt = fc.constantFrom('2026-11-29T08:00', '2026-03-29T02:30', '0000-01-01T00:00', '2026-12-01T20:15');
const anyCell = fc.record({
  text: fc.constantFrom('500 g', '1 L', '2 cups'),
  amount: fc.constantFrom(0, 500, 1000, 473.176, null, -3, 1e300),
  kind: fc.constantFrom('mass' as const, 'volume' as const),
});
const optional = <T>(value: fc.Arbitrary<T>) => fc.oneof(fc.constant(undefined), value);

/** A record without the keys whose value is undefined, as JSON keeps it. */
function present<T extends object>(of: fc.Arbitrary<T>): fc.Arbitrary<{ [K in keyof T]: Exclude<T[K], undefined> }> {
  return of.map((one) => JSON.parse(JSON.stringify(one)));
}

const anyLine = present(
  fc.record({
    at: anyAt,
    did: fc.constantFrom('weighed', 'out', 'back', 'given', 'got', 'fed', 'moved', 'failed'),
    grams: fc.option(fc.oneof(fc.constantFrom(0, 54, 100_000), fc.double({ min: 0, max: 500, noNaN: true }))),
    batch: optional(anyBatch),
    name: optional(anyName),
    source: optional(fc.constantFrom(...sourceIds)),
    place: optional(fc.constantFrom('room', 'fridge', 'freezer', 'dried')),
    medium: optional(fc.constantFrom('sugarWater', 'dairy', 'plantMilk')),
    note: optional(anyName),
  }),
);
const anyStock = (key: string) =>
  present(
    fc.record({
      key: fc.constant(key),
      name: anyName,
      grains: fc.constantFrom('water' as const, 'milk' as const),
      strength: optional(fc.constantFrom(10, 52.8, 200)),
      lines: fc.array(anyLine, { maxLength: 8 }),
    }),
  );
const anyKitchen = fc.record({
  name: anyName,
  vessel: fc.constantFrom(...jarIds),
  temperature: fc.option(fc.constantFrom(18, 21, 27.5, -40, 1e6)),
  leads: fc.constantFrom('metric' as const, 'us' as const),
  grains: fc.constantFrom(...grainIds),
});
const anyClass = (key: string) =>
  present(
    fc.record({
      key: fc.constant(key),
      name: anyName,
      of: anyBatch,
      kitchens: fc.array(anyKitchen, { maxLength: 4 }),
      when: optional(fc.record({ by: fc.constantFrom('start', 'drink'), at: anyAt })),
    }),
  );
const anyBlend = (key: string) =>
  fc.record({
    key: fc.constant(key),
    name: anyName,
    parts: fc.array(fc.record({ of: anyBatch, name: anyName, volume: anyCell }), { maxLength: 3 }),
  });
const anyFood = fc.constantFrom('source.almondWhole', 'sweetener.honey', 'sweetener.caneWhite', 'carton.Oat', 'x');

function upTo<T>(count: number, of: (key: string) => fc.Arbitrary<T>): fc.Arbitrary<readonly T[]> {
  return fc
    .integer({ min: 0, max: count })
    .chain((many) => fc.tuple(...Array.from({ length: many }, (_, at) => of(`k${at + 1}`))));
}

/** Lists of a sheet, each with a few entries or none. */
export const anyLists: fc.Arbitrary<Partial<SheetLists>> = present(
  fc.record({
    ownFoods: optional(
      fc.uniqueArray(fc.record({ name: anyName, grams: fc.constant(120), millilitres: fc.constant(240) }), {
        maxLength: 2,
        selector: ({ name }) => name,
      }),
    ),
    stocks: optional(upTo(3, anyStock)),
    cartons: optional(
      fc.uniqueArray(
        present(
          fc.record({
            name: anyName,
            kind: optional(anyName),
            sugar: optional(fc.constantFrom('3.3 g', 'a lot')),
            serving: optional(fc.constantFrom('100 mL', '1 cup')),
            note: optional(anyName),
          }),
        ),
        { maxLength: 3, selector: ({ name }) => name },
      ),
    ),
    packages: optional(
      fc.uniqueArray(
        present(
          fc.record({
            food: anyFood,
            name: optional(anyName),
            amount: anyCell,
            price: fc.constantFrom('0', '4.35', '12', '0.001', '99999999999999.99'),
          }),
        ),
        { maxLength: 3, selector: ({ food }) => food },
      ),
    ),
    classes: optional(upTo(2, anyClass)),
    blends: optional(upTo(2, anyBlend)),
  }),
);

/** A document with lists of any kind, in the place of those it had. */
export function withLists(document: SheetDocument, lists: Partial<SheetLists>): SheetDocument {
  return { ...document, ...lists };
}
