import { type Signal, signal } from '@preact/signals';
import { isPartId, type PartId } from './part-ids';

/** One of the two places for a part beside the sheet; the second is there only where there is room for it. */
export type Side = 'first' | 'second';

/** What the page shows beside the sheet, or on a phone in its place. */
export interface PageState {
  /** The part that is open beside the sheet, or was last, and the one beside that; never the same one. */
  readonly parts: Readonly<Record<Side, Signal<PartId>>>;
  /** Whether there is room for the second. */
  readonly hasRoom: Signal<boolean>;
  /** What a narrow window shows. */
  readonly shown: Signal<'batch' | 'part' | 'more'>;
  /** Where this browser keeps what belongs to the page and not to the sheet; null where it keeps nothing. */
  readonly storage: Storage | null;
  /** The part that the focus is to follow into, as what was pressed is left behind. */
  readonly wantsFocus: Signal<PartId | null>;
  /** Opens a part, beside the sheet or in its place, and leaves it where it is open already. */
  open(part: PartId): void;
  /** Opens a part on one side; where it is on the other, the two change places. */
  openOn(side: Side, part: PartId): void;
  /** Opens a part, and the focus goes there. */
  goTo(part: PartId): void;
}

const kept = { first: 'jarwright.part', second: 'jarwright.second-part' } as const satisfies Record<Side, string>;

/** The page as it opens: with the parts that were looked at last. */
export function createPageState(storage: Storage | null): PageState {
  const first = read(storage, 'first') ?? 'steps';
  const second = read(storage, 'second') ?? 'time';
  const parts = { first: signal<PartId>(first), second: signal<PartId>(second === first ? unlike(first) : second) };
  const hasRoom = signal(false);
  const shown = signal<'batch' | 'part' | 'more'>('batch');
  const wantsFocus = signal<PartId | null>(null);
  const openOn = (side: Side, id: PartId): void => {
    const other = side === 'first' ? 'second' : 'first';
    if (parts[other].peek() === id) put(other, parts[side].peek());
    put(side, id);
    shown.value = 'part';
    globalThis.scrollTo?.({ top: 0 });
  };
  const put = (side: Side, id: PartId): void => {
    parts[side].value = id;
    keep(storage, side, id);
  };
  const open = (id: PartId): void => openOn(hasRoom.peek() && parts.second.peek() === id ? 'second' : 'first', id);
  return {
    parts,
    hasRoom,
    shown,
    storage,
    wantsFocus,
    open,
    openOn,
    goTo(id) {
      open(id);
      wantsFocus.value = id;
    },
  };
}

function unlike(part: PartId): PartId {
  return part === 'steps' ? 'time' : 'steps';
}

function read(storage: Storage | null, side: Side): PartId | null {
  try {
    const id = storage?.getItem(kept[side]) ?? null;
    return id !== null && isPartId(id) ? id : null;
  } catch {
    return null;
  }
}

/** Where nothing can be kept, the page opens as it did at first. */
function keep(storage: Storage | null, side: Side, id: PartId): void {
  try {
    storage?.setItem(kept[side], id);
  } catch {}
}
