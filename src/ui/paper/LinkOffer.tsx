import { useEffect, useRef, useState } from 'preact/hooks';
import { longestName, mostBatches } from '../../batch/document/document';
import { cutText } from '../../batch/document/plain-text';
import { addShared, figuresToKeep, figuresToTake } from '../../batch/edits/add-shared';
import type { Store } from '../../batch/store/store';
import { labelOf } from '../../formula/words/labels';
import type { LinkRead } from '../../interchange/open-link';
import { grains } from '../../reference/grains';
import { jars } from '../../reference/jars';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import type { SheetState } from '../sheet/sheet-state';

interface Props {
  readonly text: string;
  readonly store: Store;
  readonly state: SheetState;
  readonly onDone: () => void;
}

type Linked = Extract<LinkRead, { readonly ok: true }>;

const notLoaded = 'A part of the page could not be loaded. Reload the page when you are online again.';
const full = `The sheet is full: it holds ${mostBatches} batches. Remove one first.`;

/** A batch that came by a link: what it is, before it is added as a new one, or not. */
export function LinkOffer({ text, store, state, onDone }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const [read, setRead] = useState<LinkRead | null>(null);
  useEffect(() => {
    import('../../interchange/open-link')
      .then(({ openLink }) => openLink(text))
      .catch((): LinkRead => ({ ok: false, message: notLoaded }))
      .then(setRead);
  }, [text]);
  useEffect(() => {
    if (read === null) return;
    dialog.current?.showModal();
    // On what is said, not on a button: whoever is typing when a link opens adds nothing by it.
    dialog.current?.focus();
  }, [read]);
  return (
    <dialog ref={dialog} class="files link-offer" aria-label="A batch by link" tabIndex={-1} onClose={onDone}>
      {read?.ok === true && <Offer linked={read} store={store} state={state} onDone={onDone} />}
      {read?.ok === false && (
        <>
          <p class="message">{read.message}</p>
          <p class="correct">
            <button type="button" class="button" onClick={onDone}>
              Close
            </button>
          </p>
        </>
      )}
    </dialog>
  );
}

interface OfferProps extends Omit<Props, 'text'> {
  readonly linked: Linked;
}

function Offer({ linked, store, state, onDone }: OfferProps) {
  const [withFigures, setWithFigures] = useState(false);
  const [problem, setProblem] = useState<string | null>(null);
  const { batch } = linked;
  const document = store.document.value;
  const figures = Object.keys(figuresToTake(document, linked));
  const kept = figuresToKeep(document, linked);
  const measured = Object.values(batch.measured).flatMap((cell) => (cell === undefined ? [] : [cell.text]));
  const add = () => {
    const next = addShared(document, linked, { withFigures, after: state.spot.value.batch });
    if (next === document) return setProblem(full);
    const added = next.batches.find(({ id }) => !document.batches.some((one) => one.id === id));
    store.takeEdit(next, `Add ${cutText(batch.name, longestName)} from a link`);
    if (added !== undefined) state.landOn(added.id, `“${added.name}” is added, from a link.`);
    onDone();
  };
  const { value: keeping } = store.keeping;
  const isElsewhere = keeping?.editedElsewhere.value === true;
  return (
    <>
      <h2>
        <bdi>{batch.name}</bdi>
      </h2>
      <p>A batch by link. Nothing is changed before you add it, and then it is a new one beside yours.</p>
      <p>
        {[
          jars[batch.vessel].name,
          sources[batch.source].name,
          ...batch.sweetener.map(({ id }) => sweeteners[id].name),
          grains[batch.grains].name,
        ].join(' · ')}
      </p>
      <ul class="files-list">
        {batch.given.map(({ row, text }) => (
          <li key={row}>
            {labelOf(row)}: <bdi>{text}</bdi>
          </li>
        ))}
        {batch.given.length === 0 && <li>Nothing is typed in it: it fills the jar.</li>}
        {measured.length > 0 && (
          <li>
            Measured: <bdi>{measured.join('; ')}</bdi>
          </li>
        )}
        {batch.heat !== null && <li>With a heat step.</li>}
      </ul>
      {figures.length > 0 && (
        <label>
          <input
            type="checkbox"
            checked={withFigures}
            onChange={(event) => setWithFigures(event.currentTarget.checked)}
          />
          Take the sender’s own figures too ({figures.length}). They hold for other batches of yours as well. Without
          them the amounts may differ from the sender’s.
        </label>
      )}
      {kept.length > 0 && <p>Where you have other figures than the sender, yours stay ({kept.length}).</p>}
      {store.readOnly.value && <p class="message">{store.message.value}</p>}
      <p class="correct">
        {isElsewhere && (
          <button type="button" class="button" onClick={() => void keeping?.editHere()}>
            Edit here instead
          </button>
        )}
        <button type="button" class="button" disabled={store.readOnly.value} onClick={add}>
          Add this batch
        </button>
        <button type="button" class="button" onClick={onDone}>
          Leave it
        </button>
        <span role="status">{problem}</span>
      </p>
    </>
  );
}
