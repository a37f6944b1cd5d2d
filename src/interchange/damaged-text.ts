/** What is found in the text of a sheet that is no longer sound JSON. */
export interface FoundParts {
  /** As `salvage` takes it, with what could be read. */
  readonly data: Readonly<Record<string, unknown>>;
  /** What begins in the text and can’t be read to its end. */
  readonly broken: readonly string[];
}

// Each part is found by how the sheet writes it: a batch begins with its id and name, a line of the log with its batch,
// and nothing but an own food with its name.
const batchStart = /\{\s*"id"\s*:\s*"[^"]{0,64}"\s*,\s*"name"\s*:/g;
const lineStart = /\{\s*"batch"\s*:\s*"[^"]{0,64}"\s*,/g;
const foodStart = /\{\s*"name"\s*:/g;

/**
 * Finds batches, lines of the log, own foods, prices, figures and settings in a text that is cut off or damaged, each by
 * itself. Goes through the text a fixed number of times, whatever is in it. Gives null where there is nothing of a sheet
 * in it.
 */
export function findParts(text: string): FoundParts | null {
  const batches = collect(text, batchStart, 'Batch');
  const log = collect(text, lineStart, 'Log');
  if (batches.found.length === 0 && log.found.length === 0) return null;
  const yours = partAfter(text, 'yours', '{');
  const settings = partAfter(text, 'settings', '{');
  const foods = findFoods(text);
  const prices = partAfter(text, 'prices', '{');
  const version = /"version"\s*:\s*(\d{1,6})/.exec(text)?.[1];
  return {
    data: {
      ...(version === undefined ? {} : { version: Number(version) }),
      batches: batches.found,
      log: log.found,
      ...(yours === undefined ? {} : { yours }),
      ...(settings === undefined ? {} : { settings }),
      ...(foods.found === undefined ? {} : { ownFoods: foods.found }),
      ...(prices === undefined ? {} : { prices }),
    },
    broken: [
      ...batches.broken,
      ...log.broken,
      ...(yours === undefined ? ['Your own figures'] : []),
      ...(settings === undefined ? ['The settings'] : []),
      ...foods.broken,
      ...(prices === undefined ? missing(text, 'prices', 'Prices') : []),
    ],
  };
}

function findFoods(text: string): { readonly found?: unknown; readonly broken: readonly string[] } {
  const whole = partAfter(text, 'ownFoods', '[');
  if (whole !== undefined) return { found: whole, broken: [] };
  const from = placeAfter(text, 'ownFoods', '[');
  if (from < 0) return { broken: missing(text, 'ownFoods', 'Own foods') };
  const { found, broken } = collect(text.slice(from), foodStart, 'Own food');
  return { found, broken: broken.length > 0 ? broken : ['Own foods after those that can be read, if it had any'] };
}

/** Names a part that not every sheet has, where it can’t be read: whether there was one is not known of a text cut off. */
function missing(text: string, key: string, what: string): readonly string[] {
  if (text.includes(`"${key}"`)) return [what];
  return endOfPart(text) === text.trimEnd().length ? [] : [`${what}, if it had any`];
}

function collect(text: string, start: RegExp, what: string) {
  const found: unknown[] = [];
  const broken: string[] = [];
  const places = Array.from(text.matchAll(start), ({ index }) => index);
  for (const [at, from] of places.entries()) {
    // No part holds another of its kind, so a part that runs into the next one has lost its end.
    const written = text.slice(from, places[at + 1] ?? text.length);
    const part = readPart(written);
    if (part !== undefined) found.push(part);
    else broken.push(`${what} ${at + 1}${nameIn(written.slice(0, longestStart))}`);
  }
  return { found, broken };
}

const longestStart = 400;

function nameIn(start: string): string {
  const name = /"name"\s*:\s*"([^"\\]{1,60})/.exec(start)?.[1];
  return name === undefined ? '' : ` (“${name.replaceAll(/\p{C}/gu, '')}”)`;
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
