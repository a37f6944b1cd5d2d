// @vitest-environment happy-dom
import { cleanup, screen } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('kitchen');

afterEach(cleanup);

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
    expect(textOf(cell('headspaceDepth'))).toContain('4,0 cm');
    await user.click(cell('waterRatio'));
    await user.keyboard('5,5{Enter}');
    expect(amountOf('waterRatio')).toBe(5.5);
  });
});
