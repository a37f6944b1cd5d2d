/** The most of a pasted table that is looked at; a sheet has no use for more. */
const mostCharacters = 1_000_000;
const mostLines = 200;
const mostColumns = 2000;

export interface Table {
  readonly lines: readonly (readonly string[])[];
  /** Whether there was more of it than is looked at, by lines, columns or characters. */
  readonly isCut: boolean;
}

/** What parts the cells of a line. */
export type Separator = '\t' | ',' | ';' | '|';

/**
 * Tab-separated text, as a spreadsheet puts on the clipboard, or text with another separator, in lines of cells. Never
 * throws; quoted cells are taken apart. Of a long text the first 1,000,000 characters are looked at, of these the first 200 lines and 2000 columns.
 */
export function parseTable(text: string, separator: Separator = '\t'): Table {
  const read = readLines(text.slice(0, mostCharacters).replace(/^\uFEFF/, ''), mostLines + 1, separator);
  const lines = read.slice(0, mostLines).map((line) => line.slice(0, mostColumns));
  const isCut =
    text.length > mostCharacters || read.length > mostLines || read.some((line) => line.length > mostColumns);
  return { lines, isCut };
}

/** The first lines of a text by RFC 4180, with any separator for its commas; a line ends with CR LF, LF or CR. */
function readLines(text: string, most: number, separator: Separator): readonly (readonly string[])[] {
  const lines: string[][] = [];
  let line: string[] = [];
  let at = 0;
  while (text !== '' && lines.length < most) {
    // Where people write the separators themselves, they put a space behind them.
    const from = separator === '\t' ? at : skipSpaces(text, at);
    const [cell, end] = text[from] === '"' ? readQuoted(text, from + 1, separator) : readPlain(text, at, separator);
    line.push(cell);
    at = end + 1;
    if (text[end] === separator) continue;
    lines.push(line);
    line = [];
    if (end >= text.length) break;
    if (text[end] === '\r' && text[at] === '\n') at += 1;
  }
  return lines;
}

/** A cell, and the place of what ends it. */
type Read = readonly [cell: string, end: number];

function readPlain(text: string, from: number, separator: Separator): Read {
  let end = from;
  while (end < text.length && !isEnd(text[end], separator)) end += 1;
  return [text.slice(from, end), end];
}

/**
 * Two quotes are one of the cell, and one ends it. One that neither a separator nor a line end follows is no end either,
 * and stays; a quote that is never closed holds all the rest.
 */
function readQuoted(text: string, from: number, separator: Separator): Read {
  const pieces: string[] = [];
  let start = from;
  for (let quote = text.indexOf('"', start); quote !== -1; quote = text.indexOf('"', start)) {
    pieces.push(text.slice(start, quote));
    const after = skipSpaces(text, quote + 1);
    if (after >= text.length || isEnd(text[after], separator)) return [pieces.join(''), after];
    pieces.push('"');
    start = quote + (text[quote + 1] === '"' ? 2 : 1);
  }
  return [pieces.join('') + text.slice(start), text.length];
}

function isEnd(character: string | undefined, separator: Separator): boolean {
  return character === separator || character === '\r' || character === '\n';
}

function skipSpaces(text: string, from: number): number {
  let at = from;
  while (text[at] === ' ') at += 1;
  return at;
}
