import { type SourceId, sources } from '../../reference/sources';
import { longestName } from './document-limits';
import { cutText } from './plain-text';

/** The name of a batch that nobody has named: its source's, with a number where another batch has that already. */
export function nameFor(source: SourceId, taken: Iterable<string>): string {
  const names = new Set(taken);
  const plain = plainName(source);
  let name = plain;
  for (let number = 2; names.has(name); number += 1) name = `${plain} ${number}`;
  return name;
}

/** Whether a batch of this source still has the name that it was given by itself. */
export function isNamedAfter(source: SourceId, name: string): boolean {
  const plain = plainName(source);
  return name === plain || (name.startsWith(`${plain} `) && /^ \d+$/.test(name.slice(plain.length)));
}

function plainName(source: SourceId): string {
  const { plural } = sources[source];
  return cutText(`${plural.charAt(0).toUpperCase()}${plural.slice(1)}`, longestName);
}
