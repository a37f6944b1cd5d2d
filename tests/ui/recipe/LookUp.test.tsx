// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { createStore, type Store } from '../../../src/batch/store/store';
import { LookUp } from '../../../src/ui/recipe/LookUp';
import { textOf } from '../open-sheet';

afterEach(cleanup);

function openLookUp(edit: (store: Store) => void = () => {}) {
  const store = createStore(demo);
  edit(store);
  const user = userEvent.setup();
  render(<LookUp store={store} />);
  const menu = (name: string) => screen.getByRole<HTMLSelectElement>('combobox', { name });
  const type = async (name: string, text: string) => {
    const field = screen.getByRole('textbox', { name, hidden: true });
    await user.clear(field);
    if (text !== '') await user.type(field, text);
  };
  const said = () => textOf(screen.getByRole('status'));
  const keep = async (name: string, measure: string, weight: string) => {
    await type('Name of the food', name);
    await type('Measure filled', measure);
    await type('It weighs', weight);
    await user.click(screen.getByRole('button', { name: 'Keep', hidden: true }));
  };
  return { store, user, menu, type, said, keep };
}

describe('any food’s cup', () => {
  test('is grams for a cup, with its range and origin', () => {
    const { said } = openLookUp();
    expect(said()).toMatch(/^237 mL \(1 cup\) is 143 g/);
    expect(said()).toMatch(/122 g.* to 164 g/);
    expect(said()).toContain('record 12061');
  });

  test('is a volume for a weight', async () => {
    const { type, said } = openLookUp();
    await type('Amount', '71.5 g');
    expect(said()).toMatch(/^72 g .*is 118 mL \(½ cup/);
  });

  test('is of the cut or packing chosen, which another food does not take over', async () => {
    const { user, menu, said } = openLookUp();
    await user.selectOptions(menu('Food'), 'Brown sugar');
    await user.selectOptions(menu('Cut or packing'), 'packed');
    expect(said()).toMatch(/is 220 g/);
    await user.selectOptions(menu('Cut or packing'), 'unpacked');
    expect(said()).toMatch(/is 145 g/);
    await user.selectOptions(menu('Food'), 'Almonds, whole');
    expect(menu('Cut or packing').value).toBe('');
    expect(said()).toMatch(/is 143 g/);
  });

  test('says beside the field what can’t be read', async () => {
    const { type } = openLookUp();
    await type('Amount', '17o g');
    expect(textOf(screen.getByRole('alert'))).toContain('17o');
    expect(screen.queryByRole('status')).toBeNull();
  });

  test('leads with US measure where the cook does', () => {
    const { said } = openLookUp((store) => store.changeSettings({ leads: 'us' }));
    expect(said()).toMatch(/^1 cup \(237 mL\) is 5 oz \(143 g\)/);
  });
});

describe('a cup weighed once', () => {
  test('is kept, looked up at once, and says that it is yours', async () => {
    const { store, menu, said, keep } = openLookUp();
    await keep('Sprouted oats', '½ cup', '45 g');
    expect(store.document.value.ownFoods).toMatchObject([{ name: 'Sprouted oats', grams: 45 }]);
    expect(menu('Food').selectedOptions[0]?.textContent).toBe('Sprouted oats');
    expect(said()).toMatch(/is 90 g.*Yours, measured/);
    expect(store.undoName.value).toBe('Keep the weight of Sprouted oats');
  });

  test('is refused with what to do, and what was typed stays', async () => {
    const { store, keep } = openLookUp();
    await keep('Sprouted oats', '1 cup', '0 g');
    expect(textOf(screen.getByRole('alert'))).toContain('more than 0');
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: 'Name of the food', hidden: true }).value).toBe(
      'Sprouted oats',
    );
    expect(store.document.value).toBe(demo);
  });

  test('is forgotten at a press, and the look-up goes back to a food that is there', async () => {
    const { store, user, menu, said, keep } = openLookUp();
    await keep('Sprouted oats', '1 cup', '90 g');
    await user.click(screen.getByRole('button', { name: 'Forget Sprouted oats', hidden: true }));
    expect(store.document.value.ownFoods).toEqual([]);
    expect(menu('Food').selectedOptions[0]?.textContent).toBe('Almonds, whole');
    expect(said()).toMatch(/is 143 g/);
  });
});
