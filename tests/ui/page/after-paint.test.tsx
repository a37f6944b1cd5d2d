// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/demo';
import { createSheetStore } from '../../../src/batch/sheet-store';
import { withEdits } from '../../../src/batch/store';
import { Masthead } from '../../../src/ui/page/Masthead';
import { Sheet } from '../../../src/ui/sheet/Sheet';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';
import { textOf } from '../open-sheet';

afterEach(cleanup);

/** The sheet as it is first painted, without what takes its edits, until `arrive` brings that. */
function openEarly() {
  const store = createSheetStore(demo);
  const state = createSheetState({ line: 'sourceMass', batch: 'b1' });
  const { container } = render(
    <>
      <Masthead store={store} />
      <Sheet store={store} state={state} workingInline={false} />
    </>,
  );
  const cell = (row: string): HTMLElement => {
    const found = container.querySelector<HTMLElement>(`[data-quantity="${row}"]`);
    if (found === null) throw new Error(`there is no cell for ${row}`);
    return found;
  };
  return { store, user: userEvent.setup(), cell, arrive: () => withEdits(store) };
}

describe('before what takes edits has come', () => {
  test('a cell is typed into, and shows what waits to be taken', async () => {
    const { store, user, cell, arrive } = openEarly();
    await user.click(cell('sourceMass'));
    await user.keyboard('200 g{Enter}');
    expect(document.activeElement).toBe(cell('sourceMass'));
    await expect.poll(() => textOf(cell('sourceMass'))).toMatch(/^200 g ?kept/);
    expect(store.document.value).toBe(demo);
    arrive();
    await expect.poll(() => textOf(cell('sourceMass'))).toContain('typed as 200 g');
    expect(textOf(cell('sourceMass'))).not.toContain('kept');
  });

  test('a cell is opened again on what waits, and Escape leaves that waiting', async () => {
    const { user, cell, arrive } = openEarly();
    await user.click(cell('sourceMass'));
    await user.keyboard('200 g{Enter}{F2}');
    expect(within(cell('sourceMass')).getByRole<HTMLInputElement>('textbox').value).toBe('200 g');
    await user.keyboard('9{Escape}');
    arrive();
    await expect.poll(() => textOf(cell('sourceMass'))).toContain('typed as 200 g');
  });

  test('what is typed stays open until it is committed, also when it comes meanwhile', async () => {
    const { store, user, cell, arrive } = openEarly();
    await user.click(cell('sourceMass'));
    await user.keyboard('20');
    arrive();
    await user.keyboard('0 g{Enter}');
    expect(store.document.value.batches[0]?.given).toMatchObject([{ text: '200 g' }]);
  });

  test('Delete gives back what waits', async () => {
    const { store, user, cell, arrive } = openEarly();
    await user.click(cell('sourceMass'));
    await user.keyboard('200 g{Enter}{Delete}');
    await expect.poll(() => textOf(cell('sourceMass'))).toMatch(/^– ?kept/);
    arrive();
    expect([store.document.value.batches[0]?.given, store.undoName.value]).toEqual([[], 'Clear Source, as bought']);
  });

  test('a choice and the unit that leads stand as chosen, and are taken', async () => {
    const { store, user, cell, arrive } = openEarly();
    const menu = () => within(cell('source')).getByRole<HTMLSelectElement>('combobox');
    await user.selectOptions(menu(), 'Cashews');
    await user.click(screen.getByRole('radio', { name: 'US first' }));
    await user.click(cell('sourceMass'));
    expect(menu().selectedOptions[0]?.textContent).toBe('Cashews');
    expect(screen.getByRole<HTMLInputElement>('radio', { name: 'US first' }).checked).toBe(true);
    arrive();
    expect(store.document.value.batches[0]?.source).toBe('cashew');
    expect([store.settings.value.leads, store.undoName.value]).toEqual(['us', 'Choose Cashews']);
  });
});
