import { describeDocumentProblem } from '../batch/document/document-problem-words';
import { readDocument } from '../batch/document/read-document';
import { type LostPart, partsOf, type ReadParts, salvage } from '../batch/document/salvage';
import { findParts } from './damaged-text';
import { mostBytes, tooLarge } from './file-limit';

export type FileRead =
  | {
      readonly ok: true;
      readonly parts: ReadParts;
      /** What is wrong with the file as a whole, in plain words; null where it is sound. */
      readonly message: string | null;
      readonly lost: readonly LostPart[];
      /** Whether it is sound, but of a newer version. */
      readonly isNewer: boolean;
    }
  | { readonly ok: false; readonly message: string };

/**
 * What a file that claims to be a saved sheet holds. A damaged or newer one is read part by part, and what could not be
 * read is named. Any text at all can be given; nothing throws, nothing is changed.
 */
export function readFile(text: string): FileRead {
  if (text.length > mostBytes) return { ok: false, message: tooLarge };
  const plain = text.replace(/^\uFEFF/, '');
  let data: unknown;
  try {
    data = JSON.parse(plain);
  } catch {
    const found = findParts(plain);
    if (found === null) return { ok: false, message: 'There is no sheet in this file that can be read.' };
    const { parts, lost } = salvage(found.data, found.unread);
    const cut = found.broken.map((what) => ({ what, why: 'Its text is damaged or missing.' }));
    return withParts(parts, 'The text of this file is damaged.', [...cut, ...lost], false);
  }
  const read = readDocument(data);
  if (read.ok) return { ok: true, parts: partsOf(read.document), message: null, lost: [], isNewer: false };
  const why = describeDocumentProblem(read.why);
  if (read.why.code === 'notADocument' && !looksLikeSheet(data)) return { ok: false, message: why };
  const { parts, lost } = salvage(data);
  return withParts(parts, why, lost, read.why.code === 'newer');
}

function withParts(parts: ReadParts, message: string, lost: readonly LostPart[], isNewer: boolean): FileRead {
  const isEmpty = parts.batches.length === 0 && (parts.log ?? []).length === 0;
  if (isEmpty) return { ok: false, message: `${message} No batch in it can be read.` };
  return { ok: true, parts, message, lost, isNewer };
}

function looksLikeSheet(data: unknown): boolean {
  return typeof data === 'object' && data !== null && Object.hasOwn(data, 'batches');
}
