import { render } from 'preact';
import { demo } from './batch/demo';
import { isFirstVisit, saveDocument } from './batch/storage';
import { createStore } from './batch/store';
import { App } from './ui/App';
import './ui/style.css';
import './ui/sheet.css';
import './ui/jar.css';
import './ui/batches.css';
import './ui/working.css';
import './ui/below.css';
import './ui/phone.css';
import './ui/print.css';

function openStorage(): Storage | null {
  try {
    return window.localStorage;
  } catch {
    return null;
  }
}

/** What was left here, or the demo; what opens and checks a saved sheet is only loaded where there is one. */
async function openDocument(storage: Storage | null) {
  if (isFirstVisit(storage)) return { document: demo, message: null };
  const { loadDocument } = await import('./batch/open-saved');
  return loadDocument(storage);
}

const storage = openStorage();
openDocument(storage).then(({ document: opened, message }) => {
  const store = createStore(opened, { message, save: (changed) => saveDocument(storage, changed) });
  const root = document.getElementById('sheet');
  if (root) render(<App store={store} />, root);
});

if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  navigator.serviceWorker
    .register(`${import.meta.env.BASE_URL}offline-worker.js`, { updateViaCache: 'none' })
    .catch(() => undefined);
}
