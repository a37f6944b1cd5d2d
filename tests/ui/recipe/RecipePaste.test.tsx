// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { keepOwnFood } from '../../../src/batch/edits/larder';
import { createStore, type Store } from '../../../src/batch/store/store';
import { RecipePaste } from '../../../src/ui/recipe/RecipePaste';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';
import { textOf } from '../open-sheet';

afterEach(cleanup);

function openPaste(edit: (store: Store) => void = () => {}) {
  const store = createStore(demo);
  edit(store);
  const state = createSheetState({ at: 'sourceMass', batch: 'b1' });
  const user = userEvent.setup();
  const open = () => render(<RecipePaste store={store} state={state} onMade={() => {}} />);
  let page = open();
  /** Opens another part, and this one again. */
  const comeBack = () => {
    page.unmount();
    page = open();
  };
  const read = async (text: string) => {
    const box = screen.getByRole('textbox', { name: 'Recipe text' });
    await user.clear(box);
    await user.click(box);
    await user.paste(text);
    await user.click(screen.getByRole('button', { name: 'Read it' }));
  };
  const lines = () => within(screen.getByRole('list', { name: 'What was read' })).getAllByRole('listitem');
  const row = (text: string) => {
    const found = lines().find((line) => textOf(line).startsWith(text));
    if (found === undefined) throw new Error(`there is no line of ${text}`);
    return found;
  };
  const plan = () => screen.getByRole('region', { name: 'The batch this makes' });
  const swapIn = async (name: string) => {
    await user.click(within(plan()).getByText('Swap its sweetener first'));
    await user.click(within(plan()).getByRole('button', { name: `Use ${name}`, hidden: true }));
  };
  return { store, state, user, read, lines, row, plan, swapIn, comeBack };
}

const recipe = `Friday almonds
For a 2 L jar
1 ¼ cups almonds
3 ¼ cups water
18 g sugar
40 g water kefir grains
a pinch of salt
Blend, strain and wait.`;

describe('a pasted recipe', () => {
  test('is a row for each ingredient, with weight, range, measure and origin', async () => {
    const { read, row } = openPaste();
    await read(recipe);
    // USDA 12061: a cup of whole almonds weighs 143 g; a measure in another hand is 15 % off either way.
    const said = textOf(row('1 ¼ cups almonds'));
    expect(said).toMatch(/179 g/);
    expect(said).toMatch(/152 g to 206 g/);
    expect(said).toMatch(/296 mL/);
    expect(said).toContain('± 15%');
    expect(said).toContain('record 12061');
    expect(textOf(row('a pinch of salt'))).toContain('no amount that can be weighed');
  });

  test('is there with all that was told of it when the cook comes back from another part, and takes no focus', async () => {
    const { read, row, plan, user, swapIn, comeBack } = openPaste();
    await read('1 cup almonds\n1 cup sprinkles\n18 g sugar');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Food of 1 cup sprinkles' }), 'Water');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Kind of culture' }), 'Milk kefir grains');
    await swapIn('Honey');
    comeBack();
    expect(document.activeElement).toBe(document.body);
    expect(screen.getByRole<HTMLTextAreaElement>('textbox', { name: 'Recipe text' }).value).toContain('sprinkles');
    expect(textOf(row('1 cup sprinkles'))).toContain('237');
    expect(textOf(plan())).toMatch(/Honey · Milk kefir grains/);
    await user.click(screen.getByRole('button', { name: 'Clear' }));
    expect(document.activeElement).toBe(screen.getByRole('textbox', { name: 'Recipe text' }));
    comeBack();
    expect(screen.getByRole<HTMLTextAreaElement>('textbox', { name: 'Recipe text' }).value).toBe('');
    expect(screen.queryByRole('region', { name: 'The batch this makes' })).toBeNull();
  });

  test('keeps a line that can’t be read with its text and why, also where two are alike', async () => {
    const { read, lines } = openPaste();
    await read('½/0 cups walnuts\n½/0 cups walnuts\n1 cup almonds\nBlend well.');
    expect(lines().map(textOf)).toEqual([
      expect.stringMatching(/^½\/0 cups walnuts.*“½\/0” can’t be read/),
      expect.stringMatching(/^½\/0 cups walnuts.*“½\/0” can’t be read/),
      expect.stringMatching(/^1 cup almonds/),
      expect.stringMatching(/^Blend well\..*Not an ingredient\.$/),
    ]);
  });

  test('has its first rows shown, and more at a press', async () => {
    const { read, lines, user } = openPaste();
    await read('1 cup almonds\n'.repeat(70));
    expect(lines()).toHaveLength(60);
    await user.click(screen.getByRole('button', { name: 'Show more of these 70 lines' }));
    expect(lines()).toHaveLength(70);
    expect(screen.queryByRole('button', { name: /^Show more/ })).toBeNull();
  });

  test('asks for level or grams where a measure is heaped', async () => {
    const { read, row } = openPaste();
    await read('1 heaped cup cashews');
    expect(textOf(row('1 heaped cup cashews'))).toMatch(/Say how many level ones it is, or how many grams/);
    expect(textOf(row('1 heaped cup cashews'))).not.toMatch(/\d g\b/);
  });

  test('shows its own weight beside the published cup, with the percentage', async () => {
    const { read, row } = openPaste();
    await read('1 cup (160 g) hazelnuts');
    // 160 ÷ 135 = 1.19.
    expect(textOf(row('1 cup'))).toContain('The text says 160 g, the published cup makes it 135 g: +19%.');
  });

  test('rounds what is weighed to the scale, and never what is printed or stated', async () => {
    const { read, row } = openPaste((store) => store.changeSettings({ scale: 5 }));
    await read('1 cup almonds\n1 cup (172 g) cashews');
    expect(textOf(row('1 cup almonds'))).toMatch(/145 g.*cup, whole, 143 g\./);
    expect(textOf(row('1 cup (172 g) cashews'))).toMatch(/170 g/);
  });

  test('weighs a line anew when its food is corrected, and back again', async () => {
    const { read, row, user } = openPaste();
    await read('1 cup almonds\n1 cup sprinkles');
    const menu = () => screen.getByRole('combobox', { name: 'Food of 1 cup almonds' });
    await user.selectOptions(menu(), 'Cashews');
    expect(textOf(row('1 cup almonds'))).not.toContain('143 g');
    await user.selectOptions(menu(), 'Almonds, whole');
    expect(textOf(row('1 cup almonds'))).toContain('143 g');
    expect(textOf(row('1 cup sprinkles'))).toContain('not in the tables');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Food of 1 cup sprinkles' }), 'Almonds, whole');
    expect(textOf(row('1 cup sprinkles'))).toContain('143 g');
  });

  test('makes an ingredient of any line that the cook says is one, and takes it back', async () => {
    const { read, row, plan, user } = openPaste();
    await read('Friday kefir\nGrandmother’s secret\n30 g water kefir grains');
    const menu = () => screen.getByRole('combobox', { name: 'Food of Grandmother’s secret' });
    await user.selectOptions(menu(), 'Cashews');
    expect(textOf(row('Grandmother’s secret'))).toContain('No amount is given.');
    const amount = screen.getByRole<HTMLInputElement>('textbox', { name: 'Amount of Grandmother’s secret' });
    await user.type(amount, '150 g');
    expect(document.activeElement).toBe(amount);
    expect(textOf(plan())).toContain('Weight as bought: 150 g');
    await user.selectOptions(menu(), 'Not an ingredient');
    expect(textOf(row('Grandmother’s secret'))).toContain('Not counted.');
    expect(textOf(plan())).not.toContain('150 g');
  });

  test('takes an ingredient out of the batch and keeps its line', async () => {
    const { read, row, plan, user } = openPaste();
    await read(recipe);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Food of 18 g sugar' }), 'Not an ingredient');
    expect(textOf(row('18 g sugar'))).toContain('Not counted.');
    expect(textOf(plan())).not.toContain('18 g');
  });

  test('keeps an amount that can’t be read as typed, with what to do', async () => {
    const { read, row, user } = openPaste();
    await read('1 cup almonds');
    const amount = screen.getByRole<HTMLInputElement>('textbox', { name: 'Amount of 1 cup almonds' });
    await user.type(amount, 'lots');
    expect(amount.value).toBe('lots');
    expect(textOf(row('1 cup almonds'))).toContain('“lots” can’t be read as an amount');
    expect(textOf(row('1 cup almonds'))).not.toMatch(/143 g(?!\.)/);
  });

  test('keeps what was told of a line when the text is edited and read again', async () => {
    const { read, row, user } = openPaste();
    await read('1 cup mix\n1 cup water');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Food of 1 cup mix' }), 'Almonds, whole');
    await read('Kefir\n3 cups water\n1 cup mix');
    expect(textOf(row('1 cup mix'))).toContain('143 g');
  });

  test('says of a sentence what it only says again', async () => {
    const { read, row } = openPaste();
    await read('1 cup almonds\nBlend 1 cup almonds with water.');
    expect(textOf(row('Blend 1 cup almonds'))).toContain('Said again, and counted once: 1 cup almonds.');
  });

  test('says which jar a line was taken for', async () => {
    const { read, row } = openPaste();
    await read('1 cup almonds\nQuart jar');
    expect(textOf(row('Quart jar'))).toMatch(/A jar of 946\smL\./);
  });

  test('takes the cook’s own weighing for a food of that name', async () => {
    const { read, row } = openPaste((store) => {
      const food = { name: 'Sprouted oats', grams: 90, millilitres: 236.588 };
      store.takeEdit(keepOwnFood(store.document.value, food), 'Keep');
    });
    await read('1 cup sprouted oats');
    expect(textOf(row('1 cup sprouted oats'))).toMatch(/90 g.*Yours, measured/);
  });
});

describe('the batch of a pasted recipe', () => {
  test('is shown before it is made, with what is usual and what is left over, and nothing is changed', async () => {
    const { store, read, plan } = openPaste();
    await read(recipe);
    const said = textOf(plan());
    expect(said).toContain('Two-litre jar · Almonds, whole · Cane sugar, white · Water kefir grains');
    expect(said).toContain('Weight as bought: 179 g');
    expect(said).toContain('Water to blend: 769 mL');
    expect(said).toMatch(/Parts of water, by weight: 4\.29.*usual is/);
    expect(said).toMatch(/For the glass, or left overa pinch of salt/);
    expect(store.document.value).toBe(demo);
    expect(store.undoName.value).toBeNull();
  });

  test('is made at a press, is then the one looked at, and goes by undo', async () => {
    const { store, state, read, user } = openPaste();
    await read(recipe);
    await user.click(screen.getByRole('button', { name: 'Make this batch' }));
    const made = store.document.value.batches.at(-1);
    expect(made).toMatchObject({ name: 'Friday almonds', vessel: 'twoLitre', source: 'almond', grains: 'water' });
    expect(made?.given.map(({ text }) => text)).toEqual(['179 g', '769 mL', '18 g', '40 g']);
    expect(state.spot.value.batch).toBe(made?.id);
    expect(store.undoName.value).toBe('Make a batch of Friday almonds');
    store.undo();
    expect(store.document.value).toBe(demo);
  });

  test('has its sweetener swapped at equal fermentable sugar before it is made', async () => {
    const { store, read, plan, swapIn, user } = openPaste();
    await read(recipe);
    await swapIn('Honey');
    // 18 g of cane sugar hold as much as 22.99 g of honey.
    expect(textOf(plan())).toContain('· Honey ·');
    expect(textOf(plan())).toContain('Sweetener to add: 22.99 g');
    expect(store.document.value).toBe(demo);
    await user.click(screen.getByRole('button', { name: 'Make this batch' }));
    expect(store.document.value.batches.at(-1)).toMatchObject({ sweetener: [{ id: 'honey', share: 1 }] });
  });

  test('has its swapped sweetener weighed anew when a food is corrected', async () => {
    const { read, plan, swapIn, user } = openPaste();
    await read('1 cup almonds\n2 cups water\n50 g honey\n30 g water kefir grains');
    await swapIn('Cane sugar, white');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Food of 50 g honey' }), 'Maple syrup');
    // 50 g of maple syrup hold 31.75 g of hexose; cane sugar holds 1.05053 g per g.
    expect(textOf(plan())).toContain('Sweetener to add: 30.23 g');
  });

  test('starts from the text alone once another text is read', async () => {
    const { read, plan, swapIn } = openPaste();
    await read(recipe);
    await swapIn('Honey');
    await read('1 cup almonds\n2 cups water\n20 g maple syrup\n30 g water kefir grains');
    expect(textOf(plan())).toContain('· Maple syrup ·');
    expect(textOf(plan())).toContain('Sweetener to add: 20 g');
  });
});

test('an empty box, and garbage, are read as nothing', async () => {
  const { read, plan } = openPaste();
  for (const text of [' ', '%%% ¼/// \u0000 = \u202E )))', '🥥'.repeat(500)]) {
    await read(text);
    expect(textOf(plan())).toContain('No nut, seed or coconut was found');
  }
});

describe('a recipe that names no nut and no grains', () => {
  test('is no batch before both are chosen, and is then a batch of those', async () => {
    const { store, read, plan, user } = openPaste();
    await read('3 cups water\n2 tbsp sugar');
    const make = () => screen.getByRole<HTMLButtonElement>('button', { name: 'Make this batch' });
    expect(make().disabled).toBe(true);
    expect(textOf(make().parentElement ?? plan())).toContain('Choose a nut, seed or coconut and a culture first.');
    expect(textOf(plan())).not.toContain('·');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Nut, seed or coconut' }), 'Cashews');
    expect(make().disabled).toBe(true);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Kind of culture' }), 'Milk kefir grains');
    await user.click(make());
    expect(store.document.value.batches.at(-1)).toMatchObject({ source: 'cashew', grains: 'milk' });
  });

  test('takes a line that the cook says is of one', async () => {
    const { read, plan, user } = openPaste();
    await read('1 cup mixed nuts\n3 cups water\n30 g water kefir grains');
    expect(screen.getByText('Choose a nut, seed or coconut first.')).toBeTruthy();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Food of 1 cup mixed nuts' }), 'Hazelnuts');
    expect(textOf(plan())).toContain('· Hazelnuts ·');
    expect(screen.queryByRole('combobox', { name: 'Nut, seed or coconut' })).toBeNull();
  });
});

test('a number that may be read two ways is asked about in its line, and one press writes what is meant', async () => {
  const { user, read, row } = openPaste();
  await read('1,250 g almonds\n1 L water');
  expect(textOf(row('1,250 g almonds'))).toContain('“1,250” may be 1.25 or 1250.');
  await user.click(screen.getByRole('button', { name: 'Make it 1250 in “1,250 g almonds”' }));
  expect(screen.getByRole<HTMLTextAreaElement>('textbox', { name: 'Recipe text' }).value).toBe(
    '1250 g almonds\n1 L water',
  );
  expect(textOf(row('1250 g almonds'))).toContain('1250 g');
});
