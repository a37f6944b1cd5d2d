// @vitest-environment happy-dom
import { cleanup, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { rowOrder } from '../../../src/formula/recipe/order';
import { labelOf } from '../../../src/formula/words/labels';
import { sources } from '../../../src/reference/sources';
import { sweeteners } from '../../../src/reference/sweeteners';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

function menuOf(cell: HTMLElement): HTMLSelectElement {
  return within(cell).getByRole<HTMLSelectElement>('combobox');
}

function labelsIn(menu: HTMLSelectElement): readonly string[] {
  return [...menu.options].map(textOf);
}

describe('choosing', () => {
  test('changes the batch, and is one step that names what was chosen', async () => {
    const { store, user, cell, batch } = await openSheet();
    await user.selectOptions(menuOf(cell('source')), 'Cashews');
    expect(batch().source).toBe('cashew');
    expect(store.undoName.value).toBe('Choose Cashews');
    expect(menuOf(cell('source')).selectedOptions[0]?.textContent).toBe('Cashews');
  });

  test('what stands there already is no step', async () => {
    const { store, user, cell } = await openSheet();
    await user.selectOptions(menuOf(cell('source')), 'Almonds, whole');
    expect(store.undoName.value).toBeNull();
  });

  test('another jar changes the amounts', async () => {
    const { user, cell, amountOf } = await openSheet();
    const before = Number(amountOf('milkVolume'));
    await user.selectOptions(menuOf(cell('vessel')), 'Two-litre jar');
    expect(amountOf('milkVolume')).toBeGreaterThan(before);
  });
});

describe('the menu', () => {
  test('offers every source and every sweetener of the tables once, also those refused', async () => {
    const { cell } = await openSheet();
    const names = (table: Readonly<Record<string, { readonly name: string }>>) =>
      Object.values(table).map(({ name }) => name);
    expect([...labelsIn(menuOf(cell('source')))].sort()).toEqual(names(sources).sort());
    expect([...labelsIn(menuOf(cell('sweetener')))].sort()).toEqual(names(sweeteners).sort());
  });

  test('keeps the keys of the grid to itself', async () => {
    const { user, cell } = await openSheet();
    await user.click(cell('source'));
    menuOf(cell('source')).focus();
    await user.keyboard('{ArrowDown}{End}');
    expect(cell('source').getAttribute('aria-selected')).toBe('true');
    expect(document.activeElement).toBe(menuOf(cell('source')));
  });
});

describe('by keyboard', () => {
  test.each(['{Enter}', '{F2}', 'h'])('%s goes into the menu', async (key) => {
    const { user, cell } = await openSheet();
    cell('source').focus();
    await user.keyboard(key);
    expect(document.activeElement).toBe(menuOf(cell('source')));
  });

  test.each(['{Escape}', '{Enter}'])('%s comes back out to the cell', async (key) => {
    const { user, cell } = await openSheet();
    cell('source').focus();
    await user.keyboard(`{F2}${key}`);
    expect(document.activeElement).toBe(cell('source'));
  });
});

test('another sweetener for a typed spoon keeps the sugar, says so, and offers the spoons as they were', async () => {
  const { user, cell, batch, container } = await openSheet((store) => store.typeCell('b1', 'sweetenerMass', '2 tbsp'));
  await user.selectOptions(menuOf(cell('sweetener')), 'Honey');
  const said = await waitFor(() => container.querySelector('.swapped') ?? expect.fail('nothing is said'));
  expect(textOf(said)).toMatch(/^32 g honey, same sugar · keep 2 tbsp$/);
  await user.click(
    within(cell('sweetener').parentElement ?? cell('sweetener')).getByRole('button', { name: 'keep 2 tbsp' }),
  );
  expect(batch()).toMatchObject({ sweetener: [{ id: 'honey' }], given: [{ text: '2 tbsp' }] });
  await waitFor(() => expect(document.activeElement).toBe(cell('sweetenerMass')));
});

test.each(
  Object.entries(sweeteners).flatMap(([id, { name, refused }]) => (refused === undefined ? [] : [[name, id, refused]])),
)('%s is refused beside the cell, with the reason', async (name, _, reason) => {
  const { user, cell, remarks } = await openSheet();
  await user.selectOptions(menuOf(cell('sweetener')), name);
  await waitFor(() => expect(remarks('sweetener')).toContain(`${name} can’t feed the grains. ${reason}`));
  expect(textOf(cell('sugarRate'))).toContain('The culture can’t ferment this sweetener.');
});

test('a cell is named after its row and what is chosen in it', async () => {
  const { cell } = await openSheet();
  for (const row of rowOrder)
    expect(cell(row).getAttribute('aria-label'), row).toMatch(
      new RegExp(`^${labelOf(row).replaceAll(/[()?]/g, '.')}, Saturday almond: .`),
    );
  expect(cell('vessel').getAttribute('aria-label')).toContain('Quart, wide mouth, chosen');
});
