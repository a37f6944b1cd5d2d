import { kitchenLines } from '../../reference/kitchen-lines';
import type { Coefficient } from '../../reference/origins';
import { describeCoefficient } from '../words/origin-words';
import { writeSignificant } from '../words/write-significant';
import type { Working, WorkingInput } from './working';

/** What a pure number is, in words: good beside it in a table, in the way within a sum. */
const words = ['share', 'power', 'times as fast'];

function withUnit(value: string, unit: string): string {
  return unit === '' || unit === 'pH' ? value : `${value}\u00A0${unit}`;
}

/** A figure of a table, or the cook's own in its place, with its unit; a share says no unit. */
export function writeCoefficient({ value, unit }: Coefficient, decimalComma: boolean): string {
  return withUnit(writeSignificant(value, decimalComma), unit === 'share' ? '' : unit);
}

/** An input's value with its unit. */
export function writeInput(input: WorkingInput, decimalComma: boolean): string {
  return withUnit(writeNumberOf(input, decimalComma), input.unit);
}

/** A constant stands as its table has it: rounded, 273.15 would be none. */
function writeNumberOf(input: WorkingInput, decimalComma: boolean): string {
  const isConstant = input.from === 'figure' && input.figure.origin !== null;
  return writeSignificant(input.value, decimalComma, isConstant ? kitchenLines.constantDigits.value : undefined);
}

/** The result with its unit. */
export function writeResult(working: Working, decimalComma: boolean): string {
  const unit = words.includes(working.unit) ? '' : working.unit;
  return withUnit(writeSignificant(working.value, decimalComma), unit);
}

/** Where an input of a table is from; null for what is worked out. */
export function originOf(input: WorkingInput, decimalComma: boolean): string | null {
  if (input.from === 'coefficient') return describeCoefficient(input.coefficient, decimalComma);
  return input.from === 'figure' ? (input.figure.origin?.(decimalComma) ?? null) : null;
}

/** `isRaised`: a power follows, which holds for the number and its unit. */
type Write = (input: WorkingInput, isRaised: boolean) => string;

function fill(working: Working, write: Write): string {
  return working.formula.replaceAll(/\{([^{}]+)\}(?=([²³⁴⁵^])?)/g, (whole, id: string, power?: string) => {
    const input = working.inputs.find((one) => one.id === id);
    return input === undefined ? whole : write(input, power !== undefined);
  });
}

/** The formula in symbols: `V = (n × F − F₀) ÷ φ`. Empty for what was typed or measured. */
export function inSymbols(working: Working): string {
  return working.formula === '' ? '' : `${working.symbol} = ${fill(working, ({ symbol }) => symbol)}`;
}

/** The formula with the numbers put in and their units, and the result. Empty for what was typed or measured. */
export function inNumbers(working: Working, decimalComma: boolean): string {
  if (working.formula === '') return '';
  const right = fill(working, (input, isRaised) => {
    const isPure = input.unit === '' || words.includes(input.unit);
    const written = isPure ? writeNumberOf(input, decimalComma) : writeInput(input, decimalComma);
    return input.value < 0 || (isRaised && !isPure) ? `(${written})` : written;
  });
  return `${right} = ${writeResult(working, decimalComma)}`;
}
