import { learning } from '../../reference/pace';

/** Of what a batch is, as far as that may make it ripen faster or slower; left out where nobody knows. */
export interface PaceOf {
  readonly grains?: string;
  readonly source?: string;
}

/** The key of a correction that is a factor of the pace. */
export type PaceKey = 'kitchen.pace' | `${string}.paceOfGrains` | `${string}.paceOfSource`;

/** Under which key the pace of this kitchen is kept. */
export const paceKey = 'kitchen.pace';

const ends = ['.paceOfGrains', '.paceOfSource'] as const;

/** Whether a correction is a factor of the pace, and so one that a log may teach. */
export function isPaceKey(key: string): key is PaceKey {
  return key === paceKey || ends.some((end) => key.endsWith(end));
}

/** The factors of the pace of such a batch, and how far each of them may be from usual (standard deviation of its logarithm). */
export function effectsOf({ grains, source }: PaceOf): readonly { readonly key: PaceKey; readonly spread: number }[] {
  return [
    { key: paceKey, spread: learning.kitchenSpread.value },
    ...(grains === undefined ? [] : [{ key: `${grains}.paceOfGrains`, spread: learning.grainsSpread.value } as const]),
    ...(source === undefined ? [] : [{ key: `${source}.paceOfSource`, spread: learning.sourceSpread.value } as const]),
  ];
}
