import { expect, test } from 'vitest';
import { cartonWaiting } from '../../src/reference/carton-waiting';

test('waiting for a carton rests on common practice or judgement, never on anything published', () => {
  for (const { unit, origin } of Object.values(cartonWaiting)) {
    expect(unit).toMatch(/\S/);
    expect(['judgement', 'common practice']).toContain(origin.kind);
  }
});

test('the days offered first are among those offered', () => {
  expect(cartonWaiting.usualDays.value).toBe(3);
  expect(cartonWaiting.usualDays.value).toBeLessThanOrEqual(cartonWaiting.mostDaysOffered.value);
});

test('makes of a carton are told apart as roughly as days', () => {
  expect(cartonWaiting.sameCarton.value).toBe(24);
});
