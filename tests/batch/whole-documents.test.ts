import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { recipeOf, type SheetDocument } from '../../src/batch/document/document';
import { readDocument } from '../../src/batch/document/read-document';
import { formulate } from '../../src/formula/engine/formulate';
import { anyAllowedDocument, fuzzRuns } from '../documents';
import { everythingSaid, isUnfit } from '../everything-said';

// Whole documents, over all that the check lets through. `FRESH=1 FUZZ_RUNS=20000` makes a long run of new ones; the
// seed of what is found is printed with it.

function opened(document: SheetDocument): SheetDocument {
  const read = readDocument(JSON.parse(JSON.stringify(document)));
  return read.ok ? read.document : expect.fail(`not opened: ${JSON.stringify(read.why)}`);
}

describe('every document that may be opened', { timeout: 36_000_000 }, () => {
  test('is worked out, and nothing in it goes round in a circle', () => {
    fc.assert(
      fc.property(anyAllowedDocument, (document) => {
        const sheet = opened(document);
        for (const batch of sheet.batches) {
          const { failed, rows } = formulate(recipeOf(sheet, batch));
          expect(failed).toBe(false);
          const codes = Object.values(rows).flatMap(({ problems }) => problems.map(({ code }) => code));
          expect(codes).not.toContain('roundabout');
        }
      }),
      { numRuns: fuzzRuns(400) },
    );
  });

  test('can be told in full, and nothing of it is unfit to be shown', () => {
    fc.assert(
      fc.property(anyAllowedDocument, (document) => {
        expect(everythingSaid(opened(document)).filter(isUnfit)).toEqual([]);
      }),
      { numRuns: fuzzRuns(30) },
    );
  });
});
