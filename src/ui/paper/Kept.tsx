import { useEffect, useRef, useState } from 'preact/hooks';
import type { SheetDocument } from '../../batch/document/document';
import type { Keeping, Kept as KeptList } from '../../batch/keeping/keeping';
import { withSettings } from '../../batch/reading/settings';
import type { Store } from '../../batch/store/store';
import { DownloadSheet } from '../page/KeptActions';
import { downloadText } from './download-text';

interface Props {
  readonly store: Store;
}

/** How the sheet is kept in this browser: whether all is saved, its last good states, and what was put aside. */
export function Kept({ store }: Props) {
  const [open, setOpen] = useState(false);
  const keeping = store.keeping.value;
  const how = keeping?.how.value ?? 'saving';
  return (
    <details class="fold-panel kept" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        Kept in this browser{' '}
        <small role="status" data-kept={how}>
          {howWords[how]}
        </small>
      </summary>
      {open && keeping !== null && <Panel store={store} keeping={keeping} />}
    </details>
  );
}

const howWords = { saved: 'Saved', saving: 'Saving…', unsaved: 'Not saved' } as const;

function Panel({ store, keeping }: Props & { readonly keeping: Keeping }) {
  const [kept, setKept] = useState<KeptList | null>(null);
  const [failed, setFailed] = useState(false);
  // Each save changes what is kept.
  const shown = store.document.value;
  const how = keeping.how.value;
  const list = () => {
    keeping.list().then(setKept, () => setFailed(true));
  };
  useEffect(list, [keeping, how, shown]);
  const remove = (key: number) => {
    keeping.removeAside(key).then(list, () => setFailed(true));
  };
  return (
    <section class="panel" aria-label="Kept in this browser">
      <p>
        Each edit is kept here as you make it, with some of the states before it. To move to another device, download a
        copy. A browser that runs out of room may clear what it keeps, so have a copy elsewhere too.
      </p>
      <p class="correct">
        <DownloadSheet store={store} />
      </p>
      {failed && <p>What is kept can’t be read: this browser lets the page keep nothing.</p>}
      {kept !== null && kept.states.length > 1 && (
        <>
          <h3>Earlier states</h3>
          <ul>
            {kept.states.slice(1).map((state) => (
              <KeptText key={state.revision} store={store} kept={state} why={null} />
            ))}
          </ul>
        </>
      )}
      {kept !== null && kept.aside.length > 0 && (
        <>
          <h3>Put aside</h3>
          <ul>
            {kept.aside.map((aside) => (
              <KeptText key={aside.key} store={store} kept={aside} why={aside.why} onRemove={() => remove(aside.key)} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

interface TextProps extends Props {
  readonly kept: { readonly at: number; readonly text: string; readonly document: SheetDocument | null };
  readonly why: string | null;
  /** Left out for what can’t be removed by itself. */
  readonly onRemove?: () => void;
}

function KeptText({ store, kept: { at, text, document }, why, onRemove }: TextProps) {
  const when = at > 0 ? new Date(at).toLocaleString() : 'some time ago';
  // Undo would not bring today’s settings back, so they stay, as they do in undoing.
  const openAgain = (sheet: SheetDocument) =>
    store.takeEdit(withSettings(sheet, store.settings.peek()), `Open the sheet of ${when}`);
  return (
    <li>
      <span>
        {when}
        {document !== null && (
          <small>
            {' '}
            <bdi>{describe(document)}</bdi>
          </small>
        )}
        {why !== null && <small> {why}</small>}
      </span>
      {document !== null && (
        <button
          type="button"
          class="button"
          aria-label={`Open the sheet of ${when} again`}
          disabled={store.readOnly.value}
          onClick={() => openAgain(document)}
        >
          Open again
        </button>
      )}
      <button type="button" class="button" aria-label={`Download the sheet of ${when}`} onClick={() => download(text)}>
        Download
      </button>
      {onRemove !== undefined && <Remove when={when} store={store} onRemove={onRemove} />}
    </li>
  );
}

interface RemoveProps extends Props {
  readonly when: string;
  readonly onRemove: () => void;
}

/** Throws a copy away once it is asked twice: no undo brings it back. */
function Remove({ when, store, onRemove }: RemoveProps) {
  const [isAsked, setAsked] = useState(false);
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (isAsked) keep.current?.focus();
  }, [isAsked]);
  return isAsked ? (
    <span>
      This can’t be undone.{' '}
      <button ref={keep} type="button" class="button" onClick={() => setAsked(false)}>
        Keep it
      </button>{' '}
      <button type="button" class="button" aria-label={`Remove the sheet of ${when} for good`} onClick={onRemove}>
        Remove for good
      </button>
    </span>
  ) : (
    <button
      type="button"
      class="button"
      aria-label={`Remove the sheet of ${when}`}
      disabled={store.readOnly.value}
      onClick={() => setAsked(true)}
    >
      Remove this copy
    </button>
  );
}

/** What tells one state from another: its batches by name, and how much was typed into them. */
function describe({ batches }: SheetDocument): string {
  const typed = batches.flatMap(({ given }) => given).length;
  const names = batches.slice(0, 3).map(({ name }) => name);
  const more = batches.length > names.length ? ' and more' : '';
  return `${names.join(', ')}${more}; ${typed === 1 ? '1 amount' : `${typed} amounts`} typed`;
}

function download(text: string): void {
  downloadText(text, 'jarwright-sheet.json', 'application/json');
}
