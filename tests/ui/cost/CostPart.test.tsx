// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { setCurrency, setPackage } from '../../../src/batch/edits/package-edits';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('cost');

beforeEach(() => localStorage.clear());
afterEach(cleanup);

const region = () => screen.findByRole('region', { name: /^Cost of/ });
const shopping = () => screen.findByRole('region', { name: 'Shopping list' });
const price = async (food: string) =>
  within(await region()).getByRole<HTMLInputElement>('textbox', { name: `Price of that package of ${food}` });
const pack = async (food: string) =>
  within(await region()).getByRole<HTMLInputElement>('textbox', { name: `Package of ${food}` });

/** 148 g of almonds of a bag, and 19 g of sugar, priced beforehand. */
function priced(store: Store): void {
  const bag = { text: '500 g', amount: 500, kind: 'mass' } as const;
  const kilo = { text: '1 kg', amount: 1000, kind: 'mass' } as const;
  let document = setPackage(store.document.value, 'source.almond', { amount: bag, price: '9.90' });
  document = setPackage(document, 'sweetener.caneWhite', { amount: kilo, price: '1.49' });
  store.takeEdit(setCurrency(document, '1 €'), 'Price all');
}

describe('the price of what a batch takes', () => {
  test('asks for a price first, with the foods there', async () => {
    await openSheet();
    expect(textOf(await region())).toContain('Type what you paid for a package.');
    expect(textOf(await region())).not.toContain('add up to the whole');
    expect((await pack('Almonds, whole')).value).toBe('1 kg');
    expect((await price('Cane sugar, white')).value).toBe('');
  });

  test('is typed with its currency and kept as one step, named', async () => {
    const { store, user } = await openSheet();
    await user.clear(await pack('Almonds, whole'));
    await user.type(await pack('Almonds, whole'), '500 g');
    await user.type(await price('Almonds, whole'), '9.90 €{Enter}');
    expect(store.document.value.packages).toEqual([
      { food: 'source.almond', amount: { text: '500 g', amount: 500, kind: 'mass' }, price: '9.9' },
    ]);
    expect(store.settings.value.currency).toBe('1 €');
    expect(store.undoName.value).toBe('Price almonds, whole: 9.9 for 500 g');
    expect((await price('Almonds, whole')).value).toBe('9.90');
    expect(textOf(await region())).toMatch(/€ so far/);
    expect(textOf(await region())).toContain('No price yet for cane sugar, white: type one.');
    store.undo();
    expect(store.document.value.packages).toBeUndefined();
  });

  test('adds up to the cent, for the batch, a litre and a glass', async () => {
    await openSheet(priced);
    const said = textOf(await region());
    expect(said).toMatch(/^Cost ?2\.95 € the batch ?3\.9\d € a litre ?0\.98 € a glass/);
    expect(said).toContain('148 g · 19.80 € a kg');
    expect(said).toContain('The lines add up to the whole');
  });

  test('that is none is told beside it and stays as typed; a blank one is forgotten', async () => {
    const { store, user } = await openSheet(priced);
    await user.clear(await price('Almonds, whole'));
    await user.type(await price('Almonds, whole'), 'dear{Enter}');
    expect(textOf(screen.getByRole('alert'))).toContain('Type a price as a number');
    expect((await price('Almonds, whole')).value).toBe('dear');
    expect(store.document.value.packages?.[0]?.price).toBe('9.90');
    await user.clear(await price('Almonds, whole'));
    await user.type(await price('Almonds, whole'), '{Enter}');
    expect(store.document.value.packages?.map(({ food }) => food)).toEqual(['sweetener.caneWhite']);
    expect(store.undoName.value).toBe('Forget the price of almonds, whole');
  });

  test('in another currency is refused, and how money is written can be changed', async () => {
    const { store, user } = await openSheet(priced);
    await user.clear(await price('Almonds, whole'));
    await user.type(await price('Almonds, whole'), '$12{Enter}');
    expect(textOf(screen.getByRole('alert'))).toContain('Money is written as 1 € here.');
    await user.click(screen.getByText('Other prices'));
    const written = screen.getByRole('textbox', { name: 'Currency' });
    await user.clear(written);
    await user.type(written, '$1{Enter}');
    expect(store.settings.value.currency).toBe('$1');
    expect(textOf(await region())).toContain('$2.95 the batch');
  });

  test('of a package that can’t be read says so beside it', async () => {
    const { user } = await openSheet(priced);
    await user.clear(await pack('Almonds, whole'));
    await user.type(await pack('Almonds, whole'), 'a sack{Enter}');
    expect(screen.getByRole('alert').textContent).not.toBe('');
    expect((await pack('Almonds, whole')).value).toBe('a sack');
    expect(textOf(await region())).toContain('No price yet for almonds, whole');
    await user.clear(await pack('Almonds, whole'));
    await user.type(await pack('Almonds, whole'), '20 pieces{Enter}');
    expect(textOf(screen.getByRole('alert'))).toContain('No piece of it is weighed in any table.');
  });

  test('of another food brings the comparison', async () => {
    const { user } = await openSheet(priced);
    await user.click(screen.getByText('Other prices'));
    await user.selectOptions(screen.getByRole('combobox', { name: 'Another food' }), 'source.hemp');
    await user.type(await price('Hemp hearts'), '18{Enter}');
    const table = await screen.findByRole('table', { name: 'As much kefir of another source' });
    expect(within(table).getAllByRole('rowheader').map(textOf).toSorted()).toEqual([
      'Almonds, whole this batch',
      'Hemp hearts',
    ]);
    expect(screen.getByText('Other prices (1)')).toBeTruthy();
  });

  test('has no number where the batch has none', async () => {
    await openSheet((store) => store.typeCell('b1', 'sourceMass', '-3 g'));
    expect(textOf(await region())).toContain('mend the marked cells first');
    expect(textOf(await shopping())).toContain('Nothing to buy.');
  });
});

describe('the shopping list', () => {
  test('is of whole packages, can be ticked, and keeps its ticks', async () => {
    const { user } = await openSheet(priced);
    expect(textOf(await shopping())).toContain('Almonds, whole148 g needed, 352 g over500 g9.90 €');
    expect(textOf(await shopping())).toContain('11.39 € together, in whole packages.');
    await user.click(within(await shopping()).getByRole('checkbox', { name: /^Almonds/ }));
    expect(localStorage.getItem('jarwright.shopping')).toBe('["source.almond"]');
    await user.click(within(await shopping()).getByRole('button', { name: 'Untick all' }));
    expect(localStorage.getItem('jarwright.shopping')).toBe('[]');
  });

  test('is for the batches that are planned, or for those chosen', async () => {
    const { user, store } = await openSheet((opened) => {
      priced(opened);
      opened.copyBatch('b1');
    });
    const [, second] = store.document.value.batches;
    expect(textOf(await shopping())).toContain('148 g needed');
    await user.click(within(await shopping()).getByRole('checkbox', { name: second?.name ?? '' }));
    expect(textOf(await shopping())).toContain('296 g needed');
  });

  test('takes off what there is, and adds what grains at rest take', async () => {
    const { user } = await openSheet((store) => {
      priced(store);
      store.stockUp('b1', 'source', '100 g');
    });
    await user.click(within(await shopping()).getByRole('checkbox', { name: 'Take off what I have on hand' }));
    expect(textOf(await shopping())).toContain('148 g needed, 100 g in the house');
    await user.type(within(await shopping()).getByRole('textbox', { name: 'Dairy milk for them' }), '500 mL');
    expect(textOf(await shopping())).toMatch(/Dairy milk ?500 mL/);
    expect(textOf(await shopping())).toContain('so far: some have no price yet.');
    await user.type(within(await shopping()).getByRole('textbox', { name: 'Sugar for them' }), 'lots');
    expect(textOf(screen.getByRole('alert'))).toContain('such as 50 g');
  });
});
