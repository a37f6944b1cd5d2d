// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { startBatch } from '../../../src/batch/document/demo';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('glass');

afterEach(cleanup);

const withTwo = (store: Store) =>
  store.takeEdit(
    { ...store.document.value, batches: [...store.document.value.batches, startBatch('b2', 'Monday oat')] },
    'Add a batch',
  );
const only = (store: Store) => store.document.value.blends?.[0] ?? expect.fail('there is no blend');
const result = () => screen.findByRole('region', { name: 'In Blend' });

async function openBlended() {
  const opened = await openSheet(withTwo);
  await opened.user.click(await screen.findByText('Blend finished drinks'));
  await opened.user.click(await screen.findByRole('button', { name: 'Blend Saturday almond with another' }));
  return opened;
}

describe('blending finished drinks', () => {
  test('takes two batches', async () => {
    const { user } = await openSheet();
    await user.click(await screen.findByText('Blend finished drinks'));
    expect(await screen.findByText(/It takes two batches/)).toBeTruthy();
    expect(screen.queryByRole('button', { name: /with another$/ })).toBeNull();
  });

  test('begins with half a glass of each and says what that comes to', async () => {
    const { store } = await openBlended();
    const said = textOf(await result());
    expect(said).toMatch(/Together250 mL/);
    expect(said).toMatch(/Sugar left\d+ to \d+ g in all, \d+ to \d+ g in a litre/);
    expect(said).toMatch(/Alcohol\d\.\d to \d\.\d % by volume/);
    expect(said).toContain('not known, as not all were measured');
    expect(said).toContain('Contains almond (tree nut)');
    expect(said).toContain('Grains are never mixed');
    expect(said).not.toMatch(/NaN|Infinity|undefined/);
    expect(store.undoName.value).toBe('Blend finished drinks');
  });

  test('follows what is poured, keeps what can’t be, and is undone', async () => {
    const { store, user } = await openBlended();
    const field = await screen.findByLabelText<HTMLInputElement>('How much of drink 2');
    await user.clear(field);
    await user.type(field, '9 L{Enter}');
    expect(textOf(await screen.findByRole('alert'))).toContain('that this batch gives to drink. Pour less.');
    expect(field.value).toBe('9 L');
    expect(screen.getByText('Nothing to tell yet: mend what is marked first.')).toBeTruthy();
    await user.clear(field);
    await user.type(field, '375 mL{Enter}');
    expect(textOf(await result())).toContain('Together500 mL');
    store.undo();
    expect(only(store).parts[1]?.volume.text).toBe('9 L');
  });

  test('says of a batch that is gone which it was, and takes it out', async () => {
    const { store, user } = await openBlended();
    store.takeEdit({ ...store.document.value, batches: store.document.value.batches.slice(0, 1) }, 'Remove it');
    expect(textOf(await screen.findByRole('alert'))).toContain('“Monday oat” is no longer on the sheet');
    await user.click(screen.getByRole('button', { name: 'Take Monday oat out' }));
    expect(only(store).parts).toHaveLength(1);
    expect(within(await result()).getByText((text) => /^125\smL$/.test(text))).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Remove this blend' }));
    expect(store.document.value.blends).toEqual([]);
  });
});
