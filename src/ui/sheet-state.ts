import { type Signal, signal } from '@preact/signals';
import type { RowId, SectionId } from '../formula/order';

/** Where the sheet is being looked at: a row or the name of a section, in a batch. */
export interface Spot {
  readonly line: RowId | `section:${SectionId}`;
  readonly batch: string;
}

/** An open cell: what stands in it now, and whether the cook has typed anything since it opened. */
export interface Editing {
  readonly row: RowId;
  readonly batch: string;
  readonly text: string;
  readonly touched: boolean;
}

/** What belongs to looking at the sheet, not to the document: the spot, the open cell, folded sections. */
export interface SheetState {
  readonly spot: Signal<Spot>;
  readonly editing: Signal<Editing | null>;
  readonly folded: Signal<ReadonlySet<SectionId>>;
  /** Whether the cook has gone anywhere yet: until then no working opens under a row. */
  readonly visited: Signal<boolean>;
  /** Set when the spot moved by key, so that focus follows once it is drawn. */
  readonly wantsFocus: Signal<boolean>;
  goTo(spot: Spot): void;
  select(spot: Spot): void;
  fold(id: SectionId): void;
}

export function createSheetState(first: Spot): SheetState {
  const spot = signal<Spot>(first);
  const editing = signal<Editing | null>(null);
  const folded = signal<ReadonlySet<SectionId>>(new Set());
  const wantsFocus = signal(false);
  const visited = signal(false);
  return {
    spot,
    editing,
    folded,
    wantsFocus,
    visited,
    goTo: (to) => {
      visited.value = true;
      spot.value = to;
      wantsFocus.value = true;
    },
    select: (to) => {
      visited.value = true;
      if (to.line !== spot.value.line || to.batch !== spot.value.batch) spot.value = to;
    },
    fold: (id) => {
      const next = new Set(folded.value);
      if (!next.delete(id)) next.add(id);
      folded.value = next;
    },
  };
}
