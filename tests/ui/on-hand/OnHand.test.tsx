// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { addStock } from '../../../src/batch/edits/stock-edits';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('onHand');

afterEach(cleanup);

const region = () => screen.findByRole('region', { name: 'On hand for Saturday almond' });
const field = async (name: string) =>
  within(await region()).getByRole<HTMLInputElement>('textbox', { name: `On hand: ${name}` });

describe('what is on hand', () => {
  test('is typed, kept as typed, and sizes nothing by itself', async () => {
    const { user, batch, amountOf } = await openSheet();
    const before = amountOf('milkVolume');
    await user.type(await field('Almonds, whole'), '½ kg{Enter}');
    expect(batch().onHand).toEqual({ source: { text: '½ kg', amount: 500, kind: 'mass' } });
    expect((await field('Almonds, whole')).value).toBe('½ kg');
    expect(amountOf('milkVolume')).toBe(before);
  });

  test('is kept when the field is left, as one step', async () => {
    const { store, user, batch } = await openSheet();
    await user.type(await field('Water kefir grains'), '60 g');
    await user.tab();
    expect(batch().onHand?.grains?.amount).toBe(60);
    expect(store.undoName.value).toBe('Have 60 g of grains on hand');
    store.undo();
    expect(store.undoName.value).toBeNull();
  });

  test('takes the weight of the jar of grains that is kept, with one press', async () => {
    const { user, batch } = await openSheet((store) =>
      store.takeEdit(
        addStock(store.document.value, 'water', 'Blue jar', { at: '2026-11-01T08:00', did: 'got', grams: 62 }),
        'Keep a jar of grains',
      ),
    );
    await user.click(within(await region()).getByRole('button', { name: 'Take 62\u00A0g from “Blue jar”' }));
    expect(batch().onHand?.grains?.amount).toBe(62);
    expect(within(await region()).queryByRole('button', { name: /^Take 62/ })).toBeNull();
  });

  test('is forgotten by an empty field', async () => {
    const { user, batch } = await openSheet((store) => store.stockUp('b1', 'jars', '3'));
    await user.clear(await field('Quart, wide mouth'));
    await user.tab();
    expect(batch().onHand).toEqual({});
  });

  test('says what a bare number was taken for, and asks where it may be cups or ounces', async () => {
    const { user, store, batch } = await openSheet();
    await user.type(await field('Almonds, whole'), '500{Enter}');
    expect(textOf(await region())).toContain('taken as g');
    store.changeSettings({ leads: 'us' });
    await user.clear(await field('Almonds, whole'));
    await user.type(await field('Almonds, whole'), '8{Enter}');
    await user.click(within(await region()).getByRole('button', { name: 'Make it 8 oz' }));
    expect(batch().onHand?.source).toMatchObject({ text: '8 oz', kind: 'mass' });
  });

  test('that can’t be read is told beside its field, and limits nothing', async () => {
    const { user } = await openSheet();
    await user.type(await field('Almonds, whole'), 'a bag{Enter}');
    expect(textOf(within(await region()).getByRole('alert')).length).toBeGreaterThan(10);
    expect(within(await region()).queryByRole('button', { name: 'Make this batch' })).toBeNull();
  });
});

describe('the largest batch', () => {
  test('names what limits it, and what all else would be enough for', async () => {
    const { store } = await openSheet();
    store.stockUp('b1', 'source', '5 kg');
    store.stockUp('b1', 'grains', '30 g');
    const said = textOf(await within(await region()).findByRole('status'));
    expect(said).toContain('limited by the water kefir grains');
    expect(said).toMatch(/Water kefir grains: enough for .* mL.*Almonds, whole: enough for .* L/);
  });

  test('is added at a press as a batch of its own, in one step, with what stays over', async () => {
    const { store, user, batch } = await openSheet((made) => {
      made.typeCell('b1', 'sourceMass', '90 g');
      made.stockUp('b1', 'source', '500 g');
      made.stockUp('b1', 'grains', '30 g');
    });
    const before = batch();
    await user.click(within(await region()).getByRole('button', { name: 'Make this batch' }));
    const added = store.document.value.batches[1];
    expect(added?.given).toEqual([{ row: 'grainMass', text: '30 g', amount: 30, kind: 'mass', use: 'onHand' }]);
    expect(added?.name).toBe('Almonds');
    expect(batch()).toEqual(before);
    const notice = document.querySelector('.notice') ?? expect.fail('nothing is said');
    expect(textOf(notice)).toMatch(/^Almonds: the largest batch; \d+ g almonds stay over\.$/);
    store.undo();
    expect(store.document.value.batches).toEqual([before]);
  });

  test('of another nut leaves the batch that is looked at as it is', async () => {
    const { store, user, batch } = await openSheet();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Nut, seed or coconut on hand' }), 'Hazelnuts');
    await user.type(await field('Hazelnuts'), '200 g{Enter}');
    expect(batch().onHand).toBeUndefined();
    await user.click(within(await region()).getByRole('button', { name: 'Make this batch' }));
    expect(store.document.value.batches.map(({ name, source }) => [name, source])).toEqual([
      ['Saturday almond', 'almond'],
      ['Hazelnuts', 'hazelnut'],
    ]);
  });

  test('offers one jar where a second would be for a few per cent alone', async () => {
    const { store, user, amountOf } = await openSheet();
    store.choose('b1', 'vessel', 'pint');
    const full = Math.ceil(Number(amountOf('sourceMass')) * 1.08);
    await user.type(await field('Almonds, whole'), `${full} g{Enter}`);
    await user.click(
      within(await region()).getByRole('button', { name: /^Fill one jar, \d % less$|^Fill one jar, \d% less$/ }),
    );
    expect(store.document.value.batches[1]?.given.map(({ row, text }) => [row, text])).toEqual([['vesselCount', '1']]);
  });
});
