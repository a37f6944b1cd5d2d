import type { Grain } from '../../reference/grains';
import type { Jar } from '../../reference/jars';
import type { Coefficient } from '../../reference/origins';
import type { Source } from '../../reference/sources';
import type { Sweetener } from '../../reference/sweeteners';

/** What the recipe's ids stand for. */
export interface Choices {
  readonly jar: Jar;
  readonly source: Source;
  readonly grain: Grain;
  readonly sweetener: readonly { readonly entry: Sweetener; readonly share: number }[];
}

/** To which choice a coefficient belongs: a correction holds for that choice alone, or for the whole kitchen. */
type Owner = 'kitchen' | 'vessel' | 'source' | 'grains';

export interface CoefficientDefinition {
  readonly owner: Owner;
  /** What may be typed for it: least and most, both allowed. */
  readonly least: number;
  readonly most: number;
  readonly find: (choices: Choices) => Coefficient;
}

/** A line of the table of coefficients. */
export function define(
  owner: Owner,
  { range }: { readonly range: { readonly least: number; readonly most: number } },
  find: CoefficientDefinition['find'],
): CoefficientDefinition {
  return { owner, ...range, find };
}
