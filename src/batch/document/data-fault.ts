/** What makes data unfit to be looked into any further, whatever it claims to be; `at` is the path to it. */
export type DataFault =
  | { readonly code: 'prototypeKey'; readonly at: string }
  | { readonly code: 'tooDeep'; readonly at: string }
  | { readonly code: 'tooMuch' };

const prototypeKeys = ['__proto__', 'constructor', 'prototype'];
const deepest = 40;
/** More than a sheet holds that is full in every part. */
const mostValues = 1_600_000;

interface Place {
  readonly value: unknown;
  readonly path: readonly string[];
}

/**
 * The first key in the data that could reach an object's prototype once the data is spread or merged, or the first
 * place nested too deep for others to walk, or that it holds more than they could walk in time. Walks by list, not by
 * call, so depth can't exhaust it.
 */
export function findDataFault(data: unknown): DataFault | null {
  const seen = new WeakSet<object>();
  let left = mostValues;
  const waiting: Place[] = [{ value: data, path: [] }];
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    const { value, path } = place;
    if (typeof value !== 'object' || value === null || seen.has(value)) continue;
    if (path.length > deepest) return { code: 'tooDeep', at: path.join('.') };
    seen.add(value);
    // A list that is far too long is not even counted through.
    if (Array.isArray(value) && value.length > left) return { code: 'tooMuch' };
    const inside = Object.entries(value);
    left -= inside.length;
    if (left < 0) return { code: 'tooMuch' };
    for (const [key, inner] of inside) {
      if (prototypeKeys.includes(key)) return { code: 'prototypeKey', at: [...path, key].join('.') };
      if (typeof inner === 'object') waiting.push({ value: inner, path: [...path, key] });
    }
  }
  return null;
}
