import { nearly } from '../../measure/nearly';
import { convertNumber } from '../../measure/units';
import { flavours } from '../../reference/flavours';
import { foodMeasures, measurePlace } from '../../reference/food-measures';
import { grains } from '../../reference/grains';
import {
  doubtfulMeasures,
  kindByForm,
  type MeasureKind,
  measureErrors,
  measureKinds,
} from '../../reference/measure-error';
import { type Coefficient, type Origin, published } from '../../reference/origins';
import { type SourceId, sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import { foodDensity } from '../models/strain';
import { type FoodEntry, findFood, type OwnFood } from './food-keys';
import { readMeasureWords } from './measure-words';

/** One household measure of a food that is a volume. */
export interface CupWeight {
  readonly grams: number;
  readonly millilitres: number;
  /** "whole", "packed" …; null where the measure names none. */
  readonly form: string | null;
  /** As the record words it. */
  readonly measure: string;
  readonly origin: Origin;
  /** What another level measure of it may weigh, g. */
  readonly low: number;
  readonly high: number;
  /** The share by which it may differ, and where that is from; null where the range itself is published or remembered. */
  readonly error: Coefficient | null;
  /** Why it is not used to weigh by, where it contradicts itself. */
  readonly doubt: string | null;
}

type Bare = Pick<CupWeight, 'grams' | 'millilitres' | 'form' | 'measure' | 'origin' | 'doubt'>;

/**
 * Every measure of a food that is a volume, with the range another level one may weigh: first the one that the sheet
 * weighs this food by, then the rest of its record. None for a food without any. Source: the household measures of
 * USDA SR Release 28, and `measureErrors`.
 */
export function cupWeights(food: string, own: readonly OwnFood[] = []): readonly CupWeight[] {
  const entry = findFood(food, own);
  if (entry === null) return [];
  const kind = kindOf(entry);
  const weights = [...usedBySheet(entry), ...inRecord(entry)].map((bare) => withError(bare, kind));
  const grain = entry.part.role === 'grains' ? weighGrains(entry.part.id) : [];
  return [...grain, ...weights.filter((weight, at) => !weights.slice(0, at).some((other) => isSame(other, weight)))];
}

function isSame(a: CupWeight, b: CupWeight): boolean {
  const measureSlack = 1e-6; // tolerance: three teaspoons are a tablespoon, give or take their printed decimals
  return a.form === b.form && nearly(a.grams * b.millilitres, b.grams * a.millilitres, measureSlack);
}

function usedBySheet({ part, own, record }: FoodEntry): readonly Bare[] {
  if (own !== null) {
    const { grams, millilitres } = own;
    const usable = grams > 0 && millilitres > 0 && Number.isFinite(grams) && Number.isFinite(millilitres);
    const origin: Origin = { kind: 'yours', how: 'measured' };
    return usable ? [{ grams, millilitres, form: null, measure: 'your own', origin, doubt: null }] : [];
  }
  if (part.role === 'source' && sources[part.id].form === 'liquid' && record !== null) return [byWhatIsInIt(part.id)];
  const used = usedMeasure(part);
  if (used === null) return [];
  const words = readMeasureWords(1, used.measure);
  return [{ ...used, form: words?.is === 'volume' ? words.form : null, doubt: null }];
}

function usedMeasure(part: FoodEntry['part']) {
  if (part.role === 'source') return sources[part.id].cup;
  if (part.role === 'sweetener') return sweeteners[part.id].spoon;
  return part.role === 'other' && part.flavour !== undefined ? flavours[part.flavour].spoon : null;
}

/** A cup of a liquid source by its composition, which its milk is weighed by as well: two cans in are two cans out. */
function byWhatIsInIt(id: SourceId): Bare {
  const { composition } = sources[id];
  const millilitres = convertNumber(1, 'cup', 'mL');
  const grams = foodDensity(composition) * millilitres;
  return { grams, millilitres, form: null, measure: '1 cup', origin: composition.origin, doubt: null };
}

function inRecord({ record }: FoodEntry): readonly Bare[] {
  if (record === null) return [];
  const bares = foodMeasures[record].measures.flatMap(({ amount, unit, grams }) => {
    const words = readMeasureWords(amount, unit);
    if (words?.is !== 'volume') return [];
    const origin = published('usda-sr', measurePlace(record, `${amount} ${unit}`));
    const doubt = doubtfulMeasures.find((each) => each.food === record && each.unit === unit)?.reason ?? null;
    return [{ grams, millilitres: words.millilitres, form: words.form, measure: `${amount} ${unit}`, origin, doubt }];
  });
  // Of the level measures of a record the largest is rounded least.
  return bares.sort((a, b) => b.millilitres - a.millilitres);
}

function withError(bare: Bare, kind: MeasureKind): CupWeight {
  const error = measureErrors[kindByForm[bare.form ?? ''] ?? kind];
  return { ...bare, low: bare.grams * (1 - error.value), high: bare.grams * (1 + error.value), error };
}

function weighGrains(id: keyof typeof grains): readonly CupWeight[] {
  const { value, low, high, origin } = grains[id].tablespoon;
  const millilitres = convertNumber(1, 'tbsp', 'mL');
  const range = { low: low ?? value, high: high ?? value };
  return [{ grams: value, millilitres, form: null, measure: '1 tbsp', origin, ...range, error: null, doubt: null }];
}

/** How a food lies in a cup, which decides its error. */
export function kindOf({ own, record, part }: FoodEntry): MeasureKind {
  if (own !== null) return 'own';
  if (record !== null) return measureKinds[record];
  if (part.role === 'source') return sources[part.id].form === 'liquid' ? 'liquid' : 'pieces';
  if (part.role === 'sweetener') return sweeteners[part.id].state === 'liquid' ? 'liquid' : 'sugar';
  if (part.role === 'other' && part.flavour !== undefined) return flavours[part.flavour].kind;
  return part.role === 'water' || part.role === 'milk' ? 'liquid' : 'pieces';
}
