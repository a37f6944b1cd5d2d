/** A place in the grid: which row from the top, which column from the left; column 0 holds the labels. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

export interface GridSize {
  readonly rows: number;
  readonly columns: number;
  /** Rows that one press of a Page key moves by. */
  readonly page: number;
}

export interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
}

/**
 * Where a key moves to from a place, by the ARIA grid pattern; null for a key that moves nowhere. At an edge the
 * place stays.
 */
export function moveByKey(press: KeyPress, from: Place, size: GridSize): Place | null {
  const command = press.ctrlKey || press.metaKey;
  const last = { row: size.rows - 1, column: size.columns - 1 };
  switch (press.key) {
    case 'ArrowUp':
      return clamp({ row: from.row - 1, column: from.column }, last);
    case 'ArrowDown':
      return clamp({ row: from.row + 1, column: from.column }, last);
    case 'ArrowLeft':
      return clamp({ row: from.row, column: from.column - 1 }, last);
    case 'ArrowRight':
      return clamp({ row: from.row, column: from.column + 1 }, last);
    case 'Home':
      return command ? { row: 0, column: 0 } : { row: from.row, column: 0 };
    case 'End':
      return command ? last : { row: from.row, column: last.column };
    case 'PageUp':
      return clamp({ row: from.row - size.page, column: from.column }, last);
    case 'PageDown':
      return clamp({ row: from.row + size.page, column: from.column }, last);
    default:
      return null;
  }
}

/** Where an arrow moves to along a list that goes round; null for any other key. */
export function moveAlong<T>(list: readonly T[], from: T, key: string): T | null {
  const step = key === 'ArrowRight' ? 1 : key === 'ArrowLeft' ? -1 : 0;
  return step === 0 ? null : (list.at((list.indexOf(from) + step) % list.length) ?? null);
}

function clamp(place: Place, last: Place): Place {
  return {
    row: Math.min(Math.max(place.row, 0), last.row),
    column: Math.min(Math.max(place.column, 0), last.column),
  };
}

/** Whether a key press types a character, so that typing in a cell starts a new entry with it. */
export function typesCharacter(press: KeyPress & { readonly altKey: boolean }): boolean {
  return press.key.length === 1 && !press.ctrlKey && !press.metaKey && !press.altKey && press.key !== ' ';
}
