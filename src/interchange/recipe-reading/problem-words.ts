import type { ReadProblemCode } from '../../measure/read-problem';
import { writeMetric, writeNumber } from '../../measure/write-quantity';
import type { RecipeProblem, RecipeProblemCode } from './problem';

type Sentence<C extends RecipeProblemCode> = (
  problem: Extract<RecipeProblem, { readonly code: C }>,
  decimalComma: boolean,
) => string;

const missing = {
  source: 'No nut, seed or coconut was found. Choose one, or say what a line is of.',
  water: 'No water was found, so the batch takes the usual ratio.',
  sweetener: 'No sweetener was found, so the batch takes the usual addition.',
  grains: 'No grains and no starter were found. Choose one; the batch takes the usual dose of it.',
  jar: 'No jar was found, so the batch keeps the one it starts with.',
} as const;

const faults: { readonly [C in ReadProblemCode]?: string } = {
  divisionByZero: 'it divides by zero',
  unclearComma: 'its commas are where no number has them',
  unclearPoint: 'its points are where no number has them',
  beyondNumbers: 'it is too large',
};

const sentences: { readonly [C in RecipeProblemCode]: Sentence<C> } = {
  heaped: ({ word }) =>
    `A ${word} measure is anything from 1 ¼ to 3 times a level one. Say how many level ones it is, or how many grams.`,
  noMeasure: ({ word }) => `“${word}” is no amount that can be weighed.`,
  noAmount: () => 'No amount is given.',
  rate: () => 'It depends on how much there is of the rest. Type how much of it goes into this batch.',
  noSize: ({ container }) => `The size of the ${container} is not given. Add it, such as “(400 mL)”.`,
  unknownFood: ({ name }) =>
    name === ''
      ? 'It does not say of what.'
      : `“${name}” is not in the tables. Choose the food it is, or weigh a cup of it.`,
  noCupWeight: ({ food }) => `No weight of a cup of ${food} is published. Give grams, or weigh a cup once.`,
  noPieceWeight: ({ food }) => `No weight of one piece of ${food} is published. Give grams or a cup.`,
  amountUnread: ({ text }) => `“${text}” can’t be read as an amount. Type it as “150 g” or “1 ½ cups”.`,
  lineTooLong: ({ limit }) => `It is longer than ${limit} characters, so it was kept as text.`,
  beyondLimit: ({ lines, characters }, comma) =>
    `Only the first ${writeNumber(lines, 0, comma)} lines or ${writeNumber(characters, 0, comma)} characters are read. The rest is kept as text.`,
  eitherNumber: ({ text, readings }) =>
    `“${text}” may be ${readings.map(({ number }) => number).join(' or ')}. Say which: until then it is not counted.`,
  badNumber: ({ fault, text }) => `“${text}” can’t be read as a number${faults[fault] ? `: ${faults[fault]}` : ''}.`,
  nothingRead: () => 'No amount and no food that is known were found in it.',
  missing: ({ what }) => missing[what],
  middleTaken: ({ text }) => `“${text}” leaves a choice; the middle is taken.`,
  notWeighed: ({ text }) => `“${text}” could not be weighed, so it is not put into the batch.`,
  severalSources: ({ kept, others }) => `A batch has one source. ${kept} is taken; ${others} is left among the extras.`,
  severalGrains: ({ kept }) => `A batch has one culture. ${kept}: this is taken.`,
  unsureFood: ({ text, name }) => `“${text}” was taken for ${name}. Change it if that is wrong.`,
  refusedSweetener: ({ name, reason }) => `${name} is left among the extras. ${reason}`,
  soakingWater: ({ text }) =>
    `“${text}” was taken for soaking water, which is poured away and worked out by the sheet.`,
  usualCan: ({ text, each }, comma) =>
    `“${text}” gives no size, so a can was taken for the usual ${writeMetric(each, 'volume', comma)}. Change it if yours holds another amount.`,
  aside: ({ text }) => `“${text}” is for later or for choice, so it is left among the extras.`,
  jarNotListed: ({ volume }, comma) =>
    `There is no jar of ${writeMetric(volume, 'volume', comma)} in the list. Choose one, or type your own.`,
  makes: ({ said, milk }, comma) =>
    `The text says it makes ${writeMetric(said, 'volume', comma)}. These amounts give ${writeMetric(milk, 'volume', comma)} of milk.`,
};

/** What to do about something in a pasted recipe, in a plain sentence. */
export function describeRecipeProblem(problem: RecipeProblem, decimalComma = false): string {
  return say(problem.code, problem, decimalComma);
}

function say<C extends RecipeProblemCode>(code: C, problem: RecipeProblem, decimalComma: boolean): string {
  return isOf(code, problem) ? sentences[code](problem, decimalComma) : '';
}

function isOf<C extends RecipeProblemCode>(
  code: C,
  problem: RecipeProblem,
): problem is Extract<RecipeProblem, { readonly code: C }> {
  return problem.code === code;
}
