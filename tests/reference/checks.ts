import type { Check } from './check';
import { allergenFigures } from './expected/allergens';
import type { Figures } from './expected/figures';
import { flavourFigures, fruitFigures } from './expected/fruits';
import { almondPulpFigures, currencyFigures, energyFigures, pulpKeepingFigures } from './expected/glass';
import { grainFigures, grainNoteFigures, jarFigures } from './expected/jars-and-grains';
import {
  acidTimeFigures,
  bottleFigures,
  cartonWaitingFigures,
  expectedAcidityFigures,
  expectedRoomFigures,
  expectedTimesFigures,
  handworkFigures,
  keepingFigures,
  kitchenFigures,
  kitchenLineFigures,
  learningFigures,
  livelinessFigures,
  looselyFigures,
  measureErrorFigures,
  sweetnessFigures,
  usualCanFigures,
} from './expected/kitchen';
import {
  alcoholFigures,
  aureusFigures,
  cardinalFigures,
  carrollFigures,
  componentDensityFigures,
  fermentingFigures,
  gasVolumeFigures,
  molarMassFigures,
  physicsFigures,
  waterDensityFigures,
} from './expected/science';
import { sourceFigures } from './expected/sources';
import { expectedGrowthFigures, growthLearningFigures, stockRestFigures } from './expected/stock';
import { sweetenerFigures } from './expected/sweeteners';
import { compositions, householdMeasures } from './expected/usda';
import { figuresIn, isRecord } from './figures';
import { plausibility } from './plausibility';
import type { Tables } from './tables';

const ofRecords = new Set(Object.keys(compositions).map((key) => key.slice(0, 5)));

function only(figures: Figures, records: object): Figures {
  return Object.fromEntries(Object.entries(figures).filter(([key]) => key.slice(0, 5) in records));
}

/** What each table is held against, figure by figure; a table with no entry here must have words alone. */
const expected: { readonly [T in keyof Tables]?: (tables: Tables) => Figures } = {
  foods: ({ foods }) => only(compositions, foods),
  otherFoods: ({ foods, otherFoods }) => ({
    ...only(compositions, otherFoods),
    // A record of the copy that is in neither table is missed here.
    ...Object.fromEntries([...ofRecords].filter((id) => !(id in foods) && !(id in otherFoods)).map((id) => [id, null])),
  }),
  foodMeasures: () => householdMeasures,
  sources: () => sourceFigures,
  sweeteners: () => sweetenerFigures,
  jars: () => jarFigures,
  grains: () => grainFigures,
  grainNotes: () => grainNoteFigures,
  kitchen: () => kitchenFigures,
  kitchenLines: () => kitchenLineFigures,
  families: () => keepingFigures,
  handwork: () => handworkFigures,
  bottles: () => bottleFigures,
  cartonWaiting: () => cartonWaitingFigures,
  acidTime: () => acidTimeFigures,
  aureusGrowth: () => aureusFigures,
  expectedAcidity: () => expectedAcidityFigures,
  expectedRoom: () => expectedRoomFigures,
  expectedTimes: () => expectedTimesFigures,
  learning: () => learningFigures,
  expectedGrowth: () => expectedGrowthFigures,
  growthLearning: () => growthLearningFigures,
  stockRest: () => stockRestFigures,
  liveliness: () => livelinessFigures,
  sweetness: () => sweetnessFigures,
  measureErrors: () => measureErrorFigures,
  loosely: () => looselyFigures,
  componentDensities: () => componentDensityFigures,
  waterDensity: () => waterDensityFigures,
  molarMasses: () => molarMassFigures,
  physics: () => physicsFigures,
  carrollHenry: () => carrollFigures,
  cardinalTemperatures: () => cardinalFigures,
  fermenting: () => fermentingFigures,
  alcoholLine: () => alcoholFigures,
  gasVolume: () => gasVolumeFigures,
  usualCan: () => usualCanFigures,
  energy: () => energyFigures,
  pulpKeeping: () => pulpKeepingFigures,
  almondPulp: () => almondPulpFigures,
  currencies: () => currencyFigures,
  allergens: () => allergenFigures,
  fruits: () => fruitFigures,
  flavours: () => flavourFigures,
  // Mould and what smells rotten go into the bin, milk and grains; only grains float, and only grains shrink.
  troubles: () => ({ '4.ofGrains': true, '7.throwOut': true, '8.throwOut': true, '10.ofGrains': true }),
};

const rounding = 1e-12;

/** Every figure of a table by its place, a coefficient as one with its unit and range. */
function layOut(value: unknown, place: string, into: Map<string, readonly unknown[]>): void {
  if (value === null || typeof value === 'number' || typeof value === 'boolean') into.set(place, [value]);
  if (!isRecord(value)) return;
  const { value: figure, unit, low, high } = value;
  if (figure !== undefined && typeof unit === 'string') {
    into.set(`${place}, ${unit}`, [figure, low, high].slice(0, 'low' in value || 'high' in value ? 3 : 1));
    return;
  }
  for (const [key, inner] of Object.entries(value)) layOut(inner, place === '' ? key : `${place}.${key}`, into);
}

function agree(one: unknown, other: unknown): boolean {
  if (typeof one !== 'number' || typeof other !== 'number') return one === other;
  if (!Number.isFinite(one) || !Number.isFinite(other)) return one === other;
  return Math.abs(one - other) <= rounding * Math.abs(other);
}

/** Where a table and what is typed apart from it differ: another figure, one that is typed nowhere, one that is gone. */
export function differences(table: unknown, figures: Figures): readonly string[] {
  const found = new Map<string, readonly unknown[]>();
  layOut(table, '', found);
  const wanted = new Map(Object.entries(figures).map(([place, figure]) => [place, [figure].flat()]));
  const wrong = [...found].flatMap(([place, figure]) => {
    const typed = wanted.get(place);
    if (typed === undefined) return [`${place}: ${figure.join(', ')} is typed nowhere in tests/reference/expected`];
    const same = typed.length === figure.length && typed.every((each, index) => agree(figure[index], each));
    return same ? [] : [`${place}: ${figure.join(', ')} in the table, ${typed.join(', ')} in its source`];
  });
  const gone = [...wanted.keys()].filter((place) => !found.has(place));
  return [...wrong, ...gone.map((place) => `${place}: not in the table`)];
}

function isTable(name: string): name is keyof Tables {
  return name in expected;
}

const held: readonly Check[] = Object.keys(expected)
  .filter(isTable)
  .map((name) => ({
    name: `${name}: every figure is that of its source, typed apart`,
    reads: name === 'otherFoods' ? ['foods', 'otherFoods'] : [name],
    faults: (tables) => differences(tables[name], expected[name]?.(tables) ?? {}),
  }));

const complete: Check = {
  name: 'no table with figures is held against nothing',
  reads: [],
  faults: (tables) =>
    Object.entries(tables)
      .filter(([name, table]) => !isTable(name) && hasNumbers(table))
      .map(([name]) => `${name}: typed nowhere in tests/reference/expected`),
};

function hasNumbers(table: unknown): boolean {
  return figuresIn(table).some(({ leaf }) => typeof leaf === 'number');
}

/** All checks of figures, the comparing ones first. */
export const checks: readonly Check[] = [...held, complete, ...plausibility];
