import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { createStore } from '../../../src/batch/store/store';
import { tellingRows } from '../../../src/ui/sheet/telling';

/** The details that show by themselves after an edit to the demo. */
function telling(edit: (store: ReturnType<typeof createStore>) => void): readonly string[] {
  const store = createStore(demo);
  edit(store);
  const { batches } = store.document.value;
  return [...tellingRows(batches, batches, store.formulationOf)];
}

test('a jar of the list tells nothing of its size', () => {
  expect(telling((store) => store.choose('b1', 'vessel', 'litre'))).not.toContain('brimful');
});

test('an own jar asks by itself how much it holds', () => {
  expect(telling((store) => store.choose('b1', 'vessel', 'own'))).toContain('brimful');
});
