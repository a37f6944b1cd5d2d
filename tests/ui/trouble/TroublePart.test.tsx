// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { describeOrigin } from '../../../src/formula/words/origin-words';
import { troubles } from '../../../src/reference/troubles';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('trouble');

afterEach(cleanup);

function said(found: string): string {
  const heading = screen.getByRole('heading', { name: found });
  const fold = heading.closest('details');
  if (fold === null) throw new Error(`${found} does not fold`);
  return textOf(fold);
}

test('each trouble says where to look, what to do with the milk, and with the grains', async () => {
  await openSheet();
  const region = screen.getByRole('region', { name: 'What is wrong?' });
  expect(within(region).getAllByRole('heading', { level: 3 }).map(textOf)).toEqual(troubles.map(({ found }) => found));
  for (const { found, look, milk } of troubles) {
    expect(said(found)).toContain(look);
    expect(said(found)).toContain(milk);
  }
});

test('the grains are looked after as their kind is: sugar water for the one, dairy milk for the other', async () => {
  await openSheet();
  expect(said('Too sour, sharp')).not.toMatch(/sugar water|dairy/);
  expect(said('Still sweet, not sour yet')).toMatch(/sugar water/);
  expect(said('Still sweet, not sour yet')).not.toMatch(/dairy/);
  cleanup();
  await openSheet((store) => store.choose('b1', 'grains', 'milk'));
  expect(said('Still sweet, not sour yet')).toMatch(/dairy milk/);
  expect(said('Still sweet, not sour yet')).not.toMatch(/sugar water/);
});

test('mould and rot are marked to be thrown out, in the heading itself', async () => {
  await openSheet();
  const marked = troubles.filter(({ throwOut }) => throwOut).map(({ found }) => found);
  expect(marked.length).toBeGreaterThan(0);
  for (const { found } of troubles)
    expect(/throw it out/.test(said(found).slice(0, found.length + 14))).toBe(marked.includes(found));
});

test('all of it is unfolded at once, and folded again', async () => {
  const { user } = await openSheet();
  const folded = () =>
    within(screen.getByRole('region', { name: 'What is wrong?' }))
      .getAllByRole('group')
      .map((one) => one.hasAttribute('open'));
  expect(new Set(folded())).toEqual(new Set([false]));
  await user.click(screen.getByRole('button', { name: 'Open all' }));
  expect(folded()).toHaveLength(troubles.length);
  expect(new Set(folded())).toEqual(new Set([true]));
  await user.click(screen.getByRole('button', { name: 'Fold all' }));
  expect(new Set(folded())).toEqual(new Set([false]));
});

test('where it is from is told when it is asked for', async () => {
  const { user } = await openSheet();
  const [first] = troubles;
  if (first === undefined) throw new Error('there is no trouble');
  expect(said(first.found)).not.toContain(describeOrigin(first.origin));
  await user.click(screen.getByRole('button', { name: 'where from' }));
  expect(said(first.found)).toContain(describeOrigin(first.origin).trim());
});
