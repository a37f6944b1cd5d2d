import type { ReadonlySignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useEffect } from 'preact/hooks';
import { copyRange, copyText } from '../../batch/edits/copy';
import { type Asking, pasteInto, type Refusal } from '../../batch/edits/paste';
import type { Store } from '../../batch/store/store';
import type { RowId } from '../../formula/recipe/order';
import { labelOf } from '../../formula/words/labels';
import type { Range } from './grid-range';
import type { SheetState } from './sheet-state';

const reasons: Readonly<Record<Refusal['why'], string>> = {
  unreadable: 'can’t be read there',
  notTyped: 'can’t be typed there',
  onlyMeasured: 'was not measured there',
  noSuchChoice: 'is not on the menu there',
};

/** Copies the selected range as tab-separated text, and types a pasted range into the cells from the spot on. */
export function useClipboard(
  frame: RefObject<HTMLElement | null>,
  store: Store,
  state: SheetState,
  range: ReadonlySignal<Range>,
  drawnRows: ReadonlySignal<readonly RowId[]>,
  drawnBatches: ReadonlySignal<readonly string[]>,
): void {
  useEffect(() => {
    const isOurs = () => state.editing.value === null && frame.current?.contains(document.activeElement) === true;
    const find = (id: string) => store.document.value.batches.find((batch) => batch.id === id);

    const copy = (event: ClipboardEvent) => {
      if (!isOurs()) return;
      const selected = range.value;
      const batches = selected.batches.map(find).filter((batch) => batch !== undefined);
      if (selected.rows.length === 0 || batches.length === 0) return;
      event.preventDefault();
      const text = copyRange(batches, selected.rows, store.formulationOf, store.settings.value);
      event.clipboardData?.setData('text/plain', text);
      state.notice.value = `Copied ${count(selected.rows.length, 'row')} of ${count(batches.length, 'batch')}.`;
    };

    const paste = async (event: ClipboardEvent) => {
      const from = firstOf(range.value);
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (!isOurs() || from === null || text === '') return;
      event.preventDefault();
      const [rows, batchIds] = [drawnRows.peek(), drawnBatches.peek()];
      const { parseTable } = await import('../../interchange/table');
      // Another window may have taken the sheet while the reader of tables came.
      if (store.readOnly.peek()) {
        state.notice.value = 'Nothing was pasted: here the sheet can only be read.';
        return;
      }
      const table = parseTable(text);
      const {
        document: pasted,
        refused,
        asking,
        cells,
        outside,
      } = pasteInto(store.document.value, table.lines, {
        rows: rows.slice(rows.indexOf(from.row)),
        batches: batchIds.slice(batchIds.indexOf(from.batch)),
        shown: (row, id) => {
          const batch = find(id);
          return batch === undefined ? '' : copyText(batch, store.formulationOf(batch), row, store.settings.value);
        },
      });
      store.takeEdit(pasted, cells === 1 ? 'Paste a cell' : `Paste ${cells} cells`);
      const done =
        cells === 0 ? 'Nothing was changed' : cells === 1 ? 'Pasted into a cell' : `Pasted into ${cells} cells`;
      state.notice.value = [
        refused.length === 0 ? `${done}.` : `${done}. Not taken: ${nameAll(refused.map(describe))}.`,
        ...(asking.length === 0 ? [] : [`Say in its cell what is meant by ${nameAll(asking.map(place))}.`]),
        ...(outside > 0 ? [`${outside} more had no row or batch to go to.`] : []),
        ...(table.isCut ? ['It was too long: only the beginning was looked at.'] : []),
      ].join(' ');
    };

    const place = ({ row, batchId, text }: Asking): string =>
      `“${shorten(text)}” (“${labelOf(row)}”, ${find(batchId)?.name ?? batchId})`;
    const describe = ({ row, batchId, text, why }: Refusal): string =>
      `“${shorten(text)}” ${reasons[why]} (“${labelOf(row)}”, ${find(batchId)?.name ?? batchId})`;
    const pasteNow = (event: ClipboardEvent) => {
      paste(event).catch(() => {
        state.notice.value = 'Nothing was pasted: a part of the page could not be loaded. Try again when online.';
      });
    };
    document.addEventListener('copy', copy);
    document.addEventListener('paste', pasteNow);
    return () => {
      document.removeEventListener('copy', copy);
      document.removeEventListener('paste', pasteNow);
    };
  }, []);
}

const mostNamed = 5;
const longestNamed = 40;

/** The first few, and how many more there are. */
function nameAll(all: readonly string[]): string {
  const { length: others } = all.slice(mostNamed);
  return [...all.slice(0, mostNamed), ...(others > 0 ? [`${others} more`] : [])].join('; ');
}

/** What is pasted may be of any length, and hold characters that turn the words around them. */
function shorten(text: string): string {
  const plain = text.slice(0, longestNamed).replaceAll(/\p{C}/gu, '');
  return text.length > longestNamed ? `${plain}…` : plain;
}

function firstOf({ rows, batches }: Range): { readonly row: RowId; readonly batch: string } | null {
  const [row] = rows;
  const [batch] = batches;
  return row === undefined || batch === undefined ? null : { row, batch };
}

function count(number: number, what: 'row' | 'batch'): string {
  if (number === 1) return `1 ${what}`;
  return `${number} ${what === 'batch' ? 'batches' : 'rows'}`;
}
