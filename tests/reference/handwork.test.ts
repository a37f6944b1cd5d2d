import { expect, test } from 'vitest';
import { handwork } from '../../src/reference/handwork';
import { coefficientsIn } from './walk';

test('each figure of handwork is a judgement with its reason', () => {
  const found = coefficientsIn({ handwork });
  expect(found.length).toBe(Object.keys(handwork).length);
  for (const { at, value, origin } of found) {
    expect(origin.kind, at).toBe('judgement');
    expect(String(origin.reason).length, at).toBeGreaterThan(20);
    expect(value, at).toBeGreaterThan(0);
  }
});
