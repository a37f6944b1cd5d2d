// @vitest-environment happy-dom
import { cleanup, screen, waitFor, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import { rowOrder } from '../../../src/formula/recipe/order';
import { describeCoefficient } from '../../../src/formula/words/origin-words';
import { workingIn } from '../../../src/formula/working/working';
import { inNumbers, inSymbols } from '../../../src/formula/working/working-text';
import { openSheet, textOf } from '../open-sheet';

afterEach(cleanup);

function plain(text: string): string {
  return text.replaceAll(/\s+/g, ' ').trim();
}

describe('how a number came about', () => {
  test('is said in words, as a formula in symbols and with the numbers put in', async () => {
    const { store, batch, openWorking } = await openSheet();
    const working = workingIn(store.formulationOf(batch()).rows.milkVolume);
    if (working === null) throw new Error('the milk has no working');
    const said = textOf(await openWorking('milkVolume'));
    expect(said).toContain(plain(working.words));
    expect(said).toContain(plain(inSymbols(working)));
    expect(said).toContain(plain(inNumbers(working, false)));
    expect(inSymbols(working)).toMatch(/ = /);
    expect(inNumbers(working, false)).toMatch(/\d.* = .*\d/);
  });

  test('of a solid has the ounces that its cell has no room for', async () => {
    const { openWorking } = await openSheet();
    expect(textOf(await openWorking('sourceMass'))).toMatch(/In US measure .*cup.* oz\./);
  });

  test('lists what went in, every figure of a table with its origin', async () => {
    const { store, batch, openWorking } = await openSheet();
    const working = workingIn(store.formulationOf(batch()).rows.soakedMass);
    const region = await openWorking('soakedMass');
    const inputs = working?.inputs ?? [];
    expect(inputs.map(({ from }) => from)).toContain('coefficient');
    for (const input of inputs) {
      const item = within(region)
        .getAllByRole('listitem')
        .find((one) => textOf(one).includes(input.label));
      expect(item, input.label).toBeDefined();
      if (item !== undefined && input.from === 'coefficient')
        expect(textOf(item)).toContain(plain(describeCoefficient(input.coefficient)));
    }
  });

  test('opens for every row of the sheet without a number that is none', async () => {
    const { openWorking } = await openSheet();
    for (const row of rowOrder) {
      const said = textOf(await openWorking(row));
      expect(said, row).not.toMatch(/NaN|Infinity|undefined|null|\[object|\{\w+\}/);
      expect(said.length, row).toBeGreaterThan(20);
    }
  }, 30_000);

  test('says what the bags and hands of others may make of it', async () => {
    const { openWorking } = await openSheet();
    expect(textOf(await openWorking('milkVolume'))).toMatch(/May be \d+–\d+ mL\./);
    expect(textOf(await openWorking('sourceMass'))).not.toContain('May be');
  });

  test('quotes what was typed and can clear it', async () => {
    const { user, batch, openWorking } = await openSheet((store) => store.typeCell('b1', 'sourceMass', '1½ c'));
    const region = await openWorking('sourceMass');
    expect(textOf(region)).toContain('1½ c');
    await user.click(within(region).getByRole('button', { name: 'Clear it and have it worked out' }));
    expect(batch().given).toEqual([]);
  });

  test('follows a quantity that went in to its own row', async () => {
    const { user, cell, openWorking } = await openSheet();
    const region = await openWorking('soakedMass');
    await user.click(within(region).getByRole('button', { name: 'Weight as bought' }));
    expect(await screen.findByRole('region', { name: 'Working of Weight as bought' })).toBeDefined();
    await waitFor(() => expect(document.activeElement).toBe(cell('sourceMass')));
  });
});

describe('a figure of a table', () => {
  const label = 'Water taken up in soaking';

  test('gives way to the cook’s own, and is given back', async () => {
    const { store, user, amountOf, openWorking } = await openSheet((made) =>
      made.typeCell('b1', 'sourceMass', '200 g'),
    );
    const before = amountOf('soakedMass');
    const region = await openWorking('soakedMass');
    const find = within(region);
    await user.click(find.getByRole('button', { name: `Use my own: ${label}` }));
    await user.type(find.getByRole('textbox', { name: label }), '0.8');
    await user.click(find.getByRole('button', { name: 'Keep' }));
    expect(amountOf('soakedMass')).toBeCloseTo(200 * (1 + 0.8), 9);
    expect(store.undoName.value).toBe(`Use 0.8 for ${label}`);
    expect(textOf(region)).toContain('Yours, typed');
    await user.click(find.getByRole('button', { name: `Give back: ${label}` }));
    expect(amountOf('soakedMass')).toBe(before);
    expect(textOf(region)).not.toContain('Yours');
  });

  test.each(['', 'a lot', '77'])('%j in its place is explained, and nothing changes', async (text) => {
    const { store, user, openWorking } = await openSheet();
    const region = await openWorking('soakedMass');
    const find = within(region);
    await user.click(find.getByRole('button', { name: `Use my own: ${label}` }));
    const field = find.getByRole('textbox', { name: label });
    if (text !== '') await user.type(field, text);
    await user.click(find.getByRole('button', { name: 'Keep' }));
    expect(textOf(find.getByRole('alert')).length).toBeGreaterThan(10);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(store.undoName.value).toBeNull();
    await user.click(find.getByRole('button', { name: 'Leave it' }));
    expect(find.queryByRole('textbox', { name: label })).toBeNull();
  });

  test('asked for anew after it was left alone has no old complaint', async () => {
    const { user, openWorking } = await openSheet();
    const find = within(await openWorking('soakedMass'));
    await user.click(find.getByRole('button', { name: `Use my own: ${label}` }));
    await user.type(find.getByRole('textbox', { name: label }), 'a lot{Enter}');
    await user.click(find.getByRole('button', { name: 'Leave it' }));
    await user.click(find.getByRole('button', { name: `Use my own: ${label}` }));
    expect(find.queryByRole('alert')).toBeNull();
  });
});

describe('measuring', () => {
  test('takes what the jug said, goes on with it, and forgets it', async () => {
    const { store, user, cell, amountOf, openWorking } = await openSheet();
    const planned = Number(amountOf('sourceMass'));
    const find = within(await openWorking('milkVolume'));
    await user.type(find.getByRole('textbox', { name: 'Measured: Milk after straining' }), '650 mL');
    await user.click(find.getByRole('button', { name: 'Measured' }));
    expect(amountOf('milkVolume')).toBe(650);
    expect(amountOf('sourceMass')).toBe(planned);
    expect(textOf(cell('milkVolume'))).toContain('measured');
    expect(store.undoName.value).toBe('Measure 650 mL for Milk after straining');
    await user.click(find.getByRole('button', { name: 'Forget the measurement' }));
    expect(amountOf('milkVolume')).not.toBe(650);
    expect(find.getByRole<HTMLInputElement>('textbox', { name: 'Measured: Milk after straining' }).value).toBe('');
  });

  test('explains a text that can’t be read', async () => {
    const { user, openWorking } = await openSheet();
    const find = within(await openWorking('milkVolume'));
    await user.type(find.getByRole('textbox', { name: 'Measured: Milk after straining' }), '65o mL{Enter}');
    expect(textOf(await find.findByRole('alert'))).toContain('65o');
  });

  test('asks which of two numbers is meant, and one press settles it', async () => {
    const { user, amountOf, openWorking } = await openSheet();
    const find = within(await openWorking('milkVolume'));
    await user.type(find.getByRole('textbox', { name: 'Measured: Milk after straining' }), '1,150 mL{Enter}');
    await user.click(await find.findByRole('button', { name: 'Make it 1150 mL' }));
    expect(amountOf('milkVolume')).toBe(1150);
    expect(find.getByRole<HTMLInputElement>('textbox', { name: 'Measured: Milk after straining' }).value).toBe(
      '1150 mL',
    );
  });

  test('is not offered where nothing is measured', async () => {
    const { openWorking } = await openSheet();
    const find = within(await openWorking('waterRatio'));
    expect(find.queryByRole('textbox', { name: /^Measured/ })).toBeNull();
  });
});

describe('a choice', () => {
  test('tells a source’s allergens, composition and figures, each with its origin', async () => {
    const { openWorking } = await openSheet();
    const region = await openWorking('source');
    expect(textOf(region)).toContain('Almond (tree nut) is on the US list and the EU list');
    const table = within(region).getByRole('table');
    expect(within(table).getAllByRole('row').length).toBeGreaterThan(4);
    expect(textOf(region)).toContain('Published:');
    expect(within(region).getByRole('button', { name: 'Use my own: Water taken up in soaking' })).toBeDefined();
  });
});
