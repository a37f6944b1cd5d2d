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
    await user.click(screen.getByRole('radio', { name: 'US first' }));
    expect(place('500 mL')).toBeGreaterThan(place('cup'));
    expect(store.undoName.value).toBe('Type 500 mL for Water to blend');
    await user.click(screen.getByRole('radio', { name: 'Metric first' }));
    expect(place('500 mL')).toBeLessThan(place('cup'));
  });

  test('is a choice of one of two', async () => {
    const { user } = await openSheet();
    const us = screen.getByRole<HTMLInputElement>('radio', { name: 'US first' });
    const metric = screen.getByRole<HTMLInputElement>('radio', { name: 'Metric first' });
    expect([metric.checked, us.checked]).toEqual([true, false]);
    await user.click(us);
    expect([metric.checked, us.checked]).toEqual([false, true]);
  });
});

describe('undo and redo', () => {
  test('say that there is nothing to undo on a fresh sheet', async () => {
    await openSheet();
    expect(textOf(undo())).toContain('nothing to undo');
    expect(textOf(redo())).toContain('nothing to redo');
    expect([undo().getAttribute('aria-disabled'), redo().getAttribute('aria-disabled')]).toEqual(['true', 'true']);
  });

  test('name the step they take back and take again', async () => {
    const { user, batch } = await openSheet((store) => {
      store.typeCell('b1', 'sourceMass', '200 g');
      store.choose('b1', 'sweetener', 'honey');
    });
    expect(textOf(undo())).toContain('Choose Honey');
    await user.click(undo());
    await waitFor(() => expect(textOf(redo())).toContain('Choose Honey'));
    expect(textOf(undo())).toContain('Type 200 g for Source, as bought');
    expect(batch().sweetener[0]?.id).toBe('caneWhite');
    await user.click(redo());
    expect(batch().sweetener[0]?.id).toBe('honey');
    expect(redo().getAttribute('aria-disabled')).toBe('true');
  });
});

describe('spoons and cups', () => {
  test('taking a scoop out of the drawer writes the amounts without it', async () => {
    const { user, cell } = await openSheet((store) => store.typeCell('b1', 'blendWater', '300 mL'));
    expect(textOf(cell('blendWater'))).toContain('¼ cup');
    await user.click(screen.getByRole('checkbox', { name: '1/4 cup' }));
    expect(textOf(cell('blendWater'))).not.toContain('¼ cup');
    await user.click(screen.getByRole('checkbox', { name: '1/4 cup' }));
    expect(textOf(cell('blendWater'))).toContain('¼ cup');
  });

  test('a bigger cup holds more of the same amount', async () => {
    const { user, cell } = await openSheet((store) => store.typeCell('b1', 'blendWater', '500 mL'));
    await user.click(screen.getByRole('radio', { name: /^Metric cup.*15 mL/ }));
    expect(textOf(cell('blendWater'))).toMatch(/500 mL.*2 cups(?! \+)/);
  });

  test('a decimal comma is written and read', async () => {
    const { user, cell, amountOf } = await openSheet();
    await user.click(screen.getByRole('checkbox', { name: /1,5/ }));
    expect(textOf(cell('headspaceDepth'))).toContain('5,0 cm');
    await user.click(cell('waterRatio'));
    await user.keyboard('5,5{Enter}');
    expect(amountOf('waterRatio')).toBe(5.5);
  });
});
