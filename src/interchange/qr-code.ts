import { encode } from 'uqr';

export interface QrCode {
  /** The dark squares as the path of an SVG whose view box is `size` wide and high, quiet zone included. */
  readonly path: string;
  readonly size: number;
  /** Row by row from the top, quiet zone included; true is dark. */
  readonly squares: readonly (readonly boolean[])[];
  readonly version: number;
  readonly correction: 'L' | 'M';
}

/** The quiet zone that ISO/IEC 18004 asks for around the picture, in squares. */
const quiet = 4;
/**
 * Judgement: printed 40 mm wide, version 20 (97 squares and the quiet zone) has squares of 0.38 mm, about the smallest
 * that the camera of an older phone tells apart on kitchen paper at a hand’s distance. Anything larger prints without.
 */
const largestVersion = 20;
/** The most bytes version 20 takes at the least correction, by ISO/IEC 18004. */
export const longestInPicture = 858;

/**
 * The QR picture of a link, for a card printed 40 mm wide; null where the link is too long to scan well from paper. 15 %
 * of it may be damaged (correction M), and 7 % (L) where only that fits.
 */
export function drawQr(link: string): QrCode | null {
  if (new TextEncoder().encode(link).length > longestInPicture) return null;
  for (const correction of ['M', 'L'] as const) {
    try {
      const { version, data, size } = encode(link, {
        ecc: correction,
        boostEcc: false,
        maxVersion: largestVersion,
        border: quiet,
      });
      return { path: pathOf(data), size, squares: data, version, correction };
    } catch {
      // Too long at this correction, which the library says by throwing.
    }
  }
  return null;
}

/** One run of dark squares after the other; fewer and smoother than a square each. */
function pathOf(squares: readonly (readonly boolean[])[]): string {
  let path = '';
  for (const [down, line] of squares.entries()) {
    for (let from = line.indexOf(true); from >= 0; ) {
      const end = line.indexOf(false, from);
      const to = end < 0 ? line.length : end;
      path += `M${from} ${down}h${to - from}v1H${from}z`;
      from = line.indexOf(true, to);
    }
  }
  return path;
}
