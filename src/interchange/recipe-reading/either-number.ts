import { matchAt, readNumber } from '../../measure/read-number';
import { findUnitWord } from '../../measure/unit-words';
import type { LineProblem } from './problem';

/** A number that may be read two ways, as far as one can tell from how it looks. */
const looksOpen = /(?<![\d.,/])[1-9]\d{0,2}[.,]\d{3}(?![\d.,]*\d)/g;

/**
 * Asks about a line that gives an amount of food by a number that may be read two ways, such as "1,250 ml water"; null
 * where it has none. `text` is normalised; a number counts where it starts the line, from `start` on, or has a unit of
 * weight or volume.
 */
export function askNumber(text: string, start: number, decimalComma: boolean): LineProblem | null {
  const open: { readonly from: number; readonly to: number; readonly readings: readonly string[] }[] = [];
  for (const { index } of text.matchAll(looksOpen)) {
    const read = readNumber(text, index, decimalComma);
    if (read.ok || read.fault.code !== 'eitherNumber') continue;
    const { to, readings } = read.fault;
    if (text.slice(start, index).trim() === '' || measuresFood(text, to)) open.push({ from: index, to, readings });
  }
  const [first] = open;
  if (first === undefined) return null;
  const readings = first.readings.map((number, at) => {
    const line = open.reduceRight(
      (said, { from, to, readings: both }) => `${said.slice(0, from)}${both[at] ?? ''}${said.slice(to)}`,
      text,
    );
    return { number, line };
  });
  return { code: 'eitherNumber', text: text.slice(first.from, first.to), readings };
}

function measuresFood(text: string, at: number): boolean {
  const unit = findUnitWord(text, at + (matchAt(/ ?-? ?/y, text, at)?.[0].length ?? 0));
  return unit !== null && (unit.meanings.has('mass') || unit.meanings.has('volume'));
}
