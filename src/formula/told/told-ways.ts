import type { Telling } from '../figure';
import type { TermId } from '../row';

/** How each way of some terms is told. It is apart from the rules, which work out the sheet before anybody asks why. */
export type ToldWays = Readonly<Partial<Record<TermId, Readonly<Record<string, Telling>>>>>;
