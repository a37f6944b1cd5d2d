import type { Grain } from '../../reference/grains';

/** What a cook calls a culture within a sentence: grains, which are strained out, or a starter, which stays in. */
export function cultureNoun({ starter }: Grain): 'grains' | 'starter' {
  return starter === undefined ? 'grains' : 'starter';
}
