import type { SheetDocument } from './document';
import { type SheetEdits, sheetEdits } from './sheet-edits';
import { createSheetStore, type SheetStore } from './sheet-store';

/** An open sheet with every edit as an action. */
export type Store = SheetStore & SheetEdits;

/** Opens a sheet with all its edits. */
export function createStore(initial: SheetDocument): Store {
  return withEdits(createSheetStore(initial));
}

/** The very same sheet with its edits there; those that waited for them are carried out the first time. */
export function withEdits(sheet: SheetStore): Store {
  return hasEdits(sheet) ? sheet : Object.assign(sheet, sheet.startEdits(sheetEdits));
}

function hasEdits(sheet: SheetStore): sheet is Store {
  return 'typeCell' in sheet;
}
