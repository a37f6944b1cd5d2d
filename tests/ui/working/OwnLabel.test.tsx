// @vitest-environment happy-dom
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { openLink } from '../../../src/interchange/open-link';
import { linkTo, writeFragment } from '../../../src/interchange/share-link';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

test('a source of one’s own is typed off its label in the working that its choice opens, in one step to undo', async () => {
  const { store, user, batch, cell, remarks, amountOf } = await openSheet();
  await user.selectOptions(within(cell('source')).getByRole('combobox', { hidden: true }), 'Your own source');
  const form = within(await screen.findByRole('form', { name: 'What your own source is' }));
  await waitFor(() => expect(remarks('source')).toContain('Counted as a usual nut until you type what its label says'));
  const type = (name: string, text: string) =>
    user.type(form.getByRole('textbox', { name: new RegExp(`^${name}`) }), text);
  const before = amountOf('sourceMass');
  await type('Fat', '6.5');
  await type('Carbohydrate', '57.9');
  await type('Usual water ratio', '8.8');
  await type('Sugars', 'some');
  await user.click(form.getByRole('button', { name: 'Keep these' }));
  expect(store.document.value.yours).toEqual({});
  expect(textOf(screen.getByRole('form', { name: 'What your own source is' }))).toContain('Sugars');
  const sugars = form.getByRole<HTMLInputElement>('textbox', { name: /^Sugars/ });
  expect(sugars.value).toBe('some');
  await user.clear(sugars);
  await type('Sugars', '1 g');
  await user.click(form.getByRole('button', { name: 'Keep these' }));
  const { id } = batch();
  const keys = Object.keys(store.document.value.yours).sort((one, other) => one.localeCompare(other));
  expect(keys).toEqual(['byFat', 'byStarch', 'bySugars', 'usualRatio'].map((each) => `own@${id}.${each}`));
  expect(amountOf('sourceMass')).not.toBe(before);
  expect(remarks('source')).not.toContain('usual nut');
  store.undo();
  expect(store.document.value.yours).toEqual({});
  expect(amountOf('sourceMass')).toBe(before);
  store.redo();
  const fragment = await writeFragment(store.document.value, batch());
  const read = await openLink(linkTo('https://kitchen.example/', fragment ?? ''));
  if (!read.ok) throw new Error(read.message);
  expect(Object.keys(read.yours)).toContain('own.byFat');
});
