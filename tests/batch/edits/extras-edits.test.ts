import { describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { longestText, mostExtras } from '../../../src/batch/document/document-limits';
import { readDocument } from '../../../src/batch/document/read-document';
import { extrasStep, typeExtras, writeExtras } from '../../../src/batch/edits/extras-edits';

const first = (document: typeof demo) => document.batches[0] ?? expect.fail('there is no batch');

describe('what goes into the glass', () => {
  test('is kept one by one, read back as typed, and left out by a blank text', () => {
    const typed = typeExtras(demo, 'b1', ' a pinch of salt;; 1,5 tsp vanilla ;\n');
    expect(first(typed).extras).toEqual(['a pinch of salt', '1,5 tsp vanilla']);
    expect(writeExtras(first(typed))).toBe('a pinch of salt; 1,5 tsp vanilla');
    expect(typeExtras(typed, 'b1', writeExtras(first(typed)))).toBe(typed);
    expect(first(typeExtras(typed, 'b1', ' ; '))).toEqual(first(demo));
    expect(typeExtras(demo, 'b1', ' ')).toBe(demo);
    expect(typeExtras(demo, 'gone', 'salt')).toBe(demo);
    expect(extrasStep(' ')).toBe('Leave the glass plain');
    expect(extrasStep('salt')).toBe('Flavour the glass with salt');
  });

  test('is no more than can be saved', () => {
    const full = typeExtras(demo, 'b1', Array.from({ length: 30 }, () => 'x'.repeat(500)).join(';'));
    expect(first(full).extras).toHaveLength(mostExtras);
    expect(first(full).extras?.[0]).toHaveLength(longestText);
    expect(readDocument(JSON.parse(JSON.stringify(full)))).toMatchObject({ ok: true, document: full });
  });
});
