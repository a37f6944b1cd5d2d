// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('glass');

afterEach(cleanup);

const region = () => screen.findByRole('region', { name: /^In a glass of/ });
const pulp = () => screen.findByRole('region', { name: /^The pulp of/ });

/** What stands in the column of the glass, by the name of the line. */
async function amountOf(name: string): Promise<string> {
  const row = within(await region()).getByRole('row', { name: (all) => all.startsWith(name) });
  return textOf(within(row).getAllByRole('cell')[0] ?? row);
}

describe('what is in a glass', () => {
  test('is told line by line, with ranges, and called an estimate', async () => {
    await openSheet();
    const labels = within(await region())
      .getAllByRole('rowheader')
      .map(textOf);
    expect(labels).toEqual([
      ...['Energy', 'Fat', 'Protein', 'Carbohydrate', 'of it sugars', 'of it fibre', 'Alcohol', 'Acid, as lactic'],
    ]);
    expect(await amountOf('Energy')).toMatch(/^\d+ kcal\d+ to \d+\d+ kJ$/);
    expect(await amountOf('Fat')).toMatch(/^\d+ g\d+ to \d+$/);
    expect(textOf(await region())).toContain('An estimate from food tables, not a label.');
    expect(textOf(await region())).not.toMatch(/NaN|Infinity|undefined/);
  });

  test('follows the size of a glass, and 100 mL does not', async () => {
    const { store } = await openSheet();
    const before = await amountOf('Energy');
    store.typeCell('b1', 'servingSize', '500 mL');
    expect(await screen.findByText('A glass, 500 mL')).toBeTruthy();
    const after = await amountOf('Energy');
    expect(Number.parseInt(after, 10) / Number.parseInt(before, 10)).toBeCloseTo(2, 1);
  });

  test('shows how each line came about, and from where', async () => {
    const { user } = await openSheet();
    await user.click(within(await region()).getByText('How it was worked out'));
    const said = textOf(await region());
    expect(said).toContain('passes the bag');
    expect(said).toContain('From memory; believed between 3.5 and 4.4');
    expect(said).toContain('record 12061');
  });

  test('says of a carton to go by its label', async () => {
    await openSheet((store) => store.choose('b1', 'source', 'cartonPlain'));
    expect(textOf(await region())).toContain('What yours says of fat and protein on its label is nearer.');
    expect(textOf(await pulp())).toContain('None: all of it is drunk.');
  });

  test('waits for what is to be mended', async () => {
    await openSheet((store) => store.typeCell('b1', 'sourceMass', '-3 g'));
    expect(textOf(await region())).toContain('mend the marked cells first');
  });
});

test('the pulp has its weight, what is left in it, how long it keeps, its allergen and what it is good for', async () => {
  const { store } = await openSheet();
  const said = textOf(await pulp());
  expect(said).toMatch(/\d+ g of wet pulp, \d+ g of it dry: fat \d+ g, protein \d+ g, fibre \d+ g\./);
  expect(said).toContain('2 to 3 days in the fridge');
  expect(said).toContain('The allergen stays in it: almond (tree nut).');
  expect(said).toContain('Measured in almond pulp: 42, 14 and 41.');
  expect(within(await pulp()).getAllByRole('listitem').length).toBeGreaterThan(2);
  store.changeSettings({ leads: 'us' });
  expect(await screen.findByText(/oz/, { selector: '.pulp b' })).toBeTruthy();
});
