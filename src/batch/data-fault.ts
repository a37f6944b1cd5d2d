/** What makes data unfit to be looked into any further, whatever it claims to be; `at` is the path to it. */
export type DataFault =
  | { readonly code: 'prototypeKey'; readonly at: string }
  | { readonly code: 'tooDeep'; readonly at: string };

const prototypeKeys = ['__proto__', 'constructor', 'prototype'];
const deepest = 40;

interface Place {
  readonly value: unknown;
  readonly path: readonly string[];
}

/**
 * The first key in the data that could reach an object's prototype once the data is spread or merged, or the first
 * place nested too deep for others to walk. Walks by list, not by call, so depth can't exhaust it.
 */
export function findDataFault(data: unknown): DataFault | null {
  const seen = new WeakSet<object>();
  const waiting: Place[] = [{ value: data, path: [] }];
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    const { value, path } = place;
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    if (path.length > deepest) return { code: 'tooDeep', at: path.join('.') };
    seen.add(value);
    for (const [key, inner] of Object.entries(value)) {
      const at = [...path, key];
      if (prototypeKeys.includes(key)) return { code: 'prototypeKey', at: at.join('.') };
      if (typeof inner === 'object') waiting.push({ value: inner, path: at });
    }
  }
  return null;
}
