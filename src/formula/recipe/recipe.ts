import type { Kind } from '../../measure/units';
import type { CultureId } from '../../reference/grains';
import type { JarId } from '../../reference/jars';
import type { SourceId } from '../../reference/sources';
import type { SweetenerId } from '../../reference/sweeteners';
import type { MeasuredRowId, NumericRowId, StockId } from './order';

/** An amount in the base unit of its kind (g, mL, cm, °C, h …); null where something was typed that cannot be read. */
export interface Amount {
  readonly kind: Kind;
  readonly amount: number | null;
}

/** A typed cell. `use` says that a typed mass of sweetener or grains is what is on hand, so it sizes the batch; it says nothing elsewhere. */
export interface Given extends Amount {
  readonly row: NumericRowId;
  readonly use?: 'onHand';
}

/** A part of a blend of sweeteners, by share of the mass; the shares add up to 1. */
export interface SweetenerPart {
  readonly id: SweetenerId;
  readonly share: number;
}

/** An amount on hand, with the text it was typed as. */
export interface Stock extends Amount {
  readonly text: string;
}

/** A coefficient the user has corrected, by typing it or by keeping what was measured. */
export interface Yours {
  readonly value: number;
  readonly how: 'typed' | 'measured' | 'learned';
}

/** A heating step the user asks for; none is claimed safe. Temperature in °C, time in minutes. */
export interface HeatStep {
  readonly what: 'source' | 'milk';
  readonly temperature: number;
  readonly minutes: number;
}

/** All that a batch is worked out from: the choices, what was typed in the order of typing, and what was measured. */
export interface Recipe {
  readonly vessel: JarId;
  readonly source: SourceId;
  readonly sweetener: readonly SweetenerPart[];
  readonly grains: CultureId;
  readonly given: readonly Given[];
  readonly measured: Readonly<Partial<Record<MeasuredRowId, Amount>>>;
  /** By coefficient key, such as `almond.uptake` or `kitchen.blenderSize`. */
  readonly yours: Readonly<Record<string, Yours>>;
  readonly heat?: HeatStep | null;
  /** What a recipe has for the glass or besides, as written; nothing is worked out from it. */
  readonly extras?: readonly string[];
  /** Fruit or juice in each bottle, with the amount as typed: what the sugar typed for the bottles comes from. */
  readonly fruit?: { readonly name: string; readonly amount: string; readonly grams: number };
  /** Whose jar a jar of the cook’s own is: the batch’s id, so that two such jars have a shape each. */
  readonly jarOf?: string;
  /** What there is of it, as typed; the sheet speaks up where the batch takes more. */
  readonly onHand?: Readonly<Partial<Record<StockId, Stock>>>;
}
