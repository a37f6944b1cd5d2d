import type { Coefficient, Origin } from '../../reference/origins';
import type { Access } from '../rows/row';
import { describeCoefficient } from '../words/origin-words';

/** How a number came about: in words, and as a formula with `{id}` for each number in it. */
export interface Telling {
  readonly words: string;
  /** Empty where words say it all. */
  readonly formula: string;
  /** What belongs to this formula alone, by its name there. All else is a term, a coefficient or a shared figure. */
  readonly parts?: Readonly<Record<string, Figure>>;
  /** Where the formula itself is from, or the estimate that it makes. */
  readonly by?: Origin;
}

/** A number that goes into a working without being a term or a coefficient: of a table, or worked out of others. */
export interface Figure {
  readonly symbol: string;
  readonly label: string;
  readonly unit: string;
  readonly value: number;
  /** Where it is from, for one of a table; null for what is worked out. */
  readonly origin: ((decimalComma: boolean) => string) | null;
  readonly told: Telling | null;
}

/** A figure that is only made where a working names it. */
export type FigureMaker = (x: Access) => Figure;

/** A figure as its table has it. */
export function ofTable(symbol: string, label: string, coefficient: Coefficient): Figure {
  const { value, unit } = coefficient;
  return { symbol, label, unit, value, origin: (comma) => describeCoefficient(coefficient, comma), told: null };
}

/** A bare number of a table, with the origin that it shares with others. */
export function entry(symbol: string, label: string, value: number, unit: string, origin: Origin): Figure {
  return ofTable(symbol, label, { value, unit, origin });
}

/** An end of what a figure may be, as its table has it; where it has none, the figure itself. */
export function endOf(symbol: string, label: string, coefficient: Coefficient, end: 'low' | 'high'): Figure {
  const { value, unit, origin } = coefficient;
  return entry(symbol, label, coefficient[end] ?? value, unit, origin);
}

/** A figure worked out of others. */
export function workedOut(symbol: string, label: string, unit: string, value: number, told: Telling): Figure {
  return { symbol, label, unit, value, origin: null, told };
}
