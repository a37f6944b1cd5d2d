import { useMemo, useRef, useState } from 'preact/hooks';
import type { SheetDocument } from '../../batch/document/document';
import type { LostPart } from '../../batch/document/salvage';
import type { DocumentChange } from '../../batch/edits/document-changes';
import type { Store } from '../../batch/store/store';
import { mostBytes, tooLarge } from '../../interchange/file-limit';
import type { FileRead } from '../../interchange/open-file';
import { planOpening } from '../../interchange/plan-opening';
import type { SheetState } from '../sheet/sheet-state';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** What was opened goes by the name of the very file that it came from. */
type Opened = Extract<FileRead, { readonly ok: true }> & { readonly name: string };

/** What became of a file, by its name. */
interface Said {
  readonly name: string;
  readonly words: string;
  /** What the sheet is while this is true of it; left out of what is about the file alone. */
  readonly of?: SheetDocument;
}

const notLoaded = 'This part of the page could not be loaded. If you are offline, try again when online.';
const unreadable = 'This file could not be read. Choose it again; if that does not help, copy it to this device first.';
const allRead = 'All of its parts can be read.';
const someRead = 'What can be read of it is below.';
const mostNamed = 12;

/** A saved copy, looked at before anything is done with it: then merged, put in place of the sheet, or left. */
export function OpenFile({ store, state }: Props) {
  const picker = useRef<HTMLInputElement>(null);
  const [opened, setOpened] = useState<Opened | null>(null);
  const [said, setSaid] = useState<Said | null>(null);
  const [over, setOver] = useState(false);
  const chosen = useRef<File | null>(null);
  const read = async (file: File) => {
    const { name } = file;
    chosen.current = file;
    setOpened(null);
    if (file.size > mostBytes) return setSaid({ name, words: tooLarge });
    setSaid({ name, words: 'Reading it …' });
    const found = await readText(file);
    // A large file may come after a small one that was chosen after it.
    if (chosen.current !== file) return;
    setSaid(found.ok ? null : { name, words: found.message });
    if (found.ok) setOpened({ ...found, name });
  };
  const take = (files: FileList | null | undefined) => {
    const [file] = files ?? [];
    if (file !== undefined) read(file);
    if (picker.current !== null) picker.current.value = '';
  };
  const close = (words: string) => {
    setSaid(opened === null ? null : { name: opened.name, words, of: store.document.peek() });
    setOpened(null);
  };
  const isTrue = said !== null && (said.of === undefined || said.of === store.document.value);
  return (
    <section
      class={over ? 'panel files-over' : 'panel'}
      aria-label="Open a file"
      onDragOver={(event) => {
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        take(event.dataTransfer?.files);
      }}
    >
      <h2>Open a file</h2>
      <p>A copy saved here, of at most 10 MB. You see what it would change before it does.</p>
      <p class="correct">
        <label>
          Choose a file, or drop it here{' '}
          <input
            ref={picker}
            type="file"
            accept=".json,application/json"
            onChange={(event) => take(event.currentTarget.files)}
          />
        </label>
      </p>
      <p role="status">
        {isTrue && (
          <>
            <bdi>{said.name}</bdi>: {said.words}
          </>
        )}
      </p>
      {opened !== null && <Opening opened={opened} store={store} state={state} onDone={close} />}
    </section>
  );
}

/** Reads a file and what is in it; never rejects. */
async function readText(file: File): Promise<FileRead> {
  const reader = await import('../../interchange/open-file').catch(() => null);
  if (reader === null) return { ok: false, message: notLoaded };
  const text = await file.text().catch(() => null);
  return text === null ? { ok: false, message: unreadable } : reader.readFile(text);
}

interface OpeningProps extends Props {
  readonly opened: Opened;
  readonly onDone: (words: string) => void;
}

function Opening({ opened: { name, parts, message, lost, isNewer }, store, state, onDone }: OpeningProps) {
  const [withSettings, setWithSettings] = useState(false);
  const document = store.document.value;
  const plan = useMemo(() => planOpening(document, parts), [document, parts]);
  const finish = (next: SheetDocument, step: string, words: string) => {
    store.takeEdit(next, step);
    if (withSettings && parts.settings !== null) store.changeSettings(parts.settings);
    const isThere = next.batches.some(({ id }) => id === state.spot.value.batch);
    const [first] = next.batches;
    if (!isThere && first !== undefined) state.select({ ...state.spot.value, batch: first.id });
    onDone(words);
  };
  const settings = withSettings && plan.settings.length > 0;
  return (
    <section class="files-plan" aria-label="What it would change">
      <h3>
        <bdi>{name}</bdi>
      </h3>
      {message !== null && <Lost message={message} lost={lost} isNewer={isNewer} />}
      {plan.settings.length > 0 && (
        <label>
          <input
            type="checkbox"
            checked={withSettings}
            onChange={(event) => setWithSettings(event.currentTarget.checked)}
          />
          Take its settings too ({plan.settings.join(', ')}); undo does not bring yours back
        </label>
      )}
      <h4>Merging</h4>
      <p>
        Nothing of yours is changed: a batch that differs from yours comes in beside it as “… (from file)”, and where
        figures differ yours stay.
        {plan.there > 0 && ` Batches that are here already: ${plan.there}.`}
        {plan.figuresKept > 0 && ` Figures of yours that stay: ${plan.figuresKept}.`}
      </p>
      <NoRoom leftOut={plan.noRoom} />
      <Changes changes={plan.byMerging} />
      <p class="correct">
        <button
          type="button"
          class="button"
          disabled={plan.byMerging.length === 0 && !settings}
          onClick={() => finish(plan.merged, 'Merge a file', 'Merged. Undo takes it back.')}
        >
          Merge
        </button>
      </p>
      <h4>Replacing</h4>
      {parts.batches.length === 0 && <p>It has no batch that can be read, so it can’t take the sheet’s place.</p>}
      {plan.stays.length > 0 && parts.batches.length > 0 && (
        <p>It has nothing that can be read of these, so yours stay: {plan.stays.join(', ')}.</p>
      )}
      <Changes changes={plan.byReplacing} />
      <p class="correct">
        <button
          type="button"
          class="button"
          disabled={plan.byReplacing.length === 0 && !(settings && parts.batches.length > 0)}
          onClick={() =>
            finish(plan.replaced, 'Replace the sheet by a file', 'It has taken the sheet’s place. Undo takes it back.')
          }
        >
          Replace
        </button>
        <button type="button" class="button" onClick={() => onDone('Left as it is. Nothing was changed.')}>
          Leave it
        </button>
      </p>
    </section>
  );
}

interface LostProps {
  readonly message: string;
  readonly lost: readonly LostPart[];
  readonly isNewer: boolean;
}

function Lost({ message, lost, isNewer }: LostProps) {
  const { length: more } = lost.slice(mostNamed);
  return (
    <div class="message">
      <p>
        {message} {lost.length > 0 ? 'What can be read of it is below, without:' : isNewer ? allRead : someRead}
      </p>
      <ul>
        {lost.slice(0, mostNamed).map(({ what, why }, at) => (
          <li key={`${at} ${what}`}>
            <bdi>{what}</bdi>: <bdi>{why}</bdi>
          </li>
        ))}
        {more > 0 && <li>and {more} more</li>}
      </ul>
    </div>
  );
}

function Changes({ changes }: { readonly changes: readonly DocumentChange[] }) {
  if (changes.length === 0) return <p>It would change nothing.</p>;
  return <Named list={changes} />;
}

function NoRoom({ leftOut }: { readonly leftOut: readonly DocumentChange[] }) {
  if (leftOut.length === 0) return null;
  return (
    <div class="message">
      <p>The whole of it is more than a sheet holds. There is no room for: </p>
      <Named list={leftOut} />
    </div>
  );
}

function Named({ list }: { readonly list: readonly DocumentChange[] }) {
  return (
    <ul>
      {list.map(({ what, names }) => (
        <li key={what}>
          {what}:{' '}
          {names.slice(0, mostNamed).map((name, at) => (
            <span key={`${at} ${name}`}>
              {at > 0 && '; '}
              <bdi>{name}</bdi>
            </span>
          ))}
          {names.length > mostNamed && ' …'}
        </li>
      ))}
    </ul>
  );
}
