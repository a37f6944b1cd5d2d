import { signal } from '@preact/signals';
import { endOfLinkMark } from '../../interchange/link-mark';

/** The link whose batch is offered, as the text it came in; null where none is. */
export const offeredLink = signal<string | null>(linkHere());

/** Offers what comes into the address of the open page, as when a link is followed to it; gives what ends that. */
export function followAddress(): () => void {
  const look = () => {
    offeredLink.value = linkHere() ?? offeredLink.peek();
  };
  addEventListener('hashchange', look);
  return () => removeEventListener('hashchange', look);
}

/** The batch that stands in the page’s own address; null where there is none. */
export function linkHere(): string | null {
  return endOfLinkMark(location.hash) < 0 ? null : location.hash;
}
