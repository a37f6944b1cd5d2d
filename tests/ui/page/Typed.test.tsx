// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import { userEvent } from '@testing-library/user-event';
import { afterEach, expect, test, vi } from 'vitest';
import { KeptTyped, Refusal } from '../../../src/ui/page/Typed';

afterEach(cleanup);

test('what is typed over a kept text is kept on Enter and when the field is left, and else not', async () => {
  const user = userEvent.setup();
  const onKeep = vi.fn();
  render(<KeptTyped aria-label="Limit" kept="6 bar" onKeep={onKeep} />);
  const field = screen.getByRole<HTMLInputElement>('textbox', { name: 'Limit' });
  await user.click(field);
  await user.tab();
  expect(onKeep).not.toHaveBeenCalled();
  await user.clear(field);
  await user.type(field, '7 bar');
  expect(onKeep).not.toHaveBeenCalled();
  expect(field.value).toBe('7 bar');
  await user.keyboard('{Enter}');
  await user.type(field, '!');
  await user.tab();
  expect(onKeep.mock.calls).toEqual([['7 bar'], ['6 bar!']]);
});

test('a refusal says why at once, with what helps beside it, and is not there without', () => {
  const { rerender } = render(
    <Refusal why="No number.">
      <button type="button">Clear</button>
    </Refusal>,
  );
  expect(screen.getByRole('alert').textContent).toBe('No number.Clear');
  rerender(<Refusal why={null} />);
  expect(screen.queryByRole('alert')).toBeNull();
});
