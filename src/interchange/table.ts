import Papa from 'papaparse';

/** The most lines and columns of a pasted table that are looked at; a sheet has no use for more. */
const mostLines = 200;
const mostColumns = 2000;

/** Tab-separated text, as a spreadsheet puts on the clipboard, in lines of cells. Never throws; quoted cells are taken apart. */
export function parseTable(text: string): readonly (readonly string[])[] {
  const { data } = Papa.parse<string[]>(text, { delimiter: '\t', preview: mostLines });
  return data.map((line) => line.slice(0, mostColumns));
}
