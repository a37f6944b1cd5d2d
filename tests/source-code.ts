import { readdirSync, readFileSync } from 'node:fs';
import { posix, sep } from 'node:path';
import { parseSync } from 'vite';

/** A file of the project: its path from the root, with `/` on every system, and what it holds. */
export type Source = { readonly path: string; readonly text: string };

/** A node of the syntax tree, as far as a guard needs to know it. */
export type Syntax = { readonly type: string; readonly start: number; readonly [key: string]: unknown };

/** A node and the one it stands in. */
export type Found = { readonly node: Syntax; readonly parent: Syntax | undefined };

/** Gives every file under a folder of the project. */
export function readSources(folder: string): Source[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`)
    .map((path) => ({ path: path.split(sep).join('/'), text: readFileSync(path, 'utf8') }));
}

/** Tells whether a file is a program, and so has a syntax tree. */
export function isCode({ path }: Source): boolean {
  return /\.[cm]?[jt]sx?$/.test(path);
}

/** Tells whether something read off a node is itself a node. */
export function isSyntax(value: unknown): value is Syntax {
  return typeof value === 'object' && value !== null && 'type' in value && 'start' in value;
}

/** Gives all nodes of a file in reading order, none for a file that is no program; throws where the file does not parse. */
export function findSyntax(source: Source): readonly Found[] {
  const found = known.get(source) ?? (isCode(source) ? collect(parse(source).program, undefined, []) : []);
  known.set(source, found);
  return found;
}

// Every guard asks for the tree of every file.
const known = new WeakMap<Source, readonly Found[]>();

/** Gives the comments of a file with the offsets they start at. */
export function findComments(source: Source): { readonly value: string; readonly start: number }[] {
  return isCode(source) ? parse(source).comments : [];
}

/** Gives `path:line` of an offset, the first line being 1. */
export function locate({ path, text }: Source, offset: number): string {
  return `${path}:${text.slice(0, offset).split('\n').length}`;
}

/**
 * Gives what a node imports, exports from, loads later or names in a type: `undefined` for a node that does none of
 * these, and null where the name is worked out at run time.
 */
export function readImport({ node }: Found): string | null | undefined {
  const from = node.type === 'TSExternalModuleReference' ? node.expression : node.source;
  if (
    !/^(Import|Export(Named|All))(Declaration|Expression)$|^TS(ImportType|ExternalModuleReference)$/.test(node.type)
  ) {
    return undefined;
  }
  if (!isSyntax(from)) return undefined;
  return typeof from.value === 'string' ? from.value : null;
}

/** Gives the path an import points to, as written (often without its ending), or `undefined` for a package. */
export function resolveImport(path: string, imported: string): string | undefined {
  const [file = ''] = imported.split('?');
  if (file.startsWith('/')) return file.slice(1);
  return file.startsWith('.') ? posix.join(posix.dirname(path), file) : undefined;
}

function parse(source: Source) {
  const parsed = parseSync(source.path, source.text, { preserveParens: false });
  const [error] = parsed.errors;
  if (error !== undefined) throw new Error(`${source.path} does not parse: ${error.message}`);
  return parsed;
}

/** Adds a node and all that stands in it to what was found before. */
function collect(value: unknown, parent: Syntax | undefined, found: Found[]): readonly Found[] {
  if (Array.isArray(value)) for (const item of value) collect(item, parent, found);
  else if (isSyntax(value)) {
    found.push({ node: value, parent });
    for (const child of Object.values(value)) collect(child, value, found);
  }
  return found;
}
