import { describe, expect, test } from 'vitest';
import { withoutMisplacedUse } from '../../../src/batch/document/misplaced-use';
import { isOnHandRow } from '../../../src/formula/recipe/order';
import { numericRowIds } from '../../batches';

function sheet(...given: readonly unknown[]): unknown {
  return { version: 2, batches: [{ id: 'b1', given, colour: 'green' }, 7], shelf: [] };
}

describe('a mark of being on hand', () => {
  test('is dropped from every row that can’t bear it', () => {
    for (const row of numericRowIds.filter((id) => !isOnHandRow(id)))
      expect(withoutMisplacedUse(sheet({ row, amount: 1, use: 'onHand' })), row).toEqual(sheet({ row, amount: 1 }));
  });

  test('stays where sweetener and grains have it, and the data is the very same', () => {
    const data = sheet({ row: 'sweetenerMass', use: 'onHand' }, { row: 'grainMass', use: 'onHand' });
    expect(withoutMisplacedUse(data)).toBe(data);
  });

  test.each([null, 7, 'text', [], {}, { batches: 7 }, { batches: [null, { given: 7 }, { given: [null, []] }] }])(
    'is looked for in what is no sheet without harm: %j',
    (data) => {
      expect(withoutMisplacedUse(data)).toBe(data);
    },
  );
});
