import type { SheetDocument } from './document';
import type { ListName } from './kept-lists';

/** The lists that not every sheet has, each empty where it has none. */
export type SheetLists = { readonly [K in ListName]: NonNullable<SheetDocument[K]> };

/** The lists of a sheet, each empty where it has none. */
export function listsOf(lists: { readonly [K in ListName]?: SheetLists[K] | null | undefined }): SheetLists {
  return {
    ownFoods: lists.ownFoods ?? [],
    stocks: lists.stocks ?? [],
    cartons: lists.cartons ?? [],
    packages: lists.packages ?? [],
    classes: lists.classes ?? [],
    blends: lists.blends ?? [],
  };
}

/** The lists that have anything in them, as a sheet keeps them. */
export function filledLists(lists: SheetLists): Partial<SheetLists> {
  const { ownFoods, stocks, cartons, packages, classes, blends } = lists;
  return {
    ...(ownFoods.length > 0 ? { ownFoods } : {}),
    ...(stocks.length > 0 ? { stocks } : {}),
    ...(cartons.length > 0 ? { cartons } : {}),
    ...(packages.length > 0 ? { packages } : {}),
    ...(classes.length > 0 ? { classes } : {}),
    ...(blends.length > 0 ? { blends } : {}),
  };
}

/** Every batch that something in these lists is about, under the name it had; null where it goes without. */
export function batchesInLists(lists: SheetLists): readonly { readonly id: string; readonly name: string | null }[] {
  return [
    ...lists.stocks.flatMap(({ lines }) =>
      lines.flatMap(({ batch, name = '' }) => (batch === undefined ? [] : [{ id: batch, name }])),
    ),
    ...lists.classes.map(({ of }) => ({ id: of, name: null })),
    ...lists.blends.flatMap(({ parts }) => parts.map(({ of, name }) => ({ id: of, name }))),
  ];
}

/** A sheet without the lists that not every sheet has; what this page does not know of stays. */
export function withoutLists(document: SheetDocument): Omit<SheetDocument, ListName> {
  const { ownFoods: _, stocks: __, cartons: ___, packages: ____, classes: _____, blends: ______, ...rest } = document;
  return rest;
}
