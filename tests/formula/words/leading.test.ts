import { describe, expect, test } from 'vitest';
import { leading, leadingInShort } from '../../../src/formula/words/leading';

const both = { metric: '500 mL', us: '2 cups', spoons: '2 cups', off: null };
const one = { metric: '4.5 parts', us: null, spoons: null, off: null };

describe('leading', () => {
  test.each([
    ['metric', both, { first: '500 mL', second: '2 cups' }],
    ['us', both, { first: '2 cups', second: '500 mL' }],
    ['metric', one, { first: '4.5 parts', second: null }],
    ['us', one, { first: '4.5 parts', second: null }],
  ] as const)('with %s leading, of %o', (leads, written, read) => {
    expect(leading(written, leads)).toEqual(read);
  });
});

test('in short leaves out ounces where there are spoons, and tells in figures how far these are off', () => {
  const solid = { metric: '26 g', us: '2 tbsp · 0.9 oz', spoons: '2 tbsp', off: null };
  expect(leadingInShort(solid, 'us')).toEqual({ first: '2 tbsp', second: '26 g' });
  const rough = { metric: '112 g', us: 'about ¾ cup, 4 % short · 4 oz', spoons: 'about ¾ cup', off: -4 };
  expect(leadingInShort(rough, 'us')).toEqual({ first: 'about ¾ cup', second: '112 g · −4\u00A0%' });
  expect(leadingInShort(rough, 'metric')).toEqual({ first: '112 g', second: 'about ¾ cup, −4\u00A0%' });
  const weighed = { ...solid, us: '0.9 oz, weigh it', spoons: null };
  expect(leadingInShort(weighed, 'us').first).toBe('0.9 oz, weigh it');
});
