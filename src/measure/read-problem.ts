import type { Kind } from './units';

/** What a text may mean, each said as a text that can mean only that. */
type Question = { readonly readings: readonly string[] };

/** What each problem needs beyond its place, so that its sentence can say what to do. */
type Parameters = {
  empty: object;
  tooLong: { readonly limit: number };
  equalsSign: object;
  noNumber: object;
  /** A number that has marks in places where no number has them, such as 1/2/3. */
  malformedNumber: object;
  divisionByZero: object;
  /** A comma that is neither before decimals nor parts groups of three. */
  unclearComma: { readonly decimalComma: boolean };
  /** The same of points, such as 1.2.3. */
  unclearPoint: object;
  /** A number whose one mark may be before decimals or part thousands, such as 1,250 and 1.250. */
  eitherNumber: Question;
  /** A bare number in a row where cooks use several units, such as cups and ounces. */
  eitherUnit: Question;
  /** Water to source or source to water, such as 5:1. */
  eitherWay: Question;
  /** Two numbers with a dash or "to" between them. */
  range: object;
  beyondNumbers: object;
  unknownUnit: object;
  /** A number without a unit after one that has a unit, as in "1 lb 3". */
  missingUnit: object;
  wrongKind: { readonly found: Kind };
  mixedKinds: { readonly found: Kind; readonly earlier: Kind };
  /** "2 cups × 3 cups". */
  twoUnits: object;
  /** A sum or product of temperatures or of acidities. */
  noArithmetic: { readonly found: Kind };
  heaped: object;
  unexpected: object;
};

export type ReadProblemCode = keyof Parameters;

/**
 * Why a text could not be read. `at` is the place in what was typed (counted as a text field counts), `text` the
 * piece that offends, `typed` the whole (cut short where it is over-long), `wanted` the kind the row asks for.
 */
export type ReadProblem<C extends ReadProblemCode = ReadProblemCode> = {
  readonly [P in C]: {
    readonly code: P;
    readonly at: number;
    readonly text: string;
    readonly typed: string;
    readonly wanted: Kind;
  } & Parameters[P];
}[C];

/** A problem before its place is traced back to what was typed: offsets are into the normalised text. */
export type Fault = {
  readonly [P in ReadProblemCode]: { readonly code: P; readonly from: number; readonly to: number } & Parameters[P];
}[ReadProblemCode];
