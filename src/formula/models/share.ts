/** Between what two values a share lies. */
export interface Share {
  readonly low: number;
  readonly high: number;
}

/**
 * The range of a share that held `count` of `of` times, by Wilson’s score: all shares p of which the count lies within
 * `width` standard deviations √(of · p(1 − p)) of the expected. It stays within 0 to 1 and is honest of few times, also of
 * none or all. From 0 to 1 where `of` is 0.
 */
export function shareRange(count: number, of: number, width: number): Share {
  const square = width ** 2;
  const middle = (count + square / 2) / (of + square);
  const quarter = square / 4; // algebra
  const varied = of === 0 ? 0 : (count * (of - count)) / of;
  const half = (width * Math.sqrt(varied + quarter)) / (of + square);
  return { low: Math.max(0, middle - half), high: Math.min(1, middle + half) };
}
