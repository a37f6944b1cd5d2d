import { readLine } from './recipe-reading/read-line';
import { settleLines } from './recipe-reading/sections';
import type { Habits, RecipeLine, RecipeText } from './recipe-reading/shape';

export { type ByHand, isMeaning, keepByHand, type Meaning, takeByHand, tell } from './recipe-reading/by-hand';
export { describeRecipeProblem } from './recipe-reading/problem-words';
export type { FoodGuess, Habits, JarHint, ReadIngredient, RecipeLine, RecipeText } from './recipe-reading/shape';

export const mostCharacters = 200_000;
export const mostLines = 2000;

/** The text with every line end written as one line feed. */
export function normaliseLines(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

/**
 * Reads a pasted recipe line by line. Every line is kept as it was, so the lines joined are the normalised text again;
 * what lies beyond the limits is one last line, unread. Any text at all can be given; nothing throws.
 */
export function readRecipe(text: string, habits: Habits): RecipeText {
  const lines: RecipeLine[] = [];
  const whole = normaliseLines(text);
  let first = true;
  for (let from = 0; from <= whole.length; ) {
    const end = whole.indexOf('\n', from);
    const to = end < 0 ? whole.length : end;
    if (lines.length === mostLines || to > mostCharacters) {
      lines.push(keepRest(whole.slice(from)));
      break;
    }
    const line = readLine(whole.slice(from, to), first, habits);
    lines.push(line);
    if (line.kind !== 'blank') first = false;
    from = to + 1;
  }
  return { lines: settleLines(lines) };
}

/** The text with one of its lines written anew, the one at this place or else the first like it; else as it is. */
export function rewriteLine(text: string, place: number, old: string, line: string): string {
  const lines = normaliseLines(text).split('\n');
  const at = lines[place] === old ? place : lines.indexOf(old);
  return at < 0 ? text : lines.with(at, line).join('\n');
}

function keepRest(text: string): RecipeLine {
  const why = { code: 'beyondLimit', lines: mostLines, characters: mostCharacters } as const;
  return { text, kind: 'unread', ingredients: [], jar: null, why, prose: false, again: [] };
}
