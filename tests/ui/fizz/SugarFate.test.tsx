// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { createStore, type Store } from '../../../src/batch/store/store';
import type { Recipe } from '../../../src/formula/recipe/recipe';
import { SugarFate } from '../../../src/ui/fizz/SugarFate';
import { bottledRecipe as recipeOf, typed } from '../../batches';
import { documentOf } from '../../stocked';
import { textOf } from '../open-sheet';

afterEach(cleanup);

function Mounted({ store }: { readonly store: Store }) {
  const [batch] = store.document.value.batches;
  return batch === undefined ? null : <SugarFate batch={batch} store={store} />;
}

function show(changes: Partial<Recipe> = {}) {
  const store = createStore(documentOf(recipeOf(changes)));
  render(<Mounted store={store} />);
  const section = screen.getByRole('region', { name: 'What happens to the sugar of Saturday' });
  return { store, section, user: userEvent.setup() };
}

describe('what happens to the sugar', () => {
  test('is an account of both ferments, each figure with its range, called an estimate', () => {
    const { section } = show();
    expect(textOf(section)).toContain('An estimate, per litre of kefir');
    for (const name of ['When ready to taste', 'After the second ferment']) {
      const table = within(section).getByRole('table', { name });
      const labels = within(table).getAllByRole('rowheader').map(textOf);
      expect(labels).toEqual([
        'Sugar at the start',
        'Sugar left',
        'Lactic acid',
        'Ethanol (alcohol)',
        'The same by volume',
        'Carbon dioxide',
      ]);
      expect(textOf(table)).toMatch(/Ethanol \(alcohol\)[\d.]+ g\/L[\d.]+ to [\d.]+ g\/L/);
    }
    expect(textOf(section)).toMatch(/Sweetness: Likely balanced, sweet and sour\./);
    expect(textOf(section)).toMatch(/Alcohol: It may pass the line of 0\.5 % ABV/);
    expect(section.innerHTML).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('lists what it rests on, each with its range and where it is from', () => {
    const { section } = show();
    const items = within(section).getAllByRole('listitem', { hidden: true }).map(textOf);
    expect(items[0]).toMatch(/^Share of the sugar used when ready: 0\.35From memory; believed between 0\.2 and 0\.5\./);
    expect(items[1]).toMatch(/^Share of used sugar that goes through yeast: 0\.5A judgement of this sheet/);
    expect(items[2]).toMatch(/^Pace in the sealed bottle, against the jar’s: 1\.4.*A judgement/);
    expect(items.some((item) => /^The line for alcoholPublished: /.test(item))).toBe(true);
  });

  test('takes a figure of one’s own there, and then has one figure', async () => {
    const { section, user, store } = show();
    await user.click(within(section).getByText('What this rests on'));
    const name = 'Share of the sugar used when ready';
    await user.click(within(section).getByRole('button', { name: `Use my own: ${name}` }));
    await user.type(within(section).getByRole('textbox', { name }), '0.6{Enter}');
    expect(store.document.value.yours['water.usedWhenReady']?.value).toBe(0.6);
    const first = within(section).getByRole('table', { name: 'When ready to taste' });
    await expect.poll(() => textOf(first)).toMatch(/Sugar left[\d.]+ g\/LLactic/);
  });

  test('without a second ferment tells only of the first', () => {
    const { section } = show({ given: [typed('bottleTime', 0)] });
    expect(within(section).getAllByRole('table')).toHaveLength(1);
    expect(textOf(section)).toContain('No second ferment.');
    expect(textOf(section)).not.toContain('Pace in the sealed bottle');
  });

  test('outside the models tells of the first, and why not of the second', () => {
    const { section } = show({ given: [typed('roomTemperature', 35)] });
    expect(within(section).getAllByRole('table')).toHaveLength(1);
    expect(textOf(section)).toMatch(/The second ferment can’t be told\. At 35 °C/);
  });

  test('of a batch that can’t be worked out says what to do', () => {
    const { section } = show({ given: [typed('waterRatio', 0.2)] });
    expect(textOf(section)).toMatch(/mend the marked cells first/);
    expect(within(section).queryAllByRole('table')).toHaveLength(0);
  });
});
