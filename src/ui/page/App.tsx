import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import { followAddress, offeredLink } from '../paper/offered-link';
import { Sheet } from '../sheet/Sheet';
import { createSheetState, type SheetState } from '../sheet/sheet-state';
import { Guarded } from './Guarded';
import { lazyPiece } from './lazy-piece';
import { Masthead } from './Masthead';
import { MayEdit } from './MayEdit';
import { More } from './More';
import { PartNames } from './PartNames';
import { PartPane } from './PartPane';
import { PhoneBar } from './PhoneBar';
import { createPageState } from './page-state';
import { media, useMedia } from './use-media';
import './look.css';
import './controls.css';
import './page.css';
import './narrow.css';
import './first-paint.css';

interface Props {
  readonly store: Store;
  readonly storage: Storage | null;
}

const Working = lazyPiece(() => import('../working/Working'));
const ThumbEditor = lazyPiece(() => import('../sheet/ThumbEditor'));
const FocusKeeper = lazyPiece(() => import('./FocusKeeper'));
const SecondPart = lazyPiece(() => import('./SecondPart'));
const KeptActions = lazyPiece(() => import('./KeptActions'));
const PrintCards = lazyPiece(() => import('../paper/PrintCards'));
const Timers = lazyPiece(() => import('../steps/Timers'));
const LinkOffers = lazyPiece(() => import('../paper/LinkOffers'));

/** The whole page: the sheet, one part beside it or in its place, and the working over that part when it is asked for. */
export function App({ store, storage }: Props) {
  const page = useMemo(() => createPageState(storage), []);
  const state = useMemo(
    () => createSheetState({ at: 'vessel', batch: store.document.peek().batches[0]?.id ?? '' }),
    [],
  );
  useEffect(() => followUndoKeys(store, state), []);
  useEffect(followAddress, []);
  const wide = useMedia(media.wide);
  const veryWide = useMedia(media.veryWide);
  const thumb = useMedia(media.thumb);
  const parts = useRef<HTMLDivElement>(null);
  const shown = wide ? 'both' : page.shown.value;
  const message = store.message.value;
  const working = state.working.value;
  const shownWorking = working !== null && (
    <Guarded store={store} of={working} instead={<p class="message">This working can’t be shown.</p>}>
      <Working store={store} state={state} />
    </Guarded>
  );
  return (
    <div class="page" data-shown={shown}>
      <MayEdit store={store}>
        <Masthead store={store} state={state} page={page} />
      </MayEdit>
      {message !== null && (
        <div class="message" role="status">
          <p>{message}</p>
          <KeptActions store={store} />
        </div>
      )}
      {offeredLink.value !== null && <LinkOffers store={store} state={state} />}
      <Timers store={store} state={state} page={page} />
      <main class="bench">
        {(shown === 'both' || shown === 'batch') && (
          <MayEdit store={store}>
            <Sheet store={store} state={state} />
          </MayEdit>
        )}
        {(shown === 'both' || shown === 'part') && (
          <div class="parts" ref={parts}>
            <div class="beside">
              {wide && <PartNames page={page} side="first" />}
              <PartPane store={store} state={state} page={page} side="first" />
              {wide && shownWorking}
            </div>
            {veryWide && <SecondPart store={store} state={state} page={page} within={parts} />}
          </div>
        )}
        {shown === 'more' && <More store={store} state={state} page={page} />}
        {!wide && shownWorking}
      </main>
      {thumb && state.editing.value !== null && <ThumbEditor store={store} state={state} />}
      {!wide && <PhoneBar page={page} />}
      <PrintCards store={store} state={state} />
      <FocusKeeper />
    </div>
  );
}

/** What the deed before came to is no longer so once it is taken back. */
function followUndoKeys(store: Store, { notice }: SheetState): () => void {
  const press = (event: KeyboardEvent) => {
    const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
    if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    if (event.shiftKey) store.redo();
    else store.undo();
    notice.value = null;
  };
  document.addEventListener('keydown', press);
  return () => document.removeEventListener('keydown', press);
}
