// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen, waitFor, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { everyFigure } from '../../../src/formula/working/every-figure';
import { NumbersFrom } from '../../../src/ui/numbers/NumbersFrom';
import { openWith } from '../open-sheet';

afterEach(cleanup);

function open(details: Element): void {
  details.setAttribute('open', '');
  fireEvent(details, new Event('toggle'));
}

describe('where the numbers come from', () => {
  test('is a part of the page, with a group for each subject', async () => {
    const { container } = await openWith('numbers')();
    expect(screen.getByRole('searchbox', { name: 'Find a figure' })).toBeDefined();
    for (const { title } of everyFigure()) expect(container.textContent).toContain(title);
    expect(screen.getByRole('link', { name: 'The same as one table' }).getAttribute('href')).toBe('coefficients.csv');
  });

  test('lists a group with value, unit, range and origin when it is opened', async () => {
    const { container } = render(<NumbersFrom decimalComma={false} />);
    const groups = [...container.querySelectorAll('details')];
    const kitchen = groups.find((group) => group.textContent?.startsWith('Kitchen')) ?? expect.fail('no kitchen');
    expect(within(kitchen).queryByRole('table')).toBeNull();
    open(kitchen);
    const room = await within(kitchen).findByRole('row', { name: /^Usual room/ });
    expect(room.textContent).toContain('21\u00A0°C');
    expect(room.textContent).toContain('18 to 24');
    expect(room.textContent).toContain('Common practice');
  });

  test('finds a figure by all of its words, and says so where none has them', async () => {
    const user = userEvent.setup();
    render(<NumbersFrom decimalComma={true} />);
    const field = screen.getByRole('searchbox', { name: 'Find a figure' });
    await user.type(field, 'gas CONSTANT');
    await waitFor(() =>
      expect(screen.getByRole('row', { name: /^Gas constant/ }).textContent).toContain('8,314462618'),
    );
    await user.clear(field);
    await user.type(field, 'no such thing');
    expect(screen.getByRole('status').textContent).toBe('No figure has all of these words.');
  });
});
