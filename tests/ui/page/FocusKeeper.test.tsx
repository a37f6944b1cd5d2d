// @vitest-environment happy-dom
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { useState } from 'preact/hooks';
import { afterEach, expect, test } from 'vitest';
import FocusKeeper from '../../../src/ui/page/FocusKeeper';

afterEach(cleanup);

function Room() {
  const [isThere, setThere] = useState(true);
  return (
    <main>
      <FocusKeeper />
      <section aria-label="Room">
        {isThere && (
          <p>
            <button type="button" onClick={() => setThere(false)}>
              Forget
            </button>
          </p>
        )}
      </section>
      <button type="button">Other</button>
    </main>
  );
}

test('goes to what a button stood in that is gone by its own press', async () => {
  render(<Room />);
  const button = screen.getByRole('button', { name: 'Forget' });
  // Come to from another, as one does by Tab.
  screen.getByRole('button', { name: 'Other' }).focus();
  button.focus();
  await Promise.resolve();
  button.click();
  await waitFor(() => expect(document.activeElement).toBe(screen.getByRole('region', { name: 'Room' })));
});

test('stays where something else took it', async () => {
  render(<Room />);
  const [button, other] = [
    screen.getByRole('button', { name: 'Forget' }),
    screen.getByRole('button', { name: 'Other' }),
  ];
  button.focus();
  button.click();
  other.focus();
  await new Promise((resolve) => setTimeout(resolve, 150));
  expect(document.activeElement).toBe(other);
});

test('is left alone where it was let go of by hand', async () => {
  render(<Room />);
  const button = screen.getByRole('button', { name: 'Forget' });
  button.focus();
  button.blur();
  await Promise.resolve();
  button.click();
  await new Promise((resolve) => setTimeout(resolve, 150));
  expect(document.activeElement).toBe(document.body);
});
