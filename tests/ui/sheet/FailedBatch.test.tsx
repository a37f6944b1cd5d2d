// @vitest-environment happy-dom
import { act, cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { Batch, SheetDocument } from '../../../src/batch/document/document';
import { createStore } from '../../../src/batch/store/store';
import { numericRows } from '../../../src/formula/rows/sheet';
import { App } from '../../../src/ui/page/App';
import { Guarded } from '../../../src/ui/page/Guarded';
import { loadPart } from '../../../src/ui/page/PartPane';
import PrintCards from '../../../src/ui/paper/PrintCards';
import FailedBatch from '../../../src/ui/sheet/FailedBatch';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';
// Loaded before any test, so that a busy machine does not outrun the wait for it.
import '../../../src/ui/sheet/Remarks';

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

// A fault of the page's own, as none is known: a rule that fails over hazelnuts.
beforeEach(() => {
  const { absent } = numericRows.soakWater;
  vi.spyOn(numericRows.soakWater, 'absent').mockImplementation((x) => {
    if (x.recipe.source === 'hazelnut') throw new Error('it fails');
    return absent?.(x) ?? null;
  });
});

const broken: Batch = {
  ...startBatch('b1', 'Moonlit'),
  source: 'hazelnut',
  when: { by: 'start', at: '2026-11-29T08:00' },
};
const sheet: SheetDocument = { ...demo, batches: [broken, startBatch('b2', 'Sound')] };

async function open(document: SheetDocument) {
  const store = createStore(document);
  const user = userEvent.setup();
  localStorage.setItem('jarwright.part', 'plan');
  await loadPart('plan');
  const { container } = render(<App store={store} storage={localStorage} />);
  await screen.findAllByRole('button', { name: 'Remove this batch' });
  const cellOf = (row: string, batch: string) =>
    container.querySelector(`[data-quantity="${row}"][data-batch="${batch}"]`)?.textContent ?? '';
  return { store, user, container, cellOf };
}

describe('a batch that can’t be worked out', () => {
  test('says so in its own place, and every other batch and part stands', async () => {
    const { container, cellOf, user } = await open(sheet);
    await user.click(screen.getByRole('checkbox', { name: 'All figures' }));
    const head = screen.getAllByRole('region', { name: 'Moonlit can’t be worked out' });
    expect(head[0]?.textContent).toMatch(/Everything in it is kept/);
    expect(cellOf('milkVolume', 'b1')).toMatch(/–/);
    expect(cellOf('milkVolume', 'b2')).toMatch(/\d+\smL/);
    expect(screen.getByRole('region', { name: 'Plan' })).toBeTruthy();
    expect(container.textContent).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('can be saved as a copy with all that is in it', async () => {
    const { user } = await open(sheet);
    const made: Blob[] = [];
    vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => {
      if (blob instanceof Blob) made.push(blob);
      return 'blob:copy';
    });
    const [save] = screen.getAllByRole('button', { name: 'Save a copy of this batch' });
    if (save === undefined) throw new Error('there is no button');
    await user.click(save);
    const copy: unknown = JSON.parse((await made[0]?.text()) ?? '');
    expect(copy).toMatchObject({ batches: [broken] });
  });

  test('can be removed, and the removal undone', async () => {
    const { user, store } = await open(sheet);
    const [remove] = screen.getAllByRole('button', { name: 'Remove this batch' });
    if (remove === undefined) throw new Error('there is no button');
    await user.click(remove);
    expect(store.document.value.batches.map(({ name }) => name)).toEqual(['Sound']);
    expect(screen.queryByRole('button', { name: 'Remove this batch' })).toBeNull();
    await user.click(screen.getByRole('button', { name: /^Undo/ }));
    expect(store.document.value.batches[0]).toEqual(broken);
  });

  test('has a card on paper that says why there is nothing on it', () => {
    const store = createStore(sheet);
    render(<PrintCards store={store} state={createSheetState({ at: 'milkVolume', batch: 'b1' })} />);
    window.dispatchEvent(new Event('beforeprint'));
    return screen.findByRole('article', { name: 'Card of Moonlit' }).then((card) => {
      expect(card.textContent).toMatch(/can’t be worked out/);
    });
  });

  test('is told of by itself where it alone is in the sheet', () => {
    const store = createStore({ ...demo, batches: [broken] });
    render(<FailedBatch batch={broken} store={store} />);
    const region = screen.getByRole('region', { name: 'Moonlit can’t be worked out' });
    expect(within(region).getByRole('alert').textContent).toMatch(/Moonlit can’t be worked out/);
  });
});

describe('a part that fails while it is drawn', () => {
  function Faulty({ fails }: { readonly fails: boolean }) {
    if (fails) throw new Error('it fails');
    return <p>drawn</p>;
  }

  test('leaves the rest as it is, and is drawn again once there is another sheet or spot', () => {
    const store = createStore(demo);
    const draw = (of: string, fails: boolean) => (
      <main>
        <p>beside</p>
        <Guarded store={store} of={of} instead={<p>instead</p>}>
          <Faulty fails={fails} />
        </Guarded>
      </main>
    );
    const { container, rerender } = render(draw('here', true));
    expect(container.textContent).toBe('besideinstead');
    rerender(draw('here', false));
    expect(container.textContent).toBe('besideinstead');
    rerender(draw('there', false));
    expect(container.textContent).toBe('besidedrawn');
    rerender(draw('elsewhere', true));
    expect(container.textContent).toBe('besideinstead');
    rerender(draw('elsewhere', false));
    act(() => {
      store.addBatch();
    });
    expect(container.textContent).toBe('besidedrawn');
  });
});
