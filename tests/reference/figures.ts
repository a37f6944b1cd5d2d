/** A figure of a table, or what stands in for one: a yes or no, or that there is none. */
export type Leaf = number | boolean | null;

/** A place in the tables: the keys that lead there. */
export type Path = readonly string[];

export interface Figure {
  readonly path: Path;
  readonly leaf: Leaf;
}

export function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function isLeaf(value: unknown): value is Leaf {
  return value === null || typeof value === 'number' || typeof value === 'boolean';
}

/** Every figure at any depth, in the order of the table. Origins and notes in words have none. */
export function figuresIn(value: unknown, path: Path = []): readonly Figure[] {
  if (isLeaf(value)) return [{ path, leaf: value }];
  if (!isRecord(value)) return [];
  return Object.entries(value).flatMap(([key, inner]) => figuresIn(inner, [...path, key]));
}

/** What stands at a place, undefined where there is none. */
export function findAt(value: unknown, path: Path): unknown {
  return path.reduce((inner: unknown, key) => (isRecord(inner) ? inner[key] : undefined), value);
}

/** Puts a figure at a place that is there, for a planted fault. */
export function plant(value: unknown, path: Path, leaf: unknown): void {
  const owner = findAt(value, path.slice(0, -1));
  const key = path.at(-1);
  if (!isRecord(owner) || key === undefined || !(key in owner)) throw new Error(`Nothing stands at ${path.join('.')}`);
  owner[key] = leaf;
}
