import { describe, expect, test } from 'vitest';
import { readSources, type Source } from './source-code';
import {
  findArithmetic,
  findAssertions,
  findCoefficients,
  findDrawerName,
  findImportCycles,
  findLongFile,
  findSurroundings,
  findUpwardImports,
  findUpwardRooms,
} from './source-rules';

type Sample = readonly [path: string, text: string];
type Guard = {
  readonly findBreaches: (source: Source) => readonly string[];
  readonly refuses: readonly Sample[];
  readonly allows: readonly Sample[];
};

const guards: Record<string, Guard> = {
  'imports point downward only': {
    findBreaches: findUpwardImports,
    refuses: [
      ['src/measure/units.ts', "import { foods } from '../reference/foods';"],
      ['src/measure/units.ts', "import type { Food } from '../reference/foods';"],
      ['src/reference/jars.ts', "export { volume } from '../formula/models/vessel';"],
      ['src/reference/jars.ts', "export * from '../formula/models/vessel';"],
      ['src/formula/rows/jar.ts', "import { store } from '../../batch/store';"],
      ['src/formula/rows/jar.ts', "import { store } from '/src/batch/store';"],
      ['src/batch/keeping/storage.ts', "const csv = await import('../../interchange/csv');"],
      ['src/batch/keeping/storage.ts', "type Csv = import('../../interchange/csv').Csv;"],
      ['src/batch/keeping/storage.ts', "import csv = require('../../interchange/csv');"],
      ['src/batch/keeping/storage.ts', 'const part = await import(name);'],
      ['src/interchange/csv.ts', "import { App } from '../ui/App';"],
      ['src/ui/App.tsx', "import '../main';"],
      ['src/ui/App.tsx', "import { batches } from '../../tests/batches';"],
      ['src/measure/exact.ts', "import Big from 'big.js';"],
      ['src/formula/rows/row.ts', "import { signal } from '@preact/signals';"],
      ['src/measure/units.ts', "import { readFileSync } from 'node:fs';"],
      ['src/register.ts', ''],
    ],
    allows: [
      ['src/formula/rows/jar.ts', "import { jars } from '../../reference/jars';"],
      ['src/formula/rows/row.ts', "// import { App } from '../ui/App';\nconst text = \"import '../ui/App'\";"],
      ['src/ui/App.tsx', "import { writeCsv } from '../interchange/csv'; import './style.css'; import './Cell';"],
      ['src/main.tsx', "import { App } from './ui/App'; import { render } from 'preact';"],
    ],
  },
  'imports point downward from room to room': {
    findBreaches: findUpwardRooms,
    refuses: [
      ['src/formula/sheet.ts', ''],
      ['src/formula/utils/sheet.ts', ''],
      ['src/formula/rows/jar.ts', "import { formulate } from '../engine/formulate';"],
      ['src/formula/rows/terms/fill.ts', "import type { Formulation } from '../../engine/formulation';"],
      ['src/batch/document/document.ts', "const { store } = await import('../store/store');"],
    ],
    allows: [
      ['src/formula/engine/formulate.ts', "import { jar } from '../rows/jar'; import { slots } from './slots';"],
      ['src/batch/document/document.ts', "import { formulate } from '../../formula/engine/formulate';"],
      ['src/ui/sheet/Sheet.tsx', "import { App } from '../page/App';"],
    ],
  },
  'the pure layers see no clock, chance, storage, network or page': {
    findBreaches: findSurroundings,
    refuses: [
      ['src/measure/exact.ts', 'const now = new Date();'],
      ['src/measure/exact.ts', 'function read(at: Date) {}'],
      ['src/measure/exact.ts', 'const half = Math.random();'],
      ['src/measure/exact.ts', "const half = Math['random']();"],
      ['src/measure/exact.ts', 'const { random } = Math;'],
      ['src/reference/foods.ts', "const kept = localStorage.getItem('foods');"],
      ['src/reference/foods.ts', "const kept = globalThis['localStorage'];"],
      ['src/formula/rows/row.ts', "const answer = await fetch('./foods.json');"],
      ['src/formula/rows/row.ts', 'const page = { document };'],
      ['src/formula/rows/row.ts', 'const name = window.name;'],
    ],
    allows: [
      ['src/formula/rows/row.ts', "// The Date is of no interest\nconst text = 'window'; /* fetch */"],
      ['src/formula/rows/row.ts', 'const row = { document: 1 }; row.document; Math.max(1, 2);'],
      ['src/batch/keeping/storage.ts', "localStorage.getItem('batches'); new Date();"],
    ],
  },
  'files stay short': {
    findBreaches: findLongFile,
    refuses: [
      ['src/ui/Sheet.tsx', '\n'.repeat(301)],
      ['src/ui/style.css', '\n'.repeat(301)],
    ],
    allows: [
      ['src/ui/Sheet.tsx', '\n'.repeat(300)],
      ['src/reference/foods.ts', '\n'.repeat(900)],
    ],
  },
  'files and folders are named after a subject': {
    findBreaches: findDrawerName,
    refuses: [
      ['src/measure/index.ts', ''],
      ['src/batch/utils/dates.ts', ''],
      ['src/ui/helpers.tsx', ''],
      ['src/formula/types.ts', ''],
      ['src/formula/types.d.ts', ''],
      ['src/reference/common.json', ''],
      ['src/ui/misc/Cell.tsx', ''],
    ],
    allows: [['src/reference/common-practice.ts', '']],
  },
  'types are shown, not claimed': {
    findBreaches: findAssertions,
    refuses: [
      ['src/batch/edits/edits.ts', 'const given: any = read();'],
      ['src/batch/edits/edits.ts', 'function read(given: Array<any>) {}'],
      ['src/batch/edits/edits.ts', 'const given = read() as Given;'],
      ['src/batch/edits/edits.ts', 'const given = read() as unknown as\n  Given;'],
      ['src/batch/edits/edits.ts', 'const given = <Given>read();'],
      ['src/batch/edits/edits.ts', 'const given = read()!;'],
      ['src/batch/edits/edits.ts', '// @ts-expect-error\nconst given: Given = 1;'],
      ['src/ui/Cell.tsx', 'const cell = <td>{given as string}</td>;'],
    ],
    allows: [
      ['src/batch/edits/edits.ts', "import { read as load } from './storage'; export { load as read };"],
      ['src/batch/edits/edits.ts', "const rows = ['jar'] as const; // as Given, any"],
      ['src/ui/Cell.tsx', "const cell = <td title='as any'>any number, as typed!</td>;"],
    ],
  },
  'formulas hold no coefficient of their own': {
    findBreaches: findCoefficients,
    refuses: [
      ['src/formula/models/density.ts', 'const density = mass * 0.62;'],
      ['src/formula/models/density.ts', 'const density = mass * -12;'],
      ['src/formula/models/density.ts', 'const density = mass * 3;'],
      ['src/formula/models/density.ts', 'const density = mass ** 0.5;'],
      ['src/formula/models/density.ts', "const density = new Big('0.62');"],
      ['src/formula/models/density.ts', 'const density = new Big(`.62`);'],
      ['src/formula/models/density.ts', 'const near = 0.62; // tolerance'],
      ['src/formula/models/density.ts', 'const near = 1e-9;'],
      ['src/formula/models/vessel.ts', 'const third = volume / 3.3; // geometry'],
      ['src/formula/models/vessel.ts', 'const leastHeadspace = 30; // geometry'],
      ['src/formula/models/milk.ts', 'const under = b * b - 3.9 * a * c; // algebra'],
      ['src/formula/rows/jar.ts', 'const row = { range: { least: 0, most: 50 * depth } };'],
      ['src/formula/rows/jar.ts', 'const row = { range: { usual: 50 }, least: 50 };'],
      ['src/formula/rows/ripen.ts', 'const row = { range: { least: -20 * depth }, most: -50 };'],
    ],
    allows: [
      ['src/formula/models/density.ts', 'const volume = (1000 * mass) / 100 + 2 - 1 + 0;'],
      ['src/formula/models/density.ts', 'const cube = side ** 3 + sides[4];'],
      ['src/formula/models/density.ts', 'const near = 1e-9; // tolerance: mass is conserved to this share'],
      ['src/formula/models/density.ts', "// 0.62 mL/g\nconst text = 'at most 8 h'; type Step = 3;"],
      ['src/formula/models/vessel.ts', 'const cone = (area * height) / 3; // geometry'],
      ['src/formula/models/milk.ts', 'const under = b * b - 4 * a * c; // algebra'],
      ['src/formula/rows/jar.ts', 'const row = { range: { least: 50, most: 60_000, whole: true } };'],
      ['src/formula/rows/ripen.ts', 'const row = { range: { least: -20, most: 60 } };'],
      ['src/reference/physics.ts', 'const displacement = 0.62;'],
    ],
  },
  'the user interface calculates nothing': {
    findBreaches: findArithmetic,
    refuses: [
      ['src/ui/Cell.tsx', 'const cell = <td>{mass * 2}</td>;'],
      ['src/ui/Cell.tsx', "const cell = <td title={'about ' + mass / 2} />;"],
      ['src/ui/Cell.tsx', 'const whole = Math.round(mass);'],
      ['src/ui/leading.ts', 'const sum = given + measured;'],
      ['src/ui/leading.ts', "const sum = (given + measured) + ' g';"],
      ['src/ui/leading.ts', 'const lost = given - measured;'],
      ['src/ui/leading.ts', 'let sum = 0; sum += given;'],
      ['src/ui/leading.ts', 'const rest = given % 2; const square = given ** 2;'],
    ],
    allows: [
      ['src/ui/Cell.tsx', "const cell = <td class='a / b'>1 * 2 / 3, by Math.round</td>; // a * b"],
      ['src/ui/Cell.tsx', "const label = 'jar' + (' ' + name) + `, cold`;"],
      ['src/ui/leading.ts', 'const next = { row: row + 1, column: column - 1 }; row++;'],
      ['src/ui/jar/JarDrawing.tsx', 'const middle = width / 2;'],
      ['src/formula/rows/milk.ts', 'const milk = slurry - pulp;'],
    ],
  },
};

const sources = readSources('src');

test('the guards read the program', () => {
  expect(sources.map(({ path }) => path)).toContain('src/main.tsx');
});

describe.each(Object.entries(guards))('%s', (_, { findBreaches, refuses, allows }) => {
  test('everywhere in src', () => {
    expect(sources.flatMap(findBreaches)).toEqual([]);
  });

  test.each(refuses)('refuses in %s: %s', (path, text) => {
    expect(findBreaches({ path, text })).not.toEqual([]);
  });

  test.each(allows)('allows in %s: %s', (path, text) => {
    expect(findBreaches({ path, text })).toEqual([]);
  });
});

describe('no file imports itself by way of others', () => {
  test('everywhere in src', () => {
    expect(findImportCycles(sources)).toEqual([]);
  });

  test('refuses a ring, of types too', () => {
    const ring = [
      { path: 'src/formula/rows/row.ts', text: "import type { Sheet } from './sheet';" },
      { path: 'src/formula/rows/sheet.ts', text: "export { jar } from './terms/jar';" },
      { path: 'src/formula/rows/terms/jar.ts', text: "import { row } from '../row';" },
    ];
    const found =
      'src/formula/rows/row.ts > src/formula/rows/sheet.ts > src/formula/rows/terms/jar.ts > src/formula/rows/row.ts';
    expect(findImportCycles(ring)).toEqual([found]);
  });

  test('allows two ways down to the same file', () => {
    const fork = [
      { path: 'src/ui/App.tsx', text: "import './Cell'; import './Sheet';" },
      { path: 'src/ui/Sheet.tsx', text: "import './Cell';" },
      { path: 'src/ui/Cell.tsx', text: '' },
    ];
    expect(findImportCycles(fork)).toEqual([]);
  });
});
