import { signal } from '@preact/signals';
import type { Store } from '../../batch/store';
import type { SheetState } from '../sheet/sheet-state';
import { PrintCard } from './PrintCard';
import { usePrinting } from './use-printing';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** Whether all batches go to paper, rather than the one that is looked at. */
const printsAll = signal(false);

/** What goes to paper, one card a batch: all of them, or the one that is looked at. There only while it prints. */
export function PrintCards({ store, state }: Props) {
  const printing = usePrinting();
  if (!printing) return null;
  const { batches } = store.document.value;
  const { batch: here } = state.spot.value;
  const shown = printsAll.value ? batches : batches.filter(({ id }) => id === here);
  return (
    <div class="print-cards">
      {(shown.length === 0 ? batches.slice(0, 1) : shown).map((batch) => (
        <PrintCard key={batch.id} batch={batch} store={store} />
      ))}
    </div>
  );
}

/** Printing the card of a batch, or of all. The browser’s own command prints what was chosen last. */
export function PrintTools({ store }: Pick<Props, 'store'>) {
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
