import {
  type Found,
  findComments,
  findSyntax,
  isSyntax,
  locate,
  readImport,
  resolveImport,
  type Source,
  type Syntax,
} from './source-code';

// Lowest first: a file may import its own layer and those before it. Interchange stands before ui, which may call it.
const layers = ['measure', 'reference', 'formula', 'batch', 'interchange', 'ui', 'main.tsx'];
// So are the rooms of the layers that have some. Every script of such a layer stands in a room.
const rooms: Readonly<Record<string, readonly string[]>> = {
  formula: [
    ...['models', 'recipe', 'composition', 'foods', 'rows', 'engine', 'words', 'advice', 'working'],
    ...['time', 'stock', 'fizz', 'steps', 'plan', 'glass', 'cost', 'blend', 'lesson'],
  ],
  batch: ['document', 'reading', 'edits', 'keeping', 'store'],
};
const pureLayers = ['measure', 'reference', 'formula'];
const surroundings =
  /^(Date|localStorage|sessionStorage|indexedDB|fetch|document|window|globalThis|navigator|performance|crypto|process)$/;
const drawerName = /^(index|utils?|helpers?|types?|common|misc)$/i;
const mostLines = 300;
const numbersInFormulas = [0, 1, 2, 100, 1000];
// Two marks at the end of a line let a number pass, each within bounds so that it stays of no use to a coefficient:
// `// tolerance` for how near is equal, `// geometry` and `// algebra` for the whole number of an exact solid or solution,
// such as the 3 of a cone and the 4 of a quadratic.
const largestTolerance = 1e-3;
const largestExact = 12;
// Only a file where zod hands over what it has checked belongs here, with its reason. None needs it so far.
const assertingFiles: readonly string[] = [];
// Files that turn lengths into places on the screen: layout, not quantities.
const layoutFiles = [
  ...['page/axis.ts', 'jar/JarDrawing.tsx', 'fizz/fizz-picture.ts'].map((file) => `src/ui/${file}`),
  ...['time/ripening-picture.ts', 'plan/timeline-picture.ts', 'grains/stock-picture.ts'].map(
    (file) => `src/ui/${file}`,
  ),
  'src/ui/log/found-picture.ts',
  ...['grid.ts', 'grid-keys.ts', 'columns-on-screen.ts'].map((file) => `src/ui/sheet/${file}`),
];

/** Says where a file imports upward, out of the layers, or a package that its layer must not know. */
export function findUpwardImports(source: Source): string[] {
  const from = findLayer(source.path);
  if (from === undefined) return [`${source.path} belongs to no layer`];
  return askSyntax(source, (found) => {
    const imported = readImport(found);
    if (imported === undefined) return undefined;
    if (imported === null) return 'loads a file whose name is worked out, which no guard can follow';
    const target = resolveImport(source.path, imported);
    if (target === undefined) return explainPackage(from, imported);
    const to = findLayer(target);
    if (to === undefined) return `imports ${imported}, which belongs to no layer`;
    return layers.indexOf(to) > layers.indexOf(from) ? `${from} imports ${to}, which lies above it` : undefined;
  });
}

/** Says where a file of a layer with rooms stands in none of them, or imports from a room above its own. */
export function findUpwardRooms(source: Source): string[] {
  const layer = findLayer(source.path) ?? '';
  const order = rooms[layer];
  if (order === undefined || source.path.endsWith('.json')) return [];
  const from = findRoom(source.path);
  if (!order.includes(from)) return [`${source.path} stands in no room of ${layer}`];
  return askSyntax(source, (found) => {
    const imported = readImport(found);
    const target = typeof imported === 'string' ? resolveImport(source.path, imported) : undefined;
    if (target === undefined || findLayer(target) !== layer) return undefined;
    const to = findRoom(target);
    return order.indexOf(to) > order.indexOf(from) ? `${from} imports ${to}, which lies above it` : undefined;
  });
}

/** Says which files import each other in a ring, types included: a ring of types is one subject cut in two. */
export function findImportCycles(sources: readonly Source[]): string[] {
  const paths = sources.map(({ path }) => path);
  const known = new Set(paths);
  const imports = new Map(
    sources.map((source) => [
      source.path,
      findSyntax(source)
        .map((found) => readImport(found))
        .map((imported) => (typeof imported === 'string' ? resolveImport(source.path, imported) : undefined))
        .map((target) =>
          [target, `${target}.ts`, `${target}.tsx`].find((path) => path !== undefined && known.has(path)),
        ),
    ]),
  );
  const cleared = new Set<string>();
  const follow = (path: string, trail: readonly string[]): string[] => {
    if (trail.includes(path)) return [[...trail.slice(trail.indexOf(path)), path].join(' > ')];
    if (cleared.has(path)) return [];
    const cycles = (imports.get(path) ?? []).flatMap((next) =>
      next === undefined ? [] : follow(next, [...trail, path]),
    );
    cleared.add(path);
    return cycles;
  };
  return paths.flatMap((path) => follow(path, []));
}

/** Says where a pure layer looks at its surroundings: the clock, chance, storage, the network or the page. */
export function findSurroundings(source: Source): string[] {
  if (!pureLayers.includes(findLayer(source.path) ?? '')) return [];
  return askSyntax(source, (found) => {
    const { node, parent } = found;
    if (node.type !== 'Identifier' || isPropertyName(found)) return undefined;
    if (surroundings.test(String(node.name))) return `uses ${node.name}`;
    // Math handed on whole would carry chance with it, so only a named member of it passes.
    const member = parent?.type === 'MemberExpression' && parent.computed === false ? parent.property : undefined;
    const isSafe = isSyntax(member) && member.name !== 'random';
    return node.name === 'Math' && !isSafe ? 'uses Math.random, or Math as a whole' : undefined;
  });
}

/** Says whether a file is longer than one subject needs; tables of reference are as long as they are. */
export function findLongFile({ path, text }: Source): string[] {
  const lines = text.replace(/\n$/, '').split('\n').length;
  return lines > mostLines && findLayer(path) !== 'reference' ? [`${path} has ${lines} lines`] : [];
}

/** Says whether a file or folder is named as a drawer for anything instead of after its subject. */
export function findDrawerName({ path }: Source): string[] {
  return path.split('/').some((name) => drawerName.test(name.replace(/\..*$/, ''))) ? [`${path} names no subject`] : [];
}

/** Says where a type is claimed instead of shown, or its check is switched off. */
export function findAssertions(source: Source): string[] {
  if (assertingFiles.includes(source.path)) return [];
  const switchedOff = findComments(source)
    .filter(({ value }) => /@ts-(ignore|nocheck|expect-error)/.test(value))
    .map(({ start }) => `${locate(source, start)} switches the type check off`);
  const claimed = askSyntax(source, ({ node }) => {
    if (node.type === 'TSAnyKeyword') return 'says any';
    if (node.type === 'TSNonNullExpression') return 'asserts with !';
    if (node.type !== 'TSAsExpression' && node.type !== 'TSTypeAssertion') return undefined;
    const asserted = node.typeAnnotation;
    return isSyntax(asserted) && hasName(asserted.typeName, 'const') ? undefined : 'asserts a type';
  });
  return [...switchedOff, ...claimed];
}

/** Says where a formula holds a number of its own: coefficients live in src/reference with their origin. */
export function findCoefficients(source: Source): string[] {
  if (findLayer(source.path) !== 'formula') return [];
  // What a row accepts is part of its definition, so the two ends of a `range: { least, most }` may stand there.
  const ends = findSyntax(source)
    .filter(({ node }) => node.type === 'Property' && hasName(node.key, 'range'))
    .flatMap(({ node }) => (isSyntax(node.value) && Array.isArray(node.value.properties) ? node.value.properties : []))
    .flatMap((end) => (isSyntax(end) && (hasName(end.key, 'least') || hasName(end.key, 'most')) ? [end] : []));
  const places = ends.flatMap((end) => [end.start, ...(isSyntax(end.value) ? [end.value.start] : [])]);
  const isEnd = (parent: Syntax | undefined): boolean =>
    (parent?.type === 'Property' || parent?.type === 'UnaryExpression') && places.includes(parent.start);
  return askSyntax(source, ({ node, parent }) => {
    if (isEnd(parent)) return undefined;
    const value = readNumber(node);
    if (value === undefined || numbersInFormulas.includes(value) || parent?.type === 'TSLiteralType') return undefined;
    const isPlace = parent?.type === 'MemberExpression' && parent.property === node;
    const isExponent = parent?.type === 'BinaryExpression' && parent.operator === '**' && parent.right === node;
    if ((isPlace || isExponent) && Number.isInteger(value)) return undefined;
    const [restOfLine = ''] = source.text.slice(node.start).split('\n');
    if (value <= largestTolerance && /\/\/ tolerance\b/.test(restOfLine)) return undefined;
    if (Number.isInteger(value) && value <= largestExact && /\/\/ (geometry|algebra)\b/.test(restOfLine))
      return undefined;
    return `holds the number ${value}, which belongs in src/reference`;
  });
}

/** Says where the user interface calculates. Joining text passes, and so does one step along the sheet. */
export function findArithmetic(source: Source): string[] {
  if (findLayer(source.path) !== 'ui' || layoutFiles.includes(source.path)) return [];
  return askSyntax(source, (found) => {
    const { node } = found;
    if (node.type === 'Identifier' && node.name === 'Math' && !isPropertyName(found)) return 'uses Math';
    if (node.type !== 'BinaryExpression' && node.type !== 'AssignmentExpression') return undefined;
    const operator = String(node.operator);
    if (/^\+=?$/.test(operator) && (isText(node.left) || isText(node.right))) return undefined;
    if (/^[-+]=?$/.test(operator) && (isOne(node.right) || (operator === '+' && isOne(node.left)))) return undefined;
    return /^(\*\*?|[-+/%])=?$/.test(operator) ? `works something out with ${operator}` : undefined;
  });
}

/** Asks a question of each syntax node, so that comments, strings and the text between tags never count. */
function askSyntax(source: Source, ask: (found: Found) => string | undefined): string[] {
  return findSyntax(source).flatMap((found) => {
    const answer = ask(found);
    return answer === undefined ? [] : [`${locate(source, found.node.start)} ${answer}`];
  });
}

function findLayer(path: string): string | undefined {
  const [root, name] = path.split('/');
  return root === 'src' ? layers.find((layer) => layer === name) : undefined;
}

function findRoom(path: string): string {
  return path.split('/').slice(0, -1)[2] ?? '';
}

function explainPackage(layer: string, name: string): string | undefined {
  return pureLayers.includes(layer) ? `${layer} imports the package ${name}` : undefined;
}

/** A name after a dot or before a colon belongs to a property and is no use of the global. */
function isPropertyName({ node, parent }: Found): boolean {
  return parent !== undefined && parent.computed !== true && (parent.property === node || parent.key === node);
}

function hasName(value: unknown, name: string): boolean {
  return isSyntax(value) && value.name === name;
}

/** A number in quotes counts as well: it would reach an exact decimal as text. */
function readNumber(node: Found['node']): number | undefined {
  const { value } = node;
  const written = typeof value === 'object' && value !== null && 'cooked' in value ? value.cooked : value;
  if (typeof written === 'number' || typeof written === 'bigint') return Number(written);
  const isNumeric = typeof written === 'string' && /^\s*[-+]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?\s*$/i.test(written);
  return isNumeric ? Math.abs(Number(written)) : undefined;
}

function isText(node: unknown): boolean {
  if (!isSyntax(node)) return false;
  if (node.type === 'BinaryExpression') return node.operator === '+' && (isText(node.left) || isText(node.right));
  return node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node.value === 'string');
}

function isOne(node: unknown): boolean {
  return isSyntax(node) && node.value === 1;
}
