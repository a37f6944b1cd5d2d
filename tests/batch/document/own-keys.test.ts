import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { KeptClass, SheetDocument, Stock } from '../../../src/batch/document/document';
import { withOwnKeys } from '../../../src/batch/document/own-keys';
import { readDocument } from '../../../src/batch/document/read-document';
import { partsOf, salvage } from '../../../src/batch/document/salvage';
import { mergeInto } from '../../../src/batch/edits/merge';

const jar = (key: string, name: string, grams: number): Stock => ({
  ...{ key, name, grains: 'water' },
  lines: [{ at: '2026-11-20T08:00', did: 'weighed', grams }],
});
const taught: KeptClass = { key: 'k', name: 'Class', of: 'b1', kitchens: [] };
const twice: SheetDocument = {
  ...demo,
  stocks: [jar('g1', 'Blue', 50), jar('g1', 'Red', 60), jar('k2', 'Green', 70)],
  classes: [taught, { ...taught, name: 'Class 2' }],
};

test('a key that is there twice stays with the first, and the other is found under one that none has', () => {
  const read = readDocument(twice);
  if (!read.ok) throw new Error('the sheet is not read');
  expect(read.document.stocks?.map(({ key, name }) => [key, name])).toEqual([
    ['g1', 'Blue'],
    ['k3', 'Red'],
    ['k2', 'Green'],
  ]);
  expect(read.document.classes?.map(({ key }) => key)).toEqual(['k', 'k2']);
  expect(mergeInto(read.document, partsOf(read.document)).document).toBe(read.document);
});

test('a sheet without one is the very same', () => {
  const own = { ...demo, stocks: [jar('g1', 'Blue', 50), jar('g2', 'Red', 60)] };
  expect(withOwnKeys(own)).toBe(own);
  expect(withOwnKeys(demo)).toBe(demo);
});

test('what is salvaged entry by entry has them too', () => {
  expect(salvage({ ...twice, log: 7 }).parts.stocks?.map(({ key }) => key)).toEqual(['g1', 'k3', 'k2']);
});
