import type { Source } from '../../reference/sources';

/**
 * Whether a milk starts nearly free of germs: what its maker heated and sealed, poured as it is. Let down with water from a
 * tap it counts with what is made at home, and so does one whose water can't be told.
 */
export function isHeatTreated({ heated }: Pick<Source, 'heated'>, waterRatio: number | string | null): boolean {
  return heated && waterRatio === 0;
}
