// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { createStore, type Store } from '../../../src/batch/store/store';
import { RecipeOut } from '../../../src/ui/recipe/RecipeOut';
import { recipeOf, typed } from '../../batches';
import { documentOf } from '../../stocked';

afterEach(cleanup);

function Out({ store }: { readonly store: Store }) {
  const [batch] = store.document.value.batches;
  return batch === undefined ? null : <RecipeOut batch={batch} store={store} />;
}

function openOut(edit: (store: Store) => void = () => {}) {
  const store = createStore(documentOf(recipeOf({ given: [typed('sourceMass', 143), typed('blendWater', 473.176)] })));
  edit(store);
  const user = userEvent.setup();
  const { container } = render(<Out store={store} />);
  const text = () => container.querySelector('pre')?.textContent ?? '';
  return { store, user, text };
}

describe('a batch as a recipe again', () => {
  test('is in grams for a scale, and in the cook’s own scoops at a press', async () => {
    const { user, text } = openOut();
    expect(text()).toMatch(/^Saturday$/m);
    expect(text()).toMatch(/^- 143 g almonds$/m);
    await user.click(screen.getByRole('radio', { name: 'for my spoons and cups' }));
    expect(text()).toMatch(/^- 1 cup almonds$/m);
    expect(text()).toMatch(/^- 2 cups water$/m);
    await user.click(screen.getByRole('radio', { name: 'for a scale' }));
    expect(text()).toMatch(/^- 143 g almonds$/m);
  });

  test('opens in scoops where US measure leads', () => {
    const { text } = openOut((store) => store.changeSettings({ leads: 'us' }));
    expect(text()).toMatch(/^- 1 cup almonds$/m);
  });

  test('follows the batch: a scale of 5 g, another jar, another sweetener', async () => {
    const { store, text } = openOut();
    store.changeSettings({ scale: 5 });
    await expect.poll(text).toMatch(/^- 145 g almonds$/m);
    store.clearCell('b1', 'sourceMass');
    store.clearCell('b1', 'blendWater');
    const quart = text();
    store.choose('b1', 'vessel', 'twoLitre');
    await expect.poll(text).toMatch(/^For a 2000 mL jar/m);
    expect(text()).not.toBe(quart);
    store.choose('b1', 'sweetener', 'honey');
    await expect.poll(text).toMatch(/ g honey$/m);
  });

  test('is copied as it stands, and says so', async () => {
    const { user, text } = openOut();
    await user.click(screen.getByRole('button', { name: 'Copy the recipe' }));
    expect(await screen.findByText('Copied.')).toBeTruthy();
    expect(await navigator.clipboard.readText()).toBe(text());
  });
});
