import type { Spread } from '../../formula/foods/look-up';
import { findFood } from '../../formula/foods/look-up';
import type { CultureId } from '../../reference/grains';
import { type SourceId, sources } from '../../reference/sources';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import type { WeighedIngredient } from '../recipe-weigh';
import type { PlanRemark } from './problem';

/** What a batch takes of a pasted recipe; the amounts are sums over its lines. */
export interface RecipeParts {
  readonly source: { readonly id: SourceId; readonly grams: Spread | null; readonly millilitres: Spread | null } | null;
  readonly water: Spread | null;
  readonly sweeteners: readonly { readonly id: SweetenerId; readonly grams: Spread }[];
  readonly grains: { readonly id: CultureId; readonly grams: Spread | null } | null;
  readonly extras: readonly string[];
  readonly remarks: readonly PlanRemark[];
}

function add(a: Spread | null, b: Spread | null): Spread | null {
  if (a === null || b === null) return a ?? b;
  return { low: a.low + b.low, likely: a.likely + b.likely, high: a.high + b.high };
}

/** Sorts weighed ingredients into the parts of a batch, and says what was decided or left out. */
export function takeParts(weighed: readonly WeighedIngredient[]): RecipeParts {
  const remarks: PlanRemark[] = [];
  const extras: string[] = [];
  const kept = chooseSource(weighed, remarks);
  let mass: Spread | null = null;
  let volume: Spread | null = null;
  let water: Spread | null = null;
  let grains: RecipeParts['grains'] = null;
  const sweet = new Map<SweetenerId, Spread>();
  for (const { ingredient, grams, millilitres } of weighed) {
    const { text, food } = ingredient;
    if (ingredient.dismissed) continue;
    if (ingredient.aside) {
      extras.push(text);
      if (food !== null && food.role !== 'other') remarks.push({ code: 'aside', text });
      continue;
    }
    if (food === null || food.role === 'other' || food.role === 'milk') {
      extras.push(text);
      continue;
    }
    if (food.role === 'water' && food.soaking) {
      remarks.push({ code: 'soakingWater', text });
      continue;
    }
    const refused = food.role === 'sweetener' ? sweeteners[food.id].refused : undefined;
    if (refused !== undefined) {
      remarks.push({ code: 'refusedSweetener', name: food.name, reason: refused });
      extras.push(text);
      continue;
    }
    if (food.role === 'source' && food.id !== kept) {
      extras.push(text);
      continue;
    }
    if (!food.sure) remarks.push({ code: 'unsureFood', text, name: food.name });
    const can = food.role === 'source' ? sources[food.id].can : undefined;
    if (ingredient.assumed === 'usualCan' && can) remarks.push({ code: 'usualCan', text, each: can.volume.value });
    const { amount } = ingredient;
    if (amount !== null && amount.high > amount.low) remarks.push({ code: 'middleTaken', text });
    if (grams === null && millilitres === null) remarks.push({ code: 'notWeighed', text });
    if (food.role === 'source') {
      mass = add(mass, grams);
      volume = add(volume, millilitres);
    } else if (food.role === 'water') water = add(water, millilitres);
    else if (food.role === 'grains') {
      if (grains === null) grains = { id: food.id, grams };
      else if (grains.id === food.id) grains = { id: food.id, grams: add(grains.grams, grams) };
      else {
        remarks.push({ code: 'severalGrains', kept: nameOf(`grains.${grains.id}`) });
        extras.push(text);
      }
    } else if (food.role === 'sweetener' && grams !== null)
      sweet.set(food.id, add(sweet.get(food.id) ?? null, grams) ?? grams);
  }
  const source = kept === null ? null : { id: kept, grams: mass, millilitres: volume };
  return { source, water, sweeteners: [...sweet].map(([id, grams]) => ({ id, grams })), grains, extras, remarks };
}

function nameOf(key: string): string {
  return findFood(key)?.name ?? '';
}

/** The source there is most of, what has to be blended before what is poured. */
function chooseSource(weighed: readonly WeighedIngredient[], remarks: PlanRemark[]): SourceId | null {
  const amounts = new Map<SourceId, number>();
  for (const { ingredient, grams, millilitres } of weighed) {
    const { food } = ingredient;
    if (food?.role !== 'source' || ingredient.dismissed || ingredient.aside) continue;
    amounts.set(food.id, (amounts.get(food.id) ?? 0) + (grams?.likely ?? millilitres?.likely ?? 0));
  }
  const solid = (id: SourceId): number => (sources[id].form === 'solid' ? 1 : 0);
  const [first, ...others] = [...amounts].sort(([a, x], [b, y]) => solid(b) - solid(a) || y - x).map(([id]) => id);
  if (first !== undefined && others.length > 0) {
    const names = others.map((id) => sources[id].plural).join(', ');
    remarks.push({ code: 'severalSources', kept: sources[first].name, others: names });
  }
  return first ?? null;
}
