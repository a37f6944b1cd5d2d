import type { ReadonlySignal } from '@preact/signals';
import type { SheetDocument } from '../document/document';

/** A state of the sheet as it was saved. */
export interface KeptState {
  /** Counts the saves of this sheet, from 1; never used twice. */
  readonly revision: number;
  /** When, in milliseconds since 1970. */
  readonly at: number;
  readonly text: string;
  /** What the text holds; null where this version can't open it. */
  readonly document: SheetDocument | null;
}

/** What could not be opened or saved in its place, kept as it was found. */
export interface PutAside {
  /** Its place among those put aside; never used twice. */
  readonly key: number;
  readonly at: number;
  /** Why, in plain words. */
  readonly why: string;
  readonly text: string;
  readonly document: SheetDocument | null;
}

export interface Kept {
  /** Newest first. */
  readonly states: readonly KeptState[];
  readonly aside: readonly PutAside[];
}

/** How the sheet that is open here is kept in this browser. */
export interface Keeping {
  /** Whether all that was committed is safely kept. */
  readonly how: ReadonlySignal<'saved' | 'saving' | 'unsaved'>;
  /** Whether this window may edit: not while another does, nor what a newer version has saved. */
  readonly mayEdit: ReadonlySignal<boolean>;
  /** Whether this window only reads because another edits. */
  readonly editedElsewhere: ReadonlySignal<boolean>;
  /** What the cook has to be told, in plain words; null where all is well. */
  readonly message: ReadonlySignal<string | null>;
  /** Keeps the document as the newest state; never throws. */
  readonly save: (document: SheetDocument) => void;
  /** Keeps a document beside the sheet, where it can't be saved as its newest state. */
  readonly putAside: (document: SheetDocument) => void;
  /** Hands over what another window has saved, each time it has. */
  readonly follow: (show: (document: SheetDocument) => void) => void;
  /** Makes this the window that edits, once the other has saved. */
  readonly editHere: () => Promise<void>;
  readonly list: () => Promise<Kept>;
  /** Throws away for good what was put aside at this place. */
  readonly removeAside: (key: number) => Promise<void>;
}

/** The sheet as it was opened, and what keeps it. */
export interface KeptSheet {
  /** The sheet as it was left, or the demo. */
  readonly document: SheetDocument;
  /** Whether no sheet was kept here yet. */
  readonly isFirst: boolean;
  readonly keeping: Keeping;
}
