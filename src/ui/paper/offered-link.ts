import { signal } from '@preact/signals';
import { endOfLinkMark } from '../../interchange/link-mark';

/** The link whose batch is offered, as the text it came in; null where none is. */
export const offeredLink = signal<string | null>(linkHere());

/** The batch that stands in the page’s own address; null where there is none. */
export function linkHere(): string | null {
  return endOfLinkMark(location.hash) < 0 ? null : location.hash;
}
