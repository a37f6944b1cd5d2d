import type { NumericRowId, RowId } from './order';

/** How this batch is worked out: which row it is sized from, and the way each row that has a choice of ways takes. */
export interface Plan {
  readonly sizedFrom: RowId | 'jar';
  /** Typed values that count. The rest of what was typed could not be joined to these. */
  readonly accepted: ReadonlySet<NumericRowId>;
  readonly ways: Readonly<Partial<Record<NumericRowId, string>>>;
  /** What a typed value that could not be joined disagrees with. */
  readonly against: ReadonlyMap<NumericRowId, readonly NumericRowId[]>;
  /** What settles the water ratio, where two typed amounts do. */
  readonly joinedBy: 'milk' | 'drink' | 'fill' | null;
  /** Whether the mass of sweetener or grains is typed, so that it does not grow with the batch. */
  readonly sweetenerFixed: boolean;
  readonly grainsFixed: boolean;
  /** Whether the culture stays in the drink, as a starter does; grains are strained out. */
  readonly stays: boolean;
  /** Whether the added sugar is set as a total with the native sugar, g/L of milk. */
  readonly sugarBy: 'usual' | 'rate' | 'start' | 'mass' | 'none';
  /** Whether a typed headspace is the least to keep, rather than the very depth. */
  readonly depthIsLeast: boolean;
  readonly asksHeadspace: boolean;
}
