import { type ListName, listNames, listWords } from '../batch/document/kept-lists';
import { firstWithLog, type PartName } from '../batch/document/salvage';

/** What is found in the text of a sheet that is no longer sound JSON. */
export interface FoundParts {
  /** As `salvage` takes it, with what could be read. */
  readonly data: Readonly<Record<string, unknown>>;
  /** The parts of which nothing could be read, or that may have been there before the text was cut off. */
  readonly unread: ReadonlySet<PartName>;
  /** What begins in the text and can’t be read to its end, and what is missing, by name. */
  readonly broken: readonly string[];
}

/** A list of a sheet, whose parts are found by how the sheet writes their beginnings. */
interface List {
  readonly key: string;
  readonly start: RegExp;
  /** What one of its parts is called, and a stretch in which none is found. */
  readonly what: string;
  readonly stretch: string;
  /** What is missing where nothing of the list is found, and where it has no end after the last part. */
  readonly all: string;
  readonly end: (last: string) => string;
  /** The last of what names a part, after its name. */
  readonly more?: string;
}

const batchList: List = {
  key: 'batches',
  start: /\{\s*"id"\s*:\s*"[^"]{0,64}"\s*,\s*"name"\s*:/g,
  what: 'Batch',
  stretch: 'A part',
  all: 'The batches',
  end: (last) => `What came after ${last}`,
};
const logList: List = {
  key: 'log',
  start: /\{\s*"batch"\s*:\s*"[^"]{0,64}"\s*,/g,
  what: 'Log',
  stretch: 'A part of the log',
  all: 'The log, or its end',
  end: () => 'The log, or its end',
  more: 'at',
};
const foodList: List = {
  key: 'ownFoods',
  start: /\{\s*"name"\s*:/g,
  what: 'Own food',
  stretch: 'A part of the own foods',
  all: 'Own foods',
  end: () => 'Own foods after those that can be read, if it had any',
};

/**
 * Finds batches, lines of the log, own foods, other lists, figures and settings in a text that is cut off or damaged, each
 * by itself, and names what lies between them. Goes through the text a fixed number of times, whatever is in it. Gives null
 * where there is nothing of a sheet in it.
 */
export function findParts(text: string): FoundParts | null {
  const batches = collect(text, batchList);
  const log = collect(text, logList);
  if (batches.found.length === 0 && log.found.length === 0) return null;
  const version = Number(/"version"\s*:\s*(\d{1,6})/.exec(text)?.[1] ?? Number.NaN);
  const isBeforeLog = version < firstWithLog && log.found.length === 0;
  const yours = partAfter(text, 'yours', '{');
  const settings = partAfter(text, 'settings', '{');
  const foods = findFoods(text, log.isLast);
  // As an earlier page kept them; a sheet of this one has packages.
  const prices = partAfter(text, 'prices', '{');
  const others = new Map(otherLists.map((list) => [list, partAfter(text, list, '[')]));
  const isOver = log.isLast || foods.isLast || endsWithList(text);
  const lostLists = otherLists.filter((list) => others.get(list) === undefined);
  const lostNames = lostLists.map((list) => [list, missing(text, list, listWords[list].title, isOver)] as const);
  const lostPrices = prices === undefined && text.includes('"prices"') ? [listWords.packages.title] : [];
  const unread = new Set<PartName>();
  if (!isBeforeLog && log.found.length === 0 && log.broken.length > 0) unread.add('log');
  if (yours === undefined) unread.add('yours');
  if (settings === undefined) unread.add('settings');
  if (foods.found.length === 0 && foods.broken.length > 0) unread.add('ownFoods');
  for (const [list, named] of lostNames) if (named.length > 0) unread.add(list);
  if (lostPrices.length > 0) unread.add('packages');
  return {
    data: {
      ...(Number.isNaN(version) ? {} : { version }),
      batches: batches.found,
      log: log.found,
      ownFoods: foods.found,
      ...(yours === undefined ? {} : { yours }),
      ...(settings === undefined ? {} : { settings }),
      ...(prices === undefined ? {} : { prices }),
      ...Object.fromEntries([...others].filter(([, part]) => part !== undefined)),
    },
    unread,
    broken: [
      ...batches.broken,
      ...(isBeforeLog ? [] : log.broken),
      ...(yours === undefined ? ['Your own figures'] : []),
      ...(settings === undefined ? ['The settings'] : []),
      ...foods.broken,
      ...new Set([...lostNames.flatMap(([, named]) => named), ...lostPrices]),
    ],
  };
}

/** Those that are read as a whole or not at all. */
const otherLists = listNames.filter((list): list is Exclude<ListName, 'ownFoods'> => list !== 'ownFoods');

/** Whether the last thing in a text is one of these lists, with its end and that of the sheet. */
function endsWithList(text: string): boolean {
  return otherLists.some((list) => {
    const from = placeAfter(text, list, '[');
    const end = from < 0 ? null : endOfPart(text.slice(from));
    return end !== null && text.slice(from + end).trim() === '}';
  });
}

function findFoods(text: string, isOver: boolean): Collected {
  const from = placeAfter(text, 'ownFoods', '[');
  if (from < 0) return { found: [], broken: missing(text, 'ownFoods', 'Own foods', isOver), isLast: false };
  const end = endOfPart(text.slice(from));
  const whole = end === null ? undefined : parse(text.slice(from, from + end));
  if (Array.isArray(whole)) return { found: whole, broken: [], isLast: text.slice(from + (end ?? 0)).trim() === '}' };
  const start = text.lastIndexOf('"ownFoods"', from);
  return collect(text.slice(start, nextKey(text, from)), foodList);
}

/** Names a part that not every sheet has, where it can’t be read: whether there was one is not known of a text cut off. */
function missing(text: string, key: string, what: string, isOver: boolean): readonly string[] {
  if (text.includes(`"${key}"`)) return [what];
  return isOver || endOfPart(text) === text.trimEnd().length ? [] : [`${what}, if it had any`];
}

interface Collected {
  readonly found: readonly unknown[];
  readonly broken: readonly string[];
  /** Whether it has its end, and the sheet ends after it. */
  readonly isLast: boolean;
}

/** The parts of a list that can be read, and the name of every stretch of it that is none of them. */
function collect(text: string, list: List): Collected {
  const opened = placeAfter(text, list.key, '[');
  const places = Array.from(text.matchAll(list.start), ({ index }) => index);
  const [first] = places;
  if (first === undefined) {
    const inside = opened < 0 ? '' : text.slice(opened + 1).trimStart();
    const isEmpty = inside.startsWith(']');
    return { found: [], broken: isEmpty ? [] : [list.all], isLast: isEmpty && inside.slice(1).trim() === '}' };
  }
  const found: unknown[] = [];
  const broken: string[] = [];
  let isLast = false;
  const title = (at: number): string => titleOf(text.slice(places[at], (places[at] ?? 0) + longestStart), list, at);
  if (opened < 0 || opened > first || !isBlank(text.slice(opened + 1, first))) {
    broken.push(`${list.stretch} before ${title(0)}`);
  }
  for (const [at, from] of places.entries()) {
    // No part holds another of its kind, so a part that runs into the next one has lost its end.
    const next = places[at + 1];
    const written = text.slice(from, next ?? nextKey(text, from));
    const end = endOfPart(written);
    const part = end === null ? undefined : parse(written.slice(0, end));
    if (part !== undefined) found.push(part);
    else broken.push(`${list.what} ${at + 1}${inBrackets(nameIn(written.slice(0, longestStart)))}`);
    const after = part === undefined || end === null ? written : written.slice(end);
    // A last part without its end says nothing of the end of its list: a bracket may be of its own text.
    const isOpen = part === undefined && next === undefined && nextKey(text, from) === text.length;
    const inner = next !== undefined ? after : isOpen ? null : beforeClosing(after);
    // One that has lost its beginning may lie in one that has lost its end.
    const isGap = inner !== null && (part === undefined ? countNames(inner) > 1 : !isBlank(inner));
    isLast = next === undefined && inner !== null && !isGap && /\}$/.test(after.trimEnd());
    if (inner === null) broken.push(list.end(title(at)));
    else if (isGap && next === undefined) broken.push(`${list.stretch} after ${title(at)}`);
    else if (isGap) broken.push(`${list.stretch} between ${title(at)} and ${title(at + 1)}`);
  }
  return { found, broken, isLast };
}

const longestStart = 400;

function isBlank(text: string): boolean {
  return /^[\s,]*$/.test(text);
}

function countNames(text: string): number {
  return Array.from(text.matchAll(/name"\s*:/g)).length;
}

/** Where the next part of the sheet itself begins; the end of the text where none does. */
function nextKey(text: string, from: number): number {
  const key = /"(?:version|batches|yours|settings|log|prices|ownFoods|stocks|cartons|packages|classes|blends)"\s*:/g;
  key.lastIndex = from;
  return key.exec(text)?.index ?? text.length;
}

/** What comes before the bracket that closes a list, at the end of a text or before the next key; null without one. */
function beforeClosing(text: string): string | null {
  const trimmed = text.trimEnd();
  const rest = /[,}]$/.test(trimmed) ? trimmed.slice(0, -1).trimEnd() : trimmed;
  return rest.endsWith(']') ? rest.slice(0, -1) : null;
}

function titleOf(start: string, { what, more }: List, at: number): string {
  const name = nameIn(start);
  const rest = more === undefined ? null : textIn(start, more);
  return name === null ? `${what} ${at + 1}` : `“${name}${rest === null ? '' : `, ${rest.replace('T', ' ')}`}”`;
}

function inBrackets(name: string | null): string {
  return name === null ? '' : ` (“${name}”)`;
}

function nameIn(start: string): string | null {
  return textIn(start, 'name');
}

/** The text under a key, if only its beginning. */
function textIn(start: string, key: string): string | null {
  const text = new RegExp(`"${key}"\\s*:\\s*(?:"([^"\\\\]{1,60}))?`).exec(start)?.[1];
  return text === undefined ? null : text.replaceAll(/\p{C}/gu, '');
}

/** Where the object or list under a key begins; -1 where there is none. */
function placeAfter(text: string, key: string, opening: '{' | '['): number {
  const place = text.search(new RegExp(`"${key}"\\s*:\\s*\\${opening}`));
  return place < 0 ? place : text.indexOf(opening, place);
}

function partAfter(text: string, key: string, opening: '{' | '['): unknown {
  const place = placeAfter(text, key, opening);
  return place < 0 ? undefined : readPart(text.slice(place));
}

/** The object or list that a text begins with; undefined where it has no end or is not sound. */
function readPart(text: string): unknown {
  const end = endOfPart(text);
  return end === null ? undefined : parse(text.slice(0, end));
}

/** Where the object or list that a text begins with ends; null where it does not. */
function endOfPart(text: string): number | null {
  let depth = 0;
  let quoted = false;
  for (let at = 0; at < text.length; at += 1) {
    const sign = text[at];
    if (quoted) {
      if (sign === '\\') at += 1;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '{' || sign === '[') depth += 1;
    else if (sign === '}' || sign === ']') {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return null;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
