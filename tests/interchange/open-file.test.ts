import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../src/batch/demo';
import type { Logged, SheetDocument } from '../../src/batch/document';
import { partsOf } from '../../src/batch/salvage';
import { mostBytes } from '../../src/interchange/file-limit';
import { onlyBatches, writeCopy } from '../../src/interchange/json-file';
import { readFile } from '../../src/interchange/open-file';
import { planOpening } from '../../src/interchange/plan-opening';
import { anyDocument } from '../batch/any-edit';

const entry: Logged = {
  batch: 'b1',
  name: 'One',
  at: '2026-11-28T08:00',
  found: 'ready',
  hours: 14,
  expected: null,
  temperature: null,
  acidity: null,
  note: 'fine',
};
const three: SheetDocument = {
  ...demo,
  batches: [startBatch('b1', 'One'), startBatch('b2', 'Two'), startBatch('b3', 'Three')],
  yours: { 'almond.uptake': { value: 0.4, how: 'typed' } },
  log: [entry],
};

function open(text: string) {
  const read = readFile(text);
  return read.ok ? read : expect.fail(read.message);
}

function namesIn(text: string): readonly string[] {
  return open(text).parts.batches.map(({ name }) => name);
}

function whatIsLost(text: string): readonly string[] {
  return open(text).lost.map(({ what }) => what);
}

/** The sheet with parts of it put wrong. */
function damage(change: (data: Record<string, unknown>) => void): string {
  const data: Record<string, unknown> = JSON.parse(writeCopy(three));
  change(data);
  return JSON.stringify(data);
}

describe('a saved copy', () => {
  test('of any sheet opens as that sheet', () => {
    fc.assert(
      fc.property(anyDocument, (document) => {
        const read = open(writeCopy(document));
        expect(read.message).toBeNull();
        expect(read.parts).toEqual(partsOf(document));
      }),
    );
  });

  test.each(['version-1.json', 'version-2.json'])('of an older version opens too: %s', (name) => {
    const read = open(readFileSync(`tests/batch/versions/${name}`, 'utf8'));
    expect(read.message).toBeNull();
    expect(read.parts.batches.length).toBeGreaterThan(0);
  });

  test('of some batches holds those, with their figures and their lines of the log alone', () => {
    const some = onlyBatches({ ...three, prices: { honey: 9 } }, new Set(['b2']));
    expect(some.batches.map(({ name }) => name)).toEqual(['Two']);
    expect(some.log).toEqual([]);
    expect(some.yours).toEqual(three.yours);
    expect(some.prices).toBeUndefined();
    expect(onlyBatches(three, new Set(['b1'])).log).toEqual([entry]);
    expect(open(writeCopy(some)).message).toBeNull();
  });
});

describe('a damaged file', () => {
  test('gives every batch that is sound, and names the one that is not with what is wrong in it', () => {
    const text = damage((data) => {
      data.batches = [three.batches[0], { ...three.batches[1], vessel: 'bucket' }, three.batches[2]];
    });
    expect(namesIn(text)).toEqual(['One', 'Three']);
    const [lost] = open(text).lost;
    expect(lost).toEqual({ what: 'Batch 2 (“Two”)', why: 'Wrong in it: vessel.' });
  });

  test('gives lines of the log, figures and settings each by itself', () => {
    const text = damage((data) => {
      data.log = [{ ...entry, hours: -1 }, entry, 'x'];
      data.yours = { ...three.yours, 'hemp.uptake': { value: 'much', how: 'typed' } };
      data.settings = { leads: 'imperial' };
    });
    const { parts } = open(text);
    expect(parts.log).toEqual([entry]);
    expect(parts.yours).toEqual(three.yours);
    expect(parts.settings).toBeNull();
    expect(whatIsLost(text)).toEqual(['Log 1 (“One”)', 'Log 3', 'Your figure “hemp.uptake”', 'The settings']);
  });

  test('with two batches of one id gives both', () => {
    const text = damage((data) => {
      data.batches = [three.batches[0], { ...three.batches[1], id: 'b1' }];
    });
    expect(namesIn(text)).toEqual(['One', 'Two']);
    expect(new Set(open(text).parts.batches.map(({ id }) => id)).size).toBe(2);
  });

  test('that is cut off anywhere gives all batches that are whole', () => {
    const text = writeCopy(three);
    const end = (name: string) => {
      const after = three.batches.findIndex((batch) => batch.name === name) + 1;
      return after < three.batches.length ? text.indexOf(`"id": "b${after + 1}"`) : text.indexOf('"yours"');
    };
    for (let length = text.indexOf('"id": "b2"'); length < text.length; length += 7) {
      const whole = ['One', 'Two', 'Three'].filter((name) => end(name) <= length);
      const cut = text.slice(0, length);
      if (whole.length === 0) continue;
      expect(namesIn(cut).slice(0, whole.length)).toEqual(whole);
      expect(open(cut).message).not.toBeNull();
    }
  });

  test('with one byte lost in it still gives the batches around', () => {
    const text = writeCopy(three);
    const at = text.indexOf('"name": "Two"') + 8;
    const broken = text.slice(0, at) + text.slice(at + 1);
    expect(namesIn(broken)).toEqual(['One', 'Three']);
    expect(whatIsLost(broken)).toContain('Batch 2');
    expect(open(broken).parts.log).toEqual([entry]);
    expect(open(broken).parts.settings).toEqual(three.settings);
  });

  test('of a newer version is said to be one, and what can be read of it is offered', () => {
    const text = damage((data) => {
      data.version = 99;
      data.batches = [three.batches[0], { ...three.batches[1], source: 'unheardOf' }];
    });
    expect(open(text).message).toContain('newer version of this page (99)');
    expect(namesIn(text)).toEqual(['One']);
  });

  test.each(['', 'x', '{}', '[]', 'null', '7', '"x"', '{"version":2}', '{"version":2,"batches":[]}', '%PDF-1.4'])(
    'that is no sheet is refused in words: %s',
    (text) => {
      const read = readFile(text);
      expect(read.ok).toBe(false);
      expect(read.message).toMatch(/^[A-Z].*\.$/);
    },
  );

  test('with more entries than are looked at says so and gives the first', { timeout: 30_000 }, () => {
    const text = damage((data) => {
      data.batches = [...three.batches, ...new Array(1_000_000).fill(0)];
    });
    const { parts, lost } = open(text);
    expect(parts.batches.map(({ name }) => name)).toEqual(['One', 'Two', 'Three']);
    expect(lost[0]?.what).toBe('All but the first 10000 entries of “batches”');
  });

  test('above the limit is not read', () => {
    expect(readFile('{'.repeat(mostBytes + 1))).toEqual({
      ok: false,
      message: 'This file is larger than 10 MB, which no sheet is. Nothing of it was read.',
    });
  });
});

describe('what opening a file would change', () => {
  const sayAll = (changes: ReturnType<typeof planOpening>['byMerging']) =>
    changes.map(({ what, names }) => `${what}: ${names.join(', ')}`);

  test('is said for merging and for replacing, and nothing is changed by asking', () => {
    const before = JSON.stringify(demo);
    const file: SheetDocument = { ...three, batches: [...demo.batches, startBatch('b2', 'Two')] };
    const plan = planOpening(demo, partsOf({ ...file, settings: { ...file.settings, leads: 'us' } }));
    expect(sayAll(plan.byMerging)).toEqual([
      '1 batch added: Two',
      '1 line of the log added: One, 2026-11-28 08:00',
      '1 figure of yours added: Water taken up in soaking (almond)',
    ]);
    expect(plan.there).toBe(1);
    expect(plan.settings).toEqual(['the unit that leads']);
    expect(JSON.stringify(demo)).toBe(before);
  });

  test('names batches that go or change by replacing', () => {
    const mine: SheetDocument = { ...demo, batches: [startBatch('b1', 'Mine'), startBatch('b9', 'Only mine')] };
    const plan = planOpening(mine, partsOf({ ...demo, batches: [startBatch('b1', 'Theirs')] }));
    expect(sayAll(plan.byReplacing)).toEqual(['1 batch changed: Mine', '1 batch removed: Only mine']);
    expect(sayAll(plan.byMerging)).toEqual(['1 batch added: Theirs (from file)']);
  });

  test('is nothing for the same sheet', () => {
    const plan = planOpening(three, partsOf(three));
    expect([plan.byMerging, plan.byReplacing, plan.settings]).toEqual([[], [], []]);
    expect(plan.merged).toBe(three);
  });

  test('counts the figures where yours stay', () => {
    const file: SheetDocument = { ...three, yours: { 'almond.uptake': { value: 0.9, how: 'typed' } } };
    expect(planOpening(three, partsOf(file)).figuresKept).toBe(1);
  });
});
