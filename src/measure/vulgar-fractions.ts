/** The fractions that have a character of their own, as numerator and denominator. */
export const vulgarFractions = {
  '½': [1, 2],
  '⅓': [1, 3],
  '⅔': [2, 3],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅕': [1, 5],
  '⅖': [2, 5],
  '⅗': [3, 5],
  '⅘': [4, 5],
  '⅙': [1, 6],
  '⅚': [5, 6],
  '⅐': [1, 7],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
  '⅑': [1, 9],
  '⅒': [1, 10],
} as const satisfies Record<string, readonly [number, number]>;

const byCharacter = new Map<string, readonly [number, number]>(Object.entries(vulgarFractions));

/** All of those characters in one text, for a class of characters in a pattern. */
export const vulgarCharacters = [...byCharacter.keys()].join('');

/** Numerator and denominator of a fraction character, or undefined for any other text. */
export function readVulgarFraction(character: string): readonly [number, number] | undefined {
  return byCharacter.get(character);
}

const characters = new Map(
  Object.entries(vulgarFractions).map(([character, [over, under]]) => [over / under, character]),
);

/** So many equal parts of one with their fraction as one character: 12 eighths are "1 ½", 3 are "⅜". Whole, not negative. */
export function writeFraction(count: number, of: number): string {
  const whole = Math.floor(count / of);
  const fraction = characters.get((count % of) / of);
  if (fraction === undefined) return String(whole);
  return whole === 0 ? fraction : `${whole}\u00A0${fraction}`;
}
