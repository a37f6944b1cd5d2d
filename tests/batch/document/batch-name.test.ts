import { describe, expect, test } from 'vitest';
import { isNamedAfter, nameFor } from '../../../src/batch/document/batch-name';
import { demo } from '../../../src/batch/document/demo';
import { addBatch, renameBatch } from '../../../src/batch/edits/batch-list';
import { choose } from '../../../src/batch/edits/edits';
import { type SourceId, sources } from '../../../src/reference/sources';

const ids = Object.keys(sources).filter((id): id is SourceId => id in sources);

test('every source gives a name of its own, which is told from a name someone gave', () => {
  expect(new Set(ids.map((id) => nameFor(id, []))).size).toBe(ids.length);
  for (const id of ids) {
    const names = ['', '', ''].reduce<string[]>((taken) => [...taken, nameFor(id, taken)], []);
    expect(new Set(names).size).toBe(3);
    for (const name of names) expect(isNamedAfter(id, name), name).toBe(true);
    expect(isNamedAfter(id, `${names[0]} of Saturday`)).toBe(false);
  }
});

describe('choosing another source', () => {
  const name = (document: typeof demo, at: number) => document.batches[at]?.name;

  test('renames a batch that still has the name of its source', () => {
    const two = addBatch(demo);
    expect(name(two, 1)).toBe('Almonds');
    expect(name(choose(two, 'b2', 'source', 'cashew'), 1)).toBe('Cashews');
    const three = choose(addBatch(choose(two, 'b2', 'source', 'cashew')), 'b3', 'source', 'cashew');
    expect(name(three, 2)).toBe('Cashews 2');
  });

  test('leaves a name that someone gave', () => {
    // The example's own speaks of its almonds, and nobody gave it.
    expect(name(choose(demo, 'b1', 'source', 'cashew'), 0)).toBe('Cashews');
    const named = renameBatch(addBatch(demo), 'b2', 'Almonds for Sunday');
    expect(name(choose(named, 'b2', 'source', 'cashew'), 1)).toBe('Almonds for Sunday');
  });
});
