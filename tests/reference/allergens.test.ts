import { describe, expect, it } from 'vitest';
import { allergens } from '../../src/reference/allergens';

describe('allergens', () => {
  it('have unique names', () => {
    const names = Object.values(allergens).map(({ name }) => name);
    expect(new Set(names).size).toBe(names.length);
  });

  it('cite the US and the EU list for each', () => {
    for (const [id, { origins }] of Object.entries(allergens)) {
      const works = origins.map((origin) => (origin.kind === 'published' ? origin.work : origin.kind));
      expect(works, id).toContain('eu-1169-2011');
      expect(
        works.some((work) => work.startsWith('fda-')),
        id,
      ).toBe(true);
    }
  });

  it('keep coconut off both lists', () => {
    const unlisted = Object.entries(allergens).filter(([, { us, eu }]) => !us && !eu);
    expect(unlisted.map(([id]) => id)).toEqual(['coconut']);
  });
});
