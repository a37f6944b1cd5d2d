import { useEffect } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import { Guarded } from '../page/Guarded';
import type { SheetState } from '../sheet/sheet-state';
import { loadQr } from './LinkCode';
import { PrintCard } from './PrintCard';
import { printsAll } from './PrintTools';
import { usePrinting } from './use-printing';
import './print.css';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** What goes to paper, one card a batch: all of them, or the one that is looked at. There only while it prints. */
export default function PrintCards({ store, state }: Props) {
  const printing = usePrinting();
  // The browser prints at once, from whatever part is open, and waits for no picture.
  useEffect(() => {
    void loadQr();
  }, []);
  if (!printing) return null;
  const { batches } = store.document.value;
  const { batch: here } = state.spot.value;
  const shown = printsAll.value ? batches : batches.filter(({ id }) => id === here);
  return (
    <div class="print-cards">
      {(shown.length === 0 ? batches.slice(0, 1) : shown).map((batch) => (
        <Guarded key={batch.id} store={store} instead={<NoCard name={batch.name} />}>
          {store.formulationOf(batch).failed ? <NoCard name={batch.name} /> : <PrintCard batch={batch} store={store} />}
        </Guarded>
      ))}
    </div>
  );
}

function NoCard({ name }: { readonly name: string }) {
  return (
    <article class="print-card" aria-label={`Card of ${name}`}>
      <h2>{name}</h2>
      <p>This batch can’t be worked out, so it has no card.</p>
    </article>
  );
}
