import type { SheetDocument } from './document-schema';

interface Keyed {
  readonly key: string;
}

/**
 * The sheet with a key of its own for each jar of grains, class and blend: of two with one key, as in a file that was
 * edited by hand, only the first could be opened. The very sheet where none is there twice.
 */
export function withOwnKeys(document: SheetDocument): SheetDocument {
  const { stocks, classes, blends } = document;
  if (![stocks, classes, blends].some((list) => list !== undefined && !areOwn(list))) return document;
  return {
    ...document,
    ...(stocks === undefined ? {} : { stocks: keyed(stocks) }),
    ...(classes === undefined ? {} : { classes: keyed(classes) }),
    ...(blends === undefined ? {} : { blends: keyed(blends) }),
  };
}

/** Entries of a list, each with a key that none before it has; the first of a key keeps it. */
export function keyed<T extends Keyed>(list: readonly T[]): readonly T[] {
  if (areOwn(list)) return list;
  const all = new Set(list.map(({ key }) => key));
  const taken = new Set<string>();
  let number = 1;
  return list.map((one) => {
    let { key } = one;
    if (taken.has(key)) {
      do number += 1;
      while (all.has(`k${number}`));
      key = `k${number}`;
    }
    taken.add(key);
    return key === one.key ? one : { ...one, key };
  });
}

function areOwn(list: readonly Keyed[]): boolean {
  return new Set(list.map(({ key }) => key)).size === list.length;
}
