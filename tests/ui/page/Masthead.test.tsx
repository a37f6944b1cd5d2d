// @vitest-environment happy-dom
import { cleanup, screen, waitFor } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

const undo = () => screen.getByRole<HTMLButtonElement>('button', { name: /^Undo/ });
const redo = () => screen.getByRole<HTMLButtonElement>('button', { name: /^Redo/ });

describe('the switch of units', () => {
  test('decides which of the two writings comes first, without a step', async () => {
    const { store, user, cell } = await openSheet((made) => made.typeCell('b1', 'blendWater', '500 mL'));
    const place = (unit: string) => textOf(cell('blendWater')).indexOf(unit);
    expect(place('500 mL')).toBeLessThan(place('cup'));
    await user.click(screen.getByRole('radio', { name: 'US' }));
    expect(place('500 mL')).toBeGreaterThan(place('cup'));
    expect(store.undoName.value).toBe('Type 500 mL for Water to blend');
    await user.click(screen.getByRole('radio', { name: 'Metric' }));
    expect(place('500 mL')).toBeLessThan(place('cup'));
  });

  test('is a choice of one of two', async () => {
    const { user } = await openSheet();
    const us = screen.getByRole<HTMLInputElement>('radio', { name: 'US' });
    const metric = screen.getByRole<HTMLInputElement>('radio', { name: 'Metric' });
    expect([metric.checked, us.checked]).toEqual([true, false]);
    await user.click(us);
    expect([metric.checked, us.checked]).toEqual([false, true]);
  });
});

describe('undo and redo', () => {
  test('say that there is nothing to undo on a fresh sheet', async () => {
    await openSheet();
    expect([undo().title, redo().title]).toEqual(['nothing to undo', 'nothing to redo']);
    expect([undo().getAttribute('aria-disabled'), redo().getAttribute('aria-disabled')]).toEqual(['true', 'true']);
  });

  test('name the step they take back and take again', async () => {
    const { user, batch } = await openSheet((store) => {
      store.typeCell('b1', 'sourceMass', '200 g');
      store.choose('b1', 'sweetener', 'honey');
    });
    expect(undo().title).toContain('Choose Honey');
    await user.click(undo());
    await waitFor(() => expect(redo().title).toContain('Choose Honey'));
    expect(undo().title).toContain('Type 200 g for Weight as bought');
    expect(batch().sweetener[0]?.id).toBe('caneWhite');
    await user.click(redo());
    expect(batch().sweetener[0]?.id).toBe('honey');
    expect(redo().getAttribute('aria-disabled')).toBe('true');
  });
});
