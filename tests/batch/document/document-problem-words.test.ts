import { expect, test } from 'vitest';
import { describeDocumentProblem } from '../../../src/batch/document/document-problem-words';

test('says what is wrong and where', () => {
  expect(describeDocumentProblem({ code: 'wrongPart', at: 'batches.0.vessel' })).toBe(
    'This part of it is not as it should be: batches.0.vessel.',
  );
  expect(describeDocumentProblem({ code: 'newer', version: 3 })).toContain('newer version of this page (3)');
});

test('an overlong path is cut', () => {
  expect(describeDocumentProblem({ code: 'prototypeKey', at: 'a'.repeat(500) }).length).toBeLessThan(200);
});

test('says what there is too much of', () => {
  expect(describeDocumentProblem({ code: 'tooMany', at: 'yours', most: 5000 })).toBe(
    'There is more in it than a sheet holds: “yours” has more than 5000 entries.',
  );
  expect(describeDocumentProblem({ code: 'tooMuch' })).toMatch(/more in it than any sheet holds/);
});
