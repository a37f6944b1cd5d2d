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
  const items = useRef<readonly Alike<T>[]>([]);
  const list = useRef<readonly T[]>([]);
  return useComputed(() => {
    const before = items.current;
    items.current = make().map((item, at) => keep(item, before[at] ?? null));
    if (items.current.length !== before.length || items.current.some((item, at) => item !== before[at]))
      list.current = items.current.map(({ data }) => data);
    return list.current;
  });
}

interface Alike<T> {
  readonly data: T;
  readonly key: string;
}

function keep<T>(data: T, last: Alike<T> | null): Alike<T> {
  const key = JSON.stringify(data);
  return last?.key === key ? last : { data, key };
}
