// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { careTopics } from '../../../src/formula/advice/care-topics';
import { describeOrigin } from '../../../src/formula/words/origin-words';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('care');

afterEach(cleanup);

function said(): string[] {
  const region = screen.getByRole('region', { name: 'Cautions for Saturday almond' });
  return within(region).getAllByRole('listitem').map(textOf);
}

test('every caution of the batch stands there once, folded under a topic', async () => {
  const { store, batch } = await openSheet();
  const expected = careTopics(store.formulationOf(batch())).flatMap(({ cautions }) => cautions.map(({ text }) => text));
  expect(said()).toEqual(expected);
  expect(new Set(said()).size).toBe(said().length);
  for (const item of document.querySelectorAll('.cautions li'))
    expect(item.closest('details')).toHaveProperty('open', false);
});

test('where a topic’s cautions are from is told when it is asked for, of that topic alone', async () => {
  const { store, user, batch } = await openSheet();
  const [jars] = careTopics(store.formulationOf(batch()));
  const first = jars?.cautions[0];
  if (first === undefined) throw new Error('there is no caution');
  await user.click(screen.getByText('Jars and pressure'));
  expect(document.querySelectorAll('.cautions .origin')).toHaveLength(0);
  await user.click(screen.getByRole('button', { name: 'Where from: Jars and pressure' }));
  expect(said()[0]).toBe(`${first.text}${describeOrigin(first.origin)}`.replaceAll(/\s+/g, ' '));
  expect(document.querySelectorAll('.cautions .origin')).toHaveLength(jars?.cautions.length ?? 0);
});

test('they go with what is chosen: honey and milk grains bring their own', async () => {
  await openSheet();
  expect(said().join()).not.toMatch(/12 months|milk protein/i);
  cleanup();
  await openSheet((store) => {
    store.choose('b1', 'sweetener', 'honey');
    store.choose('b1', 'grains', 'milk');
  });
  expect(said().join()).toMatch(/12 months/);
  expect(said().join()).toMatch(/milk/i);
});
