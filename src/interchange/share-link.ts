import { correctionsOf } from '../batch/document/batch-corrections';
import type { Batch, Cell, GivenCell, SheetDocument } from '../batch/document/document';
import { ownJarOf } from '../formula/recipe/coefficients';
import { isMeasuredRow, type MeasuredRowId, type NumericRowId } from '../formula/recipe/order';
import { numericRows } from '../formula/rows/sheet';
import type { Kind } from '../measure/units';
import { linkMark } from './link-mark';
import { deflate, toBase64Url } from './squeeze';

/** The version of the links that this page writes. */
export const linkVersion = 1;
/** The longest fragment that is written or read, in characters; mail and chat programs cut longer addresses. */
export const longestFragment = 8192;
/** The most that a link may hold once unpacked, in bytes. */
export const mostUnpacked = 100_000;

/** What a new batch of the first version of links had; only what differs from it travels. Right for good. */
export const leftOut = { vessel: 'quartWide', source: 'almond', sweetener: 'caneWhite', grains: 'water' } as const;

type SentCell<R extends string> =
  | readonly [row: R, text: string, amount: number | null]
  | readonly [row: R, text: string, amount: number | null, kind: Kind | 0]
  | readonly [row: R, text: string, amount: number | null, kind: Kind | 0, use: 1];

/** A batch as it travels. One letter a part, since each one makes the picture of the link larger. */
export interface SentBatch {
  readonly n: string;
  readonly v?: Batch['vessel'];
  readonly s?: Batch['source'];
  readonly w?: readonly (readonly [id: Batch['sweetener'][number]['id'], share: number])[];
  readonly g?: Batch['grains'];
  /** Typed, in the order of typing. */
  readonly t?: readonly SentCell<NumericRowId>[];
  readonly m?: readonly SentCell<MeasuredRowId>[];
  /** What a recipe has besides. */
  readonly e?: readonly string[];
  /** Fruit in each bottle: its name, the amount as typed, grams, and the text of the sugar it was counted as. */
  readonly f?: readonly [name: string, amount: string, grams: number, sugar: string];
  readonly h?: readonly [what: 'source' | 'milk', temperature: number, minutes: number];
  readonly y?: readonly (readonly [key: string, value: number, how: SheetDocument['yours'][string]['how']])[];
}

/**
 * What is given of a batch: its name, choices, typed and measured cells, heat step, and the figures of the cook’s own
 * that it is worked out with. Not what is on hand, its dates and whether a carton was opened: those are of one kitchen
 * and one day.
 */
function sendBatch(document: SheetDocument, batch: Batch): SentBatch {
  const { name, vessel, source, sweetener, grains, given, measured, heat, fruit, extras } = batch;
  const [only] = sweetener;
  const isUsual = sweetener.length === 1 && only?.id === leftOut.sweetener && only.share === 1;
  const taken = Object.entries(measured).flatMap(([row, cell]) => (isMeasuredRow(row) ? [sendCell(row, cell)] : []));
  const figures = Object.entries(correctionsOf(document, batch)).map(
    ([key, { value, how }]) => [key.replace(ownJarOf(batch.id), 'own'), value, how] as const,
  );
  return {
    n: name,
    ...(vessel === leftOut.vessel ? {} : { v: vessel }),
    ...(source === leftOut.source ? {} : { s: source }),
    ...(isUsual ? {} : { w: sweetener.map(({ id, share }) => [id, share] as const) }),
    ...(grains === leftOut.grains ? {} : { g: grains }),
    ...(given.length > 0 ? { t: given.map((cell) => sendCell(cell.row, cell, cell.use)) } : {}),
    ...(taken.length > 0 ? { m: taken } : {}),
    ...(heat === null ? {} : { h: [heat.what, heat.temperature, heat.minutes] as const }),
    ...(extras === undefined || extras.length === 0 ? {} : { e: extras }),
    ...(fruit === undefined ? {} : { f: [fruit.name, fruit.amount, fruit.grams, fruit.sugar] as const }),
    ...(figures.length > 0 ? { y: figures } : {}),
  };
}

/** The amount goes with the text, since the same text may read otherwise by the cups of another kitchen. */
function sendCell<R extends NumericRowId>(row: R, { text, amount, kind }: Cell, use?: GivenCell['use']): SentCell<R> {
  const other = kind === numericRows[row].kind ? 0 : kind;
  if (use !== undefined) return [row, text, amount, other, 1];
  return other === 0 ? [row, text, amount] : [row, text, amount, other];
}

/** A batch as the fragment of an address, packed the shorter way; null where it is too long for one. */
export async function writeFragment(document: SheetDocument, batch: Batch): Promise<string | null> {
  const plain = plainFragment(document, batch);
  const packed = await deflate(new TextEncoder().encode(JSON.stringify(sendBatch(document, batch))));
  const squeezed = packed === null ? plain : `${linkMark}${linkVersion}d${toBase64Url(packed)}`;
  const shorter = squeezed.length < plain.length ? squeezed : plain;
  return shorter.length > longestFragment ? null : shorter;
}

/** The same without packing, at once. It may be longer than a link may be. */
export function plainFragment(document: SheetDocument, batch: Batch): string {
  const text = new TextEncoder().encode(JSON.stringify(sendBatch(document, batch)));
  return `${linkMark}${linkVersion}p${toBase64Url(text)}`;
}

/** The address of this page with a batch in it. */
export function linkTo(pageAddress: string, fragment: string): string {
  return `${pageAddress.split('#', 1).join('')}${fragment}`;
}
