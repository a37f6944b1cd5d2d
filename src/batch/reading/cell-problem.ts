import { changeRecipe } from '../../formula/advice/typed-change';
import type { WayOut } from '../../formula/advice/ways-out';
import { type Formulation, formulate } from '../../formula/engine/formulate';
import type { NumericRowId } from '../../formula/recipe/order';
import { numericRows } from '../../formula/rows/sheet';
import { describeReadProblem } from '../../measure/read-problem-words';
import type { Assumption } from '../../measure/read-quantity';
import { cupStandards, units } from '../../measure/units';
import { writeMetric } from '../../measure/write-quantity';
import type { Cell, Settings } from '../document/document';
import { bareUnitOf, readBare, readCell, readText, textsMeant } from './read-cell';

/** The sentence for a cell whose text can't be read, and what to write instead; null where there is nothing to say. */
export function cellProblem(row: NumericRowId, cell: Cell, settings: Settings): string | null {
  if (cell.amount !== null) return null;
  const read = readText(row, cell.text, settings);
  return read.ok ? null : describeReadProblem(read.problem);
}

/** A way out that types one of the texts that another may stand for. */
export interface Meant extends WayOut {
  readonly text: string;
}

/**
 * Of a cell that may be read in several ways, each as a text to type that can be read in one only: a button each. A
 * measure of which no weight is published is none of them.
 */
export function cellWaysOut(
  row: NumericRowId,
  cell: Cell,
  settings: Settings,
  { recipe }: Formulation,
): readonly Meant[] {
  if (cell.amount !== null) return [];
  return textsMeant(row, cell.text, settings)
    .map((text): Meant => {
      const { amount, kind } = readCell(row, text, settings);
      return { label: `Make it ${text}`, text, changes: [{ do: 'type', row, text, amount, kind }] };
    })
    .filter(({ changes }) => {
      const { problems } = formulate(changeRecipe(recipe, changes)).rows[row];
      return problems.every(({ code }) => code !== 'noCupWeight');
    });
}

const remarks: Readonly<Record<Exclude<Assumption, 'bareUnit' | 'overnight'>, string>> = {
  fluidOunce: 'oz read by volume, as fluid ounces',
  weightOunce: 'oz read by weight',
  proportion: 'taken as nut or seed to water, by weight',
};

/** What had to be taken for granted in reading a typed cell and is worth saying: which ounce, what a bare number is of. */
export function cellRemark(row: NumericRowId, cell: Cell, settings: Settings): string | null {
  if (cell.amount === null) return null;
  const read = readText(row, cell.text, settings);
  // Where a bare number is asked about now, it may have been read while another unit led.
  const assumed = read.ok ? read.reading.assumed : read.problem.code === 'eitherUnit' ? 'bareUnit' : undefined;
  if (assumed === undefined) return null;
  if (assumed === 'bareUnit') return bareRemark(row, cell, settings);
  return assumed === 'overnight'
    ? `taken as ${writeMetric(cell.amount, 'time', settings.decimalComma)}`
    : remarks[assumed];
}

/** What is said in place of a symbol. */
const plainWords: Readonly<Record<string, string>> = { [units.cup.symbol]: 'cups', [units['g/g'].symbol]: 'parts' };

/** A number without a unit was taken for what led when it was typed, which may lead no more. */
function bareRemark(row: NumericRowId, cell: Cell, settings: Settings): string | null {
  const { kind } = numericRows[row];
  if (kind === 'count' || kind === 'acidity') return null;
  const manners = Object.values(cupStandards).flatMap(({ id: cups }) =>
    (['metric', 'us'] as const).map((leads): Settings => ({ ...settings, leads, cups })),
  );
  const meant = [settings, ...manners].find((manner) => {
    const read = readBare(row, cell.text, manner);
    return read.ok && read.reading.kind === cell.kind && read.reading.amount === cell.amount;
  });
  if (meant === undefined) return null;
  const { symbol } = units[bareUnitOf(row, meant)];
  return `taken as ${plainWords[symbol] ?? symbol}`;
}
