import { useEffect, useMemo } from 'preact/hooks';
import type { Store } from '../batch/store';
import { BelowLater, WorkingLater } from './Later';
import { Masthead } from './Masthead';
import { Sheet } from './Sheet';
import { loadSentences } from './sentences';
import { createSheetState } from './sheet-state';
import { media, useMedia } from './use-media';

interface Props {
  readonly store: Store;
}

/** The whole page: the sheet, the working beside or under its row, then steps and cautions of each batch. */
export function App({ store }: Props) {
  const state = useMemo(
    () => createSheetState({ line: 'sourceMass', batch: store.document.peek().batches[0]?.id ?? '' }),
    [],
  );
  useEffect(() => {
    loadSentences().catch(() => undefined);
  }, []);
  const wide = useMedia(media.wide);
  const message = store.message.value;
  return (
    <div class="page">
      <Masthead store={store} />
      {message !== null && (
        <p class="message" role="status">
          {message}
        </p>
      )}
      <main>
        <div class="bench">
          <Sheet store={store} state={state} workingInline={!wide} />
          {wide && <WorkingLater store={store} state={state} />}
        </div>
        <BelowLater store={store} />
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
