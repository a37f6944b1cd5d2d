import type { Batch, Logged, SheetDocument } from '../batch/document/document';
import { isRow } from '../formula/engine/evaluate';
import type { Formulation } from '../formula/engine/formulate';
import { type RowId, rowOrder } from '../formula/recipe/order';
import { numericRows } from '../formula/rows/sheet';
import type { CartonRecord } from '../formula/time/carton-record';
import { labelOf } from '../formula/words/labels';
import { baseUnits } from '../measure/units';
import { grains } from '../reference/grains';
import { sources } from '../reference/sources';

/** Spreadsheet programs read a file as UTF-8 where it begins with this mark, and as who knows what where it does not. */
const utf8Mark = '\uFEFF';
const significant = 10;

export type Field = string | number | null;

/**
 * Batches as CSV (RFC 4180: commas, CRLF, quotes where needed), a line a batch and a column a row of the sheet. Amounts
 * are plain numbers in the unit of their heading, with a decimal point; what a batch has not stays empty. A text that a
 * spreadsheet program would take for a formula gets an apostrophe in front.
 */
export function writeBatchesCsv(batches: readonly Batch[], formulationOf: (batch: Batch) => Formulation): string {
  const headings = ['Name', ...rowOrder.map(headingOf)];
  const lines = batches.map((batch) => {
    const formulation = formulationOf(batch);
    return [batch.name, ...rowOrder.map((id) => fieldOf(formulation, id))];
  });
  return writeTable(headings, lines);
}

/** The log as CSV, a line an entry, times as on the wall of the kitchen; written as the batches are. */
export function writeLogCsv(log: readonly Logged[]): string {
  const headings = [
    ...['Batch', 'At', 'Found', 'After the grains went in (h)', 'Expected (h)', 'Temperature (°C)', 'Acidity (pH)'],
    ...['Note', 'Ready since', 'Given up', 'Left out', 'Source', 'Carton', 'Grains'],
    ...['Dose (g/L)', 'Sugar added (g/L)', 'Sugar at the start (g/L)'],
  ];
  const lines = log.map(({ name, at, found, hours, expected, temperature, acidity, note, was, ...rest }) => [
    ...[name, at.replace('T', ' '), found],
    ...[hours, expected, temperature, acidity].map(plainNumber),
    ...[note, rest.holds ?? '', yes(rest.gaveUp), yes(rest.leftOut)],
    ...(was === undefined
      ? ['', '', '', null, null, null]
      : [
          ...[sources[was.source].name, was.carton ?? '', grains[was.grains].name],
          ...[was.grainRate, was.sugarRate, was.startingSugar].map(plainNumber),
        ]),
  ]);
  return writeTable(headings, lines);
}

/** The register of cartons as CSV, a line a carton, with how each of them did; written as the batches are. */
export function writeCartonsCsv(
  cartons: NonNullable<SheetDocument['cartons']>,
  records: ReadonlyMap<string, CartonRecord>,
): string {
  const headings = [
    ...['Carton', 'Kind', 'Sugar in a serving', 'Serving', 'Note', 'Turned', 'Never turned', 'Not over yet'],
    ...['Likely works from', 'Likely works to', 'Soonest (days)', 'Latest (days)'],
  ];
  const names = new Set([...cartons.map(({ name }) => name), ...records.keys()]);
  const lines = [...names].map((name) => {
    const { kind = '', sugar = '', serving = '', note = '' } = cartons.find((one) => one.name === name) ?? {};
    const record = records.get(name);
    const { worked = 0, refused = 0, open = 0, share = null, days = null } = record ?? {};
    const numbers = [share?.low ?? null, share?.high ?? null, days?.least ?? null, days?.most ?? null].map(plainNumber);
    return [name, kind, sugar, serving, note, worked, refused, open, ...numbers];
  });
  return writeTable(headings, lines);
}

function yes(mark: true | undefined): Field {
  return mark === true ? 'yes' : '';
}

function headingOf(id: RowId): string {
  const unit = isRow(id) ? (numericRows[id].unit ?? baseUnits[numericRows[id].kind]) : '';
  return unit === '' ? labelOf(id) : `${labelOf(id)} (${unit})`;
}

function fieldOf({ choices, rows }: Formulation, id: RowId): Field {
  switch (id) {
    case 'vessel':
      return choices.jar.name;
    case 'source':
      return choices.source.name;
    case 'grains':
      return choices.grain.name;
    case 'sweetener':
      return choices.sweetener.map(({ entry, share }) => nameWithShare(entry.name, share)).join(' + ');
    default:
      return plainNumber(rows[id].value);
  }
}

function nameWithShare(name: string, share: number): string {
  return share === 1 ? name : `${name} ${Number((100 * share).toPrecision(3))} %`;
}

/** Without the last digits, in which doubles are noise. */
export function plainNumber(value: number | string | null): number | null {
  if (typeof value !== 'number' || !Number.isFinite(value)) return null;
  const short = Number(value.toPrecision(significant));
  // The largest numbers there are have nothing to be rounded up to.
  return Number.isFinite(short) ? short : value;
}

/**
 * What a spreadsheet program takes for a formula: these signs first, also full-width and behind blanks or what can’t be
 * seen, and a tab or line end first. A program that parts cells at semicolons or tabs, as many do where the comma is the
 * decimal mark, and takes no notice of our quotes, begins a cell behind each of them.
 */
const formulaFirst = /^([\s\p{C}"]*[=+\-@＝＋－＠]|[\t\r\n])/u;
const formulaBehind = /([;\t\r\n])(?=[\s\p{C}"]*[=+\-@＝＋－＠])/gu;

/** A text that would be worked out by a spreadsheet program gets an apostrophe; numbers are no texts and stay. */
function guard(field: Field): Field {
  if (typeof field !== 'string') return field;
  const plain = field.replaceAll('\0', '');
  const inside = plain.replaceAll(formulaBehind, "$1'");
  return formulaFirst.test(plain) ? `'${inside}` : inside;
}

/** A table as CSV with its headings; texts that a spreadsheet program would work out are guarded. */
export function writeTable(headings: readonly string[], lines: readonly (readonly Field[])[]): string {
  const all = [headings, ...lines].map((line) => line.map(guard).map(writeField).join(','));
  return `${utf8Mark}${all.map((line) => `${line}\r\n`).join('')}`;
}

/** A text as it was before it was guarded. */
export function unguard(text: string): string {
  const inside = text.replaceAll(/([;\t\r\n])'(?=[\s\p{C}"]*[=+\-@＝＋－＠])/gu, '$1');
  return inside.startsWith("'") && formulaFirst.test(inside.slice(1)) ? inside.slice(1) : inside;
}

/** In quotes where it has what parts fields or lines, or where a reader might trim it. */
function writeField(field: Field): string {
  const text = String(field ?? '');
  return /[",\r\n\uFEFF]|^ | $/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
