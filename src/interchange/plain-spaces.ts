/** The text with plain spaces, since it goes by mail and into other programs. */
export function withPlainSpaces(text: string): string {
  return text.replace(/[\u00A0\u202F]/g, ' ');
}
