// @vitest-environment happy-dom
import { act, cleanup, fireEvent, render, screen } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { openText } from '../../../src/batch/keeping/open-saved';
import { withSettings } from '../../../src/batch/reading/settings';
import { createStore } from '../../../src/batch/store/store';
import { App } from '../../../src/ui/page/App';
import { partIds } from '../../../src/ui/page/part-ids';
import '../../../src/ui/sheet/Remarks';
import '../../../src/ui/working/Working';
import { loadPart } from '../../../src/ui/page/PartPane';
import { anyText } from '../../batch/any-edit';
import { anyAction, firstSheet } from '../../page-actions';

// The long form: `PAGE_ACTIONS=500 FRESH=1 npx vitest run tests/ui/page/page-actions.test.tsx --testTimeout=3600000`.
const numRuns = Number(process.env.PAGE_ACTIONS ?? 8);

/** What leaves the page, or asks the browser for what there is none of here. */
const leaves = /download|print|save a copy|calendar|copy|share|file|link|licence/i;

/** Touches whatever can be touched, at a place that wraps round: types into it, chooses of it, or presses it. */
function touch(place: number, typed: string): void {
  const all = document.querySelectorAll<HTMLElement>(
    'input:not([type=file]), select, textarea, button, summary, [data-quantity]',
  );
  const target = all[place % Math.max(all.length, 1)];
  if (target === undefined || leaves.test(`${target.textContent} ${target.ariaLabel} ${target.title}`)) return;
  if (target instanceof HTMLSelectElement) {
    const { options } = target;
    fireEvent.change(target, { target: { value: options[typed.length % Math.max(options.length, 1)]?.value ?? '' } });
  } else if (target instanceof HTMLInputElement && ['checkbox', 'radio'].includes(target.type)) fireEvent.click(target);
  else if (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) {
    fireEvent.input(target, { target: { value: typed } });
    fireEvent.change(target, { target: { value: typed } });
    fireEvent.keyDown(target, { key: 'Enter' });
    fireEvent.blur(target);
  } else if (target.dataset.quantity !== undefined) {
    fireEvent.click(target);
    fireEvent.keyDown(target, { key: 'Enter' });
    const editor = target.querySelector('input');
    if (editor !== null) {
      fireEvent.input(editor, { target: { value: typed } });
      fireEvent.keyDown(editor, { key: 'Enter' });
    }
  } else fireEvent.click(target);
}

const touches = fc
  .tuple(fc.nat(2000), anyText)
  .map(([place, typed]) => ({ name: `touch ${place} ${typed}`, act: () => touch(place, typed) }));
const sequences = fc.array(fc.oneof({ weight: 2, arbitrary: anyAction }, { weight: 3, arbitrary: touches }), {
  minLength: 8,
  maxLength: 16,
});

const slips: unknown[] = [];
const noteSlip = (slip: unknown) => slips.push(slip);

beforeEach(() => {
  slips.length = 0;
  vi.spyOn(console, 'error').mockImplementation(noteSlip);
  window.addEventListener('error', noteSlip);
});

afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
  window.removeEventListener('error', noteSlip);
});

/** What is amiss on the page as it stands: a word of the machine anywhere in it, or a cell that says nothing. */
function findAmiss(): readonly string[] {
  const { innerHTML } = document.body;
  const words = innerHTML.match(/.{0,60}(\bNaN\b|\bInfinity\b|\bundefined\b|\[object |–\s*\(–\)).{0,30}/gu) ?? [];
  const blank = [...document.querySelectorAll<HTMLElement>('[data-quantity]')].filter(
    (cell) => (cell.textContent ?? '').trim() === '' && cell.querySelector('input, select, svg') === null,
  );
  return [...words, ...blank.map(({ dataset }) => `${dataset.quantity} of ${dataset.batch} is blank`)];
}

describe('whatever is done on the page, in any order', () => {
  test('nothing fails, nothing is blank or no number, undo brings all of it back, and it opens again as saved', async () => {
    let [done, touched] = [0, 0];
    await fc.assert(
      fc.asyncProperty(sequences, async (actions) => {
        cleanup();
        const store = createStore(firstSheet);
        const part = partIds[done % partIds.length] ?? 'steps';
        localStorage.setItem('jarwright.part', part);
        await loadPart(part);
        render(<App store={store} storage={localStorage} />);
        await screen.findByRole('tabpanel', { busy: false }, { timeout: 20_000 });
        for (const { name, act: take } of actions) {
          const before = store.document.peek();
          await act(() => take(store));
          expect([slips, findAmiss()], name).toEqual([[], []]);
          const after = store.document.peek();
          if (after === before) continue;
          done += 1;
          if (name.startsWith('touch')) touched += 1;
          const opened = openText(JSON.stringify(after));
          expect(opened.is === 'good' ? opened.document : opened, name).toEqual(after);
        }
        const { settings } = store.document.peek();
        await act(() => {
          while (store.undoName.peek() !== null) store.undo();
        });
        expect(store.document.peek()).toEqual(withSettings(firstSheet, settings));
        expect([slips, findAmiss()]).toEqual([[], []]);
      }),
      { numRuns },
    );
    const { seed = 'drawn anew' } = fc.readConfigureGlobal();
    console.log(`${numRuns} visits (seed: ${seed}), ${done} edits, ${touched} of them by touching the page`);
    // A page on which touching does nothing would pass all of this.
    expect(touched).toBeGreaterThan(numRuns / 2);
  });
});
