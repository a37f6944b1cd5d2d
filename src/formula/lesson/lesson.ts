import { nearly } from '../../measure/nearly';
import type { CultureId } from '../../reference/grains';
import type { JarId } from '../../reference/jars';
import { type Formulation, formulate } from '../engine/formulate';
import { type AmountRowId, amountRows, type NumericRowId } from '../recipe/order';
import type { Given, Recipe } from '../recipe/recipe';
import { numericRows } from '../rows/sheet';

/** What a kitchen has of its own: its jar, its room (°C; null for the room of the recipe) and its culture. */
export interface KitchenAtHand {
  readonly vessel: JarId;
  readonly temperature: number | null;
  readonly grains: CultureId;
}

/** A recipe made ready to be carried to any kitchen. */
export interface Lesson {
  /** The recipe as it was planned, without what was measured while making it. */
  readonly planned: Formulation;
  /** What makes it this recipe whatever its size: the rates that were typed, and those that its amounts come to. */
  readonly given: readonly Given[];
  /** Rows in which something was typed that can't be read, so that the usual stands in for it. */
  readonly unread: readonly NumericRowId[];
  /** Amounts that sized the recipe; they stay with it. */
  readonly sizes: readonly NumericRowId[];
  readonly wasMeasured: boolean;
}

/** What of the recipe does not hold in a kitchen. */
export type LeftBehind =
  /** Its dose, g/L, is of another culture. */
  | { readonly what: 'dose'; readonly rate: number; readonly of: CultureId; readonly here: CultureId }
  /** What was typed of its jar is of another jar. */
  | { readonly what: 'jar' }
  /** A jar of the cook’s own that nobody has measured yet. */
  | { readonly what: 'ownJar' };

/** The recipe as it is made in one kitchen. */
export interface InKitchen {
  readonly recipe: Recipe;
  readonly left: readonly LeftBehind[];
}

const rates = ['waterRatio', 'sugarRate', 'grainRate'] as const satisfies readonly NumericRowId[];
const ofJar: readonly NumericRowId[] = ['brimful', 'headspaceVolume'];
const held: readonly NumericRowId[] = [
  ...rates,
  ...ofJar,
  'headspaceDepth',
  'servingSize',
  'soakTime',
  'roomTemperature',
  'bottleSugar',
  'bottleTime',
  'bottleTemperature',
  'bottleVolume',
  'bottleHeadspace',
  'bottleLimit',
];
const masses: readonly NumericRowId[] = ['sweetenerMass', 'caneEquivalent', 'grainMass', 'soakWater'];

/**
 * What of a recipe is carried to other kitchens: what was typed of it that has no size, and each rate that its amounts
 * or what was typed in another row (solids, sugar at the start) come to, so that it stays the same recipe in any jar.
 */
export function lessonOf(recipe: Recipe): Lesson {
  const planned = formulate({ ...recipe, measured: {}, onHand: {} });
  const typed = recipe.given.filter(({ row }) => held.includes(row));
  const given = typed.filter(({ amount }) => amount !== null);
  // In this order, since the usual sugar goes by how rich the milk is.
  for (const row of rates) {
    const plain = formulate({ ...recipe, given, measured: {}, onHand: {} });
    const rate = rateToType(row, planned, plain);
    if (rate !== null) given.push(rate);
  }
  return {
    planned,
    given,
    unread: typed.filter(({ amount }) => amount === null).map(({ row }) => row),
    sizes: recipe.given.map(({ row }) => row).filter((row) => isAmount(row) || masses.includes(row)),
    wasMeasured: Object.keys(recipe.measured).length > 0,
  };
}

/** The rate as it is to be typed where it would not come out the same by itself; null where it does. */
function rateToType(row: (typeof rates)[number], planned: Formulation, plain: Formulation): Given | null {
  const [wanted, found] = [planned.rows[row].value, plain.rows[row].value];
  if (typeof wanted !== 'number' || typeof found !== 'number' || nearly(wanted, found)) return null;
  return { row, kind: numericRows[row].kind, amount: wanted };
}

function isAmount(row: NumericRowId): row is AmountRowId {
  return amountRows.some((one) => one === row);
}

/**
 * The recipe in one kitchen: it fills one jar of that kitchen to its headspace, at the recipe’s ratio and sugar; at its
 * dose where the culture is the same, else at the usual one of that culture.
 */
export function inKitchen(lesson: Lesson, kitchen: KitchenAtHand): InKitchen {
  const { planned } = lesson;
  const { recipe } = planned;
  const isSameJar = kitchen.vessel === recipe.vessel;
  const isSameCulture = kitchen.grains === recipe.grains;
  const dose = lesson.given.find(({ row }) => row === 'grainRate')?.amount ?? null;
  const holds = ({ row }: Given): boolean =>
    (isSameJar || !ofJar.includes(row)) &&
    (isSameCulture || row !== 'grainRate') &&
    (kitchen.temperature === null || row !== 'roomTemperature');
  const room: readonly Given[] =
    kitchen.temperature === null ? [] : [{ row: 'roomTemperature', kind: 'temperature', amount: kitchen.temperature }];
  const given = [...lesson.given.filter(holds), ...room];
  const there: Recipe = { ...recipe, vessel: kitchen.vessel, grains: kitchen.grains, given };
  // Another culture may count another sugar of the milk as its own; what is added stays as it is.
  const sugar = isSameCulture ? null : rateToType('sugarRate', planned, formulate(there));
  return {
    recipe: sugar === null ? there : { ...there, given: [...given, sugar] },
    left: [
      ...(isSameCulture || dose === null
        ? []
        : [{ what: 'dose', rate: dose, of: recipe.grains, here: kitchen.grains } as const]),
      ...(isSameJar || !lesson.given.some(({ row }) => ofJar.includes(row)) ? [] : [{ what: 'jar' } as const]),
      ...(kitchen.vessel === 'own' && !isSameJar ? [{ what: 'ownJar' } as const] : []),
    ],
  };
}

/** What all of a class takes of one culture, g; together with how many kitchens it is for. */
export interface CultureToBring {
  readonly grains: CultureId;
  readonly grams: number;
  readonly kitchens: number;
}

/** The culture that somebody has to bring for all kitchens, each kind once, in the order of the kitchens. */
export function culturesToBring(formulations: readonly Formulation[]): readonly CultureToBring[] {
  const found = new Map<CultureId, CultureToBring>();
  for (const { recipe, rows } of formulations) {
    const { value } = rows.grainMass;
    if (typeof value !== 'number') continue;
    const { grains } = recipe;
    const known = found.get(grains) ?? { grains, grams: 0, kitchens: 0 };
    found.set(grains, { grains, grams: known.grams + value, kitchens: known.kitchens + 1 });
  }
  return [...found.values()];
}
