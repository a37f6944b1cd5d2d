import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { mostBatches, recipeOf } from '../../../src/batch/document/document';
import { readDocument } from '../../../src/batch/document/read-document';
import { correct, typeCell } from '../../../src/batch/edits/edits';
import { formulate } from '../../../src/formula/engine/formulate';
import { anyDocument, first } from '../any-edit';

const batch = first(demo);

function roundTrip(data: unknown): unknown {
  return JSON.parse(JSON.stringify(data));
}

function problemOf(data: unknown): unknown {
  const read = readDocument(data);
  return read.ok ? null : read.why;
}

describe('readDocument', () => {
  test('opens the demo', () => {
    expect(readDocument(roundTrip(demo))).toEqual({ ok: true, document: demo });
  });

  test('gives every document that edits lead to back as it was saved', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        expect(readDocument(roundTrip(document))).toEqual({ ok: true, document });
      }),
      { numRuns: 300 },
    );
  });

  test('keeps what this version does not know', () => {
    const data = roundTrip({
      ...demo,
      shelf: [{ at: 1 }],
      batches: [
        { ...batch, colour: 'green', given: [{ row: 'sourceMass', text: '1 g', amount: 1, kind: 'mass', by: 'me' }] },
      ],
    });
    expect(readDocument(data)).toEqual({ ok: true, document: data });
  });

  test('reads a mark of being on hand as not there where nothing can be, and loses nothing else', () => {
    const data = (use: object) =>
      roundTrip({
        ...demo,
        shelf: [{ at: 1 }],
        batches: [
          {
            ...batch,
            given: [cell({ row: 'soakTime', kind: 'time', ...use }), cell({ row: 'grainMass', use: 'onHand' })],
          },
        ],
      });
    expect(readDocument(data({ use: 'onHand' }))).toEqual({ ok: true, document: data({}) });
    expect(readDocument(data({ use: 7 }))).toEqual({ ok: true, document: data({}) });
  });

  test.each<[string, unknown, unknown]>([
    ['nothing', null, { code: 'notADocument' }],
    ['a list', [], { code: 'notADocument' }],
    ['a text', 'sheet', { code: 'notADocument' }],
    ['an object without a version', { batches: [batch] }, { code: 'notADocument' }],
    ['a newer version', { ...demo, version: 3 }, { code: 'newer', version: 3 }],
    ['an older version than there ever was', { ...demo, version: 0 }, { code: 'wrongPart', at: 'version' }],
    ['no batches', { ...demo, batches: [] }, { code: 'wrongPart', at: 'batches' }],
    ['two batches of one id', { ...demo, batches: [batch, batch] }, { code: 'wrongPart', at: 'batches' }],
    [
      'too many batches',
      { ...demo, batches: many(mostBatches + 1) },
      { code: 'tooMany', at: 'batches', most: mostBatches },
    ],
    ['an id with a space in it', withBatch({ id: 'b 1' }), { code: 'wrongPart', at: 'batches.0.id' }],
    ['a name that is too long', withBatch({ name: 'n'.repeat(201) }), { code: 'wrongPart', at: 'batches.0.name' }],
    ['a jar of no table', withBatch({ vessel: 'constructor' }), { code: 'wrongPart', at: 'batches.0.vessel' }],
    ['no sweetener at all', withBatch({ sweetener: [] }), { code: 'wrongPart', at: 'batches.0.sweetener' }],
    [
      'a share below 0',
      withBatch({ sweetener: [{ id: 'honey', share: -1 }] }),
      { code: 'wrongPart', at: 'batches.0.sweetener.0.share' },
    ],
    ['a row given twice', withBatch({ given: [cell({}), cell({})] }), { code: 'wrongPart', at: 'batches.0.given' }],
    [
      'heat for less than no time',
      withBatch({ heat: { what: 'source', temperature: 80, minutes: -5 } }),
      { code: 'wrongPart', at: 'batches.0.heat.minutes' },
    ],
    [
      'a row of no sheet',
      withBatch({ given: [cell({ row: 'toString' })] }),
      { code: 'wrongPart', at: 'batches.0.given.0.row' },
    ],
    [
      'a choice as a number',
      withBatch({ given: [cell({ row: 'vessel' })] }),
      { code: 'wrongPart', at: 'batches.0.given.0.row' },
    ],
    [
      'an endless amount',
      withBatch({ given: [cell({ amount: Number.POSITIVE_INFINITY })] }),
      { code: 'wrongPart', at: 'batches.0.given.0.amount' },
    ],
    [
      'an amount that is no number',
      withBatch({ given: [cell({ amount: Number.NaN })] }),
      { code: 'wrongPart', at: 'batches.0.given.0.amount' },
    ],
    [
      'a text that is too long',
      withBatch({ given: [cell({ text: '1'.repeat(201) })] }),
      { code: 'wrongPart', at: 'batches.0.given.0.text' },
    ],
    [
      'a correction that is no number',
      { ...demo, yours: { 'almond.uptake': { value: '1', how: 'typed' } } },
      { code: 'wrongPart', at: 'yours.almond.uptake.value' },
    ],
    [
      'a prototype key',
      JSON.parse('{"version":1,"yours":{"__proto__":{"value":1}}}'),
      { code: 'prototypeKey', at: 'yours.__proto__' },
    ],
  ])('refuses %s', (_, data, why) => {
    expect(problemOf(data)).toEqual(why);
  });

  test('takes as many batches as may be saved', () => {
    expect(problemOf({ ...demo, batches: many(mostBatches) })).toBeNull();
  });

  test('neither throws nor reaches a prototype, whatever the JSON', () => {
    const key = fc.oneof(
      fc.constantFrom(
        '__proto__',
        'constructor',
        'prototype',
        'version',
        'batches',
        'yours',
        'settings',
        'given',
        'id',
      ),
      fc.string(),
    );
    const { hostile } = fc.letrec((tie) => ({
      hostile: fc.oneof(
        { depthSize: 'small' },
        fc.constantFrom(null, 1, 0, -1, 'b1', 'almond', true),
        fc.array(tie('hostile'), { maxLength: 4 }),
        fc.array(fc.tuple(key, tie('hostile')), { maxLength: 6 }).map(
          // Written as text, so that "__proto__" becomes a key of its own as it does in a hostile file.
          (entries) =>
            JSON.parse(`{${entries.map(([name, value]) => `${JSON.stringify(name)}:${JSON.stringify(value)}`)}}`),
        ),
      ),
    }));
    const clean = Object.getOwnPropertyNames(Object.prototype);
    fc.assert(
      fc.property(hostile, fc.constantFrom('batches', 'yours', 'settings', 'more', 'version'), (part, name) => {
        expect(readDocument(part).ok).toBe(false);
        const read = readDocument({ ...demo, [name]: part });
        if (read.ok) formulate(recipeOf(read.document, first(read.document)));
        expect(Object.getOwnPropertyNames(Object.prototype)).toEqual(clean);
      }),
    );
  });
});

describe('recipeOf', () => {
  test('carries what was typed and what was corrected to the engine', () => {
    const typed = typeCell(demo, 'b1', 'sourceMass', '200 g');
    const corrected = correct(typed, 'almond.uptake', 0.9, 'typed');
    const { rows } = formulate(recipeOf(corrected, first(corrected)));
    expect(rows.sourceMass.value).toBe(200);
    expect(rows.soakedMass.value).toBeCloseTo(380, 9);
  });

  test('gives the engine a recipe that it can work out, for every document', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        for (const each of document.batches)
          expect(formulate(recipeOf(document, each)).rows.source.value).toBe(each.source);
      }),
    );
  });
});

function withBatch(changes: object): unknown {
  return { ...demo, batches: [{ ...batch, ...changes }] };
}

function cell(changes: object): unknown {
  return { row: 'sourceMass', text: '300 g', amount: 300, kind: 'mass', ...changes };
}

function many(count: number): readonly unknown[] {
  return Array.from({ length: count }, (_, at) => ({ ...batch, id: `b${at + 1}` }));
}
