import { demo } from '../batch/document/demo';
import type { Batch, Cell, Settings } from '../batch/document/document';
import { readCell, textsMeant } from '../batch/reading/read-cell';
import { isMeasuredRow, type NumericRowId } from '../formula/recipe/order';
import { nearly } from '../measure/nearly';
import { cupStandards } from '../measure/units';

/** Every way a cook can have set the sheet that wrote a text: nobody sends along whose cups they were. */
const manners: readonly Settings[] = Object.keys(cupStandards)
  .filter((id): id is keyof typeof cupStandards => id in cupStandards)
  .flatMap((cups) =>
    (['metric', 'us'] as const).flatMap((leads) =>
      [false, true].map((decimalComma) => ({ ...demo.settings, cups, leads, decimalComma })),
    ),
  );

/** The batch, each cell of which means what its text says: an amount that no sheet reads from it gives way to its reading. */
export function withTextsRead(batch: Batch): Batch {
  const measured = Object.entries(batch.measured).map(([row, cell]) =>
    cell !== undefined && isMeasuredRow(row) ? [row, asTyped(row, cell)] : [row, cell],
  );
  return {
    ...batch,
    given: batch.given.map((cell) => ({ ...cell, ...asTyped(cell.row, cell) })),
    measured: Object.fromEntries(measured),
  };
}

function asTyped(row: NumericRowId, { text, kind, amount }: Cell): Cell {
  const readings = manners.map((settings) => readCell(row, text, settings));
  // What a sheet would ask about by now was read without asking by an earlier page.
  const asked = manners.flatMap((settings) =>
    textsMeant(row, text, settings).map((meant) => readCell(row, meant, settings)),
  );
  const isMeant = (reading: Cell): boolean =>
    reading.kind === kind && (reading.amount === amount || isNear(reading.amount, amount));
  return [...readings, ...asked].find(isMeant) === undefined
    ? (readings[0] ?? { text, kind, amount: null })
    : { text, kind, amount };
}

/** An earlier page may have read the last digits otherwise. */
function isNear(one: number | null, other: number | null): boolean {
  const slack = 1e-6;
  return one !== null && other !== null && nearly(one, other, slack);
}
