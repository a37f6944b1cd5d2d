import { render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { demo } from '../../src/batch/demo';
import type { Batch } from '../../src/batch/document';
import { createStore, type Store } from '../../src/batch/store';
import { labelOf } from '../../src/formula/labels';
import type { RowId } from '../../src/formula/order';
import { App } from '../../src/ui/page/App';
// Loaded before any test, so that a busy machine does not outrun the wait for it.
import '../../src/ui/page/after-paint-parts';

/** The text of a part of the page as it is read: every run of spaces is one. */
export function textOf(part: Element): string {
  return (part.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
}

/**
 * The whole page on the demo sheet, edited beforehand if told to, with its later parts there and a user at it. Cells
 * are found by their row, as the page promises.
 */
export async function openSheet(edit: (store: Store) => void = () => {}) {
  const store = createStore(demo);
  edit(store);
  const user = userEvent.setup();
  const { container } = render(<App store={store} />);
  await screen.findByRole('button', { name: 'Add' }).catch(() => screen.findByText('Leave out the heat step'));
  const batch = (): Batch => {
    const [first] = store.document.value.batches;
    if (first === undefined) throw new Error('the sheet has no batch');
    return first;
  };
  const cell = (row: RowId): HTMLElement => {
    const found = container.querySelector<HTMLElement>(`[data-quantity="${row}"][data-batch="${batch().id}"]`);
    if (found === null) throw new Error(`there is no cell for ${row}`);
    return found;
  };
  /** The amount as it stands in the store, in base units. */
  const amountOf = (row: RowId) => store.formulationOf(batch()).rows[row].value;
  const editor = (row: RowId): HTMLInputElement =>
    within(cell(row)).getByRole<HTMLInputElement>('textbox', { name: labelOf(row) });
  const isOpen = (row: RowId): boolean => within(cell(row)).queryByRole('textbox') !== null;
  /** Goes to a cell and opens its working, which is there when this comes back. */
  const openWorking = async (row: RowId): Promise<HTMLElement> => {
    await user.click(cell(row));
    return screen.findByRole('region', { name: `Working of ${labelOf(row)}` });
  };
  return { store, user, container, batch, cell, amountOf, editor, isOpen, openWorking };
}
