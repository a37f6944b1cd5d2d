import { expect, test } from 'vitest';
import { learning } from '../../src/reference/pace';

test('what learning the pace rests on is judged or remembered, never published', () => {
  for (const { origin } of Object.values(learning)) expect(['judgement', 'from memory']).toContain(origin.kind);
});

test('batches of one kitchen differ less than kitchens do', () => {
  expect(learning.batchSpread.value).toBeLessThan(learning.kitchenSpread.value);
});

test('makes are told apart more finely than a batch takes', () => {
  expect(learning.sameMake.value).toBeLessThan(8);
});
