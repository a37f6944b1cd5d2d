// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { StockLine } from '../../../src/batch/document/document';
import { addStock, addStockLine } from '../../../src/batch/edits/stock-edits';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

afterEach(cleanup);

const open = openWith('grains');
const part = () => screen.getByRole('region', { name: 'Grains' });
const got: StockLine = { at: '2026-11-01T08:00', did: 'got', grams: 60, place: 'fridge', medium: 'sugarWater' };

/** A jar of 60 g, and lines after it. */
function kept(...lines: readonly StockLine[]) {
  return (store: Store) => {
    const first = addStock(store.document.value, 'water', 'Blue jar', got);
    store.takeEdit(
      lines.reduce((document, line) => addStockLine(document, 'g1', line), first),
      'Keep a jar of grains',
    );
  };
}

describe('the part Grains', () => {
  test('asks for the grains first, and tells what it can’t take beside the field', async () => {
    const { user, store } = await open();
    await user.click(within(part()).getByRole('button', { name: 'Keep these grains' }));
    expect(textOf(within(part()).getByRole('alert'))).toContain('Type what they weigh, such as 54 g.');
    await user.type(within(part()).getByLabelText('Drained, they weigh'), '60');
    await user.click(within(part()).getByRole('button', { name: 'Keep these grains' }));
    expect(store.document.value.stocks).toMatchObject([{ grains: 'water', lines: [{ did: 'got', grams: 60 }] }]);
    expect(textOf(part())).toContain('60 g water kefir grains');
    expect(store.undoName.value).toBe('Keep a jar of grains');
  });

  test('asks of no more than three batches at once what came back', async () => {
    const out = (at: number): StockLine => ({
      ...{ at: `2026-11-0${at + 1}T08:00`, did: 'out', grams: 5 },
      ...{ batch: `b${at}`, name: `Batch ${at}`, source: 'almond' },
    });
    const { user } = await open(kept(...[1, 2, 3, 4, 5].map(out)));
    const backs = () => within(part()).getAllByRole('button', { name: /^Back/ });
    expect(backs()).toHaveLength(3);
    await user.click(within(part()).getByRole('button', { name: '2 older batches they never came back from' }));
    expect(backs()).toHaveLength(5);
  });

  test('says what a batch is made with that takes none of them', async () => {
    await open((store) => {
      kept()(store);
      store.choose('b1', 'grains', 'powder');
    });
    expect(textOf(part())).toContain('is made with starter powder. Open a batch with water kefir grains');
  });

  test('has the weight of the batch ready to go out, and takes one number back', async () => {
    const { user, store, amountOf, batch } = await open(kept());
    await user.click(within(part()).getByRole('button', { name: 'Out' }));
    const lines = () => store.document.value.stocks?.[0]?.lines ?? [];
    expect(lines().at(-1)).toMatchObject({ did: 'out', grams: amountOf('grainMass'), name: batch().name });
    await user.type(within(part()).getByLabelText(/^Back from/), '44{Enter}');
    expect(lines().at(-1)).toMatchObject({ did: 'back', grams: 44, medium: 'sugarWater', place: 'fridge' });
    expect(textOf(within(part()).getByRole('region', { name: 'Growth' }))).toContain('1 batch');
  });

  test('keeps the name of a batch that is gone, and the weight of a line that is changed but for its note', async () => {
    const out = { did: 'out', batch: 'gone', name: 'Old almond', source: 'almond' } as const;
    const { user, store } = await open(kept({ ...out, at: '2026-11-02T08:00', grams: 40.123 }));
    expect(textOf(part())).toContain('Old almond');
    await user.click(within(part()).getByRole('button', { name: /^Change out/ }));
    await user.type(within(part()).getAllByLabelText('Note').at(-1) ?? part(), 'dripping');
    await user.click(within(part()).getByRole('button', { name: 'Save the change' }));
    expect(store.document.value.stocks?.[0]?.lines[1]).toEqual({
      ...{ ...out, at: '2026-11-02T08:00', grams: 40.123, note: 'dripping' },
    });
  });

  test('sets the sugar of the resting jar, and refuses a syrup', async () => {
    const { user, store } = await open(kept());
    const field = within(part()).getByLabelText('Sugar to a litre');
    await user.type(field, '900{Enter}');
    expect(textOf(part())).toMatch(/Type 10 to 200 g to a litre\.|most/);
    await user.clear(field);
    await user.type(field, '80{Enter}');
    expect(store.document.value.stocks?.[0]?.strength).toBe(80);
  });

  test('says nothing blank or without a number, whatever was written down', async () => {
    const odd: readonly StockLine[] = [
      { at: '2026-11-02T08:00', did: 'out', grams: null },
      { at: '2026-11-02T09:00', did: 'back', grams: 0 },
      { at: '2026-11-03T08:00', did: 'given', grams: 500 },
    ];
    await open(kept(...odd));
    expect(textOf(part())).not.toMatch(/NaN|Infinity|undefined|null/);
    expect(textOf(part())).toContain('More went out than was written down.');
  });
});
