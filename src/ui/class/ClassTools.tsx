import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { dayHere } from '../../batch/document/calendar-day';
import { type KeptClass, mostBatches } from '../../batch/document/document';
import { classSteps, hasRoomFor, makeBatches } from '../../batch/edits/class-edits';
import type { WorkedClass } from '../../batch/store/class-sheet';
import type { Store } from '../../batch/store/store';
import { packFragment } from '../../interchange/link-cache';
import { MayEdit } from '../page/MayEdit';
import { downloadText, fileNameOf } from '../paper/download-text';
import { loadQr } from '../paper/LinkCode';
import { useSheetOnPaper } from '../paper/use-sheet-on-paper';
import type { SheetState } from '../sheet/sheet-state';
import { ClassCards } from './ClassCards';

interface Props {
  readonly kept: KeptClass;
  readonly worked: WorkedClass;
  readonly store: Store;
  readonly state: SheetState;
  /** What stands between them and what they are of. */
  readonly children: ComponentChildren;
}

/** Cards that are drawn before anybody wonders. */
const few = 5;

/** What a class is for: its cards on paper, its batches on the sheet, its table as a file. */
export function ClassTools({ kept, worked, store, state, children }: Props) {
  const [said, setSaid] = useState('');
  const paper = useSheetOnPaper('class');
  const { length } = kept.kitchens;
  const print = async () => {
    const document = store.document.peek();
    setSaid(length > few ? 'Drawing the cards…' : '');
    // The shorter a link, the larger the squares of its picture.
    await Promise.all([loadQr(), ...worked.kitchens.map(({ batch }) => packFragment(document, batch))]);
    setSaid('');
    paper.start();
  };
  const make = () => {
    const document = store.document.peek();
    if (!hasRoomFor(document, kept)) {
      setSaid(`The sheet holds ${mostBatches} batches and has no room for these: remove some first.`);
      return;
    }
    const next = makeBatches(document, kept.key);
    const added = next.batches.find(({ id }) => !document.batches.some((one) => one.id === id));
    store.takeEdit(next, classSteps.makeBatches(kept));
    if (added !== undefined) {
      state.landOn(
        added.id,
        length === 1 ? 'The batch of the kitchen is added.' : `${length} batches are added, one for each kitchen.`,
      );
    }
  };
  const table = async () => {
    const { writeClassCsv } = await import('../../interchange/class-csv');
    const file = `${fileNameOf(kept.name, 'class')}-${dayHere(new Date())}.csv`;
    downloadText(writeClassCsv(worked.kitchens), file, 'text/csv;charset=utf-8');
    setSaid(`“${file}” is saved where this browser keeps what it downloads.`);
  };
  const notLoaded = () => setSaid('A part of the page could not be loaded. Try again when online.');
  return (
    <>
      <p class="class-acts">
        <button type="button" class="button" onClick={() => void table().catch(notLoaded)}>
          Table as CSV
        </button>
      </p>
      {children}
      <div class="main-action">
        <button type="button" class="button next" onClick={() => void print().catch(notLoaded)}>
          {length === 1 ? 'Print the card' : `Print ${length} cards`}
        </button>
        <MayEdit store={store}>
          <button type="button" class="button" onClick={make}>
            {length === 1 ? 'Make it a batch' : 'Make them batches'}
          </button>
        </MayEdit>
        <span role="status">{said}</span>
      </div>
      {paper.isOn && <ClassCards worked={worked} store={store} />}
    </>
  );
}
