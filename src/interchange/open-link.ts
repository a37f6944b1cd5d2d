import * as z from 'zod/mini';
import { findDataFault } from '../batch/document/data-fault';
import { demo } from '../batch/document/demo';
import type { Batch, SheetDocument } from '../batch/document/document';
import { currentVersion } from '../batch/document/migrations';
import { readDocument } from '../batch/document/read-document';
import { isRow } from '../formula/engine/evaluate';
import { numericRows } from '../formula/rows/sheet';
import { endOfLinkMark, linkMark } from './link-mark';
import { withTextsRead } from './read-again';
import { leftOut, linkVersion, longestFragment, mostUnpacked } from './share-link';
import { canInflate, fromBase64Url, inflate } from './squeeze';

/** A batch that came by a link, checked like a saved one; `yours` are the sender’s figures, its own jar’s under `own.`. */
export interface LinkedBatch {
  readonly batch: Batch;
  readonly yours: SheetDocument['yours'];
}

export type LinkRead = ({ readonly ok: true } & LinkedBatch) | { readonly ok: false; readonly message: string };

const mostParts = 5000;
const sentCell = z.union([
  z.tuple([z.string(), z.string(), z.nullable(z.number())]),
  z.tuple([z.string(), z.string(), z.nullable(z.number()), z.union([z.string(), z.literal(0)])]),
  z.tuple([z.string(), z.string(), z.nullable(z.number()), z.union([z.string(), z.literal(0)]), z.literal(1)]),
]);
const sentCells = z.optional(z.array(sentCell).check(z.maxLength(mostParts)));
const sent = z.object({
  n: z.string(),
  v: z.optional(z.string()),
  s: z.optional(z.string()),
  w: z.optional(z.array(z.tuple([z.string(), z.number()])).check(z.maxLength(mostParts))),
  g: z.optional(z.string()),
  t: sentCells,
  m: sentCells,
  h: z.optional(z.tuple([z.string(), z.number(), z.number()])),
  e: z.optional(z.array(z.string()).check(z.maxLength(mostParts))),
  f: z.optional(z.tuple([z.string(), z.string(), z.number(), z.string()])),
  y: z.optional(z.array(z.tuple([z.string(), z.number(), z.string()])).check(z.maxLength(mostParts))),
});

const damaged = 'This link is damaged or not whole. Ask for it again, and open all of it.';
const tooLong = `This link is longer than ${longestFragment} characters, which no link from here is. Nothing of it was read.`;
const tooMuch = 'This link holds more than a batch can. Nothing of it was read.';

/**
 * The batch in an address, or in the text of one with other words around it. Any text can be given; nothing throws and
 * nothing is changed. At most 8192 characters are read, and unpacked at most 100 kB.
 */
export async function openLink(text: string): Promise<LinkRead> {
  const from = endOfLinkMark(text);
  if (from < 0) return refuse('There is no batch in this link.');
  const [, version = '', how = '', packed = ''] =
    /^(\d{1,4})([a-z])([\w-]*)/.exec(text.slice(from, from + longestFragment + 1)) ?? [];
  if (version === '') return refuse(damaged);
  if (Number(version) > linkVersion)
    return refuse('This link was made by a newer version of this page. Reload the page to get that version.');
  if (linkMark.length + version.length + how.length + packed.length > longestFragment) return refuse(tooLong);
  if (Number(version) !== linkVersion) return refuse(damaged);
  const bytes = fromBase64Url(packed);
  if (bytes === null) return refuse(damaged);
  if (how === 'p') return readSent(bytes);
  if (how !== 'd') return refuse(damaged);
  if (!canInflate()) return refuse('This browser is too old to unpack this link. Open it in a newer one.');
  const unpacked = await inflate(bytes, mostUnpacked);
  return unpacked === null
    ? refuse(`${damaged} A link that unpacks to more than 100 kB is not read.`)
    : readSent(unpacked);
}

function readSent(bytes: Uint8Array): LinkRead {
  let data: unknown;
  try {
    data = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
  } catch {
    return refuse(damaged);
  }
  if (findDataFault(data) !== null) return refuse(tooMuch);
  const found = z.safeParse(sent, data);
  if (!found.success) return refuse(damaged);
  const read = readDocument(documentAround(found.data));
  const [batch] = read.ok ? read.document.batches : [];
  if (!read.ok || batch === undefined) return refuse(tooMuch);
  return { ok: true, batch: withTextsRead(batch), yours: read.document.yours };
}

/** A sheet with this one batch in it, so that it is checked as every saved batch is. */
function documentAround({ n, v, s, w, g, t = [], m = [], h, e, f, y = [] }: z.infer<typeof sent>): unknown {
  const batch = {
    id: 'b1',
    name: n,
    vessel: v ?? leftOut.vessel,
    source: s ?? leftOut.source,
    sweetener: w?.map(([id, share]) => ({ id, share })) ?? [{ id: leftOut.sweetener, share: 1 }],
    grains: g ?? leftOut.grains,
    given: t.map((cell) => ({ ...cellOf(cell), row: cell[0] })),
    measured: Object.fromEntries(m.map((cell) => [cell[0], cellOf(cell)])),
    ...(e === undefined ? {} : { extras: e }),
    ...(f === undefined ? {} : { fruit: { name: f[0], amount: f[1], grams: f[2], sugar: f[3] } }),
    heat: h === undefined ? null : { what: h[0], temperature: h[1], minutes: h[2] },
  };
  const yours = Object.fromEntries(y.map(([key, value, how]) => [key, { value, how }]));
  return { version: currentVersion, batches: [batch], yours, settings: demo.settings, log: [] };
}

function cellOf([row, text, amount, kind = 0, use]: z.infer<typeof sentCell>) {
  const own = isRow(row) ? numericRows[row].kind : '';
  return { text, amount, kind: kind === 0 ? own : kind, ...(use === undefined ? {} : { use: 'onHand' as const }) };
}

function refuse(message: string): LinkRead {
  return { ok: false, message };
}
