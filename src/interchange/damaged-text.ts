/** What is found in the text of a sheet that is no longer sound JSON. */
export interface FoundParts {
  /** As `salvage` takes it, with what could be read. */
  readonly data: Readonly<Record<string, unknown>>;
  /** What begins in the text and can’t be read to its end. */
  readonly broken: readonly string[];
}

// Each part is found by how the sheet writes it: a batch begins with its id and name, a line of the log with its batch.
const batchStart = /\{\s*"id"\s*:\s*"[^"]{0,64}"\s*,\s*"name"\s*:/g;
const lineStart = /\{\s*"batch"\s*:\s*"[^"]{0,64}"\s*,/g;

/**
 * Finds batches, lines of the log, figures and settings in a text that is cut off or damaged, each by itself. Goes
 * through the text a fixed number of times, whatever is in it. Gives null where there is nothing of a sheet in it.
 */
export function findParts(text: string): FoundParts | null {
  const batches = collect(text, batchStart, 'Batch');
  const log = collect(text, lineStart, 'Log');
  if (batches.found.length === 0 && log.found.length === 0) return null;
  const yours = objectAfter(text, '"yours"');
  const settings = objectAfter(text, '"settings"');
  const version = /"version"\s*:\s*(\d{1,6})/.exec(text)?.[1];
  return {
    data: {
      ...(version === undefined ? {} : { version: Number(version) }),
      batches: batches.found,
      log: log.found,
      ...(yours === undefined ? {} : { yours }),
      ...(settings === undefined ? {} : { settings }),
    },
    broken: [
      ...batches.broken,
      ...log.broken,
      ...(yours === undefined ? ['Your own figures'] : []),
      ...(settings === undefined ? ['The settings'] : []),
    ],
  };
}

function collect(text: string, start: RegExp, what: string) {
  const found: unknown[] = [];
  const broken: string[] = [];
  const places = Array.from(text.matchAll(start), ({ index }) => index);
  for (const [at, from] of places.entries()) {
    // No part holds another of its kind, so a part that runs into the next one has lost its end.
    const written = text.slice(from, places[at + 1] ?? text.length);
    const part = readObject(written);
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

function objectAfter(text: string, key: string): unknown {
  const place = text.search(new RegExp(`${key}\\s*:\\s*\\{`));
  return place < 0 ? undefined : readObject(text.slice(text.indexOf('{', place)));
}

/** The object that a text begins with; undefined where it has no end or is not sound. */
function readObject(text: string): unknown {
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
      if (depth === 0) return parse(text.slice(0, at + 1));
    }
  }
  return undefined;
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
