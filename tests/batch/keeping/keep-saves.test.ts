import { afterEach, expect, test, vi } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import type { SheetDocument } from '../../../src/batch/document/document';
import { createSaves } from '../../../src/batch/keeping/keep-saves';

const named = (name: string): SheetDocument => ({ ...demo, batches: demo.batches.map((one) => ({ ...one, name })) });
afterEach(() => void vi.useRealTimers());

const nameOf = (document: SheetDocument) => document.batches[0]?.name;

test('the first is written at once, and of those that come meanwhile the last', async () => {
  const written: (string | undefined)[] = [];
  const saves = createSaves<SheetDocument>(
    async (document) => {
      written.push(nameOf(document));
      await new Promise((resolve) => setTimeout(resolve));
      return null;
    },
    () => {},
  );
  expect(saves.how.value).toBe('saved');
  for (const name of ['a', 'b', 'c']) saves.save(named(name));
  expect(written).toEqual(['a']);
  expect(saves.how.value).toBe('saving');
  expect(await saves.settle()).toBe(true);
  expect(written).toEqual(['a', 'c']);
  expect(saves.how.value).toBe('saved');
});

test('what could not be saved is told of until a later one is', async () => {
  let room = false;
  const told: (string | null)[] = [];
  const saves = createSaves<SheetDocument>(
    () => Promise.resolve(room ? null : 'No room.'),
    (message) => told.push(message),
  );
  saves.save(demo);
  expect(await saves.settle()).toBe(false);
  expect(saves.how.value).toBe('unsaved');
  room = true;
  saves.save(demo);
  expect(await saves.settle()).toBe(true);
  expect(told).toEqual(['No room.', null]);
});

test('what could not be saved is tried again by itself, without a word of it, until there is room', async () => {
  vi.useFakeTimers();
  let room = false;
  const tried: (string | undefined)[] = [];
  const saves = createSaves<SheetDocument>(
    (document) => {
      tried.push(nameOf(document));
      return Promise.resolve(room ? null : 'No room.');
    },
    () => {},
  );
  const said: string[] = [];
  saves.save(named('a'));
  await saves.settle();
  saves.how.subscribe((how) => said.push(how));
  await vi.advanceTimersByTimeAsync(60_000);
  expect(tried.length).toBeGreaterThan(2);
  expect(said).toEqual(['unsaved']);
  room = true;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(said).toEqual(['unsaved', 'saved']);
  const { length } = tried;
  await vi.advanceTimersByTimeAsync(60_000);
  expect(tried).toHaveLength(length);
  expect(new Set(tried)).toEqual(new Set(['a']));
});

test('what has been replaced, or is safe elsewhere, is not tried again', async () => {
  vi.useFakeTimers();
  const tried: (string | undefined)[] = [];
  const saves = createSaves<SheetDocument>(
    (document) => {
      tried.push(nameOf(document));
      return Promise.resolve(nameOf(document) === 'b' ? null : 'No room.');
    },
    () => {},
  );
  saves.save(named('a'));
  await saves.settle();
  saves.save(named('b'));
  await saves.settle();
  saves.save(named('c'));
  await saves.settle();
  saves.giveUp();
  await vi.advanceTimersByTimeAsync(60_000);
  expect(tried).toEqual(['a', 'b', 'c']);
});
