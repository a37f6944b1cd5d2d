/** What a coefficient is typed apart as: its value, and the range where it has one. */
export type Spread = readonly [value: number] | readonly [value: number, low: number, high: number];

/**
 * Figures typed apart from the tables: by the place in the table, and for a coefficient also its unit, as in
 * `sources.almond.uptake, g/g`. A place with no figure in the source is null.
 */
export type Figures = Readonly<Record<string, number | boolean | null | Spread>>;

/** Figures of several rows or columns under one name. */
export function under(name: string, figures: Figures): Figures {
  return Object.fromEntries(Object.entries(figures).map(([key, figure]) => [`${name}.${key}`, figure]));
}

/** The same figures under each of the names. */
export function underEach(names: readonly string[], figures: Figures): Figures {
  return Object.assign({}, ...names.map((name) => under(name, figures)));
}

/** Numbers in a row, as a table keeps a list. */
export function listed(name: string, numbers: readonly number[]): Figures {
  return under(name, Object.fromEntries(numbers.map((number, index) => [String(index), number])));
}
