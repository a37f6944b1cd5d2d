import { signal } from '@preact/signals';
import { linkMark } from '../interchange/share-link';

/** The link whose batch is offered, as the text it came in; null where none is. */
export const offeredLink = signal<string | null>(linkHere());

/** The batch that stands in the page’s own address; null where there is none. */
export function linkHere(): string | null {
  return location.hash.startsWith(linkMark) ? location.hash : null;
}
