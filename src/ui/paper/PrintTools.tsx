import { signal } from '@preact/signals';
import type { Store } from '../../batch/store/store';

interface Props {
  readonly store: Store;
}

/** Whether all batches go to paper, rather than the one that is looked at. */
export const printsAll = signal(false);

/** Printing the card of a batch, or of all. The browser’s own command prints what was chosen last. */
export function PrintTools({ store }: Props) {
  const count = store.document.value.batches.length;
  const print = (all: boolean) => {
    printsAll.value = all;
    window.print();
  };
  return (
    <div class="print-tools">
      <button type="button" class="button" onClick={() => print(false)}>
        Print this card
      </button>
      {count > 1 && (
        <button type="button" class="button" onClick={() => print(true)}>
          Print all {count} cards
        </button>
      )}
    </div>
  );
}
