/** Letters that one line beside the sheet holds. */
const line = 90;

/**
 * A remark in short, as a cook with wet hands reads it: its first sentence, and those after it for as long as they fit
 * on one line. `rest` is what is left of it, empty where that was all.
 */
export function inShort(text: string): { readonly short: string; readonly rest: string } {
  const [first = '', ...others] = text.split(/(?<=[.!?]) (?=\p{Lu})/u);
  let short = first;
  let taken = 0;
  for (const sentence of others) {
    if (`${short} ${sentence}`.length > line) break;
    short = `${short} ${sentence}`;
    taken += 1;
  }
  return { short, rest: others.slice(taken).join(' ') };
}
