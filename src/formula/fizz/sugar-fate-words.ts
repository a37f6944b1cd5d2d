import { units } from '../../measure/units';
import { writeNumber } from '../../measure/write-quantity';
import { alcoholLine, sweetness } from '../../reference/finished';
import type { Formulation } from '../engine/formulate';
import { severities } from '../recipe/problem';
import { describeOrigin } from '../words/origin-words';
import { describeProblem } from '../words/words';
import type { Kitchen } from '../words/write-row';
import type { Estimate, SugarFate } from './sugar-fate';

/** A line of the account: its figure, and from where to where it may lie; `range` is null where it is one figure. */
export interface FateLine {
  readonly label: string;
  readonly likely: string;
  readonly range: string | null;
}

/** Where the sugar goes, line by line, g per litre of kefir and % by volume. */
export function fateLines(fate: SugarFate, { decimalComma }: Kitchen): readonly FateLine[] {
  const write = (value: number, places = 1): string => writeNumber(value, places, decimalComma);
  const line = (label: string, estimate: Estimate, unit: string, places?: number): FateLine => {
    const { low, likely, high } = estimate;
    const [from, to] = [write(low, places), write(high, places)];
    const range = from === to ? null : `${from} to ${to}\u00A0${unit}`;
    return { label, likely: `${write(likely, places)}\u00A0${unit}`, range };
  };
  const { symbol } = units['g/L'];
  const start = line('Sugar at the start', fate.start, symbol);
  const parts = `${write(fate.native)} of the milk, ${write(Math.max(fate.start.likely - fate.native, 0))} added`;
  return [
    { ...start, range: start.range === null ? parts : `${start.range}; likely ${parts}` },
    line('Sugar left', fate.left, symbol),
    line('Lactic acid', fate.lacticAcid, symbol),
    line('Ethanol (alcohol)', fate.ethanol, symbol),
    line('The same by volume', fate.alcohol, '%\u00A0ABV', 2),
    line('Carbon dioxide', fate.carbonDioxide, symbol),
  ];
}

/** How sweet it will taste, likely and at most and least. */
export function describeSweetness({ sweetness: likely, sweetnessEnds: { least, most } }: SugarFate): string {
  const ends = [...new Set([most, least])].filter((taste) => taste !== likely);
  const could = ends.length === 0 ? '' : ` It could also be ${ends.map(shortly).join(', or ')}.`;
  return `Likely ${likely}.${could}`;
}

/** The word before the colon says enough the second time. */
function shortly(taste: string): string {
  return taste.replace(/:.*$/, '');
}

/** Where the alcohol lies to the line where law draws one. */
export function describeAlcohol({ line, alcohol }: SugarFate, { decimalComma }: Kitchen): string {
  const write = (value: number): string => `${writeNumber(value, 2, decimalComma)}\u00A0%`;
  const drawn = `${writeNumber(alcoholLine.value, 1, decimalComma)}\u00A0% ABV`;
  return {
    under: `All of this estimate is under the line of ${drawn}.`,
    'may reach': `It may pass the line of ${drawn}: the estimate reaches ${write(alcohol.high)}.`,
    over: `All of this estimate is over the line of ${drawn}.`,
  }[line];
}

/** What no estimate of alcohol is good for. */
export const alcoholCaution =
  'Only a measurement can tell how much alcohol there is: don’t sell by this figure, or give it to anyone who must have none.';

/** Where the line of the law and the steps of sweetness are from. */
export const fateOrigins: readonly { readonly label: string; readonly text: string }[] = [
  { label: 'The line for alcohol', text: describeOrigin(alcoholLine.origin) },
  { label: 'The words for sweetness', text: describeOrigin(sweetness.origin) },
];

/** Why there is no account of a second ferment. */
export function describeNoSecond({ rows }: Formulation, kitchen: Kitchen): string {
  if (rows.bottleTime.value === 0) return 'No second ferment.';
  const problems = [rows.bottleTime, rows.readyTime, rows.bottlePressureLikely].flatMap((row) => row.problems);
  const found = problems.find(({ code }) => severities[code] === 'refusal');
  return found === undefined
    ? 'No second ferment.'
    : `The second ferment can’t be told. ${describeProblem(found, kitchen)}`;
}
