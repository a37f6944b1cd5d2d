// @vitest-environment happy-dom
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { Kitchen } from '../../../src/batch/document/document';
import { addClass, addKitchens, planClass } from '../../../src/batch/edits/class-edits';
import type { Store } from '../../../src/batch/store/store';
import '../../../src/interchange/qr-code';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('class');

afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
});

const region = () => screen.findByRole('region', { name: 'Class' });
const ana: Kitchen = { name: 'Ana', vessel: 'twoLitre', temperature: 24, leads: 'us', grains: 'milk' };
const ben: Kitchen = { name: 'Ben', vessel: 'quartWide', temperature: null, leads: 'metric', grains: 'water' };
const withTwo = (store: Store) =>
  store.takeEdit(addKitchens(addClass(store.document.value, 'b1'), 'k1', [ana, ben]), 'Add a class');
const only = (store: Store) => store.document.value.classes?.[0] ?? expect.fail('there is no class');
const field = (name: string) => screen.findByLabelText<HTMLInputElement>(name);

describe('a class', () => {
  test('is started with the batch that is looked at, and a list is pasted into it', async () => {
    const { store, user } = await openSheet();
    await user.click(await screen.findByRole('button', { name: 'Start a class with Saturday almond' }));
    await user.click(await field('List of kitchens'));
    await user.paste('Ana, 2 L, 24 C, US, milk grains\nBen\nCleo, a bucket');
    await user.click(screen.getByRole('button', { name: 'Add these kitchens' }));
    expect(only(store).kitchens).toEqual([ana, ben]);
    expect((await field('List of kitchens')).value).toBe('Cleo, a bucket');
    expect(textOf(await within(await region()).findByRole('alert'))).toContain('“a bucket” is no jar');
    expect(store.undoName.value).toBe('Add 2 kitchens');
    store.undo();
    expect(only(store).kitchens).toEqual([]);
  });

  test('says what each kitchen weighs, in its own units, and when it is ready', async () => {
    await openSheet(withTwo);
    const [one, two] = within(await region()).getAllByRole('listitem');
    expect(textOf(one ?? document.body)).toMatch(/cups? .*almonds.*milk kefir grains.*ready in \d/);
    expect(textOf(two ?? document.body)).toMatch(/148 g almonds.*41 g water kefir grains.*ready in 12 h \(8–16 h\)/);
  });

  test('is changed in place, each change a step with a name', async () => {
    const { store, user } = await openSheet(withTwo);
    await user.selectOptions(await field('Jar of Ben'), 'Pint, wide mouth');
    expect(only(store).kitchens[1]?.vessel).toBe('pint');
    expect(store.undoName.value).toBe('Change the jar of Ben');
    await user.selectOptions(await field('Units of Ben'), 'US');
    await user.selectOptions(await field('Culture of Ben'), 'Milk kefir grains');
    await user.type(await field('Room of Ben'), '72{Enter}');
    expect((await field('Room of Ben')).value).toBe('72 °F');
    const name = await field('Name: Ben');
    await user.clear(name);
    await user.type(name, 'Benno{Enter}');
    expect(only(store).kitchens[1]).toEqual({
      name: 'Benno',
      vessel: 'pint',
      temperature: expect.closeTo(22.2222, 3),
      leads: 'us',
      grains: 'milk',
    });
    await user.click(screen.getByRole('button', { name: 'Remove Benno' }));
    expect(only(store).kitchens).toEqual([ana]);
  });

  test('keeps a room that can’t be read as typed, with what to do, and changes nothing', async () => {
    const { store, user } = await openSheet(withTwo);
    await user.clear(await field('Room of Ana'));
    await user.type(await field('Room of Ana'), 'warm{Enter}');
    expect((await field('Room of Ana')).value).toBe('warm');
    expect(textOf(await within(await region()).findByRole('alert'))).toContain('type one such as 24 °C or 75 °F');
    expect(only(store).kitchens[0]?.temperature).toBe(24);
    await user.clear(await field('Room of Ana'));
    await user.type(await field('Room of Ana'), '20 C{Enter}');
    expect(only(store).kitchens[0]?.temperature).toBe(20);
    expect(within(await region()).queryByRole('alert')).toBeNull();
  });

  test('gets one kitchen more like the recipe’s, whose name is typed next', async () => {
    const { store, user } = await openSheet(withTwo);
    await user.click(screen.getByRole('button', { name: 'Add a kitchen' }));
    await waitFor(() => expect(document.activeElement?.getAttribute('aria-label')).toBe('Name: Kitchen 3'));
    await user.keyboard('Cleo{Enter}');
    expect(only(store).kitchens[2]).toEqual({ ...ben, name: 'Cleo' });
  });

  test('says that its recipe is gone, and takes another', async () => {
    const { store, user } = await openSheet((made) => {
      withTwo(made);
      made.addBatch();
      made.removeBatch('b1');
    });
    expect(textOf(await region())).toContain('The recipe of this class is gone');
    await user.selectOptions(await field('Recipe'), 'Almonds');
    expect(textOf(await region())).not.toContain('is gone');
    expect(screen.getByRole('button', { name: 'Print 2 cards' })).toBeTruthy();
    expect(only(store).of).toBe(store.document.value.batches[0]?.id);
  });

  test('becomes batches at a press, in one step', async () => {
    const { store, user } = await openSheet(withTwo);
    await user.click(await screen.findByRole('button', { name: 'Make them batches' }));
    expect(store.document.value.batches.map(({ name }) => name)).toEqual([
      'Saturday almond',
      'Ana: Saturday almond',
      'Ben: Saturday almond',
    ]);
    expect(store.undoName.value).toBe('Make 2 batches of the class');
    store.undo();
    expect(store.document.value.batches).toHaveLength(1);
  });

  test('has one list to shop for, in whole packages where one is known, and the culture to bring', async () => {
    const amount = { text: '500 g', amount: 500, kind: 'mass' } as const;
    await openSheet((store) => {
      withTwo(store);
      store.takeEdit(
        { ...store.document.value, packages: [{ food: 'source.almond', amount, price: '4.35' }] },
        'Price',
      );
    });
    const list = textOf(await screen.findByRole('region', { name: 'Shopping list of the class' }));
    expect(list).toMatch(/Almonds, whole 4\d\d g needed, \d+ g over500 g4\.35/);
    expect(list).toMatch(/Cane sugar, white \d+ g/);
    expect(list).toMatch(/Milk kefir grains to bring, for 1 kitchen\d+ g/);
    expect(list).toMatch(/Water kefir grains to bring, for 1 kitchen41 g/);
  });

  test('says who starts when for a time to drink, and when each is ready for one to start', async () => {
    const { store, user } = await openSheet((made) => {
      withTwo(made);
      made.takeEdit(planClass(made.document.value, 'k1', { by: 'drink', at: '2126-12-05T16:00' }), 'Plan');
    });
    const plan = await screen.findByRole('region', { name: 'Who starts when' });
    expect(within(plan).getAllByRole('row')).toHaveLength(3);
    expect(textOf(plan)).toContain('Soak');
    await user.selectOptions(within(plan).getByLabelText('Plan for the class'), 'Start together at');
    expect(only(store).when?.by).toBe('start');
    expect(textOf(plan)).toContain('First cold glass');
    await user.selectOptions(within(plan).getByLabelText('Plan for the class'), 'Not planned');
    expect(only(store).when).toBeUndefined();
    expect(within(plan).queryByRole('table')).toBeNull();
  });

  test('prints a card a kitchen, each with its picture and its units first', async () => {
    const print = vi.fn();
    vi.stubGlobal('print', print);
    const { container, user } = await openSheet(withTwo);
    await user.click(await screen.findByRole('button', { name: 'Print 2 cards' }));
    await waitFor(() => expect(print).toHaveBeenCalledOnce());
    const cards = [...container.querySelectorAll('.class-cards .print-card')];
    expect(cards.map((card) => card.getAttribute('aria-label'))).toEqual([
      'Card of Ana: Saturday almond',
      'Card of Ben: Saturday almond',
    ]);
    expect(cards.map((card) => card.querySelectorAll('.link-code').length)).toEqual([1, 1]);
    const amounts = cards.map((card) => card.querySelector('.print-ingredients td')?.textContent ?? '');
    expect(amounts[0]).toMatch(/cup|oz/);
    expect(amounts[1]).toMatch(/^148\sg$/);
  });

  test('of a new visitor is none, and nothing is kept before one is started', async () => {
    const { store } = await openSheet();
    await region();
    expect(store.document.value).toBe(demo);
  });
});
