import type { Kitchen } from '../batch/document/document';
import { longestName, mostKitchens } from '../batch/document/document-limits';
import { cleanName, cutText } from '../batch/document/plain-text';
import { type CellRead, type Habits, type KitchenField, readAnywhere, readField } from './class-words';
import { unguard } from './csv-file';
import { parseTable, type Separator } from './table';

/** A line of a pasted list as it was read. */
export interface KitchenLine {
  /** As typed. */
  readonly text: string;
  /** Null where anything in it was not understood. */
  readonly kitchen: Kitchen | null;
  /** What was not understood, each in a sentence that says what to do. */
  readonly problems: readonly string[];
}

export interface KitchenList {
  readonly kitchens: readonly Kitchen[];
  /** Lines that were not understood, or that a class has no room for. */
  readonly left: readonly KitchenLine[];
  /** Whether it is longer than what is looked at, and nothing of it was read. */
  readonly isTooLong: boolean;
}

interface Pasted {
  /** A kitchen of which nothing is said but its name. */
  readonly usual: Omit<Kitchen, 'name'>;
  /** How many more kitchens the class takes. */
  readonly room: number;
  readonly decimalComma: boolean;
}

/** What a column is about; `other` is not read, as the amounts that the page writes beside. */
type Column = KitchenField | 'name' | 'other';

const headings: readonly (readonly [Column, RegExp])[] = [
  ['name', /^(?:names?|kitchens?|who|students?|pupils?|persons?|people|cooks?)$/],
  ['vessel', /^(?:jars?|vessels?|jar size|size|kind of jar)$/],
  ['temperature', /^(?:rooms?|temperatures?|temp\.?|room temperatures?|°?[cf])$/],
  ['leads', /^(?:units?|measures?|metric or us|us or metric)$/],
  ['grains', /^(?:cultures?|grains|kind of grains|starter)$/],
];

/**
 * Kitchens from a pasted table: a spreadsheet’s cells, CSV, or a line a kitchen such as `Ana, quart, 24 C, US, milk
 * grains`. The name is first; the rest may stand in any order, or under headings, of which those that say nothing of a
 * kitchen are passed over. What is left out is as in `usual`. Never throws; a line with anything that is not understood
 * is given back with what to do about it.
 */
export function readKitchens(text: string, { usual, room, decimalComma }: Pasted): KitchenList {
  const separator = separatorOf(text);
  const whole = separator === ',' ? text.replaceAll(decimalsInWords, '$1.$2') : text;
  const { lines, isCut } = parseTable(whole, separator);
  if (isCut) return { kitchens: [], left: [], isTooLong: true };
  const filled = lines.filter((cells) => cells.some((cell) => cell.trim() !== ''));
  const [first = [], ...rest] = filled;
  const columns = columnsOf(first);
  const read = (columns === null ? filled : rest).map((cells): KitchenLine => {
    const typed = cells.map(unguard);
    const found =
      columns === null ? readLoose(typed, { decimalComma }) : readUnder(columns, first, typed, decimalComma);
    return gather(
      cells
        .map((cell) => cell.trim())
        .join(joins[separator])
        .trim(),
      found,
      usual,
    );
  });
  const kitchens: Kitchen[] = [];
  const left: KitchenLine[] = [];
  for (const line of read) {
    if (line.kitchen === null) left.push(line);
    else if (kitchens.length < room) kitchens.push(line.kitchen);
    else left.push({ ...line, problems: [`The class is full: it holds ${mostKitchens} kitchens.`] });
  }
  return { kitchens, left, isTooLong: false };
}

/** A decimal comma before a unit, in a line that commas part: `24,5 C`, `1,5 L`. */
const decimalsInWords = /(?<![\d.,])(\d{1,2}),(\d{1,2})(?=\s?°?\s?(?:[cfl]|lit\w*|celsius)(?!\w))/giu;

const joins: Readonly<Record<Separator, string>> = { '\t': '\t', ',': ', ', ';': '; ', '|': ' | ' };

/** What parts the first line that says anything; what stands in quotes parts nothing. */
function separatorOf(text: string): Separator {
  // By line, since a pattern that looks for a line among blanks tries each blank again for all that follow it.
  const first = text.split(/[\r\n]+/).find((line) => line.trim() !== '') ?? '';
  const plain = first.replaceAll(/"[^"]*"/g, '');
  return (['\t', ';', '|'] as const).find((one) => plain.includes(one)) ?? ',';
}

/** What the columns are about where the first line has headings, of which a name is one; null where it has none. */
function columnsOf(cells: readonly string[]): readonly Column[] | null {
  const columns = cells.map((cell): Column => {
    const plain = cell
      .toLowerCase()
      .replaceAll(/\([^)]*\)/g, '')
      .trim();
    return headings.find(([, words]) => words.test(plain))?.[0] ?? 'other';
  });
  const isHead = columns.filter((one) => one !== 'other').length >= Math.min(2, cells.length);
  return isHead && columns.includes('name') ? columns : null;
}

interface Found {
  readonly name: string;
  readonly cells: readonly CellRead[];
}

function readUnder(
  columns: readonly Column[],
  head: readonly string[],
  cells: readonly string[],
  decimalComma: boolean,
): Found {
  const read = columns.flatMap((column, at): readonly CellRead[] => {
    if (column === 'other' || column === 'name') return [];
    const cell = readField(column, cells[at] ?? '', { decimalComma, ...degreesOf(head[at] ?? '') });
    return cell === null ? [] : [cell];
  });
  return { name: cells[columns.indexOf('name')] ?? '', cells: read };
}

function degreesOf(heading: string): Pick<Habits, 'degrees'> {
  const unit = /(?:°|\(|^)\s*([cf])\b/i.exec(heading)?.[1]?.toUpperCase();
  if (unit === undefined) return {};
  return { degrees: unit === 'F' ? '°F' : '°C' };
}

function readLoose(typed: readonly string[], habits: Habits): Found {
  const [name = '', ...rest] = typed;
  const cells = joinMouths(rest).flatMap((cell): readonly CellRead[] => {
    const read = readAnywhere(cell, habits);
    if (read === 'blank') return [];
    return [
      read ?? { problem: `“${cell.trim()}” is no jar, room, unit or culture: type it another way, or leave it out.` },
    ];
  });
  return { name, cells };
}

/** “quart, wide mouth” is one jar in two cells. */
function joinMouths(cells: readonly string[]): readonly string[] {
  const joined: string[] = [];
  for (const cell of cells) {
    const before = joined.at(-1);
    if (before !== undefined && /^\s*(?:wide|regular)[ -]mouth\s*$/i.test(cell))
      joined[joined.length - 1] = `${before} ${cell.trim()}`;
    else joined.push(cell);
  }
  return joined;
}

const twice: Readonly<Record<KitchenField, string>> = {
  vessel: 'There are two jars here: keep one.',
  temperature: 'There are two temperatures here: keep one.',
  leads: 'Metric and US both stand here: keep one.',
  grains: 'There are two cultures here: keep one.',
};

function gather(text: string, { name, cells }: Found, usual: Pasted['usual']): KitchenLine {
  const kept = cutText(cleanName(name), longestName);
  const problems = cells.flatMap((cell) => ('problem' in cell ? [cell.problem] : []));
  if (kept === '') problems.unshift('Whose kitchen is it? Put a name first.');
  let kitchen: Kitchen = { ...usual, name: kept };
  const said = new Set<KitchenField>();
  for (const cell of cells) {
    if ('problem' in cell) continue;
    if (said.has(cell.field)) problems.push(twice[cell.field]);
    said.add(cell.field);
    kitchen = { ...kitchen, [cell.field]: cell.value };
  }
  return { text, kitchen: problems.length > 0 ? null : kitchen, problems };
}
