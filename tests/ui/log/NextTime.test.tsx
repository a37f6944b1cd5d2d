// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { Logged } from '../../../src/batch/document/document';
import { nameCarton } from '../../../src/batch/edits/carton-edits';
import { addEntry, recipeThen } from '../../../src/batch/edits/log-edits';
import type { Store } from '../../../src/batch/store/store';
import { loadPart } from '../../../src/ui/page/PartPane';
import { openWith, textOf } from '../open-sheet';

afterEach(cleanup);

const open = openWith('log');

function add(store: Store, changes: Partial<Logged> = {}): void {
  const { value: document } = store.document;
  const [batch] = document.batches;
  if (batch === undefined) throw new Error('the sheet has no batch');
  const entry: Logged = {
    ...{ batch: 'b1', name: 'Saturday almond', at: '2026-01-24T08:00', found: 'ready', hours: 9, expected: 12 },
    ...{ temperature: null, acidity: null, note: '', was: recipeThen(document, batch) },
    ...changes,
  };
  store.takeEdit(addEntry(document, entry), 'log it');
}

describe('next time', () => {
  test('says nothing before anything is found, and “as it is” where it was right', async () => {
    const { store } = await open();
    expect(screen.queryByRole('heading', { name: 'Next time' })).toBeNull();
    add(store, { hours: 12 });
    await screen.findByRole('heading', { name: 'Next time' });
    const said = textOf(screen.getByText(/^It was to your taste/).parentElement ?? document.body);
    expect(said).toMatch(/It was to your taste: make it as it is\. Next time taste from [\d.]+ h, likely [\d.]+ h/);
  });

  test('makes the next batch with one change in one press, which undo names', async () => {
    const { store, user } = await open((sheet) => {
      for (const day of ['20', '22', '24']) add(sheet, { found: 'flat', hours: 22, at: `2026-01-${day}T08:00` });
    });
    const said = textOf(screen.getByText(/^A warmer place/));
    await user.click(screen.getByRole('button', { name: 'Make the next batch' }));
    const [, made] = store.document.value.batches;
    expect(made?.name).toBe('Saturday almond, next');
    expect(made?.measured).toEqual({});
    const typed = made?.given.find(({ row }) => row === 'roomTemperature');
    expect(said.replaceAll('\u00A0', ' ')).toContain(typed?.text.replaceAll('\u00A0', ' ') ?? 'never');
    expect(store.undoName.value).toContain('Make the next “Saturday almond”: A warmer place');
    store.undo();
    expect(store.document.value.batches).toHaveLength(1);
  });

  test('leads on to what to do with a jar too sour', async () => {
    await loadPart('trouble');
    const { user } = await open((sheet) => add(sheet, { found: 'sour', hours: 14 }));
    await user.click(screen.getByRole('button', { name: 'What to do with this one' }));
    await screen.findByRole('region', { name: 'What is wrong?' });
    const unfolded = [...document.querySelectorAll('.troubles details[open]')].map(textOf);
    expect(unfolded).toHaveLength(1);
    expect(unfolded[0]).toContain('Too sour, sharp');
  });
});

describe('entries', () => {
  test('are a dozen at once, more on a press, and found by any word of them', async () => {
    const { user } = await open((sheet) => {
      for (let n = 0; n < 30; n += 1)
        add(sheet, { at: `2026-02-${String(1 + (n % 28)).padStart(2, '0')}T08:00`, note: `note ${n}` });
    });
    const items = () => within(screen.getByRole('list', { name: /^Entries of/ })).getAllByRole('listitem');
    expect(items()).toHaveLength(12);
    await user.click(screen.getByRole('button', { name: 'Show more: 18 are not shown' }));
    expect(items()).toHaveLength(30);
    await user.type(screen.getByRole('textbox', { name: 'Search the log' }), 'almond NOTE 29');
    expect(items()).toHaveLength(1);
    expect(textOf(items()[0] ?? document.body)).toContain('note 29');
  });

  test('say how far each pulls, and can be left out and counted again', async () => {
    const { store, user } = await open((sheet) => {
      add(sheet);
      add(sheet, { at: '2026-01-26T08:00', found: 'flat', hours: 20 });
    });
    expect(textOf(screen.getByRole('list', { name: /^Entries of/ }))).toMatch(/Without it: [\d.]+ h, not [\d.]+ h\./);
    const before = store.document.value.yours;
    const [button] = screen.getAllByRole('button', { name: /^Leave out/ });
    if (button === undefined) throw new Error('nothing can be left out');
    await user.click(button);
    expect(store.document.value.log.filter(({ leftOut }) => leftOut === true)).toHaveLength(1);
    expect(store.document.value.yours).not.toEqual(before);
    expect(button.getAttribute('aria-pressed')).toBe('true');
    await user.click(button);
    expect(store.document.value.yours).toEqual(before);
  });

  test('ask of one that was ready since when, and keep it', async () => {
    const { store, user } = await open();
    await user.click(screen.getByRole('radio', { name: 'Ready' }));
    await user.click(screen.getByRole('radio', { name: 'Just now' }));
    await user.type(screen.getByLabelText('Hours since the grains went in'), '11');
    await user.click(screen.getByRole('button', { name: 'Save' }));
    expect(store.document.value.log[0]).toMatchObject({ found: 'ready', holds: 'just' });
  });
});

describe('the picture of what was found', () => {
  test('is drawn when it is asked for, and is a table too', async () => {
    const { user, container } = await open((sheet) => {
      add(sheet);
      add(sheet, { at: '2026-01-26T08:00', found: 'sour', hours: 400 });
    });
    expect(container.querySelector('.found-figure')).toBeNull();
    await user.click(screen.getByText('Found against expected'));
    const figure = await screen.findByRole('img', { name: /0 not sour yet, 1 ready, 1 too sour/ });
    expect(figure.querySelector('.found-ready')?.getAttribute('d')).toMatch(/^M[\d.]+ [\d.]+h0$/);
    expect(container.textContent).toContain('1 at the upper edge lie beyond it.');
    expect(container.querySelectorAll('.found-figure tbody tr')).toHaveLength(2);
  });
});

describe('cartons', () => {
  const refused = (sheet: Store) => {
    sheet.choose('b1', 'source', 'cartonPlain');
    sheet.takeEdit(nameCarton(sheet.document.value, 'b1', 'Blue soy'), 'name it');
    for (const day of ['10', '20']) {
      add(sheet, { found: 'flat', hours: 120, at: `2026-01-${day}T08:00`, carton: true, gaveUp: true, expected: 30 });
    }
  };

  test('are named, counted and warned of in the part and at the sheet', async () => {
    const { user, store, container } = await open((sheet) => {
      sheet.choose('b1', 'source', 'cartonPlain');
    });
    await user.type(screen.getByRole('textbox', { name: 'Which carton is it?' }), 'Blue soy{Enter}');
    expect(store.document.value.batches[0]?.carton).toBe('Blue soy');
    expect(store.document.value.cartons).toEqual([{ name: 'Blue soy' }]);
    expect(container.textContent).toContain('Not tried yet.');
    for (let n = 0; n < 2; n += 1) {
      await user.click(screen.getByRole('radio', { name: 'Not sour yet' }));
      await user.click(screen.getByRole('checkbox', { name: 'Given up: it never turned' }));
      await user.type(screen.getByLabelText('Hours since the grains went in'), n === 0 ? '120' : '97');
      if (n === 0) await user.type(screen.getByLabelText('When you looked'), '2026-01-24T08:00');
      await user.click(screen.getByRole('button', { name: 'Save' }));
    }
    expect(container.textContent).toContain('Never turned: tried 2 times, given up after 5 days.');
    const warnings = [...container.querySelectorAll('.problem.caution')].map(textOf);
    const said = warnings.filter((text) => text.includes('“Blue soy” did not ferment either time'));
    expect(said).toHaveLength(2);
  });

  test('give the sheet the sugar of their label when they are chosen, and are left out again', async () => {
    const { user, store } = await open(refused);
    await user.click(screen.getByRole('button', { name: 'Label of Blue soy' }));
    await user.type(screen.getByLabelText('Sugar in a serving'), 'lots');
    await user.click(screen.getByRole('button', { name: 'Keep these' }));
    expect(screen.getByLabelText('Sugar in a serving').getAttribute('aria-invalid')).toBe('true');
    await user.clear(screen.getByLabelText('Sugar in a serving'));
    await user.type(screen.getByLabelText('Sugar in a serving'), '6 g');
    await user.type(screen.getByLabelText('Serving'), '200 mL');
    await user.click(screen.getByRole('button', { name: 'Keep these' }));
    expect(store.document.value.yours['cartonPlain.labelSugar']).toEqual({ value: 6, how: 'typed' });
    expect(store.document.value.yours['cartonPlain.labelServing']).toEqual({ value: 200, how: 'typed' });
    expect(store.document.value.cartons).toEqual([{ name: 'Blue soy', sugar: '6 g', serving: '200 mL' }]);
    await user.click(screen.getByRole('button', { name: 'Remove the carton Blue soy' }));
    expect(store.document.value.cartons).toBeUndefined();
  });

  test('are not spoken of where nobody has any', async () => {
    await open((sheet) => add(sheet));
    expect(screen.queryByText('Cartons')).toBeNull();
  });
});
