import { useEffect, useMemo } from 'preact/hooks';
import type { Store } from '../batch/store';
import { afterPaint, afterPaintFailed, loadAfterPaint } from './after-paint';
import { BelowLater, WorkingLater } from './Later';
import { Masthead } from './Masthead';
import { Sheet } from './Sheet';
import { createSheetState } from './sheet-state';
import { media, useMedia } from './use-media';

interface Props {
  readonly store: Store;
}

const partMissing =
  'A part of the page could not be loaded: steps and workings are missing. Reload the page when you are online again.';

/** The whole page: the sheet, the working beside or under its row, then steps and cautions of each batch. */
export function App({ store }: Props) {
  const state = useMemo(
    () => createSheetState({ line: 'sourceMass', batch: store.document.peek().batches[0]?.id ?? '' }),
    [],
  );
  useEffect(() => {
    loadAfterPaint();
    const press = (event: KeyboardEvent) => {
      const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (typing || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      if (event.shiftKey) store.redo();
      else store.undo();
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, []);
  const wide = useMedia(media.wide);
  const later = afterPaint.value;
  const message = afterPaintFailed.value ? partMissing : store.message.value;
  return (
    <div class="page">
      <Masthead store={store} />
      {message !== null && (
        <p class="message" role="status">
          {message}
        </p>
      )}
      <main>
        <div class="tools-room">{later !== null && <later.SheetTools store={store} state={state} />}</div>
        <div class="bench">
          <Sheet store={store} state={state} workingInline={!wide} />
          {wide && <WorkingLater store={store} state={state} />}
        </div>
        <BelowLater store={store} state={state} />
      </main>
      <footer class="foot">
        <p>
          Grams are the authority, spoons the convenience: spoons and cups here are level. Volumes come from the
          densities of what is in the milk (Choi and Okos, 1986), which are a little low: 0.25 % for water, 0.3 to 0.5 %
          for sugar solutions, under 1 mL in 200. Nothing here is medical or legal advice: local food law and licensed
          practice come first.
        </p>
      </footer>
    </div>
  );
}
