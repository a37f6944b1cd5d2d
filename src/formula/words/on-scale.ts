/** A mass as the scale can show it, g; one that the scale would show as nothing stays as it is. */
export function onScale(grams: number, scale: number | undefined): number {
  if (scale === undefined) return grams;
  const shown = Math.round(grams / scale) * scale;
  return shown === 0 ? grams : shown;
}
