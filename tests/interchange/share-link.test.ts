import fc from 'fast-check';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { correctionsOf } from '../../src/batch/document/batch-corrections';
import { demo } from '../../src/batch/document/demo';
import { type Batch, type Cell, recipeOf, type SheetDocument } from '../../src/batch/document/document';
import { correct, setHeat, typeCell } from '../../src/batch/edits/edits';
import { readCell } from '../../src/batch/reading/read-cell';
import { isRow } from '../../src/formula/engine/evaluate';
import { formulate } from '../../src/formula/engine/formulate';
import { ownJarOf } from '../../src/formula/recipe/coefficients';
import { measuredRows, type NumericRowId, rowOrder } from '../../src/formula/recipe/order';
import { linkMark } from '../../src/interchange/link-mark';
import { openLink } from '../../src/interchange/open-link';
import { linkTo, longestFragment, plainFragment, writeFragment } from '../../src/interchange/share-link';
import { deflate, fromBase64Url, inflate, toBase64Url } from '../../src/interchange/squeeze';
import { baseUnits, units } from '../../src/measure/units';
import { anyDocument, first } from '../batch/any-edit';
import { anyRecipe } from '../batches';
import { documentOf } from '../stocked';

const page = 'https://kitchen.example/sheet/';

/** What a link carries of a batch; dates, stocks and the like stay where they are. */
function given({ id: _, onHand: __, when: ___, opened: ____, ...rest }: Batch) {
  return rest;
}

async function roundTrip(document: SheetDocument, batch: Batch) {
  const fragment = await writeFragment(document, batch);
  if (fragment === null) return null;
  const read = await openLink(linkTo(page, fragment));
  return read.ok ? read : expect.fail(read.message);
}

async function pack(data: unknown): Promise<string> {
  const packed = await deflate(new TextEncoder().encode(JSON.stringify(data)));
  return `${linkMark}1d${toBase64Url(packed ?? new Uint8Array())}`;
}

afterEach(() => {
  vi.unstubAllGlobals();
});

/** The same sheet with every amount typed as a text that says it, and read from it. */
function typedOut(document: SheetDocument): SheetDocument {
  const again = (row: NumericRowId, { amount, kind }: Cell): Cell =>
    readCell(row, `${amount ?? 'some'} ${units[baseUnits[kind]].symbol}`, document.settings);
  const batches = document.batches.map((batch) => ({
    ...batch,
    given: batch.given.map((cell) => ({ ...cell, ...again(cell.row, cell) })),
    measured: Object.fromEntries(
      measuredRows.flatMap((row) => {
        const cell = batch.measured[row];
        return cell === undefined ? [] : [[row, again(row, cell)]];
      }),
    ),
  }));
  return { ...document, batches };
}

describe('a batch as a link', () => {
  test('comes back as it was given: any batch of any sheet', async () => {
    await fc.assert(
      fc.asyncProperty(anyDocument, async (document) => {
        for (const batch of document.batches) {
          const read = await roundTrip(document, batch);
          if (read === null) continue;
          expect(given(read.batch)).toEqual(given(batch));
          const sent = Object.entries(correctionsOf(document, batch));
          const own = sent.map(([key, value]) => [key.replace(ownJarOf(batch.id), 'own'), value]);
          expect(read.yours).toEqual(Object.fromEntries(own));
        }
      }),
    );
  });

  test('works out to the same numbers, with the sender’s figures', async () => {
    await fc.assert(
      fc.asyncProperty(anyRecipe, async (recipe) => {
        const document = typedOut(documentOf(recipe));
        const read = (await roundTrip(document, first(document))) ?? expect.fail('too long for a link');
        const there = formulate(recipeOf({ ...document, yours: read.yours }, read.batch)).rows;
        const here = formulate(recipeOf(document, first(document))).rows;
        for (const id of rowOrder) expect(there[id].value).toEqual(here[id].value);
      }),
    );
  });

  test('with nothing typed is an address of under 80 characters', async () => {
    const fragment = (await writeFragment(demo, first(demo))) ?? '';
    expect(linkTo(page, fragment).length).toBeLessThan(80);
  });

  test('takes the place of whatever stood behind the # of the page', () => {
    expect(linkTo(`${page}#old`, '#batch=1p')).toBe(`${page}#batch=1p`);
  });

  test('carries amounts as they were read, whatever cup the other kitchen has', async () => {
    const metric = { ...demo, settings: { ...demo.settings, cups: 'metric' as const } };
    const document = typeCell(metric, 'b1', 'blendWater', '2 cups');
    const read = await roundTrip(document, first(document));
    expect(read?.batch.given).toEqual([{ row: 'blendWater', text: '2 cups', amount: 500, kind: 'volume' }]);
  });

  test('carries only the figures that the batch is worked out with', async () => {
    let document = correct(demo, 'almond.uptake', 0.4, 'typed');
    document = correct(document, 'hemp.passing', 0.4, 'typed');
    document = setHeat(document, 'b1', { what: 'milk', temperature: 80, minutes: 5 });
    const read = await roundTrip(document, first(document));
    expect(read?.yours).toEqual({ 'almond.uptake': { value: 0.4, how: 'typed' } });
    expect(read?.batch.heat).toEqual({ what: 'milk', temperature: 80, minutes: 5 });
  });

  test('that marks as on hand what can’t be is read without the mark', async () => {
    const sent = JSON.stringify({
      n: 'x',
      t: [
        ['soakTime', '8 h', 8, 0, 1],
        ['grainMass', '30 g', 30, 0, 1],
      ],
    });
    const read = await openLink(`${linkMark}1p${toBase64Url(new TextEncoder().encode(sent))}`);
    if (!read.ok) expect.fail(read.message);
    expect(read.batch.given).toEqual([
      { row: 'soakTime', text: '8 h', amount: 8, kind: 'time' },
      { row: 'grainMass', text: '30 g', amount: 30, kind: 'mass', use: 'onHand' },
    ]);
    expect(formulate(recipeOf(demo, read.batch)).failed).toBe(false);
  });

  test('is found among other words, and with a full stop behind it', async () => {
    const fragment = await writeFragment(demo, first(demo));
    const read = await openLink(`Try this: ${page}${fragment}. It is good!`);
    expect(read.ok).toBe(true);
  });

  test('goes unpacked where the browser can’t pack, and is opened all the same', async () => {
    vi.stubGlobal('CompressionStream', undefined);
    vi.stubGlobal('DecompressionStream', undefined);
    const document = typeCell(demo, 'b1', 'sourceMass', '200 g');
    const fragment = await writeFragment(document, first(document));
    expect(fragment).toBe(plainFragment(document, first(document)));
    expect(await openLink(fragment ?? '')).toMatchObject({ ok: true, batch: { name: 'Saturday almond' } });
  });

  test('is none where the batch is too long for one', async () => {
    let seed = 7;
    const noise = () => {
      seed = (seed * 48271) % 2147483647;
      return String.fromCharCode(0x4e00 + (seed % 20000));
    };
    const given = rowOrder.filter(isRow).map((row) => {
      return { row, text: Array.from({ length: 200 }, noise).join(''), amount: null, kind: 'mass' as const };
    });
    const batch = { ...first(demo), given };
    expect(await writeFragment({ ...demo, batches: [batch] }, batch)).toBeNull();
  });
});

describe('a link that is not as it should be', () => {
  const refused: readonly (readonly [name: string, text: string, words: RegExp])[] = [
    ['none', `${page}#top`, /no batch/],
    ['empty', '#batch=', /damaged/],
    ['cut', '#batch=1dq1Yq', /damaged/],
    ['no base64url', '#batch=1p!!', /damaged/],
    ['packed in no known way', '#batch=1zAAAA', /damaged/],
    ['of a newer version', '#batch=2pAAAA', /newer version/],
    ['of no version', '#batch=0pAAAA', /damaged/],
    ['longer than any', `#batch=1p${'A'.repeat(longestFragment)}`, /longer than 8192/],
  ];

  test.each(refused)('is refused in words: %s', async (_, text, words) => {
    const read = await openLink(text);
    expect(read.ok ? 'read' : read.message).toMatch(words);
  });

  test.each([
    ['another jar', { n: 'x', v: 'bucket' }],
    ['a row that is none', { n: 'x', t: [['constructor', '1', 1]] }],
    ['a row of the prototype', { n: 'x', m: [['__proto__', '1', 1]] }],
    [
      'one row twice',
      {
        n: 'x',
        t: [
          ['sourceMass', '1', 1],
          ['sourceMass', '2', 2],
        ],
      },
    ],
    ['a text too long', { n: 'x', t: [['sourceMass', '1'.repeat(201), 1]] }],
    ['a name too long', { n: 'x'.repeat(201) }],
    ['no sweetener', { n: 'x', w: [] }],
    ['a list for a name', { n: ['x'] }],
    ['no object', 7],
    ['an endless share', { n: 'x', w: [['honey', 1e308]] }],
  ])('is refused with %s in it', async (_, data) => {
    expect((await openLink(await pack(data))).ok).toBe(false);
  });

  test.each(['#batch%3D', '#Batch=', 'See here: https://x.invalid/#batch='])('is found behind %s', async (mark) => {
    const sent = (await pack({ n: 'Oats of Jo' })).slice(linkMark.length);
    expect(await openLink(`${mark}${sent}`)).toMatchObject({ ok: true, batch: { name: 'Oats of Jo' } });
  });

  test('means what its texts say, whatever amount comes with them', async () => {
    const read = await openLink(
      await pack({
        n: 'x',
        t: [
          ['sourceMass', '5 g', 50000],
          ['milkVolume', '1 cup', 250],
        ],
      }),
    );
    const given = read.ok ? read.batch.given : expect.fail(read.message);
    expect(given[0]).toMatchObject({ row: 'sourceMass', text: '5 g', amount: 5, kind: 'mass' });
    // A metric cup of the sender's stays one.
    expect(given[1]).toMatchObject({ row: 'milkVolume', text: '1 cup', amount: 250, kind: 'volume' });
  });

  test('is refused when a figure has a key that reaches a prototype', async () => {
    const text = '{"n":"x","y":[["__proto__",1,"typed"]]}';
    const read = await openLink(`${linkMark}1p${toBase64Url(new TextEncoder().encode(text))}`);
    expect(read.ok).toBe(false);
  });

  test('that unpacks to more than a batch is stopped before it fills the memory', async () => {
    const bomb = (await deflate(new Uint8Array(5_000_000))) ?? new Uint8Array();
    const fragment = `${linkMark}1d${toBase64Url(bomb)}`;
    expect(fragment.length).toBeLessThan(longestFragment);
    const read = await openLink(fragment);
    expect(read.ok ? '' : read.message).toMatch(/more than 100 kB/);
  });
});

describe('packing', () => {
  test('gives back any bytes, as text too', async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
        const packed = (await deflate(Uint8Array.from(bytes))) ?? expect.fail('nothing packed');
        const text = toBase64Url(packed);
        expect(text).toMatch(/^[\w-]*$/);
        expect(await inflate(fromBase64Url(text) ?? new Uint8Array(), 300)).toEqual(Uint8Array.from(bytes));
      }),
    );
  });

  test('stops at the byte after the last that is allowed', async () => {
    const packed = (await deflate(new Uint8Array(100))) ?? new Uint8Array();
    expect(await inflate(packed, 100)).toHaveLength(100);
    expect(await inflate(packed, 99)).toBeNull();
  });
});
