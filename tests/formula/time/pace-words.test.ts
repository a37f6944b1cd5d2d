import { expect, test } from 'vitest';
import { demo } from '../../../src/batch/document/demo';
import { learnPaces } from '../../../src/formula/time/learn-pace';
import type { Look } from '../../../src/formula/time/looks';
import { describeOwnPace, describePull, describeSources, describeTaught } from '../../../src/formula/time/pace-words';

const kitchen = demo.settings;

function ready(batch: string, hours: number, of: Partial<Look> = {}): Look {
  return { batch, found: 'ready', at: 1000, hours, expected: 12, acidity: null, ...of };
}

function plain(text: string | null | undefined): string {
  return (text ?? '').replaceAll('\u00A0', ' ');
}

test('what the log taught is told by the kind of grains, in hours with their range', () => {
  const paces = learnPaces([
    ...[8, 8, 9].map((hours, at) => ready(`w${at}`, hours, { grains: 'water', source: 'almond' })),
    ready('m', 15, { grains: 'milk', source: 'cashew' }),
  ]);
  if (paces === null) throw new Error('nothing was learned');
  const [milk, water] = describeTaught(paces, kitchen);
  expect(milk?.what).toBe('Milk kefir grains');
  expect(plain(milk?.words)).toMatch(/^From 1 batch: what usually takes [\d.]+ h takes about [\d.]+ h here/);
  expect(water?.what).toBe('Water kefir grains');
  const [, usual, likely, soon, late] =
    /^From 3 batches: what usually takes ([\d.]+) h takes about ([\d.]+) h here, four times in five ([\d.]+) h to ([\d.]+) h\.$/.exec(
      plain(water?.words),
    ) ?? [];
  expect(Number(usual)).toBe(12);
  const pace = paces.of({ grains: 'water' });
  expect(Number(likely)).toBeCloseTo(12 / pace.pace, 0);
  expect(Number(soon)).toBeLessThan(Number(likely));
  expect(Number(late)).toBeGreaterThan(Number(likely));
  expect(plain(describeSources(paces, kitchen))).toMatch(/^By source.+almonds [\d.]+ h, cashews [\d.]+ h\.$/);
});

test('one source is not told apart, and grains that nobody knows are other batches', () => {
  const paces = learnPaces([ready('b1', 9)]);
  if (paces === null) throw new Error('nothing was learned');
  expect(describeSources(paces, kitchen)).toBeNull();
  expect(describeTaught(paces, kitchen).map(({ what }) => what)).toEqual(['Other batches']);
});

test('a pace of the cook’s own is told in hours, and its ends as such', () => {
  expect(plain(describeOwnPace(1.5, kitchen))).toBe('what usually takes 12 h takes 8 h');
  expect(plain(describeOwnPace(5, kitchen))).toContain('the fastest that the sheet takes');
});

test('a pull is told in the hours of the batch’s own recipe, and one that can’t be seen not at all', () => {
  expect(plain(describePull(12, 1.2, 1, kitchen))).toBe('Without it: 12 h, not 10 h.');
  expect(describePull(12, 1.2, 1.2000001, kitchen)).toBeNull();
});
