// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/preact';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { mostBatches } from '../../../src/batch/document/document-limits';
import { createStore } from '../../../src/batch/store/store';
import { writeCopy } from '../../../src/interchange/json-file';
import { OpenFile } from '../../../src/ui/paper/OpenFile';
import { createSheetState } from '../../../src/ui/sheet/sheet-state';
import { textOf } from '../open-sheet';

afterEach(cleanup);

/** A file whose text comes when it is told to, as a large one or one on a slow disk does. */
function slowFile(name: string, text: string) {
  const file = new File([text], name, { type: 'application/json' });
  let arrive = () => {};
  let fail = () => {};
  const coming = new Promise<string>((resolve, reject) => {
    arrive = () => resolve(text);
    fail = () => reject(new DOMException('gone', 'NotReadableError'));
  });
  Object.defineProperty(file, 'text', { value: () => coming });
  return { file, arrive, fail };
}

function copyOf(name: string, changes: Partial<SheetDocument> = {}): string {
  return writeCopy({ ...demo, batches: [{ ...startBatch('b1', name), source: 'hemp' }], ...changes });
}

function open() {
  const store = createStore(demo);
  render(<OpenFile store={store} state={createSheetState({ at: 'sourceMass', batch: 'b1' })} />);
  const user = userEvent.setup();
  const choose = (file: File) => user.upload(screen.getByLabelText(/^Choose a file/), file);
  const plan = () => screen.findByRole('region', { name: 'What it would change' });
  return { store, user, choose, plan };
}

const status = () => textOf(screen.getByRole('status'));

describe('of two files chosen one after the other', () => {
  test('the later one is opened under its name, though the earlier one comes after it', async () => {
    const { store, user, choose, plan } = open();
    const [large, small] = [
      slowFile('large.json', copyOf('In the large')),
      slowFile('small.json', copyOf('In the small')),
    ];
    await choose(large.file);
    await choose(small.file);
    small.arrive();
    await plan();
    large.arrive();
    await large.file.text();
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(textOf(await plan())).toMatch(/^small\.json.*In the small/);
    await user.click(screen.getByRole('button', { name: 'Merge' }));
    expect(store.document.value.batches.map(({ name }) => name)).toEqual([
      'Saturday almond',
      'In the small (from file)',
    ]);
    expect(status()).toMatch(/^small\.json: Merged/);
  });

  test('the earlier one that can’t be read says nothing of the later', async () => {
    const { choose, plan } = open();
    const [gone, small] = [slowFile('gone.json', ''), slowFile('small.json', copyOf('In the small'))];
    await choose(gone.file);
    await choose(small.file);
    gone.fail();
    await gone.file.text().catch(() => undefined);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(status()).toBe('small.json: Reading it …');
    small.arrive();
    await plan();
    expect(status()).toBe('');
  });
});

test('what became of a file is said until the sheet changes, and again once it is as it was then', async () => {
  const { store, user, choose, plan } = open();
  await choose(new File([copyOf('Theirs')], 'theirs.json', { type: 'application/json' }));
  await plan();
  await user.click(screen.getByRole('button', { name: 'Replace' }));
  expect(status()).toBe('theirs.json: It has taken the sheet’s place. Undo takes it back.');
  store.undo();
  await expect.poll(status).toBe('');
  store.redo();
  await expect.poll(status).toContain('taken the sheet’s place');
});

test('a damaged file is not said to be whole, and a newer one is; what stays in replacing is named', async () => {
  const { choose, plan } = open();
  const show = async (text: string) => {
    await choose(new File([text], 'copy.json', { type: 'application/json' }));
    return textOf(await plan());
  };
  const copy = copyOf('Theirs');
  const damaged = await show(copy.replace('"version": 2,', '"version": 2,,'));
  expect(damaged).toContain('The text of this file is damaged. What can be read of it is below.');
  expect(damaged).not.toContain('It has nothing');
  expect(await show(copy.replace('"version": 2', '"version": 99'))).toContain('All of its parts can be read.');
  const cut = await show(copy.slice(0, copy.indexOf('"yours"')));
  expect(cut).toContain('The log, or its end: Its text is damaged or missing.');
  expect(cut).toContain(
    'It has nothing that can be read of these, so yours stay: the log, your own figures, own foods, jars of grains, cartons, prices, classes, blends.',
  );
});

test('a file that can’t be read says so under its name', async () => {
  const { choose } = open();
  const gone = slowFile('gone.json', '');
  await choose(gone.file);
  gone.fail();
  await expect.poll(status).toMatch(/^gone\.json: This file could not be read/);
});

test('says what there is no room for in merging', async () => {
  const { choose, plan } = open();
  const batches = Array.from({ length: mostBatches }, (_, at) => startBatch(`x${at}`, `Batch ${at}`));
  await choose(new File([writeCopy({ ...demo, batches })], 'full.json', { type: 'application/json' }));
  const said = textOf(await plan());
  expect(said).toContain(`There is no room for: 1 batch: Batch ${mostBatches - 1}`);
  expect(said).not.toContain('here already');
  expect(within(await plan()).getByRole('button', { name: 'Merge' })).toHaveProperty('disabled', false);
});
