// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { setCurrency, setPackage } from '../../../src/batch/edits/package-edits';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('steps');

afterEach(cleanup);

const bag = { text: '500 g', amount: 500, kind: 'mass' } as const;
const kilo = { text: '1 kg', amount: 1000, kind: 'mass' } as const;
const price = (store: Store, food: string, amount: typeof bag | typeof kilo, cost: string) =>
  store.takeEdit(setPackage(store.document.value, food, { amount, price: cost }), 'Price');
const line = async () =>
  (await screen.findByRole('rowheader', { name: 'Cost' }, { timeout: 15_000 })).closest<HTMLElement>('[role=row]');
const cells = async () =>
  within((await line()) ?? document.body)
    .getAllByRole('gridcell')
    .map(textOf);

test('there is no line of cost before there is a price', async () => {
  await openSheet();
  expect(screen.queryByRole('rowheader', { name: 'Cost' })).toBeNull();
});

test('the cost of the batch and of a litre stand under the lines of the work, so far or as a whole', async () => {
  const { store } = await openSheet((sheet) => {
    price(sheet, 'source.almond', bag, '9.90');
    sheet.takeEdit(setCurrency(sheet.document.value, '1 €'), 'Currency');
  });
  // 148 g of a bag of 500 g at 9.90: 2.93.
  expect((await cells())[1]).toMatch(/^2\.9\d.€.*so far/);
  price(store, 'sweetener.caneWhite', kilo, '1.49');
  await expect.poll(async () => (await cells())[1]).toMatch(/^2\.9\d.€$/);
  expect((await cells())[0]).toMatch(/^3\.9\d.€ a litre$/);
  store.undo();
  await expect.poll(async () => (await cells())[1]).toContain('so far');
});
