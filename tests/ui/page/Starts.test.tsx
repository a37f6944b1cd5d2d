// @vitest-environment happy-dom
import { cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { openSheet } from '../open-sheet';

afterEach(cleanup);

test.each([
  ['From a recipe', 'Recipe'],
  ['From what I have', 'On hand'],
])('the focus follows into the part that %s opens', async (start, part) => {
  const { user } = await openSheet();
  await user.click(screen.getByRole('button', { name: start }));
  await waitFor(() => expect(document.activeElement).toBe(screen.getByRole('tabpanel', { name: part })));
});

test('a part opened by its name leaves the focus on the name', async () => {
  const { user } = await openSheet();
  await user.click(screen.getByRole('tab', { name: 'Care' }));
  await screen.findByRole('tabpanel', { name: 'Care' });
  expect(document.activeElement).toBe(screen.getByRole('tab', { name: 'Care' }));
});

test.each([
  ['its button', /^Undo/],
  ['its keys', null],
])('what a deed came to is no longer said once it is taken back by %s', async (_, button) => {
  const { user, store } = await openSheet();
  await user.click(screen.getByRole('button', { name: '+ Batch' }));
  expect(screen.getByText('A new batch, which fills one jar.')).toBeDefined();
  if (button === null) await user.keyboard('{Control>}z{/Control}');
  else await user.click(screen.getByRole('button', { name: button }));
  expect(store.document.value.batches).toHaveLength(1);
  await waitFor(() => expect(screen.queryByText('A new batch, which fills one jar.')).toBeNull());
});
