/** The keys of a table, typed as such. Only the table's own: what every object inherits is no id. */
export function keysOf<K extends string>(table: Readonly<Record<K, unknown>>): readonly K[] {
  return Object.keys(table).filter((key): key is K => isKeyOf(table, key));
}

/** Whether a text is the id of an entry of the table. */
export function isKeyOf<K extends string>(table: Readonly<Record<K, unknown>>, text: string): text is K {
  return Object.hasOwn(table, text);
}
