import type { FoodKey, FoodPart, OwnFood } from '../../formula/foods/food-keys';
import type { CupStandardId } from '../../measure/units';
import type { JarId } from '../../reference/jars';
import type { AmountRead } from './amount';
import type { IngredientProblem, LineProblem } from './problem';

/** How the cook who pastes a recipe measures and writes. */
export interface Habits {
  readonly cups: CupStandardId;
  readonly decimalComma: boolean;
  readonly ownFoods?: readonly OwnFood[];
}

/** An amount as written, both ends the same where it is one figure; g, mL or pieces. */
export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** The food that words were taken for; `key` null where it is in no table. */
export type FoodGuess = FoodPart & {
  readonly key: FoodKey | null;
  readonly name: string;
  /** The cut or packing named, such as "sliced" or "packed". */
  readonly form: string | null;
  /** Whether nothing in the words speaks against the guess. */
  readonly sure: boolean;
  /** Water that soaks and is poured away. */
  readonly soaking: boolean;
};

export interface ReadIngredient {
  readonly text: string;
  readonly amount: Ends | null;
  readonly kind: 'mass' | 'volume' | 'count';
  /** The unit as written, "" for pieces. */
  readonly unitText: string;
  readonly modifiers: readonly string[];
  /** A weight that the text gives beside a measure, g, or beside a weight the measure, mL. */
  readonly statedMass: Ends | null;
  readonly statedVolume: Ends | null;
  readonly food: FoodGuess | null;
  /** What a plain ounce was taken for, where one was written, or that a can without a size is the usual one. */
  readonly assumed: 'fluidOunce' | 'weightOunce' | 'usualCan' | null;
  /** Whether it is for something else than the milk with its grains: a second ferment, serving, another choice. */
  readonly aside: boolean;
  /** Whether the cook has said that it is no ingredient. */
  readonly dismissed: boolean;
  readonly problem: IngredientProblem | null;
  /** What it was made of, so that it can be made anew of another food or amount. */
  readonly asRead: { readonly amount: AmountRead | null; readonly words: string };
}

/** A jar the text names, or how much it says that it makes; mL. */
export interface JarHint {
  readonly what: 'jar' | 'makes';
  readonly volume: number;
  readonly id: JarId | null;
}

export interface RecipeLine {
  readonly text: string;
  readonly kind: 'ingredient' | 'method' | 'heading' | 'blank' | 'unread';
  readonly ingredients: readonly ReadIngredient[];
  readonly jar: JarHint | null;
  /** Why an unread line was not read. */
  readonly why: LineProblem | null;
  /** Read out of a sentence, in which amounts are often said again. */
  readonly prose: boolean;
  /** Amounts in a sentence that are not counted, as a line of the list gives that food. */
  readonly again: readonly string[];
}

/** A pasted recipe: every line of it, in order, so that joined by line ends they are the text again. */
export interface RecipeText {
  readonly lines: readonly RecipeLine[];
}
