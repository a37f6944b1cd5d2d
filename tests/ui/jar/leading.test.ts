import { describe, expect, test } from 'vitest';
import { leading } from '../../../src/ui/jar/leading';

const both = { metric: '500 mL', us: '2 cups', spoons: '2 cups', error: null };
const one = { metric: '4.5 g/g', us: null, spoons: null, error: null };

describe('leading', () => {
  test.each([
    ['metric', both, { first: '500 mL', second: '2 cups' }],
    ['us', both, { first: '2 cups', second: '500 mL' }],
    ['metric', one, { first: '4.5 g/g', second: null }],
    ['us', one, { first: '4.5 g/g', second: null }],
  ] as const)('with %s leading, of %o', (leads, written, read) => {
    expect(leading(written, leads)).toEqual(read);
  });
});
