import type { Way } from '../rows/row';

/** The formula of a way; null where code works it out. */
export function formulaOf(way: Way): string | null {
  if (typeof way === 'function') return null;
  return typeof way === 'string' ? way : way.formula;
}
