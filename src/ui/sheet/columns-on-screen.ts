/** The frame that the batches scroll in, in px. */
export interface Frame {
  readonly scrolled: number;
  readonly width: number;
  /** The column of labels, which stays at the left. */
  readonly labels: number;
  readonly column: number;
}

/** Which batches are drawn, `from` up to but not with `to`, and the room left for those that are not, in px. */
export interface Drawn {
  readonly from: number;
  readonly to: number;
  readonly before: number;
  readonly after: number;
}

const spare = 1;

/** Only what is on screen is drawn, and a column to either side; all of it while the frame has not been measured. */
export function columnsOnScreen(frame: Frame | null, count: number, atOnce: number): Drawn {
  if (frame === null || frame.column <= 0) {
    const to = Math.min(count, atOnce);
    return { from: 0, to, before: 0, after: 0 };
  }
  const first = Math.floor(frame.scrolled / frame.column) - spare;
  const last = Math.ceil((frame.scrolled + frame.width - frame.labels) / frame.column) + spare;
  const from = Math.max(0, Math.min(first, count - 1));
  const to = Math.min(count, Math.max(last, from + 1));
  return { from, to, before: from * frame.column, after: (count - to) * frame.column };
}

/** How far to scroll so that a column is wholly in the frame; as it is where it already is. */
export function scrollToColumn(frame: Frame, column: number): number {
  const left = column * frame.column;
  const room = frame.width - frame.labels;
  if (left < frame.scrolled) return left;
  return Math.max(frame.scrolled, left + frame.column - room);
}

/** The place of a drawn batch's first cell among all columns, counted from 1 and with the labels as the first. */
export function columnIndex(drawn: Drawn, at: number, cell: 'how' | 'much' = 'how'): number {
  return 2 * (drawn.from + at) + (cell === 'how' ? 2 : 3);
}

/** The place of a batch among those that are drawn, from the left, by the column of its first cell among all. */
export function placeAmongDrawn({ from }: Drawn, column: number): number {
  return column / 2 - 1 - from;
}

/** All columns of the grid: the labels, and two cells of every batch, drawn or not. */
export function columnCount(batches: number): number {
  return 2 * batches + 1;
}
