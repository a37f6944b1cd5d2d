import { doubleOf } from '../../measure/exact';
import { unitOrigins } from '../../measure/unit-origins';
import { scaleOf } from '../../measure/unit-scale';
import { baseUnits, unitList, units } from '../../measure/units';
import { acidTime } from '../../reference/acid-time';
import { bottles } from '../../reference/bottles';
import { cartonWaiting } from '../../reference/carton-waiting';
import { energy } from '../../reference/energy';
import { expectedAcidity, expectedRoom, expectedTimes } from '../../reference/expected-acidity';
import { families } from '../../reference/families';
import { cardinalTemperatures, carrollHenry, fermenting } from '../../reference/fermenting';
import { alcoholLine, gasVolume, liveliness, sweetness } from '../../reference/finished';
import { flavours } from '../../reference/flavours';
import { foodMeasures, measurePlace } from '../../reference/food-measures';
import { type Food, foods } from '../../reference/foods';
import { fruits } from '../../reference/fruits';
import { grains } from '../../reference/grains';
import { aureusGrowth } from '../../reference/growth-limit';
import { handwork } from '../../reference/handwork';
import { jars } from '../../reference/jars';
import { kitchen } from '../../reference/kitchen';
import { kitchenLines } from '../../reference/kitchen-lines';
import { loosely, measureErrors } from '../../reference/measure-error';
import { type Coefficient, type Origin, published } from '../../reference/origins';
import { otherFoods } from '../../reference/other-foods';
import { learning } from '../../reference/pace';
import { usualCan } from '../../reference/packings';
import { componentDensities, molarMasses, physics, waterDensity } from '../../reference/physics';
import { almondPulp, pulpKeeping } from '../../reference/pulp';
import { sources } from '../../reference/sources';
import { expectedGrowth, growthLearning } from '../../reference/stock-growth';
import { stockRest } from '../../reference/stock-rest';
import { sweeteners } from '../../reference/sweeteners';
import { describeOrigin } from '../words/origin-words';
import { describeFigure, wordsOf } from './figure-labels';
import { type FoundFigure, figuresWithin } from './walk-tables';

/** One figure that the sheet works with, and where it is from. */
export interface ListedFigure {
  /** Whose it is: a source, a jar, a unit; empty where the group says it. */
  readonly of: string;
  readonly label: string;
  readonly value: number;
  readonly unit: string;
  /** The range published or believed; absent where there is none. */
  readonly low?: number;
  readonly high?: number;
  /** `published`, `common practice`, `from memory` or `judgement`. */
  readonly mark: Origin['kind'];
  readonly from: string;
}

export interface FigureGroup {
  readonly id: string;
  readonly title: string;
  readonly figures: readonly ListedFigure[];
}

function listed(of: string, { path, value, unit, low, high, origin, source }: FoundFigure): ListedFigure {
  const range = low === undefined || high === undefined ? {} : { low, high };
  return {
    of,
    label: describeFigure(path, source),
    value,
    unit,
    ...range,
    mark: origin.kind,
    from: describeOrigin(origin),
  };
}

/** The figures of a table whose entries have names, entry by entry. */
function byName(table: Readonly<Record<string, { readonly name: string }>>): readonly ListedFigure[] {
  return Object.values(table).flatMap((entry) => figuresWithin(entry).map((found) => listed(entry.name, found)));
}

/** The figures of a table of single ones. */
function alone(...tables: readonly object[]): readonly ListedFigure[] {
  return tables.flatMap((table) => figuresWithin(table).map((found) => listed('', found)));
}

/** The figures of entries that are only named by their keys, each one figure or several. */
function byKey(about: string, table: Readonly<Record<string, object>>): readonly ListedFigure[] {
  return Object.entries(table).flatMap(([key, entry]) =>
    figuresWithin(entry).map((found) => {
      const name = wordsOf(key);
      const isOne = found.path.length === 0;
      return isOne ? { ...listed(about, found), label: name } : listed(`${about}: ${name.toLowerCase()}`, found);
    }),
  );
}

function ofFood(food: Food): readonly ListedFigure[] {
  const { ndb, name, ...columns } = food;
  const origin = published('usda-sr', `record ${ndb}, ${name}`);
  return figuresWithin({ ...columns, unit: 'g in 100 g', origin }).map((found) => listed(name, found));
}

const everyFood: Readonly<Record<string, Food>> = { ...foods, ...otherFoods };

function ofMeasures(): readonly ListedFigure[] {
  return Object.entries(foodMeasures).flatMap(([record, { measures }]) =>
    measures.map(({ amount, unit, grams }): ListedFigure => {
      const label = `${amount} ${unit}`;
      const origin = published('usda-sr', measurePlace(record, label));
      const of = everyFood[record]?.name ?? record;
      return { of, label, value: grams, unit: 'g', mark: origin.kind, from: describeOrigin(origin) };
    }),
  );
}

function ofUnits(): readonly ListedFigure[] {
  return unitList
    .filter(({ relation }) => !('base' in relation))
    .map(({ id, symbol, kind }): ListedFigure => {
      const { kind: mark, work } = unitOrigins[id];
      const from = `${mark.replace(/^./, (first) => first.toUpperCase())}: ${work}.`;
      const value = doubleOf(scaleOf(id).factor);
      return { of: id, label: `One ${symbol}`, value, unit: units[baseUnits[kind]].symbol, mark, from };
    });
}

function keepingTimes(): Readonly<Record<string, Coefficient>> {
  return Object.fromEntries(Object.entries(families).map(([id, { keeps }]) => [id, keeps]));
}

/** Every figure of every table that the sheet works with, by what it is about. */
export function everyFigure(): readonly FigureGroup[] {
  return [
    { id: 'sources', title: 'Nuts, seeds, coconut and cartons', figures: byName(sources) },
    { id: 'sweeteners', title: 'Sweeteners', figures: byName(sweeteners) },
    { id: 'fruit', title: 'Fruit and juice for bottles', figures: byName(fruits) },
    { id: 'flavours', title: 'Flavours for the glass', figures: byName(flavours) },
    { id: 'grains', title: 'Grains and starters', figures: byName(grains) },
    {
      id: 'stocks',
      title: 'Keeping grains',
      figures: [...byKey('Growth a batch', expectedGrowth), ...alone(growthLearning, stockRest)],
    },
    { id: 'jars', title: 'Jars', figures: byName(jars) },
    { id: 'kitchen', title: 'Kitchen', figures: alone({ ...kitchen, ...kitchenLines }, { usualCan }) },
    {
      id: 'fermenting',
      title: 'Fermenting and fizz',
      figures: [
        ...alone(fermenting, bottles, { gasVolume, alcoholLine, carrollHenry, sweetness, liveliness }),
        ...byName(cardinalTemperatures),
      ],
    },
    { id: 'keeping', title: 'Keeping', figures: [...byKey('Keeps', keepingTimes()), ...alone(cartonWaiting)] },
    {
      id: 'acidity',
      title: 'Turning sour',
      figures: [
        ...byName({ aureusGrowth }),
        ...alone(acidTime, { expectedRoom, expectedTimes }),
        ...byName(expectedAcidity),
      ],
    },
    {
      id: 'glass',
      title: 'In the glass and in the pulp',
      figures: [...alone(energy, pulpKeeping), ...byKey('Almond pulp, dry', almondPulp)],
    },
    { id: 'handwork', title: 'Work by hand and planning', figures: alone(handwork) },
    { id: 'learning', title: 'Learning from the log', figures: alone(learning) },
    {
      id: 'physics',
      title: 'Physics and chemistry',
      figures: [
        ...alone(physics, { waterDensity }),
        ...byKey('Molar mass', molarMasses),
        ...byKey('Density', componentDensities),
      ],
    },
    { id: 'units', title: 'Units', figures: ofUnits() },
    {
      id: 'cups',
      title: 'How far a level measure may be off',
      figures: [...byKey('Off by', measureErrors), ...byKey('Times a level one', loosely)],
    },
    { id: 'foods', title: 'Composition of foods', figures: Object.values(everyFood).flatMap(ofFood) },
    { id: 'measures', title: 'What cups and spoons of foods weigh', figures: ofMeasures() },
  ];
}

/** The figures that have all of these words in what they are or where they are from; all of them for no words. */
export function findFigures(groups: readonly FigureGroup[], text: string): readonly FigureGroup[] {
  const wanted = text
    .toLowerCase()
    .split(/\s+/)
    .filter((word) => word !== '');
  if (wanted.length === 0) return groups;
  return groups.flatMap((group) => {
    const figures = group.figures.filter(({ of, label, unit, from }) => {
      const said = `${group.title} ${of} ${label} ${unit} ${from}`.toLowerCase();
      return wanted.every((word) => said.includes(word));
    });
    return figures.length === 0 ? [] : [{ ...group, figures }];
  });
}
