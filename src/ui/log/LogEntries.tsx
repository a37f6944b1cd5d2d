import { useState } from 'preact/hooks';
import type { Batch, Logged } from '../../batch/document/document';
import { cartonFinder, latestFirst } from '../../batch/edits/log-edits';
import { describeEntry, isAcidEnough, whyNotAcid, whyUnlearned, writeWhen } from '../../batch/edits/log-words';
import type { Store } from '../../batch/store/store';
import { cartonTeachesNothing } from '../../formula/time/pace-words';
import { labelOf } from '../../formula/words/labels';
import { writeTrimmed } from '../../measure/write-quantity';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly onChange: (entry: Logged) => void;
  readonly onRemove: (entry: Logged) => void;
}

/** The entries of this batch, or of all, those of batches that are gone too; the latest first. */
export function LogEntries({ batch, store, onChange, onRemove }: Props) {
  const [all, setAll] = useState(false);
  const { batches, log, settings } = store.document.value;
  const isCarton = cartonFinder({ batches });
  const own = log.filter((entry) => entry.batch === batch.id);
  const shown = (all ? log : own).toSorted(latestFirst);
  const reading = shown.find((entry) => entry.batch === batch.id && entry.acidity !== null);
  return (
    <>
      {log.length > own.length && (
        <label class="pick">
          <input type="checkbox" checked={all} onChange={(event) => setAll(event.currentTarget.checked)} />
          Show all batches
        </label>
      )}
      {shown.length > 0 && (
        <ul class="log-entries" aria-label={all ? 'Entries of all batches' : `Entries of ${batch.name}`}>
          {shown.map((entry) => {
            const words = describeEntry(entry, settings);
            const name = all ? `${entry.name}: ${words}` : words;
            const unlearned = isCarton(entry) && entry.found !== 'looked' ? cartonTeachesNothing : whyUnlearned(entry);
            const sour = whyNotAcid(entry, settings);
            return (
              <li key={log.indexOf(entry)}>
                <span class="hint">
                  {all && `${entry.name}, `}
                  {writeWhen(entry)}
                </span>
                <b>{words}</b>
                {entry.note !== '' && <span class="log-note">{entry.note}</span>}
                {sour !== null && <span class="log-warning">{sour}</span>}
                {unlearned !== null && <span class="hint">{unlearned}</span>}
                <span class="log-acts">
                  {entry === reading && isAcidEnough(entry) && (
                    <TakeReading entry={entry} batch={batch} store={store} />
                  )}
                  <button type="button" class="follow" aria-label={`Change ${name}`} onClick={() => onChange(entry)}>
                    Change
                  </button>
                  <button type="button" class="follow" aria-label={`Remove ${name}`} onClick={() => onRemove(entry)}>
                    Remove
                  </button>
                </span>
              </li>
            );
          })}
        </ul>
      )}
    </>
  );
}

/** Offers the latest pH of the log as what the sheet holds for measured. */
function TakeReading({ entry, batch, store }: Pick<Props, 'batch' | 'store'> & { readonly entry: Logged }) {
  if (entry.acidity === null || batch.measured.finalPH?.amount === entry.acidity) return null;
  const text = writeTrimmed(entry.acidity, 2, store.settings.value.decimalComma);
  return (
    <button type="button" class="button" onClick={() => store.measureCell(batch.id, 'finalPH', text)}>
      Take pH {text} as “{labelOf('finalPH')}”
    </button>
  );
}
