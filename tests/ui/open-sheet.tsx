import { render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { demo } from '../../src/batch/document/demo';
import type { Batch } from '../../src/batch/document/document';
import { createStore, type Store } from '../../src/batch/store/store';
import type { RowId } from '../../src/formula/recipe/order';
import { labelOf } from '../../src/formula/words/labels';
import { App } from '../../src/ui/page/App';
import { loadPart } from '../../src/ui/page/PartPane';
import type { PartId } from '../../src/ui/page/part-ids';
// Loaded before any test, so that a busy machine does not outrun the wait for it.
import '../../src/ui/sheet/Remarks';
import '../../src/ui/working/Working';

/** The text of a part of the page as it is read: every run of spaces is one. */
export function textOf(part: Element): string {
  return (part.textContent ?? '').replaceAll(/\s+/g, ' ').trim();
}

/** Opens the page with a part beside the sheet, for the tests of that part. */
export const openWith =
  (part: PartId) =>
  (edit: (store: Store) => void = () => {}) =>
    openSheet(edit, part);

/**
 * The whole page on the demo sheet, edited beforehand if told to, with a part open beside it and a user at it. Cells
 * are found by their row, as the page promises.
 */
export async function openSheet(edit: (store: Store) => void = () => {}, part: PartId = 'steps') {
  const store = createStore(demo);
  edit(store);
  localStorage.setItem('jarwright.part', part);
  await loadPart(part);
  const user = userEvent.setup();
  const { container } = render(<App store={store} storage={localStorage} />);
  await screen.findByRole('tabpanel', { busy: false });
  await user.click(screen.getByRole('checkbox', { name: 'All figures' }));
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
  /** What is said under the line about a cell; empty where nothing is. */
  const remarks = (row: RowId): string => {
    const said = container.querySelector(`[id="remarks-${row}-${batch().id}"]`);
    return said === null ? '' : textOf(said);
  };
  /** The amount as it stands in the store, in base units. */
  const amountOf = (row: RowId) => store.formulationOf(batch()).rows[row].value;
  const editor = (row: RowId): HTMLInputElement =>
    within(cell(row)).getByRole<HTMLInputElement>('textbox', { name: labelOf(row) });
  const isOpen = (row: RowId): boolean => within(cell(row)).queryByRole('textbox') !== null;
  /** Goes to a cell and opens its working, which is there when this comes back. */
  const openWorking = async (row: RowId): Promise<HTMLElement> => {
    await user.click(cell(row));
    await user.keyboard('?');
    return screen.findByRole('region', { name: `Working of ${labelOf(row)}` });
  };
  return { store, user, container, batch, cell, remarks, amountOf, editor, isOpen, openWorking };
}
