import type { FoodKey, FoodPart, OwnFood } from '../../formula/food-keys';
import type { CupStandardId } from '../../measure/units';
import type { JarId } from '../../reference/jars';
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
  /** What a plain ounce was taken for, where one was written. */
  readonly assumed: 'fluidOunce' | 'weightOunce' | null;
  readonly problem: IngredientProblem | null;
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
}

/** A pasted recipe: every line of it, in order, so that joined by line ends they are the text again. */
export interface RecipeText {
  readonly lines: readonly RecipeLine[];
}
