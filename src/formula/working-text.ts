import { baseUnits, type Kind, units } from '../measure/units';
import { writeTrimmed } from '../measure/write-quantity';
import { kitchen } from '../reference/kitchen';
import type { Coefficient } from '../reference/origins';
import { termOf } from './evaluate';
import type { TermId } from './row';
import type { Working, WorkingInput } from './working';

/** A number to four significant digits, for following an arithmetic by eye; never in exponent form. */
export function writeSignificant(value: number, decimalComma: boolean): string {
  if (!Number.isFinite(value)) return '–';
  const magnitude = value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value)));
  return writeTrimmed(value, Math.max(0, kitchen.workingDigits.value - 1 - magnitude), decimalComma);
}

/** The unit a term is worked out in: its own where it has one (g/mL), else the base unit of its kind. */
export function unitOf(id: TermId, kind: Kind): string {
  return termOf(id).unit ?? units[baseUnits[kind]].symbol;
}

function unitOfInput(input: WorkingInput): string {
  return input.from === 'coefficient' ? input.coefficient.unit : unitOf(input.id, input.kind);
}

function withUnit(value: string, unit: string): string {
  return unit === '' || unit === 'pH' ? value : `${value}\u00A0${unit}`;
}

/** A figure of a table, or the cook's own in its place, with its unit; a share says no unit. */
export function writeCoefficient({ value, unit }: Coefficient, decimalComma: boolean): string {
  return withUnit(writeSignificant(value, decimalComma), unit === 'share' ? '' : unit);
}

/** An input's value with its unit. */
export function writeInput(input: WorkingInput, decimalComma: boolean): string {
  return withUnit(writeSignificant(input.value, decimalComma), unitOfInput(input));
}

/** The result with its unit. */
export function writeResult(working: Working, decimalComma: boolean): string {
  return withUnit(writeSignificant(working.value, decimalComma), unitOf(working.id, working.kind));
}

function fill(working: Working, write: (input: WorkingInput) => string): string {
  return working.formula.replaceAll(/\{(\w+)\}/g, (whole, id: string) => {
    const input = working.inputs.find((one) => one.id === id);
    return input === undefined ? whole : write(input);
  });
}

/** The formula in symbols: `V = (n × F − F₀) ÷ φ`. Empty for what was typed or measured. */
export function inSymbols(working: Working): string {
  return working.formula === '' ? '' : `${working.symbol} = ${fill(working, ({ symbol }) => symbol)}`;
}

/** What a pure number is, in words: good beside it in a table, in the way within a sum. */
const words = ['share', 'power', 'times as fast'];

/** The formula with the numbers put in and their units, and the result. Empty for what was typed or measured. */
export function inNumbers(working: Working, decimalComma: boolean): string {
  if (working.formula === '') return '';
  const right = fill(working, (input) =>
    words.includes(unitOfInput(input)) ? writeSignificant(input.value, decimalComma) : writeInput(input, decimalComma),
  );
  return `${right} = ${writeResult(working, decimalComma)}`;
}
