import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import type { Packaged, SheetDocument } from '../document/document';
import { mostOwnFoods } from '../document/document-limits';
import { isKeyOf } from '../document/table-keys';

/** A food that was weighed once: so much of it in so many mL. */
export interface OwnFood {
  readonly name: string;
  readonly grams: number;
  readonly millilitres: number;
}

/**
 * Keeps what a measure of a food weighed; weighed again, the new figure takes the old one's place. The same figure, or
 * one food more than can be saved, changes nothing.
 */
export function keepOwnFood(document: SheetDocument, food: OwnFood): SheetDocument {
  const { ownFoods = [] } = document;
  const old = ownFoods.find(({ name }) => name === food.name);
  if (old?.grams === food.grams && old.millilitres === food.millilitres) return document;
  if (old === undefined && ownFoods.length >= mostOwnFoods) return document;
  const others = ownFoods.filter((one) => one !== old);
  return { ...document, ownFoods: [...others, food] };
}

/** Forgets an own food. */
export function forgetOwnFood(document: SheetDocument, name: string): SheetDocument {
  if (document.ownFoods?.some((food) => food.name === name) !== true) return document;
  return { ...document, ownFoods: document.ownFoods.filter((food) => food.name !== name) };
}

/** What is in a package, by the name it was given or that of its food. */
export function namePackage({ food, name }: Packaged): string {
  const [kind, id = ''] = food.split(/\.(.*)/s);
  if (name !== undefined) return name;
  if (kind === 'sweetener' && isKeyOf(sweeteners, id)) return sweeteners[id].name;
  return kind === 'source' && isKeyOf(sources, id) ? sources[id].name : id === '' ? food : id;
}
