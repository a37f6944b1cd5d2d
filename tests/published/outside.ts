/** One value of a reference beside what the page makes of the same. */
export interface Row {
  readonly what: string;
  readonly printed: number;
  readonly ours: number;
  /** How far ours may be from it. */
  readonly within: number;
}

/** What was read in one reference, and held against the page. */
export interface Reference {
  readonly citation: string;
  /** What of it was really looked at. */
  readonly seen: string;
  /**
   * `result`: printed there, and worked out here · `carried over`: printed there, and kept here as a figure ·
   * `formula`: worked from the formula printed there, so no value that was read.
   */
  readonly kind: 'result' | 'carried over' | 'formula';
  /** Why ours may be that far off. */
  readonly tolerance: string;
  readonly rows: readonly Row[];
}

/** A row where both may differ by a share of what is printed. */
export function withinShare(what: string, printed: number, ours: number, share: number): Row {
  return { what, printed, ours, within: share * Math.abs(printed) };
}

/** A row of a printed range: ours must lie in it. */
export function inRange(what: string, low: number, high: number, ours: number): Row {
  return { what: `${what}, ${low} to ${high}`, printed: (low + high) / 2, ours, within: (high - low) / 2 };
}

/** A row of a figure that is kept as printed. */
export function kept(what: string, printed: number, ours: number): Row {
  return { what, printed, ours, within: 1e-9 * Math.max(Math.abs(printed), 1) };
}
