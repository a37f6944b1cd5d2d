import type { FoodEntry, FoodPart } from '../../formula/foods/look-up';
import type { OptionGroup } from '../sheet/choices';

const groups = [
  { label: 'Nuts, seeds, coconut', of: ['source'] },
  { label: 'Sweeteners', of: ['sweetener'] },
  { label: 'Cultures', of: ['grains'] },
  { label: 'Water and dairy milk', of: ['water', 'milk'] },
  { label: 'Other foods', of: ['other'] },
] as const satisfies readonly { label: string; of: readonly FoodPart['role'][] }[];

/** A menu of foods: the cook’s own first, then by what they are to a batch, each group by name. */
export function foodMenu(foods: readonly FoodEntry[]): readonly OptionGroup[] {
  const own = { label: 'Yours', options: named(foods.filter((food) => food.own !== null)) };
  const rest = groups.map(({ label, of }) => ({
    label,
    options: named(foods.filter((food) => food.own === null && of.some((role) => role === food.part.role))),
  }));
  return [own, ...rest].filter(({ options }) => options.length > 0);
}

function named(foods: readonly FoodEntry[]): OptionGroup['options'] {
  return foods
    .map(({ key, name }) => ({ value: key, label: name }))
    .sort((a, b) => a.label.localeCompare(b.label, 'en'));
}
