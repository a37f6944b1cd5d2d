import { sources } from '../../reference/sources';
import type { Logged, SheetDocument } from '../document/document';
import { foundWords, writeWhen } from './log-words';

/**
 * The entries in which every word that was typed is found, in any case: in the name of the batch or of its carton, the
 * source, the day, what was found or the note. All of them where nothing is typed.
 */
export function searchLog(
  log: readonly Logged[],
  text: string,
  { batches }: Pick<SheetDocument, 'batches'>,
): readonly Logged[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  if (words.length === 0) return log;
  const sourceOf = new Map(batches.map(({ id, source }) => [id, source]));
  return log.filter((entry) => {
    const source = entry.was?.source ?? sourceOf.get(entry.batch);
    const { name, plural } = source === undefined ? { name: '', plural: '' } : sources[source];
    const said = [
      entry.name,
      entry.note,
      entry.was?.carton ?? '',
      foundWords[entry.found],
      name,
      plural,
      writeWhen(entry),
    ];
    const all = said.join('\n').toLowerCase();
    return words.every((word) => all.includes(word));
  });
}

/** So many lines of a list at once, and how many more on each press. */
export const linesAtOnce = 12;
const morePerPress = 48;

/** How many lines are shown after one more press. */
export function oneMorePress(shown: number): number {
  return shown + morePerPress;
}

/** How many lines of so many are not shown. */
export function notShown(all: number, shown: number): number {
  return Math.max(0, all - shown);
}
