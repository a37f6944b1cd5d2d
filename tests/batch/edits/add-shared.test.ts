import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { mostBatches } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { addShared, figuresToKeep, figuresToTake } from '../../../src/batch/edits/add-shared';
import { first, freeze } from '../any-edit';

const shared = freeze({
  batch: { ...startBatch('b1', 'Saturday almond'), vessel: 'own' as const },
  yours: {
    'own.neckHeight': { value: 3, how: 'typed' as const },
    'almond.uptake': { value: 0.4, how: 'measured' as const },
  },
});

describe('a batch that was sent', () => {
  test('is added after another as a new one, under an id and a name of its own', () => {
    const next = addShared(freeze(demo), shared, { after: 'b1' });
    expect(next.batches.map(({ name }) => name)).toEqual(['Saturday almond', 'Saturday almond (from link)']);
    expect(next.batches[0]).toBe(first(demo));
    expect(new Set(next.batches.map(({ id }) => id)).size).toBe(2);
    expect(readDocument(next).ok).toBe(true);
    const again = addShared(next, shared);
    expect(again.batches[2]?.name).toBe('Saturday almond (from link, 2)');
  });

  test('brings the shape of its own jar, and its other figures only if asked for', () => {
    const next = addShared(demo, shared);
    const id = next.batches[1]?.id;
    expect(next.yours).toEqual({ [`own@${id}.neckHeight`]: { value: 3, how: 'typed' } });
    expect(addShared(demo, shared, { withFigures: true }).yours['almond.uptake']?.value).toBe(0.4);
  });

  test('never takes the place of a figure of yours', () => {
    const mine: SheetDocument = { ...demo, yours: { 'almond.uptake': { value: 0.7, how: 'typed' } } };
    expect(figuresToTake(mine, shared)).toEqual({});
    expect(figuresToKeep(mine, shared)).toEqual(['almond.uptake']);
    expect(addShared(mine, shared, { withFigures: true }).yours['almond.uptake']?.value).toBe(0.7);
  });

  test('does not fit into a full sheet, which stays as it is', () => {
    const full = { ...demo, batches: Array.from({ length: mostBatches }, (_, at) => startBatch(`x${at}`, `${at}`)) };
    expect(addShared(full, shared)).toBe(full);
  });

  test('has a name, even where it came without one', () => {
    const nameless = { ...shared, batch: { ...shared.batch, name: ' ' } };
    expect(addShared(demo, nameless).batches[1]?.name).toBe('A batch');
  });
});
