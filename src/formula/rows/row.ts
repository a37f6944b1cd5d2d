import type { Kind } from '../../measure/units';
import type { Settled } from '../composition/settled';
import type { Reduced, Stages } from '../models/milk';
import type { Fixed } from '../recipe/coefficients';
import type { ChoiceRowId, IntermediateId, NumericRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import type { Plan } from '../recipe/sizing';

/** Whatever has a number: a row of the sheet, or an intermediate that rows share. */
export type TermId = NumericRowId | IntermediateId;

/** What a rule may see. Values are in base units; a value that could not be had is NaN inside the engine only. */
export interface Access extends Fixed {
  readonly settled: Settled;
  readonly plan: Plan;
  /** The value of a row or intermediate. */
  of(id: TermId): number;
  /** The same by its slot. */
  at(slot: number): number;
  /** What was typed into a row, in its own unit; NaN where nothing readable was. */
  typed(id: NumericRowId): number;
  /** The batch's mass balance with only the water open, and at the water ratio in effect; null where it gels. */
  reduced(): Reduced;
  stages(): Stages | null;
  /** Records a problem and gives NaN, so that whatever is fed by this waits for it. */
  fail(problem: Problem): number;
}

/**
 * One way a number comes about: a formula as the working writes it, which is what is reckoned too (`expression.ts`); a
 * formula whose result is held against something; or code, of which `told/` has the formula.
 */
export type Way = string | GuardedFormula | ((x: Access) => number);

export interface GuardedFormula {
  readonly formula: string;
  /** What stands in place of what the formula gives: mostly that, or a problem where it can't be. */
  readonly guard: (x: Access, value: number) => number;
}

/** By name; the first is the usual one. */
export type Ways = Readonly<Record<string, Way>>;

/** Which food's weight per volume turns a typed cup into grams, or a typed mass into a volume. */
export type Weighing = 'source' | 'sweetener' | 'cane' | 'grains' | 'water' | 'milk';

export interface NumericRow {
  readonly label: string;
  /** What it measures; its base unit follows from the kind (g, mL, cm, °C, h, g/g, g/L, %). */
  readonly kind: Kind;
  /** Its unit where that is not the base unit of the kind; only for the working. */
  readonly unit?: string;
  readonly ways: Ways;
  /** `amount`: resizes · `rate`: changes the recipe · `mass`: a rate by its mass · `aside`: feeds nothing · `measured`, `never`. */
  readonly typed: 'amount' | 'rate' | 'mass' | 'aside' | 'measured' | 'never';
  readonly weighing?: Weighing;
  /** Asks for what it holds to be weighed, so that a plain ounce is a weight though the row is a volume. */
  readonly weighed?: true;
  /** The row that a share typed here is a share of. */
  readonly shareOf?: NumericRowId;
  /** A share typed here is one of the weight of the milk. */
  readonly ofMilk?: true;
  /** A weight typed here is what goes into each bottle, so that another bottle is filled with the same. */
  readonly inEach?: 'bottle';
  readonly range: { readonly least: number; readonly most: number; readonly whole?: true; readonly zero?: true };
  /** Refuses a typed value that this recipe cannot take. */
  readonly check?: (x: Access, value: number) => Problem | null;
  /** Why this source or recipe has no such quantity; its sentence is in `words.ts`. */
  readonly absent?: (x: Access) => Absence | null;
  /** The intermediates between which its value lies, where it is never one number. */
  readonly bounds?: { readonly low: IntermediateId; readonly high: IntermediateId };
  /** The range that is usual for it, in base units, outside which the sheet speaks up. */
  readonly usual?: (x: Access) => { readonly low: number; readonly high: number } | null;
}

export interface ChoiceRow {
  readonly label: string;
}

export type Absence =
  | 'notSoaked'
  | 'soaksInBlendingWater'
  | 'poured'
  | 'noPulp'
  | 'noBlending'
  | 'noSweetener'
  | 'refusedSweetener'
  | 'measuredOnly'
  | 'noLimit'
  | 'noBottle';

export type NumericRows = Readonly<Record<NumericRowId, NumericRow>>;
export type ChoiceRows = Readonly<Record<ChoiceRowId, ChoiceRow>>;
