// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { setWhen } from '../../../src/batch/store/plan-edits';
import { createStore, type Store } from '../../../src/batch/store/store';
import { Labels } from '../../../src/ui/paper/Labels';
import { recipeOf } from '../../batches';
import { documentOf } from '../../stocked';

afterEach(cleanup);

function Mounted({ store }: { readonly store: Store }) {
  const [batch] = store.document.value.batches;
  return batch === undefined ? null : <Labels batch={batch} store={store} />;
}

async function openLabels(recipe = recipeOf()) {
  const store = createStore(documentOf(recipe));
  const user = userEvent.setup();
  const { container } = render(<Mounted store={store} />);
  await user.click(screen.getByText('Labels'));
  const panel = await screen.findByRole('region', { name: 'Labels for Saturday' });
  const shown = () => [...panel.querySelectorAll('.jar-label p')].map(({ textContent }) => textContent);
  const sheet = () => container.querySelector('.label-sheet');
  const setDay = async (day: string) => {
    const input = within(panel).getByLabelText<HTMLInputElement>(/^Made/);
    await user.clear(input);
    if (day !== '') await user.type(input, day);
  };
  return { store, user, panel, shown, sheet, setDay };
}

describe('labels', () => {
  test('open on today, and follow the day that is set over the end of a month', async () => {
    const { shown, setDay } = await openLabels();
    const today = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });
    expect(shown()).toContain(`Made ${today.format(new Date())}`);
    await setDay('2026-03-28');
    expect(shown()).toContain('Made 28 Mar 2026');
    expect(shown()).toContain('Taste by 3 Apr 2026, use up by 5 Apr 2026');
  });

  test('open on the day the grains come out by the plan, with the days the plan names', async () => {
    const { shown, panel, store, setDay } = await openLabels();
    const [batch] = store.document.value.batches;
    const id = batch?.id ?? expect.fail('no batch');
    store.takeEdit(setWhen(store.document.peek(), id, { by: 'start', at: '2026-11-28T08:00' }), 'Plan');
    await expect.poll(shown).toContain('Made 29 Nov 2026');
    expect(shown()).toContain('Taste by 5 Dec 2026, use up by 7 Dec 2026');
    expect(within(panel).getByText(/The day is the plan’s/)).toBeTruthy();
    await setDay('2026-12-01');
    expect(shown()).toContain('Made 1 Dec 2026');
    expect(within(panel).queryByText(/The day is the plan’s/)).toBeNull();
  });

  test('leave a line for a pen where no day is set, and say so', async () => {
    const { shown, setDay, panel } = await openLabels();
    await setDay('');
    expect(shown()).toContain('Made __________');
    expect(within(panel).getByText(/print a line to write it on/)).toBeTruthy();
  });

  test('take a line of one’s own of at most 60 characters, which is not kept in the sheet', async () => {
    const { user, shown, panel, store } = await openLabels();
    const before = store.document.value;
    const own = within(panel).getByLabelText<HTMLInputElement>('A line of your own');
    expect(own.maxLength).toBe(60);
    await user.type(own, 'Jar 2, second shelf');
    expect(shown().at(-1)).toBe('Jar 2, second shelf');
    expect(store.document.value).toBe(before);
  });

  test('are copied as they stand', async () => {
    const { user, shown, panel } = await openLabels(recipeOf({ grains: 'milk' }));
    await user.click(within(panel).getByRole('button', { name: 'Copy the text' }));
    expect(await within(panel).findByText('Copied.')).toBeTruthy();
    expect(await navigator.clipboard.readText()).toBe(shown().join('\n'));
    expect(shown().join('\n')).toMatch(/Traces of milk/);
  });

  test.each(['0', '61', '1.5', 'two', '-1', ''])(
    'refuse %j as a number of labels, and keep what was typed',
    async (text) => {
      const { user, panel } = await openLabels();
      const number = within(panel).getByLabelText<HTMLInputElement>('Number of labels');
      await user.clear(number);
      if (text !== '') await user.type(number, text);
      expect(within(panel).getByRole('alert').textContent).toMatch(/from 1 to 60/);
      expect(number.value).toBe(text);
      expect(within(panel).getByRole<HTMLButtonElement>('button', { name: 'Print labels' }).disabled).toBe(true);
    },
  );

  test('ask about the allergens of a carton', async () => {
    const { panel } = await openLabels(recipeOf({ source: 'cartonPlain' }));
    expect(within(panel).getByText(/does not know what is in it/)).toBeTruthy();
  });

  test('are a sheet only while they are printed, with the root marked, and gone after', async () => {
    const { user, panel, sheet, shown } = await openLabels();
    const seen: (string | undefined)[] = [];
    // The browser's own dialogue: what the page looks like when it opens.
    window.print = () => {
      seen.push(document.documentElement.dataset.paper, String(sheet()?.querySelectorAll('.jar-label').length));
    };
    const label = shown();
    const number = within(panel).getByLabelText('Number of labels');
    await user.clear(number);
    await user.type(number, '7');
    expect(sheet()).toBeNull();
    await user.click(within(panel).getByRole('button', { name: 'Print labels' }));
    await expect.poll(() => seen).toEqual(['labels', '7']);
    expect([...(sheet()?.lastElementChild?.children ?? [])].map(({ textContent }) => textContent)).toEqual(label);
    window.dispatchEvent(new Event('afterprint'));
    await expect.poll(sheet).toBeNull();
    expect(document.documentElement.dataset.paper).toBeUndefined();
  });
});
