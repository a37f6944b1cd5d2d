// @vitest-environment happy-dom
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import { recipeOf, type SheetDocument } from '../../src/batch/document/document';
import { readDocument } from '../../src/batch/document/read-document';
import { addShared } from '../../src/batch/edits/add-shared';
import { pasteInto } from '../../src/batch/edits/paste';
import { planBatches } from '../../src/batch/store/plan-batches';
import { formulate } from '../../src/formula/engine/formulate';
import { rowOrder } from '../../src/formula/recipe/order';
import { mostBytes } from '../../src/interchange/file-limit';
import { writeCopy } from '../../src/interchange/json-file';
import { linkMark } from '../../src/interchange/link-mark';
import { readFile } from '../../src/interchange/open-file';
import { openLink } from '../../src/interchange/open-link';
import { planOpening } from '../../src/interchange/plan-opening';
import { planFromRecipe } from '../../src/interchange/recipe-batch';
import { readRecipe } from '../../src/interchange/recipe-text';
import { plainFragment, writeFragment } from '../../src/interchange/share-link';
import { toBase64Url } from '../../src/interchange/squeeze';
import { parseTable } from '../../src/interchange/table';
import { anyDocument, first, freeze } from '../batch/any-edit';

// Everything that comes from outside, as somebody with ill will or a bad disk would send it. `HOSTILE=10 npx vitest run
// tests/interchange/hostile-files.test.ts --testTimeout=600000` is the long form, with files of 10 MB.
const share = Number(process.env.HOSTILE ?? 1) / 10;
const files = 5000 * share;
const links = 2500 * share;
const pastes = 2500 * share;
const size = mostBytes * share;
const recipe = 'Friday almonds\nFor a 2 L jar\n1 ¼ cups almonds\n3 ¼ cups water\n18 g sugar\n40 g water kefir grains\n';

const mine: SheetDocument = freeze(demo);
const before = JSON.stringify(mine);
const prototype = Object.getOwnPropertyNames(Object.prototype).join();

/** Texts that have done harm somewhere. */
const evil = fc.constantFrom(
  '<script>globalThis.hit=1</script>',
  '"><img src=x onerror=globalThis.hit=1>',
  'javascript:globalThis.hit=1',
  '</title><svg onload=globalThis.hit=1>',
  '{{constructor.constructor("globalThis.hit=1")()}}',
  '$' + '{globalThis.hit=1}',
  '\u202Egnp.exe\u2066\u2069\u200F',
  '\u0000\u0007\u001B[31m',
  '\uD800',
  '\uFFFE\uFEFF',
  '9'.repeat(400),
  '1e999',
  '-0',
  '__proto__',
  'constructor',
  'toString',
  '=HYPERLINK("http://x.example")',
  'e\u0301'.repeat(300),
);

/** Pieces of JSON that have done harm. */
const evilJson = fc.oneof(
  evil.map((text) => JSON.stringify(text)),
  fc.constantFrom(
    '{"__proto__":{"hit":1}}',
    '{"constructor":{"prototype":{"hit":1}}}',
    '1e999',
    '-1e308',
    '5e-324',
    '12345678901234567890123456789',
    'null',
    '[]',
    '{}',
    'true',
    '"__proto__"',
    `${'['.repeat(300)}${']'.repeat(300)}`,
    `${'{"a":'.repeat(300)}1${'}'.repeat(300)}`,
  ),
);

/** A text with one to four of its parts cut out, doubled, exchanged or replaced. */
function mutated(texts: fc.Arbitrary<string>, by: fc.Arbitrary<string>): fc.Arbitrary<string> {
  const change = fc.record({
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    length: fc.oneof(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 400 })),
    put: fc.oneof({ weight: 2, arbitrary: fc.constant('') }, { weight: 3, arbitrary: by }),
    twice: fc.boolean(),
  });
  return fc.tuple(texts, fc.array(change, { minLength: 1, maxLength: 4 })).map(([text, changes]) =>
    changes.reduce((changed, { at, length, put, twice }) => {
      const from = Math.floor(at * changed.length);
      const cut = changed.slice(from, from + length);
      return `${changed.slice(0, from)}${put}${twice ? cut : ''}${changed.slice(from + length)}`;
    }, text),
  );
}

/** Sound JSON with one value in it, wherever it is, taken for another. */
function withValue(text: string, at: number, piece: string): string {
  const values = Array.from(text.matchAll(/"(?:[^"\\]|\\.)*"(?!\s*:)|-?\d[\d.e+-]*|true|false|null/g));
  const value = values[Math.floor(at * values.length)];
  return value === undefined
    ? text
    : `${text.slice(0, value.index)}${piece}${text.slice(value.index + value[0].length)}`;
}

function valueReplaced(texts: fc.Arbitrary<string>): fc.Arbitrary<string> {
  return fc
    .tuple(texts, fc.double({ min: 0, max: 0.999, noNaN: true }), evilJson)
    .map(([text, at, piece]) => withValue(text, at, piece));
}

const copies = anyDocument.map(writeCopy);
const anyFile = fc.oneof(
  { weight: 3, arbitrary: mutated(copies, fc.oneof(evil, evilJson, fc.string({ unit: 'binary', maxLength: 8 }))) },
  { weight: 4, arbitrary: valueReplaced(copies) },
  { weight: 1, arbitrary: fc.json() },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 500 }) },
  { weight: 1, arbitrary: evilJson },
  {
    weight: 1,
    arbitrary: evilJson.map((piece) => `{"version":2,"batches":[${piece}],"log":[${piece}],"yours":${piece}}`),
  },
);

const plainLinks = anyDocument.map((document) => plainFragment(document, first(document)));
const payloads = plainLinks.map((link) =>
  new TextDecoder().decode(Uint8Array.from(atob(toBase64(link)), (sign) => sign.charCodeAt(0))),
);

function toBase64(link: string): string {
  return link
    .slice(linkMark.length + 2)
    .replaceAll('-', '+')
    .replaceAll('_', '/');
}

function asLink(payload: string): string {
  return `${linkMark}1p${toBase64Url(new TextEncoder().encode(payload))}`;
}

const anyLink = fc.oneof(
  { weight: 2, arbitrary: mutated(plainLinks, fc.oneof(evil, fc.base64String({ maxLength: 12 }))) },
  { weight: 4, arbitrary: valueReplaced(payloads).map(asLink) },
  { weight: 2, arbitrary: mutated(payloads, evilJson).map(asLink) },
  { weight: 1, arbitrary: evilJson.map(asLink) },
  { weight: 1, arbitrary: fc.uint8Array({ maxLength: 200 }).map((bytes) => `${linkMark}1d${toBase64Url(bytes)}`) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 200 }).map((text) => linkMark + text) },
);

const anyPaste = fc.oneof(
  mutated(fc.constantFrom(recipe, '200 g\t1 1/2 cups\r\n3\t"a\nb"\r\n'), evil),
  fc.array(evil, { maxLength: 20 }).chain((parts) => fc.constantFrom('\t', '\n', ' ', '"').map((by) => parts.join(by))),
  fc.string({ unit: 'binary', maxLength: 400 }),
);

let accepted = 0;
let refused = 0;

/** What must hold whatever came in. */
function expectHarmless(): void {
  expect(JSON.stringify(mine)).toBe(before);
  expect(Object.getOwnPropertyNames(Object.prototype).join()).toBe(prototype);
  expect('hit' in globalThis || 'hit' in {}).toBe(false);
}

/** A sheet that something from outside went into is a sheet, and shows no number that is none. */
function expectSheet(document: SheetDocument): void {
  const read = readDocument(JSON.parse(JSON.stringify(document)));
  if (!read.ok) expect.fail(JSON.stringify(read.why));
  expect(JSON.stringify(read.document)).toBe(JSON.stringify(document));
}

/** Planning what came in comes to an end, in times that are some. */
function expectPlanned(document: SheetDocument, by: 'start' | 'drink'): void {
  const when = { by, at: '2026-11-28T08:00' };
  const batches = document.batches.map((batch) => (batch.when === undefined ? { ...batch, when } : batch));
  const { plans, over } = planBatches({ ...document, batches }, (batch) => formulate(recipeOf(document, batch)));
  for (const { plan } of [...plans, ...over]) {
    expect(plan.schedule.steps.filter(({ at, minutes }) => !Number.isFinite(at) || !Number.isFinite(minutes))).toEqual(
      [],
    );
  }
}

function openHostileFile(text: string): void {
  const read = readFile(text);
  if (!read.ok) {
    refused += 1;
    expect(read.message).toMatch(/^[A-Z].*\.$/s);
    return;
  }
  accepted += 1;
  const { merged, replaced, byMerging, byReplacing } = planOpening(mine, read.parts);
  expectSheet(merged);
  expectSheet(replaced);
  expectPlanned(replaced, 'start');
  expect(merged.batches[0]).toBe(mine.batches[0]);
  const said = JSON.stringify([read.message, read.lost, byMerging.length, byReplacing.length]);
  expect(said).not.toMatch(/\bNaN\b|\bInfinity\b/);
}

async function openHostileLink(text: string): Promise<void> {
  const read = await openLink(text);
  if (!read.ok) {
    refused += 1;
    expect(read.message).toMatch(/^[A-Z].*\.$/);
    return;
  }
  accepted += 1;
  const added = addShared(mine, read, { withFigures: true });
  expectSheet(added);
  expectPlanned(added, 'drink');
  expect(added.batches).toHaveLength(2);
  expect(added.batches[0]).toBe(mine.batches[0]);
}

function paste(text: string): void {
  const { lines } = parseTable(text);
  const target = { rows: rowOrder, batches: ['b1'], shown: () => '' };
  const pasted = pasteInto(mine, lines, target);
  expectSheet(pasted.document);
  const habits = { cups: mine.settings.cups, decimalComma: false, ownFoods: [] };
  const read = readRecipe(text, habits);
  expect(read.lines.map((line) => line.text).join('\n')).toBe(text.replace(/\r\n?/g, '\n'));
  planFromRecipe(read, habits);
  if (pasted.cells > 0) accepted += 1;
  else refused += 1;
}

function report(what: string, count: number): void {
  console.log(`${count} hostile ${what}: ${accepted} gave something sound, ${refused} were refused; none did harm`);
  accepted = 0;
  refused = 0;
}

describe('hostile', { timeout: 180_000 }, () => {
  test(`files, ${files} of them`, () => {
    fc.assert(fc.property(anyFile, openHostileFile), { numRuns: files });
    expectHarmless();
    expect(Math.min(accepted, refused)).toBeGreaterThan(files / 20);
    report('files', files);
  });

  test(`links, ${links} of them`, async () => {
    await fc.assert(fc.asyncProperty(anyLink, openHostileLink), { numRuns: links });
    expectHarmless();
    expect(Math.min(accepted, refused)).toBeGreaterThan(links / 20);
    report('links', links);
  });

  test(`pastes, ${pastes} of them`, () => {
    fc.assert(fc.property(anyPaste, paste), { numRuns: pastes });
    expectHarmless();
    report('pastes', pastes);
  });

  test('heat beyond sense is taken by a file and by a link, planned in words, and asks for no time', async () => {
    const heat = { what: 'milk', temperature: 72, minutes: 1e300 } as const;
    const when = { by: 'start', at: '2026-11-28T08:00' } as const;
    const sent = { ...mine, batches: [{ ...first(mine), heat, when }] };
    openHostileFile(writeCopy(sent));
    expect(accepted).toBe(1);
    await openHostileLink(plainFragment(sent, first(sent)));
    expect([accepted, refused]).toEqual([2, 0]);
    report('heat steps', 2);
  });

  test('names are shown as text, bidi controls and tags too', async () => {
    const name = '<script>globalThis.hit=1</script>\u202Egnp.exe';
    const sent = { ...mine, batches: [{ ...first(mine), name }] };
    const read = await openLink((await writeFragment(sent, first(sent))) ?? '');
    expect(read.ok && read.batch.name).toBe(name);
    expectHarmless();
  });

  test.each([
    ['spaces', ' '.repeat(size)],
    ['brackets', '['.repeat(size)],
    ['objects', '{"a":'.repeat(size / 5)],
    ['batches that never end', '{"id":"b1","name":"x",'.repeat(size / 22)],
    ['one batch that never ends', `{"version":2,"batches":[{"id":"b1","name":"${'x'.repeat(size - 100)}`],
    ['quotes', '"'.repeat(size)],
    ['a list of numbers', `[${'1,'.repeat(size / 2 - 2)}1]`],
  ])('much of %s is answered in words', (_, text) => {
    const read = readFile(text);
    expect(read.message ?? '').toMatch(/^[A-Z].*\.$/);
    expectHarmless();
  });

  const sound = JSON.stringify(first(mine));
  const many = 500_000 * share;
  const keys = Array.from({ length: many }, (_, at) => `"k${at}":{}`).join();
  test.each([
    ['empty batches', `{"version":2,"batches":[${'{},'.repeat(size / 3 - 20)}{}]}`],
    ['numbers for batches', `{"version":2,"batches":[${'1,'.repeat(size / 2 - 20)}1]}`],
    ['countless figures', `{"version":2,"batches":[],"yours":{${keys}}}`],
    ['countless figures beside a batch', `{"version":2,"batches":[${sound}],"yours":{${keys}}}`],
    ['countless measured rows', `{"version":2,"batches":[{"measured":{${keys}}}]}`],
    ['countless cells', `{"version":2,"batches":[{"given":[${'{},'.repeat(many)}{}]}]}`],
    ['2000 batches of wrong cells', `{"version":2,"batches":[${`{"given":[${'{},'.repeat(40)}{}]},`.repeat(1999)}{}]}`],
    ['a log of nothing', `{"version":2,"batches":[${sound}],"log":[${'{},'.repeat(size / 3 - 1000)}{}]}`],
    ['wrong batches', `{"version":2,"batches":[${'{"id":"b1"},'.repeat(size / 12)}{}]}`],
  ])('%s are said to be too much or wrong', (_, text) => {
    const read = readFile(text);
    expect(read.message ?? '').toMatch(/^(There is more in it than|This part of it is not).*\.$/);
    expect(() => readDocument(JSON.parse(text))).not.toThrow();
    expectHarmless();
  });

  test('10 MB pasted, as a table and as a recipe, is looked at as far as the limits go', () => {
    const text = '1 cup almonds\t=1+1\n'.repeat(mostBytes / 20);
    expect(parseTable(text).isCut).toBe(true);
    const habits = { cups: mine.settings.cups, decimalComma: false, ownFoods: [] };
    expect(readRecipe(text, habits).lines.at(-1)?.why?.code).toBe('beyondLimit');
    expectHarmless();
  });

  test('10 MB as a link is refused', async () => {
    const read = await openLink(`${linkMark}1d${'A'.repeat(mostBytes)}`);
    expect(read.ok ? '' : read.message).toMatch(/longer than 8192/);
  });
});
