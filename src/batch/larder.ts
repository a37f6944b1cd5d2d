import type { SweetenerId } from '../reference/sweeteners';
import type { SheetDocument } from './document';

/** A food that was weighed once: so much of it in so many mL. */
export interface OwnFood {
  readonly name: string;
  readonly grams: number;
  readonly millilitres: number;
}

/** Keeps what a measure of a food weighed; weighed again, the new figure takes the old one's place. */
export function keepOwnFood(document: SheetDocument, food: OwnFood): SheetDocument {
  const others = (document.ownFoods ?? []).filter(({ name }) => name !== food.name);
  return { ...document, ownFoods: [...others, food] };
}

/** Forgets an own food. */
export function forgetOwnFood(document: SheetDocument, name: string): SheetDocument {
  const ownFoods = (document.ownFoods ?? []).filter((food) => food.name !== name);
  return ownFoods.length === document.ownFoods?.length ? document : { ...document, ownFoods };
}

/** What a kilogram of a sweetener costs, in the cook's own currency; null forgets it. */
export function setPrice(document: SheetDocument, id: SweetenerId, perKilogram: number | null): SheetDocument {
  const { [id]: _, ...others } = document.prices ?? {};
  return { ...document, prices: perKilogram === null ? others : { ...others, [id]: perKilogram } };
}
