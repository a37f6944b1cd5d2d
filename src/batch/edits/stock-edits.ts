import { describeEntry } from '../../formula/stock/line-words';
import type { Kitchen } from '../../formula/words/write-row';
import { type GrainKind, grains as kinds } from '../../reference/grains';
import { stockRest } from '../../reference/stock-rest';
import type { SheetDocument, Stock, StockLine } from '../document/document';
import { heaviestStock, longestName, longestNote, mostStockLines, mostStocks } from '../document/document-limits';
import { cleanName, cutText } from '../document/plain-text';

/** Adds a jar of grains with the first thing written down of it; a sheet that holds as many as it can stays as it is. */
export function addStock(document: SheetDocument, grains: GrainKind, name: string, first: StockLine): SheetDocument {
  const stocks = document.stocks ?? [];
  if (stocks.length >= mostStocks || !isSound(first)) return document;
  const called = freeName(cleanName(name) === '' ? kinds[grains].name : cleanName(name), stocks);
  return { ...document, stocks: [...stocks, { key: nextKey(stocks), name: called, grains, lines: [tidy(first)] }] };
}

/** Renames a jar of grains. A name of which nothing can be seen changes nothing; one too long to be saved is cut. */
export function renameStock(document: SheetDocument, key: string, name: string): SheetDocument {
  const kept = cutText(cleanName(name), longestName);
  if (kept === '') return document;
  return changeStock(document, key, (stock) => (stock.name === kept ? stock : { ...stock, name: kept }));
}

/** Takes a jar of grains away with all that was written down of it. */
export function removeStock(document: SheetDocument, key: string): SheetDocument {
  const stocks = document.stocks ?? [];
  const left = stocks.filter((stock) => stock.key !== key);
  return left.length === stocks.length ? document : { ...document, stocks: left };
}

/** Sets the sugar of its resting jar, g/L; null goes back to the usual. Outside the range it changes nothing. */
export function setRestSugar(document: SheetDocument, key: string, strength: number | null): SheetDocument {
  const isIn = strength === null || (strength >= stockRest.weakest.value && strength <= stockRest.strongest.value);
  if (!isIn) return document;
  return changeStock(document, key, (stock) => {
    if ((stock.strength ?? null) === strength) return stock;
    const { strength: _, ...rest } = stock;
    return strength === null ? rest : { ...rest, strength };
  });
}

/** Writes something down; a jar that holds as many lines as it can, or a line with a NaN, changes nothing. */
export function addStockLine(document: SheetDocument, key: string, line: StockLine): SheetDocument {
  if (!isSound(line)) return document;
  return changeStock(document, key, (stock) =>
    stock.lines.length >= mostStockLines ? stock : { ...stock, lines: [...stock.lines, tidy(line)] },
  );
}

/** Puts another line in the place of one, counted from 0; a place that is not there changes nothing. */
export function changeStockLine(document: SheetDocument, key: string, place: number, line: StockLine): SheetDocument {
  if (!isSound(line)) return document;
  return changeStock(document, key, (stock) =>
    stock.lines[place] === undefined ? stock : { ...stock, lines: stock.lines.with(place, tidy(line)) },
  );
}

/** Takes a line away; a place that is not there changes nothing. */
export function removeStockLine(document: SheetDocument, key: string, place: number): SheetDocument {
  return changeStock(document, key, (stock) =>
    stock.lines[place] === undefined ? stock : { ...stock, lines: stock.lines.toSpliced(place, 1) },
  );
}

/** The names of the steps for undo and redo. */
export const stockSteps = {
  add: (line: StockLine, kitchen: Kitchen) => `Grains: ${describeEntry(unplaced(line), kitchen)}`,
  keep: 'Keep a jar of grains',
  change: 'Change a line of the grains',
  remove: 'Remove a line of the grains',
  rename: (name: string) => `Rename the grains to ${cutText(name, shortest)}`,
  removeStock: (name: string) => `Remove the grains “${cutText(name, shortest)}”`,
  strength: 'Change the sugar of the resting jar',
} as const;

const shortest = 40;

/** A line without its time, which only the clock on the wall can read. */
function unplaced({ at: _, note: __, ...line }: StockLine) {
  return line;
}

function changeStock(document: SheetDocument, key: string, change: (stock: Stock) => Stock): SheetDocument {
  const { stocks = [] } = document;
  const place = stocks.findIndex((stock) => stock.key === key);
  const old = stocks[place];
  if (old === undefined) return document;
  const changed = change(old);
  return changed === old ? document : { ...document, stocks: stocks.with(place, changed) };
}

function freeName(wanted: string, stocks: readonly Stock[]): string {
  const names = new Set(stocks.map(({ name }) => name));
  const plain = cutText(wanted, longestName);
  let name = plain;
  for (let number = 2; names.has(name); number += 1) name = cutText(`${plain} ${number}`, longestName);
  return name;
}

function nextKey(stocks: readonly Stock[]): string {
  const keys = new Set(stocks.map(({ key }) => key));
  let number = 1;
  while (keys.has(`g${number}`)) number += 1;
  return `g${number}`;
}

function isSound({ grams }: StockLine): boolean {
  return grams === null || (Number.isFinite(grams) && grams >= 0 && grams <= heaviestStock);
}

/** What would not be saved is cut; a negative zero would come back as another document. */
function tidy(line: StockLine): StockLine {
  const { name, note, grams } = line;
  return {
    ...line,
    grams: grams === null ? null : grams + 0,
    ...(name === undefined ? {} : { name: cutText(name, longestName) }),
    ...(note === undefined ? {} : { note: cutText(note, longestNote) }),
  };
}
