import type { DocumentProblem } from './read-document';

type Words = {
  readonly [C in DocumentProblem['code']]: (problem: Extract<DocumentProblem, { readonly code: C }>) => string;
};

const words: Words = {
  notADocument: () => 'It is not a sheet of batches.',
  newer: ({ version }) =>
    `It was made by a newer version of this page (${version}). Reload the page to get that version.`,
  wrongPart: ({ at }) =>
    at === '' ? 'It lacks its parts.' : `This part of it is not as it should be: ${shorten(at)}.`,
  prototypeKey: ({ at }) => `It has a name in it that no sheet has: ${shorten(at)}.`,
  tooMany: ({ at, most }) => `There is more in it than a sheet holds: “${shorten(at)}” has more than ${most} entries.`,
  tooMuch: () => 'There is more in it than any sheet holds.',
  tooDeep: () => 'It is nested deeper than any sheet is.',
};

const longest = 80;

function shorten(at: string): string {
  return at.length > longest ? `${at.slice(0, longest)}…` : at;
}

/** Why some data is no sheet, in plain words. */
export function describeDocumentProblem(problem: DocumentProblem): string {
  return say(problem.code, problem);
}

function say<C extends DocumentProblem['code']>(code: C, problem: DocumentProblem): string {
  return isOf(code, problem) ? words[code](problem) : '';
}

function isOf<C extends DocumentProblem['code']>(
  code: C,
  problem: DocumentProblem,
): problem is Extract<DocumentProblem, { readonly code: C }> {
  return problem.code === code;
}
