import type { Batch, SheetDocument } from '../batch/document/document';
import { longestFragment, plainFragment, writeFragment } from './share-link';

interface Packed {
  readonly yours: SheetDocument['yours'];
  readonly fragment: string | null;
}

const packed = new WeakMap<Batch, Packed>();

/** The fragment of a batch, packed once for as long as neither it nor the figures change; null where it is too long. */
export async function packFragment(document: SheetDocument, batch: Batch): Promise<string | null> {
  const known = packed.get(batch);
  if (known?.yours === document.yours) return known.fragment;
  const fragment = await writeFragment(document, batch);
  packed.set(batch, { yours: document.yours, fragment });
  return fragment;
}

/** The same at once, for printing, which does not wait: unpacked where it was not packed before. */
export function fragmentAtOnce(document: SheetDocument, batch: Batch): string | null {
  const known = packed.get(batch);
  if (known?.yours === document.yours) return known.fragment;
  const plain = plainFragment(document, batch);
  return plain.length > longestFragment ? null : plain;
}
