import { expect, test } from 'vitest';
import { cautions } from '../../src/reference/cautions';
import { handwork } from '../../src/reference/handwork';
import { coefficientsIn } from './walk';

const { outOfCold, outOfColdHot, hotRoom, ...ofWork } = handwork;

test('how long milk may be out of the cold is what the caution says', () => {
  const { text, origin } = cautions.find(({ id }) => id === 'dangerZone') ?? expect.fail('no caution');
  expect(text).toContain(
    `for ${outOfCold.value} h at most, or for ${outOfColdHot.value} h in a room above ${hotRoom.value} °C`,
  );
  for (const { origin: own } of [outOfCold, outOfColdHot, hotRoom]) {
    if (own.kind !== 'published' || origin.kind !== 'published') expect.fail('not published');
    expect([own.work, own.place]).toEqual([origin.work, origin.place]);
  }
});

test('each figure of handwork is a judgement with its reason', () => {
  const found = coefficientsIn({ ofWork });
  expect(found.length).toBe(Object.keys(ofWork).length);
  for (const { at, value, origin } of found) {
    expect(origin.kind, at).toBe('judgement');
    expect(String(origin.reason).length, at).toBeGreaterThan(20);
    expect(value, at).toBeGreaterThan(0);
  }
});
