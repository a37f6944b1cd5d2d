import type { GrainKind } from '../../reference/grains';
import type { JarId } from '../../reference/jars';

/** How long a wait may last, in whole minutes: low ≤ likely ≤ high. */
export interface Wait {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** So much of a thing that a batch keeps busy, and what there is of it; null where that is not known. */
export interface Held<Kind extends string> {
  readonly kind: Kind;
  readonly name: string;
  readonly need: number;
  readonly have: number | null;
}

/** For how many whole days a batch is at its best, and after how many it is used up, from the day of straining on. */
export interface Keeps {
  readonly best: number;
  readonly last: number;
}

/** What a plan has to know of a batch. All times are whole minutes; those of handwork are not negative. */
export interface Making {
  readonly batch: string;
  readonly name: string;
  /** Putting it to soak, and the soak; null for what goes straight into the blender. */
  readonly soak: { readonly minutes: number; readonly wait: Wait } | null;
  /** From the source to a covered jar. */
  readonly make: number;
  /** The first ferment; or why there is no time for it. */
  readonly ferment: { readonly wait: Wait } | { readonly why: string };
  readonly taste: number;
  readonly strain: number;
  /** Bottling, the second ferment, and putting the bottles into the fridge; null where there is none. */
  readonly second: { readonly bottle: number; readonly wait: Wait; readonly fridge: number } | null;
  /** From the fridge door to the first glass; as long as it keeps, it may only grow. */
  readonly chill: Wait;
  /** Until when it is at its best and has to be used up, from straining on; null where that is not known. */
  readonly keep: Keeps | null;
  /**
   * How often it is looked at before it is given up: on so many days of 24 h in the jar for a carton opened for this batch,
   * once for a slow homemade milk. Null where it is not.
   */
  readonly checks: number | null;
  /** By how many minutes in the jar a homemade milk must have turned, to which its straining is held too; else null. */
  readonly turnsBy: number | null;
  /** Null where a starter stays in the drink: none of it is wanted again. */
  readonly grains: Held<GrainKind> | null;
  readonly jars: Held<JarId>;
}
