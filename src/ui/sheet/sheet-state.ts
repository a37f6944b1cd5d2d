import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { RowId } from '../../formula/recipe/order';
import { type LineId, lineOf } from './lines';

/** A column of the sheet: the labels, or one of the two of a batch. */
export type Column = 'label' | 'how' | 'much';

/** Where the sheet is being looked at: a cell, by its row and batch, or the label of a line. */
export interface Spot {
  readonly at: RowId | `line:${LineId}`;
  readonly batch: string;
  /** In which column the keys came to a cell that lies over several. */
  readonly column?: Column;
}

/** An open cell: what stands in it now, and whether the cook has typed anything since it opened. */
export interface Editing {
  readonly row: RowId;
  readonly batch: string;
  readonly text: string;
  readonly touched: boolean;
}

/** What belongs to looking at the sheet, not to the document: the spot, the range, the open cell, what is unfolded. */
export interface SheetState {
  readonly spot: ReadonlySignal<Spot>;
  /** The other corner of a selected range; the spot itself where one cell is selected. */
  readonly anchor: ReadonlySignal<Spot>;
  readonly editing: Signal<Editing | null>;
  readonly unfolded: ReadonlySignal<ReadonlySet<LineId>>;
  /** Whether every line is unfolded. */
  readonly allFigures: Signal<boolean>;
  /** Whether only rows in which the batches differ are shown. */
  readonly onlyDifferent: Signal<boolean>;
  /** The batch the others are compared with. */
  readonly comparedWith: Signal<string | null>;
  /** What the last deed came to, in one sentence, spoken once. */
  readonly notice: Signal<string | null>;
  /** The cell whose working is open over the part beside the sheet; null where none is. */
  readonly working: Signal<Spot | null>;
  /** Set when the spot moved by key, so that focus follows once it is drawn. */
  readonly wantsFocus: Signal<boolean>;
  /** Moves the spot by key or by a press elsewhere: focus follows. */
  goTo(spot: Spot): void;
  /** Moves the spot to where the cook has pointed or focus has come. */
  select(spot: Spot): void;
  /** Moves the spot and leaves the other corner of the range where it is. */
  extendTo(spot: Spot, focus: boolean): void;
  unfold(id: LineId, open?: boolean): void;
  /** Goes to the head of a batch that was just made, and says what was made. */
  landOn(batch: string, sentence: string): void;
}

export function createSheetState(first: Spot): SheetState {
  const spot = signal<Spot>(first);
  const anchor = signal<Spot | null>(null);
  const unfolded = signal<ReadonlySet<LineId>>(new Set());
  const wantsFocus = signal(false);
  const notice = signal<string | null>(null);
  const working = signal<Spot | null>(null);
  const isHere = (to: Spot): boolean => to.at === spot.value.at && to.batch === spot.value.batch;
  const move = (to: Spot): void => {
    spot.value = to;
    // The working follows the cell that is looked at for as long as it is open.
    if (working.value !== null) working.value = to;
  };
  return {
    spot,
    anchor: computed(() => anchor.value ?? spot.value),
    editing: signal<Editing | null>(null),
    unfolded,
    allFigures: signal(false),
    onlyDifferent: signal(false),
    comparedWith: signal<string | null>(null),
    notice,
    working,
    wantsFocus,
    goTo(to) {
      if (!to.at.startsWith('line:')) showRow(to.at);
      anchor.value = null;
      move(to);
      wantsFocus.value = true;
    },
    select(to) {
      if (isHere(to)) return;
      wantsFocus.value = false;
      anchor.value = null;
      move(to);
    },
    extendTo(to, focus) {
      if (isHere(to)) return;
      anchor.value = anchor.value ?? spot.value;
      move(to);
      wantsFocus.value = focus;
    },
    unfold(id, open) {
      const next = new Set(unfolded.value);
      if (open ?? !next.has(id)) next.add(id);
      else next.delete(id);
      unfolded.value = next;
    },
    landOn(batch, sentence) {
      anchor.value = null;
      move({ at: 'vessel', batch });
      wantsFocus.value = true;
      notice.value = sentence;
    },
  };

  function showRow(at: Spot['at']): void {
    if (!isRowSpot(at)) return;
    const line = lineOf(at);
    if (line.details.some((row) => row === at) && !unfolded.value.has(line.id))
      unfolded.value = new Set([...unfolded.value, line.id]);
  }
}

/** Whether a spot is a cell, not the label of a line. */
export function isRowSpot(at: Spot['at']): at is RowId {
  return !at.startsWith('line:');
}
