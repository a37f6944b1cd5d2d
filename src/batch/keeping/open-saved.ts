import type { SheetDocument } from '../document/document';
import { describeDocumentProblem } from '../document/document-problem-words';
import { currentVersion } from '../document/migrations';
import { readDocument } from '../document/read-document';
import type { StateKey } from './keep-states';

/** What a saved text holds. `document` of a newer version is what this one understands of it, null where that is nothing. */
export type OpenedText =
  | { readonly is: 'good'; readonly document: SheetDocument }
  | { readonly is: 'newer'; readonly version: number; readonly document: SheetDocument | null }
  | { readonly is: 'damaged'; readonly why: string };

/** Opens a saved text of unknown origin; never throws. */
export function openText(found: unknown): OpenedText {
  if (typeof found !== 'string') return { is: 'damaged', why: 'It is no text.' };
  let data: unknown;
  try {
    data = JSON.parse(found);
  } catch {
    return { is: 'damaged', why: 'Its text is damaged.' };
  }
  const read = readDocument(data);
  if (read.ok) return { is: 'good', document: read.document };
  if (read.why.code !== 'newer') return { is: 'damaged', why: describeDocumentProblem(read.why) };
  const understood = readDocument(typeof data === 'object' ? { ...data, version: currentVersion } : null);
  return { is: 'newer', version: read.why.version, document: understood.ok ? understood.document : null };
}

/** A state that can’t be shown. */
export interface Damaged {
  readonly key: StateKey;
  readonly why: string;
  /** Whether its record can be had at all; one that can’t stays where it is, since there is nothing to put aside. */
  readonly isThere: boolean;
}

/** The newest state that can be shown, and what stands in the way of it. */
export interface LastGood {
  /** Null where no state can be shown. */
  readonly document: SheetDocument | null;
  /** When it was saved; null where there is none. */
  readonly at: number | null;
  /** The newest revision there is, good or not; 0 where there is none. */
  readonly head: number;
  /** The states newer than it that are damaged, newest first. */
  readonly damaged: readonly Damaged[];
  /** The version of a state that a newer page has saved, which must not be built upon; null where there is none. */
  readonly newer: number | null;
}

/**
 * Goes back from the newest state to the first that can be shown. `keys` are oldest first. A record that the disk can’t
 * give counts as damaged, unless none can be shown: then it may be all of the disk, and the error goes on.
 */
export async function findLastGood(
  keys: readonly StateKey[],
  read: (key: StateKey) => Promise<unknown>,
): Promise<LastGood> {
  const head = keys.at(-1)?.[0] ?? 0;
  const damaged: Damaged[] = [];
  const errors: unknown[] = [];
  let newer: number | null = null;
  for (const key of keys.toReversed()) {
    try {
      const opened = openText(await read(key));
      if (opened.is === 'newer') newer ??= opened.version;
      if (opened.is === 'damaged') damaged.push({ key, why: opened.why, isThere: true });
      else if (opened.document !== null) return { document: opened.document, at: key[1], head, damaged, newer };
    } catch (error) {
      errors.push(error);
      damaged.push({ key, why: 'The disk can’t give it any more.', isThere: false });
    }
  }
  if (errors.length > 0) throw errors[0];
  return { document: null, at: null, head, damaged, newer };
}
