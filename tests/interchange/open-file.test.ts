import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../src/batch/document/demo';
import type { Logged, SheetDocument } from '../../src/batch/document/document';
import { mostBatches, mostLogged } from '../../src/batch/document/document-limits';
import { partsOf } from '../../src/batch/document/salvage';
import { addEntry } from '../../src/batch/edits/log-edits';
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
    const some = onlyBatches({ ...three, packages: [honey] }, new Set(['b2']));
    expect(some.batches.map(({ name }) => name)).toEqual(['Two']);
    expect(some.log).toEqual([]);
    expect(some.yours).toEqual(three.yours);
    expect(some.packages).toBeUndefined();
    expect(onlyBatches(three, new Set(['b1'])).log).toEqual([entry]);
    expect(open(writeCopy(some)).message).toBeNull();
  });
});

const honey = { food: 'sweetener.honey', amount: { text: '1 kg', amount: 1000, kind: 'mass' as const }, price: '9' };

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

  test('with a heat step that is none gives the batch without it, and names it', () => {
    const heat = { what: 'milk', temperature: 72, minutes: 'long' };
    const text = damage((data) => {
      data.batches = [three.batches[0], { ...three.batches[1], heat }, { ...three.batches[2], heat, vessel: 'bucket' }];
    });
    expect(open(text).parts.batches).toEqual(three.batches.slice(0, 2));
    expect(open(text).lost).toEqual([
      { what: 'The heat step of Batch 2 (“Two”)', why: 'Wrong in it: heat.minutes.' },
      { what: 'Batch 3 (“Three”)', why: 'Wrong in it: vessel.' },
    ]);
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

  describe('with own foods and prices', () => {
    const [flour, oats] = ['Flour', 'Oats'].map((name) => ({ name, grams: 120, millilitres: 240 }));
    const full = { ...three, ownFoods: [flour, oats], packages: [honey] };
    const text = writeCopy(JSON.parse(JSON.stringify(full)));
    const cutAt = (what: string, more = 0) => text.slice(0, text.indexOf(what) + more);

    test('gives those that are whole, and names what is broken, wherever it is cut off', () => {
      for (let length = text.indexOf('"id": "b2"'); length < text.length - 1; length += 1) {
        const { parts, lost } = open(text.slice(0, length));
        const named = lost.map(({ what }) => what).join('; ');
        const whole = [
          parts.ownFoods?.length === 2 || /Own food/.test(named),
          parts.packages?.length === 1 || /Price/.test(named),
        ];
        if (!whole.every(Boolean) && text.slice(length).trim() !== '}') expect.fail(`${length}: ${named}`);
      }
    });

    test.each([
      ['in the middle of a food', cutAt('"Oats"', 3), ['Own food 2 (“Oa”)', 'Prices, if it had any']],
      ['before another food', cutAt('"name": "Oats"', -9), ['Own foods after those that can be read, if it had any']],
      ['before the foods', cutAt('"ownFoods"'), ['Own foods, if it had any', 'Prices, if it had any']],
      ['in the prices', cutAt('"sweetener.honey"', 9), ['Prices']],
    ])('cut off %s', (_, cut, named) => {
      expect(whatIsLost(cut)).toEqual(expect.arrayContaining(named));
    });

    test('damaged elsewhere gives them all', () => {
      const { parts, lost } = open(text.replace('"version": 2,', '"version": 2,,'));
      expect([parts.ownFoods, parts.packages, lost]).toEqual([full.ownFoods, full.packages, []]);
    });

    test('of which one is damaged gives the others', () => {
      const { parts, lost } = open(text.replace('"name": "Flour"', '"name": Flour'));
      expect(parts.ownFoods).toEqual([oats]);
      expect(lost.map(({ what }) => what)).toEqual(['Own food 1']);
    });

    test('of which a sheet had none is not said to have lost any', () => {
      expect(open(writeCopy(three).replace('"version": 2,', '"version": 2,,')).lost).toEqual([]);
    });
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
    expect(lost[0]?.what).toBe('All but the first 4000 entries of “batches”');
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

  test('says what there is no room for, and does not count it as here already', () => {
    const many = Array.from({ length: mostBatches }, (_, at) => startBatch(`x${at}`, `Batch ${at}`));
    const plan = planOpening(demo, partsOf({ ...demo, batches: many }));
    expect(plan.there).toBe(0);
    expect(sayAll(plan.noRoom)).toEqual([`1 batch: Batch ${mostBatches - 1}`]);
    const full: SheetDocument = { ...demo, log: new Array(mostLogged).fill({ ...entry, note: 'mine' }) };
    expect(sayAll(planOpening(full, partsOf(three)).noRoom)).toEqual(['1 line of the log: One, 2026-11-28 08:00']);
    expect(planOpening(demo, partsOf(three)).noRoom).toEqual([]);
  });

  test('names what the log teaches apart from figures of yours', () => {
    const mine = addEntry(demo, { ...entry, expected: 12, hours: 9 });
    const theirs = addEntry(demo, { ...entry, expected: 12, at: '2026-11-29T08:00', hours: 7 });
    const plan = planOpening(mine, partsOf(theirs));
    expect(sayAll(plan.byMerging)).toEqual([
      '1 line of the log added: One, 2026-11-29 08:00',
      [
        '3 figures learned from the log changed: How fast this kitchen ripens (kitchen)',
        'How fast these grains are, for this kitchen (water)',
        'How fast this source is, for this kitchen (almond)',
      ].join(', '),
    ]);
    expect(plan.figuresKept).toBe(0);
  });

  test('counts the figures where yours stay', () => {
    const file: SheetDocument = { ...three, yours: { 'almond.uptake': { value: 0.9, how: 'typed' } } };
    expect(planOpening(three, partsOf(file)).figuresKept).toBe(1);
  });
});
