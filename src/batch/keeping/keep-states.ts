/** A saved state's place among the others: its revision, and when it was saved, in milliseconds since 1970. */
export type StateKey = readonly [revision: number, at: number];

const newestKept = 4;
const quarterHour = 900_000;
const hour = 4 * quarterHour;
const daysKept = 7;

/**
 * Which states are let go once there is a newer one: kept are the newest four, the last one of each quarter of an hour
 * of the last hour, and the last one of each of the last seven days that have one. Sixteen at most. A state from the
 * future, where a clock was set back, counts as of now.
 */
export function findSurplus(keys: readonly StateKey[], now: number): StateKey[] {
  const newestFirst = keys.toSorted(([one], [other]) => other - one);
  const kept = new Set(newestFirst.slice(0, newestKept));
  const quarters = new Set<number>();
  const days = new Set<string>();
  for (const key of newestFirst) {
    const at = Math.min(key[1], now);
    const quarter = Math.floor(at / quarterHour);
    if (now - at < hour && !quarters.has(quarter)) {
      quarters.add(quarter);
      kept.add(key);
    }
    const day = new Date(at).toDateString();
    if (days.size < daysKept && !days.has(day)) {
      days.add(day);
      kept.add(key);
    }
  }
  return keys.filter((key) => !kept.has(key));
}
