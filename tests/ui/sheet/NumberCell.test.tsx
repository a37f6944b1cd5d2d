// @vitest-environment happy-dom
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

describe('typing in a cell', () => {
  test('starts anew with the character, and Enter keeps it as typed', async () => {
    const { user, cell, editor, batch, amountOf } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('2');
    expect(editor('sourceMass').value).toBe('2');
    await user.keyboard('00g{Enter}');
    expect(batch().given).toMatchObject([{ row: 'sourceMass', text: '200g' }]);
    expect(amountOf('sourceMass')).toBe(200);
    expect(textOf(cell('sourceMass'))).toContain('200 g');
  });

  test('takes any unit, and the other rows follow', async () => {
    const { user, cell, amountOf } = await openSheet();
    const before = amountOf('milkVolume');
    await user.click(cell('sourceMass'));
    await user.keyboard('8 oz{Enter}');
    expect(amountOf('sourceMass')).toBeCloseTo(226.796, 3);
    expect(amountOf('milkVolume')).toBeGreaterThan(Number(before));
    expect(document.body.textContent).toContain('Sized from weight as bought');
  });

  test('of a solid shows spoons and cups alone under the weight, also with US measure leading', async () => {
    const { store, cell } = await openSheet();
    expect(textOf(cell('sourceMass'))).toMatch(/\d g.*\bcups?\b/);
    expect(textOf(cell('sourceMass'))).not.toMatch(/\b(oz|lb)\b/);
    store.changeSettings({ leads: 'us' });
    await waitFor(() => expect(textOf(cell('sourceMass'))).toMatch(/\bcups?.*\d g/));
    expect(textOf(cell('sourceMass'))).not.toMatch(/\b(oz|lb)\b/);
  });

  test('marks the cell as typed in words too, and no other cell', async () => {
    const { user, cell, container } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('170g{Enter}');
    const marked = [...container.querySelectorAll('[data-quantity]')].filter((one) =>
      one.getAttribute('aria-label')?.includes('typed as 170g'),
    );
    expect(marked).toEqual([cell('sourceMass')]);
  });

  test('gives the focus back to the cell', async () => {
    const { user, cell } = await openSheet();
    await user.click(cell('waterRatio'));
    await user.keyboard('5{Enter}');
    await waitFor(() => expect(document.activeElement).toBe(cell('waterRatio')));
  });

  test('is one step to undo', async () => {
    const { store, user, cell, batch } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('200g{Enter}');
    expect(store.undoName.value).toBe('Type 200g for Weight as bought');
    store.undo();
    expect(batch().given).toEqual([]);
  });

  test('does nothing in a cell that is not selected', async () => {
    const { store, user, cell, isOpen } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('7');
    expect(isOpen('milkVolume')).toBe(false);
    await user.keyboard('{Escape}');
    expect(store.undoName.value).toBeNull();
  });
});

describe('opening a cell', () => {
  test.each(['{Enter}', '{F2}'])(
    'with %s shows what stands there, selected, so that typing replaces it',
    async (key) => {
      const { user, cell, editor, amountOf } = await openSheet();
      const shown = textOf(cell('sourceMass'));
      await user.click(cell('sourceMass'));
      await user.keyboard(key);
      const input = editor('sourceMass');
      expect(shown).toContain(input.value.replaceAll(/\s+/g, ' '));
      expect([input.selectionStart, input.selectionEnd]).toEqual([0, input.value.length]);
      await user.keyboard('90 g{Enter}');
      expect(amountOf('sourceMass')).toBe(90);
    },
  );

  test('shows what was typed as it was typed, also in another unit', async () => {
    const { user, cell, editor } = await openSheet((store) => store.typeCell('b1', 'sourceMass', '1½ c'));
    await user.click(cell('sourceMass'));
    await user.keyboard('{F2}');
    expect(editor('sourceMass').value).toBe('1½ c');
  });

  test('with a double click', async () => {
    const { user, cell, isOpen } = await openSheet();
    await user.dblClick(cell('grainMass'));
    expect(isOpen('grainMass')).toBe(true);
  });

  test('and leaving it unchanged commits nothing', async () => {
    const { store, user, cell, isOpen, batch } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('{Enter}{Enter}');
    expect(isOpen('sourceMass')).toBe(false);
    await user.keyboard('{F2}');
    await user.tab();
    expect(isOpen('sourceMass')).toBe(false);
    expect(store.undoName.value).toBeNull();
    expect(batch().given).toEqual([]);
  });
});

describe('an open cell', () => {
  test('is restored by Escape', async () => {
    const { store, user, cell, isOpen } = await openSheet();
    const before = cell('sourceMass').getAttribute('aria-label');
    await user.click(cell('sourceMass'));
    await user.keyboard('999 g{Escape}');
    expect(isOpen('sourceMass')).toBe(false);
    expect(cell('sourceMass').getAttribute('aria-label')).toBe(before);
    expect(store.undoName.value).toBeNull();
    await waitFor(() => expect(document.activeElement).toBe(cell('sourceMass')));
  });

  test('is kept by Tab, and by going elsewhere', async () => {
    const { user, cell, amountOf } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('210 g');
    await user.tab();
    expect(amountOf('sourceMass')).toBe(210);
    await user.click(cell('waterRatio'));
    await user.keyboard('6');
    await user.click(cell('grainRate'));
    expect(amountOf('waterRatio')).toBe(6);
  });

  test('keeps the keys of the grid to itself', async () => {
    const { user, cell, isOpen } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('12{ArrowLeft}{Home}{End}{ArrowUp}{Backspace}');
    expect(isOpen('sourceMass')).toBe(true);
    expect(within(cell('sourceMass')).getByRole<HTMLInputElement>('textbox').value).toBe('1');
  });

  test('emptied, is worked out again', async () => {
    const { user, cell, batch, editor } = await openSheet((store) => store.typeCell('b1', 'sourceMass', '200 g'));
    await user.click(cell('sourceMass'));
    await user.keyboard('{F2}');
    await user.clear(editor('sourceMass'));
    await user.keyboard('{Enter}');
    expect(batch().given).toEqual([]);
  });
});

describe('Delete', () => {
  test.each(['{Delete}', '{Backspace}'])('%s gives a typed cell back to be worked out', async (key) => {
    const { store, user, cell, batch } = await openSheet((made) => made.typeCell('b1', 'sourceMass', '200 g'));
    await user.click(cell('sourceMass'));
    await user.keyboard(key);
    expect(batch().given).toEqual([]);
    expect(store.undoName.value).toBe('Clear Weight as bought');
    expect(textOf(cell('sourceMass'))).not.toContain('typed');
  });

  test('is no step where nothing was typed', async () => {
    const { store, user, cell } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('{Delete}');
    expect(store.undoName.value).toBeNull();
  });
});

describe('a text that can’t be read', () => {
  test('is kept with a sentence that says what to write, and marks the cell as wrong', async () => {
    const { user, cell, remarks, batch, editor } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('17o g{Enter}');
    expect(textOf(cell('sourceMass'))).toContain('17o g');
    await waitFor(() => expect(remarks('sourceMass')).toMatch(/17o.*\./));
    expect(batch().given).toMatchObject([{ text: '17o g', amount: null }]);
    expect(cell('sourceMass').getAttribute('aria-invalid')).toBe('true');
    await user.keyboard('{F2}');
    expect(editor('sourceMass').value).toBe('17o g');
    await user.clear(editor('sourceMass'));
    await user.keyboard('170 g{Enter}');
    expect(cell('sourceMass').getAttribute('aria-invalid')).toBeNull();
    expect(textOf(cell('sourceMass'))).not.toContain('17o');
  });

  test('an amount out of its range is explained the same way', async () => {
    const { user, cell, remarks } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('0{Enter}');
    await waitFor(() => expect(remarks('sourceMass')).toContain('must be more than 0'));
  });
});

test('a row that a source has not shows a dash and why', async () => {
  const { cell } = await openSheet((store) => store.choose('b1', 'source', 'coconutMilk'));
  expect(textOf(cell('pulpMass'))).toBe('Nothing is strained out, so there is no pulp.');
  expect(textOf(cell('soakWater'))).toBe('–');
});

test('with several jars, an amount says how much goes into each', async () => {
  const { cell } = await openSheet((store) => store.typeCell('b1', 'vesselCount', '2'));
  expect(textOf(cell('milkVolume'))).toMatch(/each jar \d+ mL/);
  expect(textOf(cell('waterRatio'))).not.toContain('each jar');
});

describe('a slip', () => {
  test('leaves the other figures as they were, grey, and is said once at the head with the way there', async () => {
    const { user, cell, container } = await openSheet((store) => store.typeCell('b1', 'sourceMass', '200 g'));
    const before = textOf(cell('blendWater'));
    await user.click(cell('sourceMass'));
    await user.keyboard('2oo g{Enter}');
    expect(textOf(cell('blendWater'))).toBe(before);
    expect(cell('blendWater').querySelector('.stale')).not.toBeNull();
    expect(cell('blendWater').getAttribute('aria-label')).toContain('from before');
    expect(cell('blendWater').getAttribute('aria-invalid')).toBeNull();
    expect(container.querySelectorAll('.slip').length).toBe(1);
    await user.click(cell('vessel'));
    await user.click(within(document.body).getByRole('button', { name: 'Mend weight as bought.' }));
    await waitFor(() => expect(document.activeElement).toBe(cell('sourceMass')));
  });

  test('in a batch that never was without it leaves the figures of the batch without it', async () => {
    const { cell } = await openSheet((store) => store.typeCell('b1', 'sourceMass', 'x'));
    expect(cell('blendWater').querySelector('.stale')).not.toBeNull();
    expect(textOf(cell('blendWater'))).toMatch(/\d+ mL/);
  });
});

describe('the working', () => {
  test('opens over the part by a key and by the small button, and closes by Escape, back at the cell', async () => {
    const { user, cell } = await openSheet();
    await user.click(cell('milkVolume'));
    const find = within(document.body);
    expect(find.queryByRole('region', { name: 'Working of Milk after straining' })).toBeNull();
    await user.keyboard('?');
    const region = await find.findByRole('region', { name: 'Working of Milk after straining' });
    await user.click(within(region).getByRole('button', { name: 'Close' }));
    expect(find.queryByRole('region', { name: 'Working of Milk after straining' })).toBeNull();
    await waitFor(() => expect(document.activeElement).toBe(cell('milkVolume')));
    await user.click(find.getByRole('button', { name: 'How Milk after straining comes about' }));
    expect(await find.findByRole('region', { name: 'Working of Milk after straining' })).toBeDefined();
  });
});

describe('a text that may be read in several ways', () => {
  test('is asked about beside the cell, and one press settles it', async () => {
    const { user, cell, amountOf, batch } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('1,250 kg{Enter}');
    await waitFor(() => expect(textOf(document.body)).toContain('“1,250 kg” may be 1.25 kg or 1250 kg.'));
    expect(amountOf('sourceMass')).toBeNull();
    await user.click(await screen.findByRole('button', { name: 'Make it 1.25 kg' }));
    expect(amountOf('sourceMass')).toBe(1250);
    expect(batch().given).toMatchObject([{ row: 'sourceMass', text: '1.25 kg' }]);
  });

  test('asks cups or ounces of a bare number of a solid where cups lead', async () => {
    const { user, cell, amountOf } = await openSheet((store) => store.changeSettings({ leads: 'us' }));
    await user.click(cell('sourceMass'));
    await user.keyboard('2{Enter}');
    expect(amountOf('sourceMass')).toBeNull();
    await user.click(await screen.findByRole('button', { name: 'Make it 2 cups' }));
    expect(amountOf('sourceMass')).toBeCloseTo(286, 0);
  });

  test('says beside a bare number what it was taken for', async () => {
    const { user, cell } = await openSheet();
    await user.click(cell('sourceMass'));
    await user.keyboard('200{Enter}');
    await waitFor(() => expect(textOf(document.body)).toContain('taken as g'));
  });
});
