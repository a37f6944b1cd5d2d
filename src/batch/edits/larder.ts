import { doubleOf, exactly } from '../../measure/exact';
import { sources } from '../../reference/sources';
import { type SweetenerId, sweeteners } from '../../reference/sweeteners';
import type { Packaged, SheetDocument } from '../document/document';
import { longestPrice, mostOwnFoods, mostPackages } from '../document/document-limits';
import { isKeyOf } from '../document/table-keys';
import { writeDecimal } from '../document/write-decimal';

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

const gramsOfKilogram = 1000;

/** What a kilogram of a sweetener costs, in the cook's own currency, as a package of that weight; null forgets it. */
export function setPrice(document: SheetDocument, id: SweetenerId, perKilogram: number | null): SheetDocument {
  const { packages = [] } = document;
  const food = `sweetener.${id}`;
  const place = packages.findIndex((one) => one.food === food);
  if (perKilogram === null) return place < 0 ? document : { ...document, packages: packages.toSpliced(place, 1) };
  const price = writeDecimal(perKilogram);
  const isFull = place < 0 && packages.length >= mostPackages;
  const old = packages[place];
  if (old?.price === price && old.amount.amount === gramsOfKilogram) return document;
  if (price.length > longestPrice || isFull) return document;
  const amount = { text: '1 kg', amount: gramsOfKilogram, kind: 'mass' } as const;
  return { ...document, packages: packages.toSpliced(place < 0 ? packages.length : place, 1, { food, amount, price }) };
}

/** What a kilogram of each sweetener costs that has a package by weight. */
export function sweetenerPrices({ packages = [] }: SheetDocument): Readonly<Partial<Record<SweetenerId, number>>> {
  const found: Partial<Record<SweetenerId, number>> = {};
  for (const { food, amount, price } of packages) {
    const id = food.replace(/^sweetener\./, '');
    const grams = amount.kind === 'mass' ? (amount.amount ?? 0) : 0;
    if (id !== food && isKeyOf(sweeteners, id) && grams > 0)
      found[id] = doubleOf(exactly(price).times(gramsOfKilogram).div(grams));
  }
  return found;
}

/** What is in a package, by the name it was given or that of its food. */
export function namePackage({ food, name }: Packaged): string {
  const [kind, id = ''] = food.split(/\.(.*)/s);
  if (name !== undefined) return name;
  if (kind === 'sweetener' && isKeyOf(sweeteners, id)) return sweeteners[id].name;
  return kind === 'source' && isKeyOf(sources, id) ? sources[id].name : id === '' ? food : id;
}
