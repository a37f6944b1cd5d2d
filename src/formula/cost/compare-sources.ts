import type { Exact } from '../../measure/exact';
import { type SourceId, sources } from '../../reference/sources';
import { type Formulation, formulate } from '../engine/formulate';
import { amountRows, type NumericRowId } from '../recipe/order';
import type { Recipe } from '../recipe/recipe';
import { batchCost, compareCosts } from './batch-cost';
import type { PackagePrice } from './package-price';

/** The same kefir of another source: as much to drink, as sweet at the start. */
export interface SameOfAnother {
  readonly food: string;
  readonly name: string;
  /** Of the source, g. */
  readonly grams: number;
  readonly isThis: boolean;
  /** Of all that has a price. */
  readonly total: Exact;
  readonly perLitre: Exact;
}

/** What is typed about one source and says nothing of another. */
const ofTheSource: readonly NumericRowId[] = ['waterRatio', 'milkSolids', 'soakTime', 'soakWater'];
const sizing: readonly NumericRowId[] = [...amountRows, ...ofTheSource, 'sweetenerMass', 'caneEquivalent', 'grainMass'];

/**
 * The sources that have a price, at as much kefir to drink as this batch makes and by the usual recipe of each, the
 * cheapest first. Sweeteners are counted where they have a price. Fewer than two of them are no comparison: none then.
 */
export function compareSources(
  formulation: Formulation,
  packages: readonly PackagePrice[],
  carton?: string,
): readonly SameOfAnother[] {
  const drink = formulation.of('drinkVolume');
  if (!(drink > 0)) return [];
  const { recipe } = formulation;
  const here = carton === undefined ? `source.${recipe.source}` : `carton.${carton}`;
  const found = packages.flatMap(({ food }): SameOfAnother[] => {
    const made = madeOf(food, recipe, drink, recipe.source, carton);
    if (made === null) return [];
    const cost = batchCost(food === here ? formulation : formulate(made.recipe), packages, made.carton);
    const [source] = cost.lines;
    if (source?.need.food !== food || source.cost === null || cost.perLitre === null) return [];
    const { name, grams } = source.need;
    return [{ food, name, grams, isThis: food === here, total: cost.total, perLitre: cost.perLitre }];
  });
  return found.length < 2 ? [] : found.toSorted((a, b) => compareCosts(a.perLitre, b.perLitre));
}

function madeOf(food: string, recipe: Recipe, drink: number, now: SourceId, here: string | undefined) {
  const [kind, id = ''] = food.split(/\.(.*)/s);
  if (kind === 'carton') {
    // A carton of another name is poured as this one is, or as a plain one.
    const source = here !== undefined && sources[now].label !== null ? now : 'cartonPlain';
    return { recipe: resized(recipe, source, drink), carton: id };
  }
  return kind === 'source' && isSource(id) ? { recipe: resized(recipe, id, drink), carton: undefined } : null;
}

function resized(recipe: Recipe, source: SourceId, drink: number): Recipe {
  const given = recipe.given.filter(({ row }) => !sizing.includes(row));
  return {
    ...recipe,
    source,
    given: [...given, { row: 'drinkVolume', kind: 'volume', amount: drink }],
    measured: {},
  };
}

function isSource(id: string): id is SourceId {
  return Object.hasOwn(sources, id);
}
