import type { Store } from '../../batch/store/store';
import { writeCopy } from '../../interchange/json-file';
import { downloadText } from '../paper/download-text';

interface Props {
  readonly store: Store;
}

/** What can be done about a message of how the sheet is kept; nothing where all is well. */
export default function KeptActions({ store }: Props) {
  const keeping = store.keeping.value;
  if (keeping === null || keeping.message.value === null) return null;
  return (
    <p class="kept-actions">
      {keeping.editedElsewhere.value && (
        <button type="button" class="button" onClick={() => void keeping.editHere()}>
          Edit here instead
        </button>
      )}
      {keeping.how.value === 'unsaved' && (
        <button type="button" class="button" onClick={() => keeping.save(store.document.peek())}>
          Try to save again
        </button>
      )}
      <DownloadSheet store={store} />
    </p>
  );
}

export function DownloadSheet({ store }: Props) {
  return (
    <button
      type="button"
      class="button"
      onClick={() => downloadText(writeCopy(store.document.peek()), 'jarwright-sheet.json', 'application/json')}
    >
      Download a copy
    </button>
  );
}
