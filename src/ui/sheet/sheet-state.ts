import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { RowId, SectionId } from '../../formula/order';

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

/** The name of a cell, for what waits to be put into it. */
export function placeOf(batch: string, row: RowId): string {
  return `${batch} ${row}`;
}

/** What belongs to looking at the sheet, not to the document: the spot, the range, the open cell, what is folded. */
export interface SheetState {
  readonly spot: ReadonlySignal<Spot>;
  /** The other corner of a selected range; the spot itself where one cell is selected. */
  readonly anchor: ReadonlySignal<Spot>;
  readonly editing: Signal<Editing | null>;
  readonly folded: ReadonlySignal<ReadonlySet<SectionId>>;
  /** Whether only rows in which the batches differ are shown. */
  readonly onlyDifferent: Signal<boolean>;
  /** The batch the others are compared with. */
  readonly comparedWith: Signal<string | null>;
  /** What the last copy or paste has to say. */
  readonly notice: Signal<string | null>;
  /** Whether the cook has gone anywhere yet: until then no working opens under a row. */
  readonly visited: Signal<boolean>;
  /** Set when the spot moved by key, so that focus follows once it is drawn. */
  readonly wantsFocus: Signal<boolean>;
  /** Moves the spot by key: focus follows. */
  goTo(spot: Spot): void;
  /** Moves the spot to where the cook has pointed or focus has come. */
  select(spot: Spot): void;
  /** Moves the spot and leaves the other corner of the range where it is. */
  extendTo(spot: Spot, focus: boolean): void;
  fold(id: SectionId): void;
}

export function createSheetState(first: Spot): SheetState {
  const spot = signal<Spot>(first);
  const anchor = signal<Spot | null>(null);
  const folded = signal<ReadonlySet<SectionId>>(new Set());
  const visited = signal(false);
  const wantsFocus = signal(false);
  const isHere = (to: Spot): boolean => to.line === spot.value.line && to.batch === spot.value.batch;
  return {
    spot,
    anchor: computed(() => anchor.value ?? spot.value),
    editing: signal<Editing | null>(null),
    folded,
    onlyDifferent: signal(false),
    comparedWith: signal<string | null>(null),
    notice: signal<string | null>(null),
    wantsFocus,
    visited,
    goTo: (to) => {
      visited.value = true;
      anchor.value = null;
      spot.value = to;
      wantsFocus.value = true;
    },
    select: (to) => {
      visited.value = true;
      if (isHere(to)) return;
      anchor.value = null;
      spot.value = to;
    },
    extendTo: (to, focus) => {
      visited.value = true;
      if (isHere(to)) return;
      anchor.value = anchor.value ?? spot.value;
      spot.value = to;
      wantsFocus.value = focus;
    },
    fold: (id) => {
      const next = new Set(folded.value);
      if (!next.delete(id)) next.add(id);
      folded.value = next;
    },
  };
}
