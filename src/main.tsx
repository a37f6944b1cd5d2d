import { render } from 'preact';
import { demo } from './batch/document/demo';
import type { SheetDocument } from './batch/document/document';
import type { KeptSheet } from './batch/keeping/keeping';
import { isFirstVisit } from './batch/keeping/storage';
import { createStore, type Store } from './batch/store/store';
import { App } from './ui/page/App';

function openStorage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

const storage = openStorage();
const root = document.getElementById('sheet');

function commitOpenCell(): void {
  if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
}

// A phone may never come back to a page that it put away; at a desk one only looks something up.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden' && matchMedia('(pointer: coarse)').matches) commitOpenCell();
});

/** What opens, checks and keeps a sheet; tried again, for as long as the page is open, where it can't be loaded. */
async function openKept(onFailed: () => void): Promise<KeptSheet> {
  for (;;) {
    const part = await import('./batch/keeping/keep-sheet').catch(() => null);
    if (part !== null) return part.keepSheet({ storage, commitOpenCell });
    onFailed();
    await new Promise((resolve) => setTimeout(resolve, 3000));
  }
}

function draw(opened: SheetDocument): Store {
  const store = createStore(opened);
  root?.replaceChildren();
  if (root) render(<App store={store} storage={storage} />, root);
  // What was typed and not committed would go with the page, sooner than it can be kept, and so would what could not be
  // saved: the browser asks first.
  addEventListener('beforeunload', (event) => {
    const before = store.document.peek();
    commitOpenCell();
    const keeping = store.keeping.peek();
    const unsaved = keeping !== null && keeping.how.peek() !== 'saved';
    if (unsaved || store.document.peek() !== before) event.preventDefault();
  });
  return store;
}

async function start(): Promise<void> {
  // A first visitor sees the demo at once; whoever has a sheet here sees nothing but that.
  const store = (await isFirstVisit(storage)) ? draw(demo) : null;
  const kept = await openKept(() => {
    if (store === null) root?.replaceChildren(partMissing);
  });
  (store ?? draw(kept.document)).keepIn(kept);
}

const partMissing =
  'A part of the page could not be loaded. It is tried again every few seconds; your sheet stays kept.';

void start();

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  navigator.serviceWorker
    .register(`${import.meta.env.BASE_URL}offline-worker.js`, { updateViaCache: 'none' })
    .catch(() => undefined);
}
