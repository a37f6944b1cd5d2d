import { expect, test } from 'vitest';
import { cautionTopics } from '../../src/formula/advice/caution-conditions';
import { cautionsAbout } from '../../src/formula/advice/cautions';
import { type Formulation, formulate } from '../../src/formula/engine/formulate';
import type { NumericRowId } from '../../src/formula/recipe/order';
import { severities } from '../../src/formula/recipe/problem';
import { sources } from '../../src/reference/sources';
import { grainIds, recipeOf, sourceIds, typed } from '../batches';

const hoursInBottle = 8;

/** Sealed for eight hours, whatever a new batch asks for, so that there is a fizz to look at. */
const batches = sourceIds.flatMap((source) =>
  grainIds.map((grains) => {
    const given = [typed('bottleTime', hoursInBottle)];
    return { source, grains, formulation: formulate(recipeOf({ source, grains, given })) };
  }),
);

function write(value: number | string | null, places: number): string {
  return typeof value === 'number' ? value.toFixed(places) : '–';
}

function writeRange({ rows }: Formulation, row: NumericRowId, places: number): string {
  const { value, range } = rows[row];
  if (range === null) return write(value, places);
  return `${write(value, places)} (${write(range.low, places)}–${write(range.high, places)})`;
}

function cellsOf(formulation: Formulation): readonly string[] {
  const { rows } = formulation;
  return [
    write(rows.sourceMass.value, 0),
    write(rows.blendWater.value, 0),
    writeRange(formulation, 'milkVolume', 0),
    write(rows.pulpMass.value, 0),
    write(rows.milkSolids.value, 1),
    write(rows.sweetenerMass.value, 1),
    write(rows.startingSugar.value, 1),
    writeRange(formulation, 'readyTime', 1),
    write(rows.bottlePressureLikely.value, 2),
  ];
}

const headings = [
  ...['source', 'grains', 'source g', 'water mL', 'milk mL', 'pulp g', 'solids %', 'sweetener g', 'sugar g/L'],
  ...['ready h', `fizz bar, ${hoursInBottle} h`],
];

test('every source with both kinds of grains, nothing typed but the hours in the bottle', async () => {
  const lines = batches.map(({ source, grains, formulation }) => [
    sources[source].name,
    grains,
    ...cellsOf(formulation),
  ]);
  const table = [headings, ...lines];
  const widths = headings.map((_, column) => Math.max(...table.map((line) => line[column]?.length ?? 0)));
  const text = table.map((line) =>
    line
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  await expect(`${text.join('\n')}\n`).toMatchFileSnapshot('every-source.snapshot.txt');
});

test('every one of them is worked out, none refused, and with more milk than pulp', () => {
  for (const { source, grains, formulation } of batches) {
    const { pulpMass, milkVolume } = formulation.rows;
    if (pulpMass.status !== 'absent') expect(Number(pulpMass.value), source).toBeLessThan(Number(milkVolume.value));
    for (const [row, { problems }] of Object.entries(formulation.rows)) {
      const bad = problems.filter(({ code }) => severities[code] === 'refusal' || severities[code] === 'conflict');
      expect(bad, `${source}, ${grains}: ${row}`).toEqual([]);
    }
  }
});

test('no source’s own caution stands on every one of them', () => {
  const texts = batches.map(({ formulation }) =>
    cautionsAbout(cautionTopics, formulation)
      .filter(({ id }) => id.includes(':'))
      .map(({ text }) => text),
  );
  const [first = [], ...others] = texts;
  expect(first.filter((text) => others.every((each) => each.includes(text)))).toEqual([]);
});
