// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('time');

afterEach(cleanup);

async function openReadyIn(edit?: (store: Store) => void) {
  const sheet = await openSheet(edit);
  const section = await screen.findByRole('region', { name: 'Ready when you want Saturday almond' });
  const field = within(section).getByRole<HTMLInputElement>('textbox', { name: /^To have it ready in/ });
  const ask = async (text: string) => {
    await sheet.user.clear(field);
    if (text !== '') await sheet.user.type(field, text);
  };
  const rows = () => [...section.querySelectorAll('tbody tr')].map(textOf);
  return { ...sheet, section, field, ask, rows };
}

describe('to have it ready in so many hours', () => {
  test('says what to change first and why, with both units, what is usual and what it comes to', async () => {
    const { ask, rows } = await openReadyIn();
    await ask('10 h');
    const [first, second, third] = rows();
    expect(first).toMatch(
      /^1\. Room temperature ?It costs nothing and does most\. ?2\d(\.\d)? °C \(7\d °F\): ready in about 10 h\./,
    );
    expect(first).toMatch(/Usual is 18 °C to 24 °C \(64 °F to 75 °F\)\.$/);
    expect(second).toMatch(
      /^2\. Culture per litre.*As far as is usual: 65 g\/L, so \d+ g \(.*tbsp.*\) of grains: ready in about 10\.4 h\./,
    );
    expect(third).toMatch(
      /^3\. Sugar to ferment.*As far as is usual: .* g\/L, so \d+ g .* of sweetener: ready in about 11/,
    );
  });

  test('types what the button says as one step, keeps the keyboard there, and is undone', async () => {
    const { ask, user, section, store, batch, amountOf } = await openReadyIn();
    const before = batch();
    await ask('9');
    await user.click(within(section).getByRole('button', { name: /^Use .* for “Room temperature”$/ }));
    expect(amountOf('readyTime')).toBeGreaterThan(8.9);
    expect(amountOf('readyTime')).toBeLessThan(9.1);
    const said = within(section).getByRole('status');
    expect(document.activeElement).toBe(said);
    await expect.poll(() => textOf(said)).toMatch(/^Use .* for “Room temperature”: done\. At 2.* after 9(\.\d)? h/);
    expect(store.undoName.value).toMatch(/^Use .* for “Room temperature”$/);
    store.undo();
    expect(batch()).toEqual(before);
  });

  test('lets go of a typed weight of grains only with its name on the button', async () => {
    const { ask, user, section, batch } = await openReadyIn((store) => store.typeCell('b1', 'grainMass', '40 g'));
    await ask('11.5');
    await user.click(within(section).getByRole('button', { name: /“Culture per litre” and clear “Culture to add”$/ }));
    expect(batch().given.map(({ row }) => row)).toEqual(['grainRate']);
  });

  test('says so where it is as it is', async () => {
    const { ask, rows, section } = await openReadyIn();
    await ask('12');
    expect(rows()[0]).toContain('As it is: 21 °C.');
    expect(within(section).queryAllByRole('button', { name: /^(?!plan it)/ })).toHaveLength(0);
  });

  test('says so where what is usual gets it no nearer', async () => {
    const { ask, rows } = await openReadyIn((store) => store.typeCell('b1', 'roomTemperature', '28 C'));
    await ask('4');
    const room = rows().find((row) => row.includes('Room temperature'));
    expect(room).toContain('What is usual gets it no nearer than it is.');
  });

  test.each(['soon', '0', '-2', '10 g', ''])('refuses %j beside the field, and keeps it', async (text) => {
    const { ask, field, section, rows } = await openReadyIn();
    await ask(text);
    expect(textOf(within(section).getByRole('alert')).length).toBeGreaterThan(15);
    expect(field.value).toBe(text);
    expect(field.getAttribute('aria-invalid')).toBe('true');
    expect(rows()).toEqual([]);
  });

  test('offers the room alone outside the models, and says why nothing can be told without one', async () => {
    const { ask, rows, store, section } = await openReadyIn((made) => made.typeCell('b1', 'roomTemperature', '35 C'));
    await ask('1 day');
    expect(rows()).toHaveLength(1);
    store.typeCell('b1', 'roomTemperature', 'warm');
    expect(await within(section).findByText(/^Waits for “Room temperature”/)).toBeTruthy();
    expect(rows()).toEqual([]);
  });
});
