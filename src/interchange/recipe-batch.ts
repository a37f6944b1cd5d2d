import { startBatch } from '../batch/document/demo';
import { longestName } from '../batch/document/document-limits';
import type { PlannedBatch } from '../batch/edits/add-planned';
import { type Formulation, formulate } from '../formula/engine/formulate';
import type { NumericRowId } from '../formula/recipe/order';
import type { Recipe } from '../formula/recipe/recipe';
import { numericRows } from '../formula/rows/sheet';
import type { Kind } from '../measure/units';
import type { CultureId } from '../reference/grains';
import { type SourceId, sources } from '../reference/sources';
import { type PlannedCell, planCell } from './recipe-reading/batch-cells';
import type { PlanRemark } from './recipe-reading/problem';
import { type RecipeParts, takeParts } from './recipe-reading/recipe-parts';
import type { Habits, JarHint, RecipeText } from './recipe-reading/shape';
import { weighIngredients } from './recipe-weigh';

export interface Compared {
  readonly row: NumericRowId;
  readonly kind: Kind;
  readonly value: number;
  /** The usual range; null where this source has none. */
  readonly usual: { readonly low: number; readonly high: number } | null;
  readonly verdict: 'below' | 'usual' | 'above' | null;
}

/** What a new batch would be given. Nothing is changed by making one. */
export interface BatchPlan {
  readonly name: string;
  /** Only what the text names; the rest stays as a new batch starts. */
  readonly choices: PlannedBatch['choices'];
  readonly cells: readonly PlannedCell[];
  readonly compared: readonly Compared[];
  /** What the batch has no row for, as written. */
  readonly extras: readonly string[];
  readonly remarks: readonly PlanRemark[];
  /** What the text does not name, to be chosen. */
  readonly lacking: readonly ('source' | 'grains')[];
  /** What of it nobody has chosen yet; no batch is made before. */
  readonly asks: readonly ('source' | 'grains')[];
  /** The batch worked out, to be looked at before it is made; null where something must be chosen first. */
  readonly formulation: Formulation | null;
}

/** What the cook chose where the text names none. */
export interface Chosen {
  readonly source?: SourceId;
  readonly grains?: CultureId;
}

const ratesOf: readonly (readonly [rate: NumericRowId, from: readonly NumericRowId[]])[] = [
  ['waterRatio', ['sourceMass', 'blendWater']],
  ['sugarRate', ['sweetenerMass']],
  ['grainRate', ['grainMass']],
];

/**
 * What a pasted recipe would make of a new batch: choices, texts for its cells, its ratio, sugar and dose against the
 * usual ones, and the rest as extras. A range in the text goes in by its middle, and a remark says so. A source or a kind
 * of grains that the text does not name is asked for, and is never taken from another batch.
 */
export function planFromRecipe(
  read: RecipeText,
  habits: Habits,
  yours: Recipe['yours'] = {},
  chosen: Chosen = {},
): BatchPlan {
  const parts = takeParts(weighIngredients(read, habits));
  const remarks: PlanRemark[] = [...parts.remarks];
  const hints = read.lines.flatMap(({ jar }) => (jar === null ? [] : [jar]));
  const jar = hints.find(({ what }) => what === 'jar') ?? null;
  const makes = hints.find(({ what }) => what === 'makes') ?? null;
  const choices = { ...chosen, ...choicesOf(parts, jar) };
  remarks.push(...missingFrom(parts, jar, choices));
  if (jar !== null && jar.id === null) remarks.push({ code: 'jarNotListed', volume: jar.volume });
  const cells = cellsOf(parts, makes, habits.decimalComma);
  const lacking = (['source', 'grains'] as const).filter((what) => parts[what] === null);
  const asks = lacking.filter((what) => choices[what] === undefined);
  const formulation = asks.length > 0 ? null : formulatePlan(choices, cells, yours);
  const milk = formulation?.rows.milkVolume.value;
  if (makes !== null && typeof milk === 'number' && cells.every(({ row }) => row !== 'milkVolume'))
    remarks.push({ code: 'makes', said: makes.volume, milk });
  const name = nameOf(read, choices.source);
  const compared = formulation === null ? [] : compareRates(formulation, cells);
  return { name, choices, cells, extras: parts.extras, remarks, lacking, asks, formulation, compared };
}

function formulatePlan(
  choices: BatchPlan['choices'],
  cells: readonly PlannedCell[],
  yours: Recipe['yours'],
): Formulation {
  const { vessel, source, sweetener, grains } = { ...startBatch('b1', ''), ...choices };
  const given = cells.map(({ row, amount, kind }) => ({ row, amount, kind }));
  return formulate({ vessel, source, sweetener, grains, given, measured: {}, yours });
}

function choicesOf({ source, grains, sweeteners }: RecipeParts, jar: JarHint | null): BatchPlan['choices'] {
  const total = sweeteners.reduce((sum, { grams }) => sum + grams.likely, 0);
  const sweetener = sweeteners.map(({ id, grams }) => ({ id, share: grams.likely / total }));
  return {
    ...(jar === null || jar.id === null ? {} : { vessel: jar.id }),
    ...(source === null ? {} : { source: source.id }),
    ...(total > 0 ? { sweetener } : {}),
    ...(grains === null ? {} : { grains: grains.id }),
  };
}

function missingFrom(
  { water, sweeteners }: RecipeParts,
  jar: JarHint | null,
  choices: BatchPlan['choices'],
): readonly PlanRemark[] {
  const poured = choices.source !== undefined && sources[choices.source].form === 'liquid';
  const lacks = {
    source: choices.source === undefined,
    water: water === null && !poured,
    sweetener: sweeteners.length === 0,
    grains: choices.grains === undefined,
    jar: jar === null,
  };
  const what = (['source', 'water', 'sweetener', 'grains', 'jar'] as const).filter((each) => lacks[each]);
  return what.map((each) => ({ code: 'missing', what: each }) as const);
}

function cellsOf(
  { source, water, sweeteners, grains }: RecipeParts,
  makes: JarHint | null,
  decimalComma: boolean,
): readonly PlannedCell[] {
  const cells: PlannedCell[] = [];
  const put = (row: NumericRowId, amount: { low: number; likely: number; high: number } | null, unit: 'g' | 'mL') => {
    const cell = amount === null ? null : planCell(row, amount.likely, unit, decimalComma);
    if (cell !== null) cells.push(cell);
  };
  if (source?.grams) put('sourceMass', source.grams, 'g');
  else put('sourceMass', source?.millilitres ?? null, 'mL');
  put('blendWater', water, 'mL');
  const sized = cells.length > 0;
  if (!sized && makes !== null)
    put('milkVolume', { low: makes.volume, likely: makes.volume, high: makes.volume }, 'mL');
  const sweet = sweeteners.reduce((sum, { grams }) => sum + grams.likely, 0);
  put('sweetenerMass', { low: sweet, likely: sweet, high: sweet }, 'g');
  put('grainMass', grains?.grams ?? null, 'g');
  return cells;
}

function compareRates(formulation: Formulation, cells: readonly PlannedCell[]): readonly Compared[] {
  return ratesOf.flatMap(([row, from]) => {
    const { value } = formulation.rows[row];
    if (typeof value !== 'number' || !from.every((each) => cells.some((cell) => cell.row === each))) return [];
    const usual = numericRows[row].usual?.(formulation.evaluation) ?? null;
    const verdict = usual === null ? null : value < usual.low ? 'below' : value > usual.high ? 'above' : 'usual';
    return [{ row, kind: numericRows[row].kind, value, usual, verdict }];
  });
}

function nameOf({ lines }: RecipeText, source: SourceId | undefined): string {
  const title = lines.find(({ kind }) => kind !== 'blank');
  const text = title?.kind === 'heading' && title.jar === null ? title.text.replace(/^[\s#*-]+|[\s:*]+$/g, '') : '';
  if (text !== '' && !/^(?:ingredients?|for |you|method)/i.test(text)) return text.slice(0, longestName);
  if (source === undefined) return 'From a recipe';
  const { plural } = sources[source];
  return `${plural.charAt(0).toUpperCase()}${plural.slice(1)}, from a recipe`;
}
