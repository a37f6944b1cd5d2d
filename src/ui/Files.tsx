import { useEffect, useState } from 'preact/hooks';
import type { Batch } from '../batch/document';
import type { Store } from '../batch/store';
import { packFragment } from '../interchange/link-cache';
import { linkMark } from '../interchange/share-link';
import { loadQr } from './LinkCode';
import { LinkOffer } from './LinkOffer';
import { OpenFile } from './OpenFile';
import { SaveFiles } from './SaveFiles';
import { ShareLink } from './ShareLink';
import type { SheetState } from './sheet-state';

interface Props {
  readonly batch: Batch;
  readonly store: Store;
  readonly state: SheetState;
}

// Of more batches than anybody prints at once, the rest are packed when they are shared.
const mostPacked = 200;

/** Files in and out, and links; and whatever batch the page was opened with, offered before it is added. */
export function Files({ batch, store, state }: Props) {
  const [open, setOpen] = useState(false);
  const [link, setLink] = useState(linkHere);
  const document = store.document.value;
  useEffect(() => {
    const look = () => {
      if (linkHere() !== null) setLink(linkHere());
    };
    addEventListener('hashchange', look);
    loadQr();
    return () => removeEventListener('hashchange', look);
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
  const done = () => {
    setLink(null);
    if (linkHere() !== null) history.replaceState(null, '', `${location.pathname}${location.search}`);
  };
  return (
    <div class="recipes files">
      <details class="fold-panel" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>Save, open and share</summary>
        {open && (
          <div class="files-parts">
            <SaveFiles batch={batch} store={store} />
            <OpenFile store={store} state={state} />
            <ShareLink batch={batch} store={store} onLink={setLink} />
          </div>
        )}
      </details>
      {link !== null && <LinkOffer key={link} text={link} store={store} state={state} onDone={done} />}
    </div>
  );
}

/** The batch that stands in the page’s own address; null where there is none. */
function linkHere(): string | null {
  return location.hash.startsWith(linkMark) ? location.hash : null;
}
