const eighthCharacters: readonly string[] = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/** A count of eighths with its fraction as one character: 12 is "1 ½", 3 is "⅜". Whole, not negative. */
export function writeEighths(eighths: number): string {
  const whole = Math.floor(eighths / 8);
  const fraction = eighthCharacters[eighths % 8] ?? '';
  if (fraction === '') return String(whole);
  return whole === 0 ? fraction : `${whole}\u00A0${fraction}`;
}
