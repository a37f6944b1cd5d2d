// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openWith, textOf } from '../open-sheet';

/** The page at its fizz, with a second ferment asked for. */
async function openSheet() {
  const sheet = await openWith('fizz')();
  sheet.store.typeCell('b1', 'bottleTime', '8 h');
  await screen.findByText(/^After 8\sh likely/);
  return sheet;
}

afterEach(cleanup);

const region = () => screen.findByRole('region', { name: /^Fizz in the bottles of/ });
const verdict = async () => textOf(within(await region()).getAllByRole('status')[0] ?? (await region()));

describe('the fizz of a bottle', () => {
  test('has its verdict in words first, and the drawing’s twin', async () => {
    await openSheet();
    expect(await verdict()).toMatch(
      /^After 8\sh likely .+ bar .+, from .+ volumes of gas: lively fizz\. Bottles made for fizz only\. Ordinary jars/,
    );
    expect(
      within(await region())
        .getByRole('img')
        .getAttribute('aria-label'),
    ).toMatch(/^Pressure of a sealed bottle/);
  });

  test('says that a limit can’t be read where one is typed', async () => {
    const { store } = await openSheet();
    store.typeCell('b1', 'bottleLimit', 'strong');
    await expect.poll(verdict).toMatch(/The limit can’t be read: see its field\./);
  });

  test('is drawn on a scale of psi where US units come first', async () => {
    const { store } = await openSheet();
    const scale = async () => textOf((await region()).querySelector('.fizz-caption') ?? document.body);
    expect(await scale()).toMatch(/^bar/);
    store.changeSettings({ leads: 'us' });
    await expect.poll(scale).toMatch(/^psi/);
  });

  test('works nothing out of a label until its sugars are typed', async () => {
    const { user } = await openSheet();
    const fizz = within(await region());
    await user.selectOptions(fizz.getByLabelText('What'), 'byLabel');
    const sugars = fizz.getByLabelText<HTMLInputElement>('Sugars in 100 g, by a label or a food table');
    expect(sugars.value).toBe('');
    expect(fizz.getByText('Type its sugars in 100 g, from a label or a food table.')).toBeTruthy();
    expect(fizz.queryByRole('button', { name: /^Use/ })).toBeNull();
  });

  test('says right after it what to do', async () => {
    await openSheet();
    const lines = within(await region())
      .getAllByRole('listitem')
      .map(textOf);
    expect(lines[0]).toMatch(/^Chill them after 8 h, sooner if/);
    expect(lines).toHaveLength(3);
  });

  test('takes the maker’s limit as its cell does, as one step, and the ways out beside it', async () => {
    const { store, user, amountOf } = await openSheet();
    await user.type(within(await region()).getByLabelText('What the maker of your bottle allows'), '9 bar{Enter}');
    expect(amountOf('bottleLimit')).toBe(9);
    expect(await verdict()).toMatch(/ Could go over\. /);
    const said = store.undoName.value;
    expect(said).toBe('Type 9 bar for Pressure the bottle’s maker allows');
    await user.click(within(await region()).getByRole('button', { name: 'Leave out the second ferment' }));
    expect(textOf(await region())).toContain('no bottle is sealed');
    store.undo();
    expect(store.undoName.value).toBe(said);
  });

  test('counts what is added at a press, as one step named after it', async () => {
    const { store, user, amountOf } = await openSheet();
    const amount = within(await region()).getByLabelText('How much in each bottle');
    await user.clear(amount);
    await user.type(amount, '4.2 g');
    await user.click(within(await region()).getByRole('button', { name: 'Count 4.41 g of sugar in each bottle' }));
    expect(amountOf('bottleSugar')).toBeCloseTo(4.41 / 0.475, 9);
    expect(store.undoName.value).toBe('Add 4.2 g of cane sugar, white to each bottle');
    store.undo();
    expect(amountOf('bottleSugar')).toBe(0);
  });

  test('says why what is to be added can’t be read, keeps it as typed, and offers nothing', async () => {
    const { user } = await openSheet();
    const amount = within(await region()).getByLabelText<HTMLInputElement>('How much in each bottle');
    await user.clear(amount);
    await user.type(amount, 'some');
    expect(textOf(within(await region()).getByRole('alert')).length).toBeGreaterThan(10);
    expect(amount.value).toBe('some');
    expect(within(await region()).queryByRole('button', { name: /^Use/ })).toBeNull();
  });

  test('waits where a bottle can’t be worked out, and the lid of the jar is told all the same', async () => {
    const { store } = await openSheet();
    store.typeCell('b1', 'bottleHeadspace', '1 mL');
    expect(await screen.findByText(/Nothing to tell of a bottle yet/)).toBeTruthy();
    expect(textOf(await region())).toContain('Jars have no pressure rating');
    expect(textOf(await region())).not.toMatch(/NaN|undefined|Infinity/);
  });
});
