import { type Poured, toPour } from '../../formula/blend/blend';
import type { Formulation } from '../../formula/engine/formulate';
import { leading } from '../../formula/words/leading';
import { writeValue } from '../../formula/words/write-row';
import type { Batch, KeptBlend, Settings } from '../document/document';
import { cellProblem } from './cell-problem';

/** The row by which a volume that is poured is read: it goes by the glass. */
export const pouredAs = 'servingSize';

type Part = KeptBlend['parts'][number];

export interface ReadPart {
  readonly part: Part;
  /** Null where the batch is no longer on the sheet. */
  readonly batch: Batch | null;
  /** Why it can’t be poured in, and what to do; null where it can. */
  readonly why: string | null;
  readonly poured: Poured | null;
}

export interface BlendAt {
  readonly batches: readonly Batch[];
  readonly settings: Settings;
  readonly formulationOf: (batch: Batch) => Formulation;
}

/** Each part of a blend as it can be poured in, or why it can’t be. */
export function readBlend({ parts }: KeptBlend, at: BlendAt): readonly ReadPart[] {
  const { batches, settings, formulationOf } = at;
  return parts.map((part) => {
    const batch = batches.find(({ id }) => id === part.of) ?? null;
    if (batch === null) {
      const why = `“${part.name}” is no longer on the sheet. Choose another, or take it out.`;
      return { part, batch, why, poured: null };
    }
    const formulation = formulationOf(batch);
    const all = parts.filter(({ of }) => of === part.of).reduce((sum, { volume }) => sum + (volume.amount ?? 0), 0);
    const why = whyNot(part, all, toPour(formulation), settings);
    const poured = why === null ? { name: batch.name, formulation, volume: part.volume.amount ?? 0 } : null;
    return { part, batch, why, poured };
  });
}

/** `all` is what is poured of the batch in the whole blend, `most` what it gives; mL. */
function whyNot({ volume }: Part, all: number, most: number | null, settings: Settings): string | null {
  if (most === null) return 'This batch can’t be worked out: mend its marked cells first.';
  const isVolume = volume.kind === 'volume' && (volume.amount === null || volume.amount > 0);
  if (volume.text.trim() === '' || !isVolume) return 'Type how much of it is poured in, as in 125 mL or ½ cup.';
  if (volume.amount === null) return cellProblem(pouredAs, volume, settings);
  if (all <= most) return null;
  const given = leading(writeValue(most, 'volume', null, settings), settings.leads).first;
  return `That is more than the ${given} that this batch gives to drink. Pour less.`;
}
