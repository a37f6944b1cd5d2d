import { cutText } from '../document/plain-text';

const longest = 40;

/** What was typed or named, short enough to stand in the name of a step. */
export function shorten(text: string): string {
  const plain = text.trim();
  return plain.length > longest ? `${cutText(plain, longest)}…` : plain;
}
