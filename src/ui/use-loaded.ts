import { useEffect, useState } from 'preact/hooks';

/** What a part of the page needs and the first paint does not: null until it is there, `failed` where it can't be had. */
export function useLoaded<T extends object>(load: () => Promise<T>): T | 'failed' | null {
  const [loaded, setLoaded] = useState<T | 'failed' | null>(null);
  useEffect(() => {
    load().then(
      (part) => setLoaded(part),
      () => setLoaded('failed'),
    );
  }, []);
  return loaded;
}
