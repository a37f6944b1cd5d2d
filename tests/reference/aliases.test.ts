import { expect, test } from 'vitest';
import { sourceAliases, sweetenerAliases } from '../../src/reference/aliases';

const aliases = [...Object.values(sourceAliases), ...Object.values(sweetenerAliases)].flat();

test('no alias stands for two foods, and each is in lower case', () => {
  expect(aliases.length).toBeGreaterThan(50);
  expect(aliases.filter((alias, index) => aliases.indexOf(alias) !== index)).toEqual([]);
  for (const alias of aliases) expect(alias).toBe(alias.toLowerCase().trim());
});
