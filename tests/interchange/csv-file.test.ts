import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { demo, startBatch } from '../../src/batch/document/demo';
import { type Batch, type Logged, recipeOf, type SheetDocument } from '../../src/batch/document/document';
import { blendSweeteners, typeCell } from '../../src/batch/edits/edits';
import { isRow } from '../../src/formula/engine/evaluate';
import { formulate } from '../../src/formula/engine/formulate';
import { rowOrder } from '../../src/formula/recipe/order';
import { numericRows } from '../../src/formula/rows/sheet';
import { labelOf } from '../../src/formula/words/labels';
import { writeBatchesCsv, writeCartonsCsv, writeLogCsv } from '../../src/interchange/csv-file';
import { baseUnits } from '../../src/measure/units';

const nasty = [
  '=HYPERLINK("http://x.example";"win")',
  '+1+1',
  '-1+1',
  '@SUM(A1)',
  '\t=1+1',
  '\r=1+1',
  '\n=1+1',
  ' =1+1',
  '＝1+1',
  'plain, with "quotes"',
  'two\r\nlines',
  'Käse; ½ 乳 \u202Eodd',
  'x\0y',
  'one;=1+1',
  'one; -2\t@SUM(A1)\n=2',
  '\u200B=1+1',
  '\uFEFF=1+1',
  'one;"=1+1"',
  '; plain',
];

function sheet(names: readonly string[]): SheetDocument {
  const batches = names.map((name, at) => startBatch(`b${at + 1}`, name));
  let document: SheetDocument = { ...demo, batches };
  document = typeCell(document, 'b2', 'sourceMass', '200 g');
  return blendSweeteners(document, 'b2', [
    { id: 'caneWhite', share: 0.25 },
    { id: 'honey', share: 0.75 },
  ]);
}

const document = sheet(nasty);
const formulationOf = (batch: Batch) => formulate(recipeOf(document, batch));
const batchesCsv = writeBatchesCsv(document.batches, formulationOf);

const log: readonly Logged[] = [
  ...nasty.map((note, at): Logged => {
    return {
      ...{ batch: 'b1', name: note, at: `2026-11-28T08:${10 + at}`, found: 'looked' as const, note },
      ...{ hours: 12.5, expected: null, temperature: -4, acidity: 4.25 },
    };
  }),
];
const logCsv = writeLogCsv(log);

/** By hand: each place where some program would begin a cell with a formula. */
const byHand = new Map([
  ['=HYPERLINK("http://x.example";"win")', '\'=HYPERLINK("http://x.example";"win")'],
  ['+1+1', "'+1+1"],
  ['-1+1', "'-1+1"],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['\t=1+1', "'\t'=1+1"],
  ['\r=1+1', "'\r'=1+1"],
  ['\n=1+1', "'\n'=1+1"],
  [' =1+1', "' =1+1"],
  ['＝1+1', "'＝1+1"],
  ['x\0y', 'xy'],
  ['one;=1+1', "one;'=1+1"],
  ['one; -2\t@SUM(A1)\n=2', "one;' -2\t'@SUM(A1)\n'=2"],
  ['one;"=1+1"', 'one;\'"=1+1"'],
  ['\u200B=1+1', "'\u200B=1+1"],
  ['\uFEFF=1+1', "'\uFEFF=1+1"],
]);

/** What a cell ought to hold once read back. */
function guarded(text: string): string {
  return byHand.get(text) ?? text;
}

const python = ['python3', 'python'].find((name) => spawnSync(name, ['--version']).status === 0);
const office = ['soffice', 'localc'].find((name) => spawnSync(name, ['--version']).status === 0);

/** Python's own reader of CSV, in strict mode, gives the lines back as JSON. */
function readByPython(csv: string): string[][] {
  const program =
    'import csv,io,json,sys\n' +
    "text=sys.stdin.buffer.read().decode('utf-8-sig')\n" +
    "print(json.dumps(list(csv.reader(io.StringIO(text,newline=''),strict=True))))";
  const run = spawnSync(python ?? '', ['-c', program], { input: csv, encoding: 'utf8' });
  if (run.status !== 0) throw new Error(run.stderr);
  return JSON.parse(run.stdout);
}

describe('batches as CSV', () => {
  const headings = [
    'Name',
    ...rowOrder.map((id) => {
      const unit = isRow(id) ? (numericRows[id].unit ?? baseUnits[numericRows[id].kind]) : '';
      return unit === '' ? labelOf(id) : `${labelOf(id)} (${unit})`;
    }),
  ];

  test('begins with the mark of UTF-8, ends every line with CR LF, and has a column for each row', () => {
    expect(batchesCsv.startsWith('\uFEFFName,')).toBe(true);
    expect(batchesCsv.endsWith('\r\n')).toBe(true);
    const [first = ''] = batchesCsv.slice(1).split('\r\n');
    for (const heading of headings) expect(first).toContain(heading);
    expect(new Set(headings).size).toBe(headings.length);
  });

  test('names the unit of each figure that has one', () => {
    const [first = ''] = batchesCsv.split('\r\n');
    for (const heading of ['Keeps in the fridge (days)', 'Weight as bought (g)', '"Parts of water, by weight (g/g)"'])
      expect(first).toContain(heading);
  });

  test('by hand: quotes are doubled, and what has a comma, a quote or a line end in it is quoted', () => {
    const two = writeBatchesCsv([startBatch('b1', 'a "b", c')], formulationOf);
    expect(two).toContain('\r\n"a ""b"", c",');
  });

  test.skipIf(python === undefined)('is read back by Python’s reader, field by field', () => {
    const [head, ...lines] = readByPython(batchesCsv);
    expect(head).toEqual(headings);
    expect(lines).toHaveLength(nasty.length);
    for (const [at, batch] of document.batches.entries()) {
      const line = lines[at] ?? [];
      const { rows } = formulationOf(batch);
      expect(line[0]).toBe(guarded(batch.name));
      for (const [column, id] of rowOrder.entries()) {
        const field = line[column + 1] ?? expect.fail('the line is too short');
        const { value } = rows[id];
        if (!isRow(id)) expect(field).not.toBe('');
        else if (typeof value !== 'number') expect(field).toBe('');
        else {
          expect(field).toMatch(/^-?\d+(\.\d+)?(e-?\d+)?$/);
          expect(Math.abs(Number(field) - value)).toBeLessThanOrEqual(1e-9 * Math.abs(value));
        }
      }
    }
    expect(lines[1]?.[rowOrder.indexOf('sweetener') + 1]).toBe('Cane sugar, white 25 % + Honey 75 %');
    expect(lines[1]?.[rowOrder.indexOf('sourceMass') + 1]).toBe('200');
  });
});

describe('cartons as CSV', () => {
  test.skipIf(python === undefined)('are a line each, with how they did, those too that only the log knows', () => {
    const record = {
      worked: 1,
      refused: 1,
      open: 0,
      share: { low: 0.25, high: 0.75 },
      days: { least: 1, most: 2 },
      waited: 5,
    };
    const csv = writeCartonsCsv([{ name: '=1+1', sugar: '2,5 g' }], new Map([['Green', record]]));
    const [head, ...lines] = readByPython(csv);
    expect(head?.[0]).toBe('Carton');
    expect(lines).toEqual([
      ["'=1+1", '', '2,5 g', '', '', '0', '0', '0', '', '', '', ''],
      ['Green', '', '', '', '', '1', '1', '0', '0.25', '0.75', '1', '2'],
    ]);
  });
});

describe('the log as CSV', () => {
  test.skipIf(python === undefined)('has the recipe as it was', () => {
    const was = { source: 'almond', grains: 'water', sweetener: [{ id: 'caneWhite', share: 1 }] } as const;
    const rates = { sugarRate: 26, startingSugar: 30.5, grainRate: null };
    const [line] = log;
    if (line === undefined) throw new Error('the log is empty');
    const [, read] = readByPython(writeLogCsv([{ ...line, holds: 'just', leftOut: true, was: { ...was, ...rates } }]));
    expect(read?.slice(8)).toEqual([
      ...['just', '', 'yes', 'Almonds, whole', '', 'Water kefir grains', '', '26', '30.5'],
    ]);
  });

  test.skipIf(python === undefined)('is read back by Python’s reader, numbers below zero as numbers', () => {
    const [head, ...lines] = readByPython(logCsv);
    expect(head).toContain('Temperature (°C)');
    expect(lines).toEqual(
      log.map(({ name, at, note }) => [
        ...[guarded(name), at.replace('T', ' '), 'looked', '12.5', '', '-4', '4.25'],
        ...[guarded(note), ...Array<string>(9).fill('')],
      ]),
    );
  });

  test('has the largest numbers there are as they stand', () => {
    const [entry] = log;
    if (entry === undefined) throw new Error('the log has an entry');
    const csv = writeLogCsv([{ ...entry, expected: Number.MAX_VALUE }]);
    expect(csv).toContain(`,${Number.MAX_VALUE},`);
  });

  test('of no entries is its headings', () => {
    expect(writeLogCsv([]).split('\r\n')).toHaveLength(2);
  });
});

describe.skipIf(office === undefined)('a spreadsheet program', () => {
  /** What LibreOffice makes of a file: opened as a sheet, saved as a sheet, and written as CSV again. */
  function convert(csv: string): string[][] {
    const folder = mkdtempSync(join(tmpdir(), 'csv-'));
    try {
      const run = (from: string, to: string, input = '') => {
        const options = [
          '--headless',
          `-env:UserInstallation=file://${folder}/profile`,
          ...(input === '' ? [] : [input]),
        ];
        const done = spawnSync(office ?? '', [...options, '--convert-to', to, '--outdir', folder, join(folder, from)]);
        if (done.status !== 0) throw new Error(String(done.stderr));
      };
      writeFileSync(join(folder, 'table.csv'), csv);
      // Comma, double quotes, UTF-8: what a person confirms in the dialog on opening.
      run('table.csv', 'ods', '--infilter=CSV:44,34,76,1');
      run('table.ods', 'csv:Text - txt - csv (StarCalc):44,34,76,1,,0,false,true,false');
      return readByPython(readFileSync(join(folder, 'table.csv'), 'utf8'));
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }

  test('opens both files with every text as a text and every number as a number', { timeout: 120_000 }, () => {
    const lines = convert(logCsv);
    expect(lines).toHaveLength(log.length + 1);
    for (const [at, { name }] of log.entries()) {
      const line = lines[at + 1] ?? [];
      // Tabs and line ends within a cell are the program's own affair.
      expect(line[0]?.replaceAll(/\s/g, '')).toBe(guarded(name).replaceAll(/\s/g, ''));
      expect([line[3], line[5], line[6]].map(Number)).toEqual([12.5, -4, 4.25]);
    }
    const sheets = convert(batchesCsv);
    expect(sheets).toHaveLength(nasty.length + 1);
    const [plain] = document.batches;
    const milk = plain === undefined ? null : formulationOf(plain).rows.milkVolume.value;
    expect(Number(sheets[1]?.[rowOrder.indexOf('milkVolume') + 1])).toBeCloseTo(Number(milk), 1);
  });
});

if (python === undefined) console.warn('\n!!! CSV WAS NOT READ BACK BY ANOTHER PARSER: install python3\n');
if (office === undefined)
  console.warn('\n!!! CSV WAS NOT OPENED IN A SPREADSHEET PROGRAM: apt-get install libreoffice-calc to have it done\n');
