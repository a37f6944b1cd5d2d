import type { ChoiceRowId } from '../../formula/recipe/order';
import { families } from '../../reference/families';
import { grains, isGrains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';

export interface Option {
  readonly value: string;
  readonly label: string;
}

export interface OptionGroup {
  readonly label: string;
  readonly options: readonly Option[];
}

function named(table: Readonly<Record<string, { readonly name: string }>>): readonly Option[] {
  return Object.entries(table).map(([value, { name }]) => ({ value, label: name }));
}

function bySource(): readonly OptionGroup[] {
  return Object.entries(families).map(([id, { heading }]) => ({
    label: heading,
    options: Object.entries(sources)
      .filter(([, { family }]) => family === id)
      .map(([value, { name }]) => ({ value, label: name })),
  }));
}

function bySweetener(): readonly OptionGroup[] {
  const all = Object.entries(sweeteners);
  const pick = (refused: boolean): readonly Option[] =>
    all
      .filter(([, entry]) => (entry.refused !== undefined) === refused)
      .map(([value, { name }]) => ({ value, label: name }));
  return [
    { label: 'The culture can ferment', options: pick(false) },
    { label: 'Nothing to ferment', options: pick(true) },
  ];
}

function byCulture(): readonly OptionGroup[] {
  const all = named(grains);
  return [
    { label: 'Grains', options: all.filter(({ value }) => isGrains(value)) },
    { label: 'Without grains, stirred in', options: all.filter(({ value }) => !isGrains(value)) },
  ];
}

/** The menu of each choice row, in groups. */
export const menus: Readonly<Record<ChoiceRowId, readonly OptionGroup[]>> = {
  vessel: [{ label: 'Jars', options: named(jars) }],
  source: bySource(),
  sweetener: bySweetener(),
  grains: byCulture(),
};
