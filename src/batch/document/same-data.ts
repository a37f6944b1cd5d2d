/** Whether two pieces of plain data hold the same, in whatever order their keys stand; lists keep their order. */
export function isSameData(one: unknown, other: unknown): boolean {
  return writeSorted(one) === writeSorted(other);
}

/** Plain data as text that is alike for data that is alike. */
export function writeSorted(data: unknown): string {
  return JSON.stringify(data, (_, value: unknown) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
    return Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)));
  });
}
