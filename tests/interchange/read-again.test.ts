import { expect, test } from 'vitest';
import { demo } from '../../src/batch/document/demo';
import type { Batch } from '../../src/batch/document/document';
import { withTextsRead } from '../../src/interchange/read-again';

function withGiven(text: string, amount: number | null): Batch {
  const [batch] = demo.batches;
  if (batch === undefined) throw new Error('the demo has no batch');
  return { ...batch, given: [{ row: 'sourceMass', text, amount, kind: 'mass' }] };
}

test.each([
  ['6', 170.09713875],
  ['6', 6],
  ['1,250 kg', 1250],
  ['1,250 kg', 1_250_000],
  ['1.250 kg', 1250],
  ['1,5 kg', 1500],
])('an amount that an earlier page read from %j without asking stays: %d g', (text, amount) => {
  const batch = withGiven(text, amount);
  expect(withTextsRead(batch)).toEqual(batch);
});

test('an amount that no page reads from its text gives way to what the text says', () => {
  expect(withTextsRead(withGiven('6 oz', 6)).given).toMatchObject([{ text: '6 oz', amount: 170.09713875 }]);
  expect(withTextsRead(withGiven('1,250 kg', 2)).given).toMatchObject([{ text: '1,250 kg', amount: null }]);
});
