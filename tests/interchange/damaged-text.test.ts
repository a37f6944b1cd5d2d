import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../src/batch/document/demo';
import type { Logged, SheetDocument } from '../../src/batch/document/document';
import { ownJarOf } from '../../src/formula/recipe/coefficients';
import { writeCopy } from '../../src/interchange/json-file';
import { readFile } from '../../src/interchange/open-file';
import { planOpening } from '../../src/interchange/plan-opening';

const entry = (changes: Partial<Logged> = {}): Logged => ({
  ...{ batch: 'b1', name: 'One', at: '2026-11-28T08:00', found: 'ready', hours: 14, expected: null },
  ...{ temperature: null, acidity: null, note: 'fine' },
  ...changes,
});
const three: SheetDocument = {
  ...demo,
  batches: [startBatch('b1', 'One'), startBatch('b2', 'Two'), startBatch('b3', 'Three')],
  yours: { 'almond.uptake': { value: 0.4, how: 'typed' } },
  log: [entry(), entry({ batch: 'b2', name: 'Two' }), entry({ batch: 'b3', name: 'Three' })],
};
const copy = writeCopy(three);
const cutBefore = (what: string) => copy.slice(0, copy.indexOf(what));

function open(text: string) {
  const read = readFile(text);
  return read.ok ? read : expect.fail(read.message);
}

const namesIn = (text: string) => open(text).parts.batches.map(({ name }) => name);
const whatIsLost = (text: string) => open(text).lost.map(({ what }) => what);

describe('a part that is not found in a damaged text is named', () => {
  test.each([
    ['between two others', '"id": "b2"', '"id: "b2"', ['One', 'Three'], 'A part between “One” and “Three”'],
    ['before all others', '"id": "b1"', '"id: "b1"', ['Two', 'Three'], 'A part before “Two”'],
    ['after all others', '"id": "b3"', '"id: "b3"', ['One', 'Two'], 'A part after “Two”'],
    ['where the key is broken', '"batches"', '"batches', ['One', 'Two', 'Three'], 'A part before “One”'],
  ])('%s', (_, sound, damaged, left, named) => {
    const text = copy.replace(sound, damaged);
    expect(namesIn(text)).toEqual(left);
    expect(whatIsLost(text)).toEqual([named]);
    expect(open(text).isNewer).toBe(false);
  });

  test('in the log too', () => {
    const text = copy.replace('"batch": "b2"', '"batch: "b2"');
    expect(open(text).parts.log).toHaveLength(2);
    expect(whatIsLost(text)).toEqual([
      'A part of the log between “One, 2026-11-28 08:00” and “Three, 2026-11-28 08:00”',
    ]);
  });

  test('where it lies in another that has lost its end', () => {
    const text = copy.replace('"id": "b2"', '"id: "b2"').replace('"name": "One"', '"name": One"');
    expect(namesIn(text)).toEqual(['Three']);
    expect(whatIsLost(text)).toEqual(['Batch 1', 'A part between Batch 1 and “Three”']);
  });

  test('of own foods as well', () => {
    const foods = ['Flour', 'Oats', 'Rye'].map((name) => ({ name, grams: 120, millilitres: 240 }));
    const text = writeCopy({ ...three, ownFoods: foods }).replace('"name": "Oats"', '"name: "Oats"');
    expect(whatIsLost(text)).toEqual(['A part of the own foods between “Flour” and “Rye”']);
  });

  test('wherever one sign is lost, each batch and line is there or something is named', () => {
    for (let at = copy.indexOf('"batches"'); at < copy.length; at += 1) {
      const text = copy.slice(0, at) + copy.slice(at + 1);
      const read = readFile(text);
      if (!read.ok || read.message === null) continue;
      const isWhole = read.parts.batches.length === 3 && read.parts.log?.length === 3;
      if (!isWhole && read.lost.length === 0) expect.fail(`${at}: ${text.slice(at - 20, at + 20)}`);
    }
  });
});

describe('of a text that is cut off', () => {
  const end = 'The log, or its end';

  test.each([
    ['before the log', cutBefore('"log"')],
    ['in the key of the log', cutBefore('og": [')],
    ['before a line', copy.slice(0, copy.indexOf('"batch": "b2"') - 8)],
    ['before the end of the log', copy.slice(0, copy.lastIndexOf(']'))],
  ])('%s, the end of the log is named', (_, text) => {
    expect(whatIsLost(text)).toContain(end);
  });

  test('in a line, the line and the end of the log are named', () => {
    const lost = whatIsLost(copy.slice(0, copy.indexOf('"batch": "b2"') + 60));
    expect(lost).toEqual(expect.arrayContaining(['Log 2 (“Two”)', end]));
  });

  test('within a batch, right after a bracket of its own, names what came after it too', () => {
    const line = JSON.stringify(three);
    const inTwo = line.indexOf('"given":[]', line.indexOf('"b2"')) + '"given":[]'.length;
    const named = whatIsLost(line.slice(0, inTwo));
    expect(named).toEqual(expect.arrayContaining(['Batch 2 (“Two”)', 'What came after “Two”']));
  });

  test('within a note that has the brackets of a list in it takes nothing for read', () => {
    const noted = JSON.stringify({ ...three, log: [entry({ note: 'jar {[2]} by the window' })] });
    const text = noted.slice(0, noted.indexOf(']} by the window') + 2);
    expect(whatIsLost(text)).toEqual(expect.arrayContaining(['Own foods, if it had any', 'Prices, if it had any']));
  });

  test('after a batch, what came after it is named', () => {
    const text = copy.slice(0, copy.indexOf('"id": "b3"') - 8);
    expect(namesIn(text)).toEqual(['One', 'Two']);
    expect(whatIsLost(text)).toEqual(
      expect.arrayContaining(['What came after “Two”', end, 'Your own figures', 'The settings']),
    );
  });

  test('after the log, nothing of it is', () => {
    expect(whatIsLost(copy.slice(0, copy.lastIndexOf(']') + 1))).toEqual(
      ['Own foods', 'Jars of grains', 'Cartons', 'Prices', 'Classes', 'Blends'].map((list) => `${list}, if it had any`),
    );
  });

  test('of a first version, which had no log, none is missed', () => {
    const { log: _, ...rest } = three;
    const text = JSON.stringify({ ...rest, version: 1 }).replace('"version":1,', '"version":1,,');
    expect(whatIsLost(text)).toEqual([]);
    expect(open(text).parts.log).toEqual([]);
  });
});

describe('replacing the sheet by a damaged file', () => {
  const mine: SheetDocument = {
    ...three,
    yours: { ...three.yours, 'hemp.uptake': { value: 0.5, how: 'typed' } },
    ownFoods: [{ name: 'Rye', grams: 1, millilitres: 2 }],
    cartons: [{ name: 'Oat' }],
  };

  test('leaves what the file has nothing of that can be read', () => {
    const plan = planOpening(mine, open(cutBefore('"yours"')).parts);
    expect(plan.stays).toEqual([
      ...['the log', 'your own figures', 'own foods', 'jars of grains', 'cartons', 'prices', 'classes', 'blends'],
    ]);
    expect(plan.byReplacing).toEqual([]);
    expect(plan.replaced).toBe(mine);
  });

  test('takes what is empty for empty', () => {
    const text = writeCopy({ ...three, log: [], yours: {} }).replace('"version": 2,', '"version": 2,,');
    const plan = planOpening(mine, open(text).parts);
    expect(plan.stays).toEqual([]);
    expect([plan.replaced.log, plan.replaced.yours, plan.replaced.ownFoods]).toEqual([[], {}, undefined]);
  });

  test('leaves the log where all of its lines are wrong, or it is no list, or missing', () => {
    for (const log of [[{ ...entry(), hours: -1 }], 'x', undefined]) {
      const { parts, lost } = open(JSON.stringify({ ...three, log }));
      expect(planOpening(mine, parts).replaced.log).toEqual(mine.log);
      expect(lost).toHaveLength(1);
    }
  });

  test('keeps your lines apart from another batch of the same id, and drops the shape of a jar that is gone', () => {
    const key = (id: string) => `${ownJarOf(id)}.brimful`;
    const shape = { value: 900, how: 'typed' } as const;
    const shaped: SheetDocument = { ...mine, yours: { [key('b1')]: shape, [key('b2')]: shape } };
    const other = { ...three, batches: [startBatch('b1', 'Another'), startBatch('b2', 'Two')] };
    const text = writeCopy(other);
    const { replaced } = planOpening(shaped, open(text.slice(0, text.indexOf('"yours"'))).parts);
    expect(replaced.log.map(({ batch, name }) => [batch, name])).toEqual([
      ['b4', 'One'],
      ['b2', 'Two'],
      ['b3', 'Three'],
    ]);
    expect(replaced.yours).toEqual({ [key('b2')]: shape });
  });
});
