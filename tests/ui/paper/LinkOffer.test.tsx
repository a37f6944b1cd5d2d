// @vitest-environment happy-dom
import { computed, signal } from '@preact/signals';
import { cleanup, render, screen } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { createStore } from '../../../src/batch/store/store';
import { writeFragment } from '../../../src/interchange/share-link';
import { LinkOffer } from '../../../src/ui/paper/LinkOffer';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';
import { first } from '../../batch/any-edit';

afterEach(cleanup);

async function offer(sent: SheetDocument, mine: SheetDocument = demo) {
  const store = createStore(mine);
  const state = createSheetState({ at: 'sourceMass', batch: 'b1' });
  const text = (await writeFragment(sent, first(sent))) ?? expect.fail('too long for a link');
  let closed = 0;
  const done = () => {
    closed += 1;
  };
  const { container } = render(<LinkOffer text={text} store={store} state={state} onDone={done} />);
  const add = await screen.findByRole('button', { name: 'Add this batch' });
  return { store, state, container, add, user: userEvent.setup(), closed: () => closed };
}

function named(name: string): SheetDocument {
  return { ...demo, batches: [startBatch('b1', name)] };
}

describe('a batch by link', () => {
  test('changes nothing until it is added, then is the one looked at', async () => {
    const { store, state, add, user, closed } = await offer(named('From Ada'));
    expect(store.document.value).toBe(demo);
    await user.click(add);
    expect(store.document.value.batches.map(({ name }) => name)).toEqual(['Saturday almond', 'From Ada']);
    expect(store.undoName.value).toBe('Add From Ada from a link');
    expect(state.spot.value.batch).toBe(store.document.value.batches[1]?.id);
    expect(closed()).toBe(1);
    store.undo();
    expect(store.document.value.batches).toEqual(demo.batches);
  });

  test('brings the sender’s figures only where they are asked for', async () => {
    const sent: SheetDocument = { ...named('From Ada'), yours: { 'almond.uptake': { value: 0.4, how: 'typed' } } };
    const plain = await offer(sent);
    await plain.user.click(plain.add);
    expect(plain.store.document.value.yours).toEqual({});
    cleanup();
    const { store, add, user } = await offer(sent);
    await user.click(screen.getByRole('checkbox', { name: /sender’s own figures too \(1\)/ }));
    await user.click(add);
    expect(store.document.value.yours).toEqual(sent.yours);
  });

  test('says where figures of yours stay', async () => {
    const sent: SheetDocument = { ...named('From Ada'), yours: { 'almond.uptake': { value: 0.4, how: 'typed' } } };
    await offer(sent, { ...demo, yours: { 'almond.uptake': { value: 0.7, how: 'typed' } } });
    expect(screen.getByText(/yours stay \(1\)/)).toBeTruthy();
    expect(screen.queryByRole('checkbox')).toBeNull();
  });

  test.each([
    '<script>globalThis.hit=1</script>',
    '"><img src=x onerror=globalThis.hit=1>',
    '<svg onload=globalThis.hit=1>',
    '\u202Egnp.exe\u2066',
    'javascript:globalThis.hit=1',
  ])('shows %j as text, by itself', async (name) => {
    const { container } = await offer(named(name));
    expect(container.querySelector('h2 bdi')?.textContent).toBe(name);
    expect(container.querySelector('script, img, svg')).toBeNull();
    expect('hit' in globalThis).toBe(false);
  });

  test('can be left, and the sheet be had, where another window has it', async () => {
    const { store, add, user, closed } = await offer(named('From Ada'));
    const mayEdit = signal(false);
    const editedElsewhere = computed(() => !mayEdit.value);
    store.keepIn({
      document: demo,
      isFirst: true,
      keeping: {
        how: signal('saved'),
        mayEdit,
        editedElsewhere,
        message: computed(() => (mayEdit.value ? null : 'It is open in another window.')),
        save: () => {},
        putAside: () => {},
        follow: () => {},
        editHere: () => {
          mayEdit.value = true;
          return Promise.resolve();
        },
        list: () => Promise.resolve({ states: [], aside: [] }),
        removeAside: () => Promise.resolve(),
      },
    });
    expect(await screen.findByText('It is open in another window.')).toBeTruthy();
    await expect.poll(() => add.hasAttribute('disabled')).toBe(true);
    await user.click(screen.getByRole('button', { name: 'Edit here instead' }));
    await expect.poll(() => add.hasAttribute('disabled')).toBe(false);
    await user.click(add);
    expect(store.document.value.batches.length).toBe(2);
    expect(closed()).toBe(1);
  });

  test('that can’t be read says so and can be closed', async () => {
    let closed = 0;
    const store = createStore(demo);
    const state = createSheetState({ at: 'sourceMass', batch: 'b1' });
    const done = () => {
      closed += 1;
    };
    render(<LinkOffer text="#batch=1pAAAA" store={store} state={state} onDone={done} />);
    const close = await screen.findByRole('button', { name: 'Close' });
    expect(screen.getByText(/damaged or not whole/)).toBeTruthy();
    await userEvent.setup().click(close);
    expect(closed).toBe(1);
    expect(store.document.value).toBe(demo);
  });
});
