import { useMemo, useState } from 'preact/hooks';
import type { Batch, Logged } from '../../batch/document/document';
import { cartonFinder, latestFirst, leaveOut, type teachersByEntry } from '../../batch/edits/log-edits';
import { linesAtOnce, notShown, oneMorePress, searchLog } from '../../batch/edits/log-search';
import {
  describeEntry,
  describeRecipeThen,
  isAcidEnough,
  logSteps,
  whyNotAcid,
  whyUnlearned,
  writeWhen,
} from '../../batch/edits/log-words';
import type { Store } from '../../batch/store/store';
import type { LearnedPaces } from '../../formula/time/learn-pace';
import type { Look } from '../../formula/time/looks';
import { cartonTeachesNothing, describePull } from '../../formula/time/pace-words';
import { labelOf } from '../../formula/words/labels';
import { writeTrimmed } from '../../measure/write-quantity';
import { Typed } from '../page/Typed';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  /** What the log teaches; null where nothing does. */
  readonly paces: LearnedPaces | null;
  readonly teachers: ReturnType<typeof teachersByEntry>;
  readonly onChange: (entry: Logged) => void;
  readonly onRemove: (entry: Logged) => void;
}

/** The entries of this batch, or of all, those of batches that are gone too; the latest first, a few at a time. */
export function LogEntries({ batch, store, paces, teachers, onChange, onRemove }: Props) {
  const [all, setAll] = useState(false);
  const [text, setText] = useState('');
  const [most, setMost] = useState(linesAtOnce);
  const { batches, log, settings } = store.document.value;
  const places = useMemo(() => new Map(log.map((entry, at) => [entry, at])), [log]);
  const isCarton = useMemo(() => cartonFinder({ batches }), [batches]);
  const own = useMemo(() => log.filter((entry) => entry.batch === batch.id), [log, batch.id]);
  const isSearched = text.trim() !== '';
  const found = useMemo(
    () => searchLog(all || isSearched ? log : own, text, { batches }).toSorted(latestFirst),
    [all, isSearched, log, own, text, batches],
  );
  const reading = useMemo(() => own.toSorted(latestFirst).find(({ acidity }) => acidity !== null), [own]);
  const shown = found.slice(0, most);
  const left = notShown(found.length, most);
  const isWide = all || isSearched;
  return (
    <>
      {log.length > own.length && (
        <label class="pick">
          <input type="checkbox" checked={all} onChange={(event) => setAll(event.currentTarget.checked)} />
          Show all batches
        </label>
      )}
      {(log.length > linesAtOnce || isSearched) && (
        <label class="log-search">
          Search the log
          <Typed value={text} onText={setText} placeholder="name, source, note, “too sour”" />
        </label>
      )}
      {isSearched && (
        <p class="hint" role="status">
          {found.length === 0 ? 'No entry has all of these words.' : `${found.length} of ${log.length} entries`}
        </p>
      )}
      {shown.length > 0 && (
        <ul class="log-entries" aria-label={isWide ? 'Entries of all batches' : `Entries of ${batch.name}`}>
          {shown.map((entry) => {
            const words = describeEntry(entry, settings);
            const name = isWide ? `${entry.name}: ${words}` : words;
            const unlearned = isCarton(entry) && entry.found !== 'looked' ? cartonTeachesNothing : whyUnlearned(entry);
            const sour = whyNotAcid(entry, settings);
            const then = describeRecipeThen(entry, settings);
            const place = places.get(entry) ?? -1;
            const toggle = () => {
              const isLeft = entry.leftOut !== true;
              const next = leaveOut(store.document.value, place, isLeft);
              store.takeEdit(next, isLeft ? logSteps.leaveOut : logSteps.countAgain);
            };
            return (
              <li key={place} class={entry.leftOut === true ? 'left-out' : undefined}>
                <span class="hint">
                  {isWide && `${entry.name}, `}
                  {writeWhen(entry)}
                </span>
                <b>{words}</b>
                {entry.note !== '' && <span class="log-note">{entry.note}</span>}
                {then !== null && <span class="hint">{then}</span>}
                {sour !== null && <span class="log-warning">{sour}</span>}
                {unlearned !== null ? (
                  <span class="hint">{unlearned}</span>
                ) : (
                  entry.leftOut === true && <span class="hint">Left out: it teaches nothing.</span>
                )}
                <Pull look={teachers.get(entry)} paces={paces} store={store} />
                <span class="log-acts">
                  {entry === reading && isAcidEnough(entry) && (
                    <TakeReading entry={entry} batch={batch} store={store} />
                  )}
                  <button type="button" class="follow" aria-label={`Change ${name}`} onClick={() => onChange(entry)}>
                    Change
                  </button>
                  {unlearned === null && entry.found !== 'looked' && (
                    <button type="button" class="follow" aria-pressed={entry.leftOut === true} onClick={toggle}>
                      Leave out<span class="unseen"> {name}</span>
                    </button>
                  )}
                  <button type="button" class="follow" aria-label={`Remove ${name}`} onClick={() => onRemove(entry)}>
                    Remove
                  </button>
                </span>
              </li>
            );
          })}
        </ul>
      )}
      {left > 0 && (
        <button type="button" class="follow" onClick={() => setMost(oneMorePress(most))}>
          Show more: {left} {left === 1 ? 'is' : 'are'} not shown
        </button>
      )}
    </>
  );
}

interface PullProps {
  readonly look: Look | undefined;
  readonly paces: LearnedPaces | null;
  readonly store: Store;
}

/** How far leaving an entry out would move what the log says of batches like it. */
function Pull({ look, paces, store }: PullProps) {
  const settings = store.settings.value;
  const words = useMemo(() => {
    const without = look === undefined ? null : (paces?.without([look]) ?? null);
    if (look === undefined || look.expected === null || paces === null || without === null) return null;
    return describePull(look.expected, paces.of(look).pace, without, settings);
  }, [look, paces, settings]);
  return words === null ? null : <span class="hint">{words}</span>;
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
