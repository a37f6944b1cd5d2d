import Papa from 'papaparse';

/** The most of a pasted table that is looked at; a sheet has no use for more. */
const mostCharacters = 1_000_000;
const mostLines = 200;
const mostColumns = 2000;

export interface Table {
  readonly lines: readonly (readonly string[])[];
  /** Whether there was more of it than is looked at, by lines, columns or characters. */
  readonly isCut: boolean;
}

/**
 * Tab-separated text, as a spreadsheet puts on the clipboard, in lines of cells. Never throws; quoted cells are taken
 * apart. Of a long text the first 1,000,000 characters are looked at, of these the first 200 lines and 2000 columns.
 */
export function parseTable(text: string): Table {
  const { data } = Papa.parse<string[]>(text.slice(0, mostCharacters), { delimiter: '\t', preview: mostLines + 1 });
  const lines = data.slice(0, mostLines).map((line) => line.slice(0, mostColumns));
  const isCut =
    text.length > mostCharacters || data.length > mostLines || data.some((line) => line.length > mostColumns);
  return { lines, isCut };
}
