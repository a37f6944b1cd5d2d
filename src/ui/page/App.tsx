import { useEffect, useMemo } from 'preact/hooks';
import type { SheetStore } from '../../batch/sheet-store';
import { Sheet } from '../sheet/Sheet';
import { createSheetState } from '../sheet/sheet-state';
import { afterPaint, afterPaintFailed, loadAfterPaint } from './after-paint';
import { BelowLater, WorkingLater } from './Later';
import { Masthead } from './Masthead';
import { MayEdit } from './MayEdit';
import { PageParts, placeOf } from './PageParts';
import { media, useMedia } from './use-media';

interface Props {
  readonly store: SheetStore;
}

const partMissing =
  'A part of the page could not be loaded: steps and workings are missing. It is tried again every few seconds.';
const editsKept = 'What you typed and chose is kept and will be worked out then: leave this page open until it is.';

/** The whole page: the sheet, the working beside or under its row, then steps and cautions of each batch. */
export function App({ store }: Props) {
  const state = useMemo(
    () => createSheetState({ line: 'sourceMass', batch: store.document.peek().batches[0]?.id ?? '' }),
    [],
  );
  useEffect(() => {
    loadAfterPaint(store);
    const press = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      if (event.shiftKey) store.edit((edits) => edits.redo(), {}, 'redo');
      else store.edit((edits) => edits.undo(), {}, 'undo');
    };
    // Leaving now would lose what waits, so the browser asks first.
    const leave = (event: Event) => store.waits.peek() && event.preventDefault();
    document.addEventListener('keydown', press);
    addEventListener('beforeunload', leave);
    return () => {
      document.removeEventListener('keydown', press);
      removeEventListener('beforeunload', leave);
    };
  }, []);
  const wide = useMedia(media.wide);
  const later = afterPaint.value;
  const missing = store.waits.value ? `${partMissing} ${editsKept}` : partMissing;
  const message = afterPaintFailed.value ? missing : store.message.value;
  return (
    <div class="page">
      <MayEdit store={store}>
        <Masthead store={store} />
      </MayEdit>
      {message !== null && (
        <p class="message" role="status">
          {message}
        </p>
      )}
      {later !== null && <later.KeptActions store={later.withEdits(store)} />}
      <main>
        <MayEdit store={store}>
          <PageParts />
          <div class="tools-room">
            {later !== null && <later.SheetTools store={later.withEdits(store)} state={state} />}
          </div>
          <div class="bench" id={placeOf('sheet')} tabIndex={-1}>
            <Sheet store={store} state={state} workingInline={!wide} />
            {wide && <WorkingLater store={store} state={state} />}
          </div>
        </MayEdit>
        <BelowLater store={store} state={state} />
        {later !== null && <later.Kept store={later.withEdits(store)} />}
        {later !== null && <later.LinkOffers store={later.withEdits(store)} state={state} />}
      </main>
      {later !== null && <later.Foot store={store} />}
    </div>
  );
}
