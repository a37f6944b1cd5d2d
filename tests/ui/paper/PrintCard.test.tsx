// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { setWhen } from '../../../src/batch/store/plan-edits';
import { createStore, type Store } from '../../../src/batch/store/store';
import { PrintCard } from '../../../src/ui/paper/PrintCard';
import PrintCards from '../../../src/ui/paper/PrintCards';
import { PrintTools } from '../../../src/ui/paper/PrintTools';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';
import { sourceIds } from '../../batches';
import { textOf } from '../open-sheet';

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['Date'], now: new Date('2026-11-25T10:00:00Z') });
});

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

function openCard(edit: (store: Store) => void = () => {}) {
  const store = createStore(demo);
  edit(store);
  const [batch] = store.document.value.batches;
  if (batch === undefined) throw new Error('the sheet has no batch');
  render(<PrintCard batch={batch} store={store} />);
  return screen.getByRole('article', { name: `Card of ${batch.name}` });
}

/** Each day on the card under what it is the day of; blank where there is a line to write on. */
function daysOn(card: HTMLElement) {
  const parts = [...card.querySelectorAll('dl > div')];
  return Object.fromEntries(parts.map((part) => [...part.children].map(textOf)));
}

function rowOf(card: HTMLElement, label: string): string[] {
  const row = within(card).getByRole('row', { name: new RegExp(`^${label}`) });
  return [...row.children].map(textOf);
}

const plan = (by: 'start' | 'drink', at: string) => (store: Store) =>
  store.takeEdit(setWhen(store.document.peek(), 'b1', { by, at }), 'Plan');

describe('a card', () => {
  test('has lines to write its days on where nothing is planned', () => {
    const days = daysOn(openCard());
    expect(Object.keys(days)).toEqual(['Start', 'Made, grains out', 'First glass', 'Taste by', 'Use up by']);
    expect(new Set(Object.values(days))).toEqual(new Set(['']));
  });

  test('has the days of its plan, counted from the day the grains come out', () => {
    const days = daysOn(
      openCard((store) => {
        store.typeCell('b1', 'bottleTime', '8 h');
        plan('drink', '2026-11-28T18:00')(store);
      }),
    );
    expect(days['First glass']).toMatch(/^28 Nov 2026, (18:00|06:00 pm)$/);
    expect(days.Start).toMatch(/^26 Nov 2026, /);
    expect(days['Made, grains out']).toBe('27 Nov 2026');
    expect(days['Taste by']).toBe('3 Dec 2026');
    expect(days['Use up by']).toBe('5 Dec 2026');
  });

  test('names no start and no day that a batch too cold to plan does not have', () => {
    const days = daysOn(
      openCard((store) => {
        store.typeCell('b1', 'roomTemperature', '8 °C');
        plan('drink', '2026-11-28T18:00')(store);
      }),
    );
    expect(new Set(Object.values(days))).toEqual(new Set(['']));
  });

  test('says of several jars how much goes into each, and to which line each is filled', () => {
    const card = openCard((store) => store.typeCell('b1', 'vesselCount', '3'));
    expect(within(card).getAllByRole('row', { name: /^in each jar/ })).toHaveLength(4);
    const shares = within(card)
      .getAllByRole('row', { name: /^in each jar/ })
      .map(textOf);
    expect(shares.some((share) => /^in each jar\s?752 mL/.test(share))).toBe(true);
    expect(within(card).getByText(/^Fill each of 3 jars to 4\.0/)).toBeTruthy();
  });

  test('speaks of a bottle only where one is sealed', () => {
    const bottle = (card: HTMLElement) => within(card).queryByRole('row', { name: /^Second ferment for/ });
    expect(bottle(openCard())).toBeNull();
    cleanup();
    expect(bottle(openCard((store) => store.typeCell('b1', 'bottleTime', '8 h')))).not.toBeNull();
  });

  test('of one jar repeats nothing for each', () => {
    expect(within(openCard()).queryByRole('row', { name: /^in each jar/ })).toBeNull();
  });

  test('begins with the unit that leads, in its tables, its drawing and its fill line', () => {
    const metric = openCard();
    const grams = rowOf(metric, 'Weight as bought')[1] ?? '';
    expect(grams).toMatch(/^\d+ g$/);
    expect(within(metric).getByText(/^Fill to 4\.0 cm \(1 ⅝ in\) below the rim/)).toBeTruthy();
    cleanup();
    const us = openCard((store) => store.changeSettings({ leads: 'us' }));
    const [, first, second] = rowOf(us, 'Weight as bought');
    expect(first).toMatch(/cup/);
    expect(second).toBe(grams);
    const heads = [...new Set(within(us).getAllByRole('columnheader').map(textOf))];
    expect(heads.indexOf('US kitchen')).toBeLessThan(heads.indexOf('Metric'));
    expect(rowOf(us, 'Room temperature').slice(1)).toEqual(['70 °F', '21 °C']);
    expect(textOf(us.querySelector('.jar text') ?? expect.fail('no measure'))).toBe('1 ⅝ in');
    expect(within(us).getByText(/^Fill to 1 ⅝ in \(4\.0 cm\) below the rim/)).toBeTruthy();
  });

  test('begins with what goes in, and has its name on both sides', () => {
    const card = openCard();
    const [first] = within(card).getAllByRole('table');
    expect(within(first ?? card).getByText('What goes in')).toBeTruthy();
    const labels = within(first ?? card)
      .getAllByRole('rowheader')
      .map(textOf);
    expect(labels.map((label) => label.replace(/Almonds.*|Cane.*|Water kefir.*/, ''))).toEqual([
      'Weight as bought',
      'Soaking water',
      'Water to blend',
      'Sweetener to add',
      'Culture to add',
    ]);
    const sides = [...card.querySelectorAll('.paper-side')].map(textOf);
    expect(sides.map((side) => side.startsWith('Saturday almond'))).toEqual([true, true]);
  });

  test('names what was chosen beside each section', () => {
    const heads = within(openCard()).getAllByRole('rowheader').map(textOf);
    for (const head of ['Jar: Quart, wide mouth', 'Milk: Almonds, whole', 'Culture: Water kefir grains'])
      expect(heads).toContain(head);
  });

  test('waits, and says what to mend, each once and at its root', () => {
    const card = openCard((store) => store.typeCell('b1', 'milkVolume', 'one bathtub'));
    const box = within(card).getByRole('heading', { name: 'This card waits: mend this first' }).parentElement;
    const said = within(box ?? card)
      .getAllByRole('listitem')
      .map(textOf);
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/^Milk after straining\. .*“one bathtub”/);
    expect(rowOf(card, 'Weight as bought')[1]).toBe('–');
  });

  test('has no such box where all is well', () => {
    expect(within(openCard()).queryByRole('heading', { name: /first$/ })).toBeNull();
  });

  test('has allergens once, cautions, and lines for what is found', () => {
    const card = openCard((store) => store.typeCell('b1', 'bottleTime', '8 h'));
    expect(textOf(card).split('Almond (tree nut) is on').length).toBe(2);
    expect(textOf(card)).toContain('Sealed glass can burst');
    const found = within(card).getByRole('heading', { name: 'What I found' }).parentElement ?? card;
    expect(within(found).getAllByRole('columnheader').map(textOf)).toEqual(['after h', 'pH', 'taste, look, smell']);
  });

  test.each(sourceIds)('of %s is without a gap in its words', (source) => {
    const text = textOf(
      openCard((store) => {
        store.choose('b1', 'source', source);
        store.typeCell('b1', 'vesselCount', '2');
        plan('start', '2026-11-28T08:00')(store);
      }),
    );
    expect(text).not.toMatch(/NaN|Infinity|undefined|null|\(\)/);
  });
});

describe('cards', () => {
  const names = () => screen.queryAllByRole('article').map((card) => card.getAttribute('aria-label'));

  test('are there only while the page prints: the batch that is looked at, or all', async () => {
    const store = createStore(demo);
    store.copyBatch('b1');
    const state = createSheetState({ batch: 'b1', at: 'milkVolume' });
    render(
      <>
        <PrintTools store={store} />
        <PrintCards store={store} state={state} />
      </>,
    );
    // What the browser does around its own dialogue.
    window.print = () => {
      window.dispatchEvent(new Event('beforeprint'));
    };
    expect(names()).toEqual([]);
    screen.getByRole('button', { name: 'Print this card' }).click();
    await expect.poll(names).toEqual(['Card of Saturday almond']);
    window.dispatchEvent(new Event('afterprint'));
    await expect.poll(names).toEqual([]);
    screen.getByRole('button', { name: 'Print all 2 cards' }).click();
    await expect.poll(names).toHaveLength(2);
  });

  test('of a sheet of one batch are offered as one', () => {
    render(<PrintTools store={createStore(demo)} />);
    expect(screen.queryByRole('button', { name: /Print all/ })).toBeNull();
  });
});
