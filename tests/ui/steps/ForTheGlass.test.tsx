// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

test('flavours for the glass are typed by hand, stand in the steps, and are undone', async () => {
  const { store, user, batch } = await openSheet();
  await user.click(screen.getByText('For the glass'));
  await user.type(
    screen.getByRole('textbox', { name: 'Flavours, with ; between them' }),
    'a pinch of salt; vanilla{Enter}',
  );
  expect(batch().extras).toEqual(['a pinch of salt', 'vanilla']);
  const steps = () => textOf(screen.getByRole('region', { name: /^Steps for / }));
  expect(steps()).toContain('The recipe has besides: a pinch of salt; vanilla.');
  store.undo();
  await screen.findByText('For the glass');
  expect(steps()).not.toContain('vanilla.');
});
