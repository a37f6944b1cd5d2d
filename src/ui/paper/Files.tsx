import { useEffect, useState } from 'preact/hooks';
import type { Batch } from '../../batch/document/document';
import type { Store } from '../../batch/store/store';
import { packFragment } from '../../interchange/link-cache';
import { MayEdit } from '../page/MayEdit';
import type { SheetState } from '../sheet/sheet-state';
import { loadQr } from './LinkCode';
import { OpenFile } from './OpenFile';
import { offeredLink } from './offered-link';
import { SaveFiles } from './SaveFiles';
import { ShareLink } from './ShareLink';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

// Of more batches than anybody prints at once, the rest are packed when they are shared.
const mostPacked = 200;

/** Files in and out, and links. */
export function Files({ batch, store, state }: Props) {
  const [open, setOpen] = useState(false);
  const document = store.document.value;
  useEffect(() => {
    loadQr();
  }, []);
  useEffect(() => {
    let isOld = false;
    const pack = async () => {
      for (const one of document.batches.slice(0, mostPacked)) {
        if (isOld) return;
        await packFragment(document, one);
      }
    };
    pack();
    return () => {
      isOld = true;
    };
  }, [document]);
  const offer = (text: string) => {
    offeredLink.value = text;
  };
  return (
    <div class="recipes files">
      <details class="fold-panel" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Save, open and share</summary>
        {open && (
          <div class="files-parts">
            <SaveFiles batch={batch} store={store} />
            <MayEdit store={store}>
              <OpenFile store={store} state={state} />
            </MayEdit>
            <ShareLink batch={batch} store={store} onLink={offer} />
          </div>
        )}
      </details>
    </div>
  );
}
