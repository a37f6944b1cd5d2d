import type { ReadProblem, ReadProblemCode } from './read-problem';
import type { Kind } from './units';
import { withoutTurns } from './without-turns';

const kindNames = {
  mass: 'a weight',
  volume: 'a volume',
  length: 'a length',
  temperature: 'a temperature',
  temperatureDifference: 'a difference in temperature',
  time: 'a time',
  pressure: 'a pressure',
  ratio: 'a ratio by weight',
  concentration: 'an amount per litre',
  share: 'a share in percent',
  count: 'a plain number',
  acidity: 'a pH',
} as const satisfies Record<Kind, string>;

const examples = {
  mass: 'a number and a unit, such as 170 g',
  volume: 'a number and a unit, such as 512 mL or 2 cups',
  length: 'a number and a unit, such as 2.5 cm or 1 in',
  temperature: 'a number and a unit, such as 21 °C or 70 °F',
  temperatureDifference: 'a number and a unit, such as 3 °C',
  time: 'a number and a unit, such as 12 h or 10 min',
  pressure: 'a number and a unit, such as 2 bar or 30 psi',
  ratio: 'a number, such as 4.5',
  concentration: 'a number and a unit, such as 50 g/L',
  share: 'a number in percent, such as 5 %',
  count: 'a number, such as 2',
  acidity: 'a number, such as 4.4',
} as const satisfies Record<Kind, string>;

/** Kinds of which nobody has a thousand, each with a number that has decimals. */
const small: Readonly<Partial<Record<Kind, string>>> = {
  temperature: '21.5',
  temperatureDifference: '2.5',
  acidity: '4.5',
};

function oneOf(readings: readonly string[]): string {
  return [readings.slice(0, -1).join(', '), ...readings.slice(-1)].join(' or ');
}

type Words = { readonly [C in ReadProblemCode]: (problem: ReadProblem<C>) => string };

const words = {
  empty: ({ wanted }) => `Nothing is written here yet. Write ${examples[wanted]}.`,
  tooLong: ({ limit, wanted }) => `That is longer than ${limit} characters. Write just ${examples[wanted]}.`,
  equalsSign: ({ wanted }) =>
    `This sheet does not need an equals sign: it works things out by itself. Write ${examples[wanted]}.`,
  noNumber: ({ text, typed, wanted }) =>
    `Can’t find a number in “${text === '' ? typed : text}”. Write ${examples[wanted]}.`,
  malformedNumber: ({ text }) => `Can’t read “${text}” as one number. Write it plainly, such as 1.5 or 1 1/2.`,
  divisionByZero: ({ text }) => `“${text}” divides by zero. Write a fraction with another number below the line.`,
  unclearComma: ({ text, decimalComma, wanted }) =>
    decimalComma
      ? `Can’t tell what the comma in “${text}” means. Write one comma before the decimals, such as 1,5.`
      : `Can’t tell what the comma in “${text}” means. Write a point before the decimals, such as ${small[wanted] ?? '1.5'}.`,
  unclearPoint: ({ text }) =>
    `“${text}” has points in places where no number has them. Write one point before the decimals, such as 1.5.`,
  eitherNumber: ({ typed, readings }) => `“${typed}” may be ${oneOf(readings)}. Write the one you mean.`,
  eitherUnit: ({ typed, readings }) => `“${typed}” may be ${oneOf(readings)}. Write the unit too.`,
  eitherWay: ({ typed, readings }) =>
    `“${typed}” may be ${oneOf(readings)} of water to 1 of the nut or seed. Write 1:5 for five times as much water.`,
  range: ({ text }) => `“${text}” is a range, and this takes one amount. Write the number you want to use.`,
  beyondNumbers: ({ text }) => `“${text}” is too large or too small to work with. Write an amount that fits a kitchen.`,
  unknownUnit: ({ typed, wanted }) => `Can’t read “${typed}”. Write ${examples[wanted]}.`,
  missingUnit: ({ text }) => `Which unit does “${text}” have? Write the unit after it too.`,
  wrongKind: ({ text, found, wanted }) =>
    `“${text}” measures ${kindNames[found]}, and this is ${kindNames[wanted]}. Write ${examples[wanted]}.`,
  mixedKinds: ({ text, found, earlier }) =>
    `Can’t add “${text}”, ${kindNames[found]}, to ${kindNames[earlier]}. Write all of it in units of one kind.`,
  twoUnits: ({ typed }) => `Only one of the numbers multiplied in “${typed}” can have a unit. Write it as 2 × 1 qt.`,
  noArithmetic: ({ found }) =>
    `It makes no sense to add or multiply ${kindNames[found]}. Write the one number you want.`,
  heaped: ({ text }) => `Nobody agrees on what “${text}” holds. Write level spoons and cups, or weigh it in grams.`,
  unexpected: ({ text, typed }) => `Can’t read “${text}” in “${typed}”. Write only the amount and its unit.`,
} satisfies Words;

/** The sentence that says what is wrong with the text and what to write instead; one for every code. */
export function describeReadProblem<C extends ReadProblemCode>(problem: ReadProblem<C>): string {
  const table: Words = words;
  return withoutTurns(table[problem.code](problem));
}
