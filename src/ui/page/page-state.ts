import { type Signal, signal } from '@preact/signals';
import { isPartId, type PartId } from './part-ids';

/** What the page shows beside the sheet, or on a phone in its place. */
export interface PageState {
  /** The part that is open beside the sheet, or was last. */
  readonly part: Signal<PartId>;
  /** What a narrow window shows. */
  readonly shown: Signal<'batch' | 'part' | 'more'>;
  /** Where this browser keeps what belongs to the page and not to the sheet; null where it keeps nothing. */
  readonly storage: Storage | null;
  /** Set when the focus is to follow into the part, as what was pressed is left behind. */
  readonly wantsFocus: Signal<boolean>;
  /** Opens a part, beside the sheet or in its place. */
  open(part: PartId): void;
  /** Opens a part, and the focus goes there. */
  goTo(part: PartId): void;
}

const kept = 'jarwright.part';

/** The page as it opens: with the part that was looked at last. */
export function createPageState(storage: Storage | null): PageState {
  const before = read(storage);
  const part = signal<PartId>(before !== null && isPartId(before) ? before : 'steps');
  const shown = signal<'batch' | 'part' | 'more'>('batch');
  const wantsFocus = signal(false);
  const open = (id: PartId): void => {
    part.value = id;
    shown.value = 'part';
    keep(storage, id);
    globalThis.scrollTo?.({ top: 0 });
  };
  return {
    part,
    shown,
    storage,
    wantsFocus,
    open,
    goTo(id) {
      open(id);
      wantsFocus.value = true;
    },
  };
}

function read(storage: Storage | null): string | null {
  try {
    return storage?.getItem(kept) ?? null;
  } catch {
    return null;
  }
}

/** Where nothing can be kept, the page opens with the steps next time. */
function keep(storage: Storage | null, id: PartId): void {
  try {
    storage?.setItem(kept, id);
  } catch {}
}
