import type { Formulation } from '../formula/engine/formulate';
import type { RowId } from '../formula/recipe/order';
import { stepsOf } from '../formula/steps/steps';
import { bothUnits } from '../formula/words/both-units';
import { type Kitchen, type Written, writeRow, writeValue } from '../formula/words/write-row';
import { withPlainSpaces } from './plain-spaces';

interface HowToStep {
  readonly '@type': 'HowToStep';
  readonly name: string;
  readonly text: string;
}

/** A recipe in the vocabulary of schema.org, as programs that read web pages take it. */
export interface RecipeMarkup {
  readonly '@context': 'https://schema.org';
  readonly '@type': 'Recipe';
  readonly name: string;
  readonly recipeIngredient: readonly string[];
  readonly recipeInstructions: readonly HowToStep[];
  readonly recipeYield?: string;
  /** The soak: what has to be ready before the work begins. */
  readonly prepTime?: string;
  readonly cookTime?: string;
}

/**
 * A batch as a schema.org Recipe, amounts in both metric and US kitchen measure. Times stand in it only where they are
 * known: the soak and a heat step. How long the whole takes is a range that depends on the room, and no diet is claimed.
 */
export function recipeMarkup(formulation: Formulation, name: string, kitchen: Kitchen): RecipeMarkup {
  const { recipe, rows } = formulation;
  const amount = (id: RowId): string => {
    const written = writeRow(formulation, id, kitchen);
    return written === null ? '' : both(written, kitchen);
  };
  const { value: drink } = rows.drinkVolume;
  const { value: soak } = rows.soakTime;
  return {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name,
    recipeIngredient: ingredientsOf(formulation, kitchen),
    recipeInstructions: stepsOf(formulation, amount, kitchen).map(({ title, text, perJar }) => ({
      '@type': 'HowToStep',
      name: withPlainSpaces(title),
      text: withPlainSpaces(perJar === undefined ? text : `${text} ${perJar}`),
    })),
    ...(typeof drink === 'number' ? { recipeYield: `${amount('drinkVolume')} of kefir` } : {}),
    ...(typeof soak === 'number' && soak > 0 ? { prepTime: writeDuration(60 * soak) } : {}),
    ...(recipe.heat && recipe.heat.minutes > 0 ? { cookTime: writeDuration(recipe.heat.minutes) } : {}),
  };
}

/** The markup as the text of a file of its own. */
export function writeMarkupFile(markup: RecipeMarkup): string {
  return `${JSON.stringify(markup, null, 2)}\n`;
}

/** The markup as a piece to put into a web page. No text in it can end it, or begin another. */
export function writeMarkupSnippet(markup: RecipeMarkup): string {
  const safe = writeMarkupFile(markup).replace(/[<>&\u2028\u2029]/g, (sign) => {
    return `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
  return `<script type="application/ld+json">\n${safe}</script>\n`;
}

function ingredientsOf(formulation: Formulation, kitchen: Kitchen): readonly string[] {
  const { choices, rows } = formulation;
  const item = (id: RowId, food: string): readonly string[] => {
    const written = writeRow(formulation, id, kitchen);
    return written === null || rows[id].value === 0 ? [] : [`${both(written, kitchen)} ${food}`];
  };
  const { value: sweet } = rows.sweetenerMass;
  return [
    ...item('sourceMass', choices.source.plural),
    ...(choices.source.soak?.drained ? item('soakWater', 'water for soaking') : []),
    ...item('blendWater', 'water'),
    ...choices.sweetener.flatMap(({ entry, share }) => {
      const mass = typeof sweet === 'number' ? sweet * share : 0;
      if (!(mass > 0)) return [];
      const weight = entry.spoon === null ? null : entry.spoon.grams / entry.spoon.millilitres;
      return [`${both(writeValue(mass, 'mass', weight, kitchen), kitchen)} ${entry.name.toLowerCase()}`];
    }),
    ...item('grainMass', choices.grain.name.toLowerCase()),
  ];
}

function both(written: Written, { leads }: Kitchen): string {
  return withPlainSpaces(bothUnits(written, leads));
}

/** Minutes as an ISO 8601 duration, to the minute. */
function writeDuration(minutes: number): string {
  const whole = Math.max(1, Math.round(minutes));
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  return `PT${hours > 0 ? `${hours}H` : ''}${rest > 0 || hours === 0 ? `${rest}M` : ''}`;
}
