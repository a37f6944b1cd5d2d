import type { TermId } from '../../rows/row';

/** How a way is told: in words, and where code works it out by a formula as well; else its own is shown. */
export interface ToldWay {
  readonly words: string;
  /** With `{id}` for each number in it. */
  readonly formula?: string;
}

/** How each way of some terms is told. It is apart from the rules, which work out the sheet before anybody asks why. */
export type ToldWays = Readonly<Partial<Record<TermId, Readonly<Record<string, ToldWay>>>>>;
