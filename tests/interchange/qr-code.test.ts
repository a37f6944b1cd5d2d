import fc from 'fast-check';
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { drawQr, longestInPicture, type QrCode } from '../../src/interchange/qr-code';
import { linkTo, writeFragment } from '../../src/interchange/share-link';
import { first } from '../batch/any-edit';
import { measuredRecipe, plainRecipe, sensibleRecipe } from '../batches';
import { documentOf } from '../stocked';

// An independent decoder of ISO/IEC 18004 reads the pictures back from pixels.

const page = 'https://somebody.example/kitchen/jarwright/';
const dot = 4;

/** The picture as pixels, as a camera would see it from right above. */
function rasterise({ squares }: QrCode): { readonly pixels: Uint8ClampedArray; readonly width: number } {
  const width = squares.length * dot;
  const pixels = new Uint8ClampedArray(width * width * 4);
  for (let y = 0; y < width; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const isDark = squares[Math.floor(y / dot)]?.[Math.floor(x / dot)] === true;
      pixels.set([...new Array(3).fill(isDark ? 0 : 255), 255], (y * width + x) * 4);
    }
  }
  return { pixels, width };
}

/** The squares that an SVG path fills. */
function squaresOf(path: string, size: number): boolean[][] {
  const squares = Array.from({ length: size }, () => new Array<boolean>(size).fill(false));
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1H\d+z/g)) {
    for (let at = 0; at < Number(length); at += 1) {
      const line = squares[Number(y)] ?? expect.fail('outside the picture');
      line[Number(x) + at] = true;
    }
  }
  return squares;
}

function decode(code: QrCode): string | undefined {
  const { pixels, width } = rasterise(code);
  return jsQR(pixels, width, width)?.data;
}

async function linkOf(document: ReturnType<typeof documentOf>): Promise<string> {
  return linkTo(page, (await writeFragment(document, first(document))) ?? expect.fail('no link'));
}

describe('the picture of a link', () => {
  test('is read back by an independent decoder, for any batch that fits', async () => {
    await fc.assert(
      fc.asyncProperty(fc.oneof(plainRecipe, sensibleRecipe), async (recipe) => {
        const link = await linkOf(documentOf(recipe));
        const code = drawQr(link);
        if (code !== null) expect(decode(code)).toBe(link);
      }),
      { numRuns: 30 },
    );
  });

  test('has a quiet zone of four squares, and a path that fills the very squares', () => {
    const code = drawQr(`${page}#batch=1pAAAA`) ?? expect.fail('no picture');
    expect(code.size).toBe(17 + 4 * code.version + 8);
    expect(code.squares).toHaveLength(code.size);
    expect(squaresOf(code.path, code.size)).toEqual(code.squares);
    const edge = code.squares.flatMap((line, y) =>
      line.filter((_, x) => Math.min(x, y, code.size - 1 - x, code.size - 1 - y) < 4),
    );
    expect(edge).not.toContain(true);
  });

  test('stands up to 15 % of damage, and to 7 % where only that fits', () => {
    expect(drawQr('x'.repeat(600))?.correction).toBe('M');
    expect(drawQr('x'.repeat(800))?.correction).toBe('L');
  });

  test('is never larger than what scans from a card, and is none for a longer link', () => {
    const longest = drawQr('x'.repeat(longestInPicture)) ?? expect.fail('no picture');
    expect(longest.version).toBe(20);
    expect(decode(longest)).toBe('x'.repeat(longestInPicture));
    expect(drawQr('x'.repeat(longestInPicture + 1))).toBeNull();
    expect(drawQr('é'.repeat(longestInPicture))).toBeNull();
  });

  test('is small enough for most batches', async () => {
    const batches = fc.sample(fc.oneof(plainRecipe, sensibleRecipe, measuredRecipe), 300);
    const versions: number[] = [];
    const lengths: number[] = [];
    for (const recipe of batches) {
      const link = await linkOf(documentOf(recipe));
      lengths.push(link.length);
      const code = drawQr(link);
      if (code !== null) versions.push(code.version);
    }
    const middle = (numbers: readonly number[]) => numbers.toSorted((one, other) => one - other)[numbers.length >> 1];
    const share = versions.length / batches.length;
    console.log(
      `${versions.length} of ${batches.length} batches have a picture (${(100 * share).toFixed(1)} %); ` +
        `link of ${middle(lengths)} characters, version ${middle(versions)} in the middle, longest ${Math.max(...lengths)}`,
    );
    expect(share).toBeGreaterThan(0.9);
  });
});
