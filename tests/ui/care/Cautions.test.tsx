// @vitest-environment happy-dom
import { cleanup, screen, within } from '@testing-library/preact';
import { afterEach, expect, test } from 'vitest';
import { cautionsAtFoot } from '../../../src/formula/cautions';
import { describeOrigin } from '../../../src/formula/origin-words';
import { openWith, textOf } from '../open-sheet';

const openSheet = openWith('care');

afterEach(cleanup);

function said(): string[] {
  const region = screen.getByRole('region', { name: 'Cautions for Saturday almond' });
  return within(region).getAllByRole('listitem').map(textOf);
}

test('every caution of the batch stands there once, with where it is from', async () => {
  const { store, batch } = await openSheet();
  const expected = cautionsAtFoot(store.formulationOf(batch())).map(
    ({ text, origin }) => `${text}${describeOrigin(origin)}`,
  );
  expect(said()).toEqual(expected.map((text) => text.replaceAll(/\s+/g, ' ')));
  expect(new Set(said()).size).toBe(said().length);
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
