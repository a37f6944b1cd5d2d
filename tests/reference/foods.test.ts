import { describe, expect, it } from 'vitest';
import { foods as used } from '../../src/reference/foods';
import { otherFoods } from '../../src/reference/other-foods';

// What each record holds is compared with a copy of the release in checks.test.ts.
const records = Object.entries({ ...used, ...otherFoods });

describe('foods', () => {
  it('are 57, each under its own record number', () => {
    expect(records).toHaveLength(57);
    for (const [key, { ndb }] of records) {
      expect(ndb).toBe(key);
      expect(ndb).toMatch(/^\d{5}$/);
    }
  });

  it('have unique names', () => {
    expect(new Set(records.map(([, { name }]) => name)).size).toBe(records.length);
  });
});
