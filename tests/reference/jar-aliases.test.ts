import { expect, test } from 'vitest';
import { jarAliases } from '../../src/reference/jar-aliases';

test('no word is for two jars, and each is as it is looked up', () => {
  const aliases = Object.values(jarAliases).flat();
  expect(aliases.length).toBeGreaterThan(30);
  expect(aliases.filter((alias, index) => aliases.indexOf(alias) !== index)).toEqual([]);
  for (const alias of aliases) expect(alias).toBe(alias.toLowerCase().trim());
});
