// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, describe, expect, test } from 'vitest';
import type { Logged } from '../../../src/batch/document/document';
import { addEntry } from '../../../src/batch/edits/log-edits';
import { now, wallOf } from '../../../src/batch/reading/local-time';
import type { Store } from '../../../src/batch/store/store';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('log');

afterEach(cleanup);

/** Logs a look of just now. */
function look(store: Store, hours: number, changes: Partial<Logged> = {}): void {
  const entry: Logged = {
    ...{ batch: 'b1', name: 'Saturday almond', at: wallOf(now()), found: 'looked', hours, expected: 12 },
    ...{ temperature: null, acidity: null, note: '' },
    ...changes,
  };
  store.takeEdit(addEntry(store.document.value, entry), 'Log it');
}

async function openWaiting(edit: (store: Store) => void = () => {}) {
  const opened = await openSheet(edit);
  const log = await screen.findByRole('region', { name: /^Log of / });
  const text = () => textOf(log);
  return { ...opened, log: within(log), text };
}

describe('waiting', () => {
  test('for a homemade milk is not offered, and says the 24 h, the line and the reason', async () => {
    const { log, text, user } = await openWaiting();
    expect(log.queryByRole('checkbox', { name: /carton/ })).toBeNull();
    expect(text()).toContain(
      'No pH yet, so nobody can tell. Measure by strip or meter before 24 h are over; if you have neither',
    );
    expect(text()).toContain(
      'A homemade milk still above pH 4.6 by strip or meter when its time is over is thrown out',
    );
    expect(text()).not.toContain('Foods 12');
    await user.click(log.getByRole('button', { name: 'where from' }));
    expect(text()).toMatch(
      /To expect with lively grains: pH 4\.\d to 5\.\d after 12 h.*A judgement of this sheet:.*Foods 12: 4128/i,
    );
    expect(text()).toContain('Waiting for days is only for a heat-treated carton or can, neat, opened for this batch');
    cleanup();
    const tooLate = await openWaiting((store) => look(store, 25, { acidity: 5 }));
    expect(tooLate.text()).toContain('It did not reach pH 4.6 within 24 h: throw it out.');
  });

  test('for a carton is offered, in days that can be set, with a line a day and a stop', async () => {
    const { store, user, batch, log, text } = await openWaiting((sheet) => {
      sheet.choose('b1', 'source', 'cartonPlain');
      look(sheet, 30, { acidity: 5.2 });
    });
    expect(text()).toContain('throw it out');
    await user.click(log.getByRole('checkbox', { name: 'A heat-treated carton, opened for this batch' }));
    expect(batch().opened).toEqual({ days: 3 });
    expect(text()).toContain('Day 1: taste it and measure the pH.');
    expect(text()).toMatch(/Day 2: Just looked after 30 h · pH 5.20/);
    expect(text()).toContain('Not at pH 4.6 yet. Measure again before 3 days are over.');
    await user.selectOptions(log.getByRole('combobox', { name: 'Days until it is given up' }), '1 day');
    expect(batch().opened).toEqual({ days: 1 });
    expect(text()).toContain('It did not reach pH 4.6 within 1 day: throw it out.');
    expect(text()).toContain('Day 2, after the stop');
    store.undo();
    store.undo();
    expect(batch().opened).toBeUndefined();
  });

  test('ends for a carton that was opened when the source becomes a homemade milk', async () => {
    const { store, user, log, text } = await openWaiting((sheet) => sheet.choose('b1', 'source', 'cartonPlain'));
    await user.click(log.getByRole('checkbox', { name: 'A heat-treated carton, opened for this batch' }));
    store.choose('b1', 'source', 'cashew');
    await expect.poll(text).not.toContain('Day 3');
    expect(log.queryByRole('checkbox', { name: /carton/ })).toBeNull();
    expect(text()).toContain('A homemade milk still above pH 4.6');
    expect(text()).toMatch(/To expect with lively grains: pH \d\.\d to \d\.\d after 12 h, \d\.\d to \d\.\d after 24 h/);
  });
});
