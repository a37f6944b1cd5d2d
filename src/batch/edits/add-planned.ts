import type { NumericRowId } from '../../formula/recipe/order';
import type { SweetenerPart } from '../../formula/recipe/recipe';
import type { CultureId } from '../../reference/grains';
import type { JarId } from '../../reference/jars';
import type { SourceId } from '../../reference/sources';
import { changeBatch } from '../document/change-batch';
import type { SheetDocument } from '../document/document';
import { longestText, mostExtras } from '../document/document-limits';
import { cutText } from '../document/plain-text';
import { addBatch, renameBatch } from './batch-list';
import { blendSweeteners, choose, typeCell } from './edits';

/** What a new batch is given: its name, choices, and texts typed into its cells. */
export interface PlannedBatch {
  readonly name: string;
  readonly choices: {
    readonly vessel?: JarId;
    readonly source?: SourceId;
    readonly sweetener?: readonly SweetenerPart[];
    readonly grains?: CultureId;
  };
  /** What flavours the glass, and whatever else the sheet has no row for, as written. */
  readonly extras?: readonly string[];
  readonly cells: readonly { readonly row: NumericRowId; readonly text: string }[];
}

/** The document with a planned batch added after another; the same document where it can't take one more. */
export function addPlanned(document: SheetDocument, planned: PlannedBatch, after?: string): SheetDocument {
  const old = new Set(document.batches.map(({ id }) => id));
  const added = addBatch(document, after);
  const id = added.batches.find((batch) => !old.has(batch.id))?.id;
  if (id === undefined) return document;
  const { vessel, source, sweetener, grains } = planned.choices;
  let next = renameBatch(added, id, planned.name);
  if (vessel !== undefined) next = choose(next, id, 'vessel', vessel);
  if (source !== undefined) next = choose(next, id, 'source', source);
  if (grains !== undefined) next = choose(next, id, 'grains', grains);
  if (sweetener !== undefined) next = blendSweeteners(next, id, sweetener);
  const extras = (planned.extras ?? []).slice(0, mostExtras).map((extra) => cutText(extra, longestText));
  if (extras.length > 0) next = changeBatch(next, id, (batch) => ({ ...batch, extras }));
  return planned.cells.reduce((typed, { row, text }) => typeCell(typed, id, row, text), next);
}
