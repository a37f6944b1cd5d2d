import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { currentVersion } from '../../../src/batch/document/migrations';
import { findLastGood, openText } from '../../../src/batch/keeping/open-saved';
import { anyDocument } from '../any-edit';

test('what was saved opens as it was', () => {
  fc.assert(
    fc.property(anyDocument, (document) => {
      expect(openText(JSON.stringify(document))).toEqual({ is: 'good', document });
    }),
  );
});

test.each(['', '{', 'null', '[]', '7', '{"version":2}', '{"__proto__":{}}', undefined, 7, {}, []])(
  'what is no sheet is damaged, with a reason: %j',
  (found) => {
    expect(openText(found)).toEqual({ is: 'damaged', why: expect.stringMatching(/^It.+\.$|^This.+\.$/s) });
  },
);

test('no text makes it throw', () => {
  fc.assert(fc.property(fc.oneof(fc.string(), fc.json(), fc.anything()), (found) => void openText(found)));
});

test('a newer version is opened as far as it is understood', () => {
  const newer = { ...demo, version: currentVersion + 1, pots: [] };
  expect(openText(JSON.stringify(newer))).toEqual({
    is: 'newer',
    version: currentVersion + 1,
    document: { ...newer, version: currentVersion },
  });
  const strange = JSON.stringify({ version: 99, jars: [] });
  expect(openText(strange)).toEqual({ is: 'newer', version: 99, document: null });
});

const good = JSON.stringify(demo);
const find = (found: readonly unknown[]) =>
  findLastGood(
    found.map((_, place) => [place + 1, place * 10] as const),
    ([revision]) => Promise.resolve(found[revision - 1]),
  );

test('the newest state that opens is found, and what was passed over', async () => {
  expect(await find([])).toEqual({ document: null, at: null, head: 0, damaged: [], newer: null });
  expect(await find([good, good])).toEqual({ document: demo, at: 10, head: 2, damaged: [], newer: null });
  const mixed = await find([good, '{', 7]);
  expect(mixed).toMatchObject({ document: demo, at: 0, head: 3, newer: null });
  expect(mixed.damaged.map(({ key }) => key)).toEqual([
    [3, 20],
    [2, 10],
  ]);
  expect(await find(['{'])).toMatchObject({ document: null, at: null, head: 1 });
});

test('a newer state that can’t be shown is named, and the one before it shown', async () => {
  const found = await find([good, JSON.stringify({ version: 99 })]);
  expect(found).toMatchObject({ document: demo, at: 0, head: 2, damaged: [], newer: 99 });
});

test('a record that the disk can’t give is passed over where an older one can be shown, else it is an error', async () => {
  const lost = new DOMException('lost', 'DataError');
  const read = ([revision]: readonly [number, number]) =>
    revision === 2 ? Promise.reject(lost) : Promise.resolve(revision === 1 ? good : '{');
  const keys = [
    [1, 10],
    [2, 20],
    [3, 30],
  ] as const;
  const found = await findLastGood(keys, read);
  expect(found).toMatchObject({ document: demo, at: 10, head: 3 });
  expect(found.damaged.map(({ key, isThere }) => [key[0], isThere])).toEqual([
    [3, true],
    [2, false],
  ]);
  await expect(findLastGood(keys.slice(1), read)).rejects.toBe(lost);
});
