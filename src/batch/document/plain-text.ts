/** At most `most` UTF-16 units of a text, no character of two of them cut in half. */
export function cutText(text: string, most: number): string {
  return text.slice(0, most).replace(/[\uD800-\uDBFF]$/, '');
}

/**
 * A name as it is kept: on one line, without controls, those that turn the words around it among them; blank where
 * nothing of it can be seen.
 */
export function cleanName(name: string): string {
  const plain = name
    .replaceAll(/\s+/g, (blanks) => (/[\t\n\r]/.test(blanks) ? ' ' : blanks))
    .replaceAll(/\p{Cc}|[\u202A-\u202E\u2066-\u2069]/gu, '')
    .trim();
  return /[^\p{C}\p{Z}]/u.test(plain) ? plain : '';
}
