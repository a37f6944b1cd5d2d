/** What a batch in an address begins with, before the version, how it is packed, and the packed text. */
export const linkMark = '#batch=';

/** Where the mark of a batch ends in a text, also as mail and chat programs rewrite it; −1 where there is none. */
export function endOfLinkMark(text: string): number {
  const found = /#batch(?:=|%3D)/i.exec(text);
  return found === null ? -1 : found.index + found[0].length;
}
