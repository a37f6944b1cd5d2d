import type { Tables } from './tables';

/** A check of the tables that can be run on a planted fault as well as on the tables themselves. */
export interface Check {
  readonly name: string;
  /** The tables it reads; a fault elsewhere it can't see. */
  readonly reads: readonly (keyof Tables)[];
  /** What is wrong, each in a line; empty where all is well. */
  readonly faults: (tables: Tables) => readonly string[];
}
