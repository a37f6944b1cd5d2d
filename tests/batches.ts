import fc from 'fast-check';
import { coefficientIds, coefficientKey, coefficients } from '../src/formula/recipe/coefficients';
import { type MeasuredRowId, measuredRows, type NumericRowId } from '../src/formula/recipe/order';
import type { Amount, Given, Recipe, SweetenerPart, Yours } from '../src/formula/recipe/recipe';
import { numericRows } from '../src/formula/rows/sheet';
import type { Kind } from '../src/measure/units';
import { grains } from '../src/reference/grains';
import { jars } from '../src/reference/jars';
import { sources } from '../src/reference/sources';
import { type SweetenerId, sweeteners } from '../src/reference/sweeteners';

type Keyed<K extends string> = Readonly<Record<K, unknown>>;

function keysOf<K extends string>(table: Keyed<K>): readonly K[] {
  return Object.keys(table).filter((key): key is K => key in table);
}

export const numericRowIds: readonly NumericRowId[] = keysOf(numericRows);
export const jarIds = keysOf(jars);
export const sourceIds = keysOf(sources);
export const grainIds = keysOf(grains);
export const sweetenerIds = keysOf(sweeteners);

/** A batch with nothing typed: almonds, a wide-mouth quart, white cane sugar, water grains, unless told otherwise. */
export function recipeOf(changes: Partial<Recipe> = {}): Recipe {
  return {
    vessel: 'quartWide',
    source: 'almond',
    sweetener: [{ id: 'caneWhite', share: 1 }],
    grains: 'water',
    given: [],
    measured: {},
    yours: {},
    ...changes,
  };
}

/** A usual headspace of 5 cm at least, as the examples worked by hand have it, whatever the table says. */
export const twoInches: Readonly<Record<string, Yours>> = { 'kitchen.headspaceUsual': { value: 5, how: 'typed' } };

/** A second ferment of 8 h, with the little that it made as the examples worked by hand have it. */
export const mildBottle: Readonly<Record<string, Yours>> = {
  'kitchen.bottleTimeUsual': { value: 8, how: 'typed' },
  'kitchen.carriedOver': { value: 0.5, how: 'typed' },
  ...Object.fromEntries(
    ['water', 'milk'].flatMap((kind) => [
      [`${kind}.yeastShare`, { value: 0.4, how: 'typed' }],
      [`${kind}.withoutGrains`, { value: 0.4, how: 'typed' }],
    ]),
  ),
};

/** A batch of which a second ferment of 8 h is asked for. */
export function bottledRecipe(changes: Partial<Recipe> = {}): Recipe {
  return recipeOf({ ...changes, yours: { 'kitchen.bottleTimeUsual': { value: 8, how: 'typed' }, ...changes.yours } });
}

/** A batch as the examples worked by hand have it: so much headspace, such a bottle, and a bag that 0.45 of the dry solids of almonds pass. */
export function tightBag(changes: Partial<Recipe> = {}): Recipe {
  const yours = {
    ...twoInches,
    ...mildBottle,
    'almond.passing': { value: 0.45, how: 'typed' },
    ...changes.yours,
  } as const;
  return recipeOf({ ...changes, yours });
}

/** A typed cell in the base unit of its row, or in another kind. */
export function typed(row: NumericRowId, amount: number | null, kind: Kind = numericRows[row].kind): Given {
  return { row, amount, kind };
}

/** A typed mass that is what there is, so that it sizes the batch. */
export function onHand(row: 'sweetenerMass' | 'grainMass', amount: number): Given {
  return { row, amount, kind: 'mass', use: 'onHand' };
}

type Range = readonly [least: number, most: number];

/** What a cook might type, in base units. A row that can't be typed has a range too, so that typing it is tried. */
const sensible: Readonly<Record<NumericRowId, Range>> = {
  vesselCount: [1, 6],
  brimful: [400, 6000],
  headspaceDepth: [0, 10],
  headspaceVolume: [0, 400],
  fillVolume: [200, 4000],
  sourceMass: [20, 1000],
  soakWater: [50, 3000],
  soakTime: [0, 24],
  soakedMass: [50, 1600],
  waterRatio: [0, 30],
  blendWater: [50, 5000],
  blenderLoads: [1, 6],
  pulpMass: [10, 800],
  milkVolume: [100, 6000],
  milkSolids: [1, 25],
  sugarRate: [0, 60],
  sweetenerMass: [0, 150],
  caneEquivalent: [0, 150],
  startingSugar: [0, 80],
  grainRate: [5, 150],
  grainMass: [2, 300],
  roomTemperature: [10, 35],
  readyTime: [4, 72],
  finalPH: [3, 7],
  drinkVolume: [100, 6000],
  servingSize: [60, 500],
  servings: [1, 30],
  sugarLeft: [0, 40],
  bottleSugar: [0, 30],
  bottleTime: [0, 24],
  bottleTemperature: [2, 32],
  bottleVolume: [200, 1500],
  bottleHeadspace: [5, 150],
  bottleCount: [1, 12],
  bottlePressureLikely: [0, 6],
  bottlePressureForgotten: [0, 12],
  bottleLimit: [1, 10],
  bottleSugarMost: [0, 40],
  keepDays: [1, 14],
};

const whole: readonly NumericRowId[] = ['vesselCount', 'servings', 'blenderLoads'];
const hostileAmounts = [null, 0, -0, -1, -1e9, 1e-300, 1e-12, 0.5, 1e6, 1e12, 1e300, Number.MAX_VALUE, 5e-324];

/** Steps of a thousandth of the range, so that no amount is smaller than a kitchen could mean. */
export function sensibleAmount(row: NumericRowId): fc.Arbitrary<number> {
  const [min, max] = sensible[row];
  if (whole.includes(row)) return fc.integer({ min, max });
  return fc.integer({ min: 0, max: 1000 }).map((step) => min + ((max - min) * step) / 1000);
}

function anyAmount(row: NumericRowId): fc.Arbitrary<number | null> {
  return fc.oneof(
    { weight: 6, arbitrary: sensibleAmount(row) },
    { weight: 1, arbitrary: fc.constantFrom(...hostileAmounts) },
  );
}

/** Mass for volume and back where the row takes both; now and then a kind that no row of the sort takes. */
function anyKind(row: NumericRowId): fc.Arbitrary<Kind> {
  const { kind, weighing } = numericRows[row];
  const other: Kind = kind === 'mass' ? 'volume' : 'mass';
  return fc.oneof(
    { weight: 8, arbitrary: fc.constant(kind) },
    { weight: weighing === undefined ? 0 : 2, arbitrary: fc.constant(other) },
    { weight: 1, arbitrary: fc.constantFrom<Kind>('temperature', 'count', 'mass', 'time') },
  );
}

function anyGivenOf(row: NumericRowId): fc.Arbitrary<Given> {
  const cell = { row: fc.constant(row), amount: anyAmount(row), kind: anyKind(row) };
  if (row !== 'sweetenerMass' && row !== 'grainMass') return fc.record(cell);
  return fc.record({ ...cell, use: fc.constant('onHand' as const) }, { requiredKeys: ['row', 'amount', 'kind'] });
}

function sensibleGivenOf(row: NumericRowId): fc.Arbitrary<Given> {
  return sensibleAmount(row).map((amount) => typed(row, amount));
}

function givensOf(row: fc.Arbitrary<NumericRowId>, of: (row: NumericRowId) => fc.Arbitrary<Given>, most: number) {
  return fc.uniqueArray(row, { maxLength: most }).chain((rows) => fc.tuple(...rows.map(of)));
}

/** One sweetener, or a blend of up to three whose shares add up to 1. */
export const anySweetener: fc.Arbitrary<readonly SweetenerPart[]> = fc
  .uniqueArray(fc.tuple(fc.constantFrom(...sweetenerIds), fc.integer({ min: 1, max: 9 })), {
    minLength: 1,
    maxLength: 3,
    selector: ([id]) => id,
  })
  .map((parts: readonly (readonly [SweetenerId, number])[]) => {
    const sum = parts.reduce((total, [, part]) => total + part, 0);
    return parts.map(([id, part]) => ({ id, share: part / sum }));
  });

const choices = {
  vessel: fc.constantFrom(...jarIds),
  source: fc.constantFrom(...sourceIds),
  sweetener: fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom(...sweetenerIds).map((id) => [{ id, share: 1 }]) },
    { weight: 1, arbitrary: anySweetener },
  ),
  grains: fc.constantFrom(...grainIds),
};

function measuredOf(of: (row: MeasuredRowId) => fc.Arbitrary<Amount>): fc.Arbitrary<Recipe['measured']> {
  return fc
    .subarray([...measuredRows])
    .chain((rows) => fc.tuple(...rows.map((row) => of(row).map((amount) => [row, amount] as const))))
    .map((entries) => Object.fromEntries(entries));
}

const someYours: fc.Arbitrary<Recipe['yours']> = fc
  .uniqueArray(
    fc.constantFrom(...coefficientIds).chain((id) => {
      const { least, most } = coefficients[id];
      const amount = fc.oneof(
        fc.double({ min: least, max: Math.min(most, 10 * Math.abs(least) + 10), noNaN: true }),
        fc.constantFrom(-1, 0, 1e300),
      );
      return fc.tuple(fc.constant(id), amount);
    }),
    { maxLength: 3, selector: ([id]) => id },
  )
  .map((entries) => {
    const kept: Record<string, Yours> = {};
    for (const source of sourceIds) {
      for (const [id, value] of entries) kept[coefficientKey(id, recipeOf({ source }))] = { value, how: 'typed' };
    }
    return kept;
  });

/** Any recipe at all, with what cooks type and what they had better not. */
export const anyRecipe: fc.Arbitrary<Recipe> = fc.record({
  ...choices,
  given: givensOf(fc.constantFrom(...numericRowIds), anyGivenOf, 5),
  measured: fc.oneof(
    { weight: 3, arbitrary: fc.constant({}) },
    {
      weight: 1,
      arbitrary: measuredOf((row) => fc.record({ kind: anyKind(row), amount: anyAmount(row) })),
    },
  ),
  yours: fc.oneof({ weight: 3, arbitrary: fc.constant({}) }, { weight: 1, arbitrary: someYours }),
});

/** A recipe with sensible amounts in a few cells that change it, and nothing measured. */
export const sensibleRecipe: fc.Arbitrary<Recipe> = fc.record({
  ...choices,
  given: givensOf(
    fc.constantFrom(...numericRowIds.filter((row) => !['measured', 'never'].includes(numericRows[row].typed))),
    sensibleGivenOf,
    3,
  ),
  measured: fc.constant({}),
  yours: fc.constant({}),
});

/** A recipe with the choices made and nothing typed. */
export const plainRecipe: fc.Arbitrary<Recipe> = fc.record({
  ...choices,
  given: fc.constant([]),
  measured: fc.constant({}),
  yours: fc.constant({}),
});

/** A recipe with sensible amounts typed and sensible amounts measured. */
export const measuredRecipe: fc.Arbitrary<Recipe> = fc.record({
  ...choices,
  given: givensOf(
    fc.constantFrom(...numericRowIds.filter((row) => !['measured', 'never'].includes(numericRows[row].typed))),
    sensibleGivenOf,
    2,
  ),
  measured: measuredOf((row) => sensibleAmount(row).map((amount) => ({ kind: numericRows[row].kind, amount }))),
  yours: fc.constant({}),
});
