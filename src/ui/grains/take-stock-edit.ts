import type { SheetDocument } from '../../batch/document/document';

/** Makes an edit of the grains one step, and says what came of it. */
export type TakeStockEdit = (next: SheetDocument, step: string, words: string) => void;
