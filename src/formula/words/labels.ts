import { isRow } from '../engine/evaluate';
import type { RowId } from '../recipe/order';
import type { Absence } from '../rows/row';
import { choiceRows, numericRows } from '../rows/sheet';

/** The label of a row, as the page shows it. */
export function labelOf(id: RowId): string {
  return isRow(id) ? numericRows[id].label : choiceRows[id].label;
}

const absences: Readonly<Record<Absence, string>> = {
  notSoaked: 'This one is not soaked.',
  soaksInBlendingWater: 'It soaks in the blending water, which is not drained.',
  poured: 'It is poured as it is; no water is added.',
  noPulp: 'Nothing is strained out, so there is no pulp.',
  noBlending: 'A liquid needs no blending.',
  noSweetener: 'No sweetener is chosen.',
  refusedSweetener: 'The culture can’t ferment this sweetener.',
  measuredOnly: 'Measured only: dip a strip or a meter.',
  noLimit: 'Type what the bottle’s maker states. Ordinary jars and bottles have no rating.',
  noBottle: 'No second ferment.',
};

/** Why a quantity is not there. */
export function describeAbsence(absence: Absence): string {
  return absences[absence];
}
