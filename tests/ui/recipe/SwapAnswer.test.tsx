// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { createStore, type Store } from '../../../src/batch/store/store';
import { SwapAnswer } from '../../../src/ui/recipe/SwapAnswer';
import { textOf } from '../open-sheet';

afterEach(cleanup);

function openAnswer(edit: (store: Store) => void = () => {}) {
  const store = createStore(demo);
  edit(store);
  const user = userEvent.setup();
  render(<SwapAnswer store={store} />);
  const pick = (label: string, name: string) => user.selectOptions(screen.getByRole('combobox', { name: label }), name);
  const type = async (label: string | RegExp, text: string) => {
    const field = screen.getByRole('textbox', { name: label });
    await user.clear(field);
    if (text !== '') await user.type(field, text);
  };
  return { store, pick, type, said: () => textOf(screen.getByRole('status')) };
}

describe('one sweetener for another', () => {
  test('is answered at once, in weight and spoons with the error to expect, and changes nothing', () => {
    const { store, said } = openAnswer();
    // 2 tbsp of cane sugar, 25.2 g, are as much as 32 g of honey.
    expect(said()).toMatch(/32\sg.*tbsp.*of honey, by other hands and labels 30\sg to 35\sg/);
    expect(said()).toContain('12 months');
    expect(store.document.value).toBe(demo);
  });

  test('leads with spoons where they lead', () => {
    const { said } = openAnswer((store) => store.changeSettings({ leads: 'us' }));
    expect(said()).toMatch(/^2 tbsp of cane sugar, white is1 tbsp/);
  });

  test('follows what is typed and chosen', async () => {
    const { type, pick, said } = openAnswer();
    await type('Amount', '18 g');
    await pick('in', 'Maple syrup');
    // 18.91 g of hexose ÷ 0.6351 = 29.77 g.
    expect(said()).toMatch(/30\sg.*of maple syrup/);
  });

  test('is a blend by any share of the weight, and says so', async () => {
    const { type, pick, said } = openAnswer();
    await type('Amount', '18 g');
    await pick('in', 'Cane sugar, white');
    await pick('blended with', 'Honey');
    await type(/^Share of Honey/, '25');
    // 18.91 ÷ (0.75 × 1.0505 + 0.25 × 0.8224) = 19.03 g: 14.3 and 4.8 g.
    expect(said()).toMatch(/14\sg.*of cane sugar, white.*4\.8\sg.*of honey/);
    expect(said()).toContain('The shares go by weight.');
  });

  test.each([
    ['Amount', 'lots'],
    ['Amount', ''],
    [/^Share of/, '140'],
    [/^Share of/, 'half of it'],
  ] as const)('asks again beside the field and keeps what was typed: %s “%s”', async (label, text) => {
    const { type, pick } = openAnswer();
    await pick('blended with', 'Maple syrup');
    await type(label, text);
    expect(textOf(screen.getByRole('alert'))).toMatch(/\.$/);
    expect(screen.getByRole<HTMLInputElement>('textbox', { name: label }).value).toBe(text);
    expect(screen.queryByRole('status')).toBeNull();
  });

  test('says why nothing stands for what the grains can’t ferment', async () => {
    const { pick } = openAnswer();
    await pick('in', 'Stevia');
    expect(textOf(screen.getByRole('alert'))).toMatch(/ferment/);
  });
});
