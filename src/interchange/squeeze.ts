/** Bytes made smaller by what the browser itself has (raw deflate); null where it has none. */
export async function deflate(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer> | null> {
  if (typeof CompressionStream === 'undefined') return null;
  return pump(bytes, new CompressionStream('deflate-raw'), Number.MAX_SAFE_INTEGER);
}

/**
 * What was deflated, as it was. Null where it is damaged, where it would come to more than `most` bytes (it is stopped
 * there, so that a few bytes can’t fill the memory), or where the browser has no way to do it.
 */
export async function inflate(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<Uint8Array<ArrayBuffer> | null> {
  if (!canInflate()) return null;
  return pump(bytes, new DecompressionStream('deflate-raw'), most);
}

export function canInflate(): boolean {
  return typeof DecompressionStream !== 'undefined';
}

type Through = CompressionStream | DecompressionStream;

async function pump(bytes: Uint8Array<ArrayBuffer>, through: Through, most: number) {
  const writer = through.writable.getWriter();
  // Damage shows on the reading side too, where it is dealt with.
  writer.write(bytes).catch(() => undefined);
  writer.close().catch(() => undefined);
  const reader = through.readable.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for (let read = await reader.read(); !read.done; read = await reader.read()) {
      length += read.value.length;
      if (length > most) {
        await reader.cancel().catch(() => undefined);
        return null;
      }
      parts.push(read.value);
    }
  } catch {
    return null;
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Bytes as text that an address can hold as it is: letters, digits, - and _ (RFC 4648, section 5, without padding). */
export function toBase64Url(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The bytes of such a text; null where it is none. */
export function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return null;
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (sign) => sign.charCodeAt(0));
}
