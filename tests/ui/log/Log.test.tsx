// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { Logged } from '../../../src/batch/document/document';
import { addEntry, expectedHours, recipeThen } from '../../../src/batch/edits/log-edits';
import { now, wallOf } from '../../../src/batch/reading/local-time';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('log');

afterEach(cleanup);

const entry = (changes: Partial<Logged> = {}): Logged => ({
  ...{ batch: 'b1', name: 'Saturday almond', at: '2026-01-24T08:00', found: 'ready', hours: 9, expected: 12 },
  ...{ temperature: null, acidity: null, note: '' },
  ...changes,
});
const add = (store: Store, changes: Partial<Logged> = {}) =>
  store.takeEdit(addEntry(store.document.value, entry(changes)), 'Log it');

async function openLog(edit: (store: Store) => void = () => {}) {
  const opened = await openSheet(edit);
  const log = within(await screen.findByRole('region', { name: /^Log of / }));
  const field = (name: string) => log.getByLabelText<HTMLInputElement>(name, { exact: true });
  const press = (name: string) => opened.user.click(log.getByRole('button', { name }));
  const pick = (name: string) => opened.user.click(log.getByRole('radio', { name }));
  const text = () => textOf(screen.getByRole('region', { name: /^Log of / }));
  const type = async (name: string, typed: string) => {
    await opened.user.clear(field(name));
    await opened.user.type(field(name), typed);
  };
  return { ...opened, log, field, press, pick, text, type };
}

describe('the log', () => {
  test('keeps what was found, teaches the pace, and is one step to undo', async () => {
    const { store, batch, pick, type, press, text, amountOf } = await openLog();
    const before = amountOf('readyTime');
    const expected = expectedHours(store.document.value, batch(), 22);
    await pick('Ready');
    await type('Hours since the grains went in', '9');
    await type('Room temperature then', '22');
    await type('pH', '4.4');
    await type('Note', 'thick');
    await press('Save');
    expect(store.document.value.log).toEqual([
      entry({
        ...{ at: store.document.value.log[0]?.at ?? '', expected, temperature: 22, acidity: 4.4, note: 'thick' },
        carton: false,
        was: recipeThen(store.document.value, batch()),
      }),
    ]);
    expect(wallOf(now()).startsWith(store.document.value.log[0]?.at.slice(0, 10) ?? 'never')).toBe(true);
    expect(text()).toMatch(/Ready after 9 h · room 22 °C \(72 °F\) · pH 4.40/);
    expect(text()).toMatch(/Water kefir grains\. From 1 batch: what usually takes 12 h takes about [\d.]+ h here/);
    expect(text()).toContain('almonds · water kefir grains, 54 g/L');
    expect(text()).not.toContain('times as fast');
    expect(text()).toContain('Yours, learned from your log.');
    expect(Number(amountOf('readyTime'))).toBeLessThan(Number(before));
    store.undo();
    expect(amountOf('readyTime')).toBe(before);
    expect(store.undoName.value).toBeNull();
  });

  test('tells bad input beside its field, and what was typed stays', async () => {
    const { store, pick, type, press, field, log } = await openLog();
    await press('Save');
    expect(log.getByText('Choose what you found.')).toBeTruthy();
    await pick('Too sour');
    await type('Hours since the grains went in', 'overnight');
    await type('pH', '4,5,6');
    await type('Room temperature then', '21,5,0');
    await press('Save');
    expect(log.getByText(/Write a point before the decimals, such as 4\.5\.$/)).toBeTruthy();
    expect(log.getByText(/Write a point before the decimals, such as 21\.5\.$/)).toBeTruthy();
    await type('Room temperature then', '21.5');
    await type('pH', '99');
    await press('Save');
    const hours = field('Hours since the grains went in');
    expect(hours.value).toBe('overnight');
    expect(hours.getAttribute('aria-invalid')).toBe('true');
    const [described = ''] = (hours.getAttribute('aria-describedby') ?? '').split(' ');
    expect(document.getElementById(described)?.textContent).toMatch(/Can’t|Can't/);
    expect(log.getByText('Type a pH between 0 and 14.')).toBeTruthy();
    expect(log.queryByText('Choose what you found.')).toBeNull();
    expect(store.document.value.log).toEqual([]);
  });

  test('lets an entry be changed and removed, and leads focus to what is said of it', async () => {
    const { store, press, type, field, log } = await openLog((sheet) => add(sheet));
    await press('Change Ready after 9\u00A0h');
    expect(field('Hours since the grains went in').value).toBe('9 h');
    expect(field('When you looked').value).toBe('2026-01-24T08:00');
    await type('Hours since the grains went in', '10');
    await press('Save the change');
    expect(store.document.value.log).toEqual([entry({ hours: 10 })]);
    expect(document.activeElement?.textContent).toMatch(/^Saved: Ready after 10/);
    await press('Remove Ready after 10\u00A0h');
    expect(store.document.value.log).toEqual([]);
    expect(store.document.value.yours).toEqual({});
    expect(document.activeElement?.textContent).toBe('Removed. Undo brings it back.');
    expect(log.queryByRole('list', { name: 'Entries of Saturday almond' })).toBeNull();
  });

  test('shows the entries of other batches, of those that are gone too, on demand', async () => {
    const { user, log } = await openLog((store) => {
      add(store);
      add(store, { batch: 'b9', name: 'Last year’s oat', found: 'flat' });
    });
    expect(within(log.getByRole('list', { name: 'Entries of Saturday almond' })).getAllByRole('listitem')).toHaveLength(
      1,
    );
    await user.click(log.getByRole('checkbox', { name: 'Show all batches' }));
    const all = within(log.getByRole('list', { name: 'Entries of all batches' }))
      .getAllByRole('listitem')
      .map(textOf);
    expect(all).toHaveLength(2);
    expect(all.join()).toContain('Last year’s oat');
  });

  test('offers its latest pH as the measured one, in one click', async () => {
    const { batch, press, log } = await openLog((store) => {
      add(store, { acidity: 5.1 });
      add(store, { at: '2026-01-24T12:00', hours: 13, acidity: 4.4 });
    });
    await press('Take pH 4.4 as “Acidity reached”');
    expect(batch().measured.finalPH?.amount).toBe(4.4);
    expect(log.queryByRole('button', { name: /^Take pH/ })).toBeNull();
  });

  test('does not offer a pH above the usual line as the acidity reached', async () => {
    const { log } = await openLog((store) => add(store, { found: 'flat', acidity: 5.4 }));
    expect(log.getByText(/pH 5\.40/, { selector: 'b' })).toBeTruthy();
    expect(log.queryByRole('button', { name: /^Take pH/ })).toBeNull();
  });

  test('of looks of one minute offers the pH after more hours, and says that taste is no test', async () => {
    const { log, text } = await openLog((store) => {
      add(store, { hours: 12, acidity: 5.2 });
      add(store, { found: 'sour', hours: 20, acidity: 4.5 });
    });
    expect(log.getByRole('button', { name: /^Take pH/ }).textContent).toMatch(/^Take pH 4\.5 /);
    expect(text()).toMatch(/pH 5\.20Taste is no test: this pH is above 4\.6/);
    expect(text()).toMatch(/From 1 batch/);
  });

  test('forgets what it taught and takes it again; a typed pace stays until the cook says otherwise', async () => {
    const { store, press, text } = await openLog((sheet) => add(sheet));
    const learned = store.document.value.yours;
    await press('Forget');
    expect(store.document.value.yours).toEqual({});
    expect(text()).toMatch(/The usual pace is used\. The log says:Water kefir grains\. From 1 batch/);
    store.correct('kitchen.pace', 1.5, 'How fast this kitchen ripens');
    await expect.poll(text).toContain('You set the pace yourself, and it stays: what usually takes 12 h takes 8 h.');
    await press('Use what the log says');
    expect(store.document.value.yours).toEqual(learned);
  });

  test('of a carton teaches nothing of the kitchen, says so, and is kept as of a carton', async () => {
    const { store, pick, type, press, text, amountOf } = await openLog((sheet) =>
      sheet.choose('b1', 'source', 'cartonPlain'),
    );
    const before = amountOf('readyTime');
    await pick('Not sour yet');
    await type('Hours since the grains went in', '24');
    await press('Save');
    expect(store.document.value.log[0]).toMatchObject({ found: 'flat', hours: 24, carton: true });
    expect(store.document.value.yours).toEqual({});
    expect(amountOf('readyTime')).toBe(before);
    expect(text()).toContain('some cartons turn late or never, and that is the carton.');
    expect(text()).toContain('Only homemade milk teaches how fast this kitchen is.');
    expect(text()).toContain('Nothing yet.');
  });

  test('says of an entry that teaches nothing why', async () => {
    const { text } = await openLog((store) => add(store, { expected: null }));
    expect(text()).toContain('Teaches nothing: the sheet had no time to compare it with');
    expect(text()).toContain('Nothing yet. Say after how many hours');
  });
});
