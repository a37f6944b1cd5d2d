// A browser may still be reading when the click returns.
const keptFor = 60_000;

/** Hands a text to the browser as a file to keep, of this name and media type; nothing leaves the machine. */
export function downloadText(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), keptFor);
}

/** A name that any system takes for a file, of at most 80 characters; `instead` where nothing of it is left. */
export function fileNameOf(name: string, instead: string): string {
  const plain = name.replaceAll(/[^\p{L}\p{M}\p{N} _-]+/gu, ' ').replaceAll(/\s+/g, ' ');
  const short = [...plain.trim()].slice(0, 80).join('').trim();
  return short === '' ? instead : short;
}
