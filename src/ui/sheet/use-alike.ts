import { type ReadonlySignal, useComputed } from '@preact/signals';
import { useRef } from 'preact/hooks';

/** Plain data that stays the very same for as long as it says the same, so that nothing is drawn for nothing. */
export function useAlike<T>(make: () => T): ReadonlySignal<T> {
  const last = useRef<Alike<T> | null>(null);
  return useComputed(() => {
    last.current = keep(make(), last.current);
    return last.current.data;
  });
}

/** The same of a list, of which those items stay that say the same in the same place. */
export function useAlikeList<T>(make: () => readonly T[]): ReadonlySignal<readonly T[]> {
  const last = useRef<AlikeItems<T>>({ items: [], list: [] });
  return useComputed(() => {
    last.current = keepItems(make(), last.current);
    return last.current.list;
  });
}

/** The same of a list that is worked out while it is drawn. */
export function useAlikeItems<T>(list: readonly T[]): readonly T[] {
  const last = useRef<AlikeItems<T>>({ items: [], list: [] });
  last.current = keepItems(list, last.current);
  return last.current.list;
}

interface Alike<T> {
  readonly data: T;
  readonly key: string;
}

function keep<T>(data: T, last: Alike<T> | null): Alike<T> {
  const key = JSON.stringify(data);
  return last?.key === key ? last : { data, key };
}

interface AlikeItems<T> {
  readonly items: readonly Alike<T>[];
  readonly list: readonly T[];
}

function keepItems<T>(list: readonly T[], last: AlikeItems<T>): AlikeItems<T> {
  const items = list.map((item, at) => keep(item, last.items[at] ?? null));
  const isSame = items.length === last.items.length && items.every((item, at) => item === last.items[at]);
  return isSame ? last : { items, list: items.map(({ data }) => data) };
}
