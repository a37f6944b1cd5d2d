import type { ReadProblemCode } from '../../measure/read-problem';

/** Why an ingredient has no weight, or no amount; the rest of it stands. */
export type IngredientProblem =
  | { readonly code: 'heaped'; readonly word: string }
  | { readonly code: 'noMeasure'; readonly word: string }
  | { readonly code: 'noAmount' }
  | { readonly code: 'rate' }
  | { readonly code: 'noSize'; readonly container: string }
  | { readonly code: 'unknownFood'; readonly name: string }
  | { readonly code: 'noCupWeight'; readonly food: string }
  | { readonly code: 'noPieceWeight'; readonly food: string }
  | { readonly code: 'amountUnread'; readonly text: string };

/** Why a line is kept as text only. */
export type LineProblem =
  | { readonly code: 'lineTooLong'; readonly limit: number }
  | { readonly code: 'beyondLimit'; readonly lines: number; readonly characters: number }
  /** A number that may be read two ways; each with the line as it would be written for just that one. */
  | {
      readonly code: 'eitherNumber';
      readonly text: string;
      readonly readings: readonly { readonly number: string; readonly line: string }[];
    }
  | { readonly code: 'badNumber'; readonly fault: ReadProblemCode; readonly text: string }
  | { readonly code: 'nothingRead' };

/** What is worth knowing before a batch is made of the text. */
export type PlanRemark =
  | { readonly code: 'missing'; readonly what: 'source' | 'water' | 'sweetener' | 'grains' | 'jar' }
  | { readonly code: 'middleTaken'; readonly text: string }
  | { readonly code: 'notWeighed'; readonly text: string }
  | { readonly code: 'severalSources'; readonly kept: string; readonly others: string }
  | { readonly code: 'severalGrains'; readonly kept: string }
  | { readonly code: 'unsureFood'; readonly text: string; readonly name: string }
  | { readonly code: 'refusedSweetener'; readonly name: string; readonly reason: string }
  | { readonly code: 'soakingWater'; readonly text: string }
  | { readonly code: 'usualCan'; readonly text: string; readonly each: number }
  | { readonly code: 'aside'; readonly text: string }
  | { readonly code: 'jarNotListed'; readonly volume: number }
  | { readonly code: 'makes'; readonly said: number; readonly milk: number };

export type RecipeProblem = IngredientProblem | LineProblem | PlanRemark;
export type RecipeProblemCode = RecipeProblem['code'];
