/**
 * A text without the characters that turn the words around it (Unicode’s embeddings, overrides and isolates), for a
 * sentence that quotes what somebody typed or named. Letters keep the direction that is their own.
 */
export function withoutTurns(text: string): string {
  return text.replaceAll(/[\u202A-\u202E\u2066-\u2069]/g, '');
}
