import { roundAndTrim } from './rounding';
import { baseUnits, type Kind, units } from './units';
import { writeOneWay } from './write-one-way';

/** So many digits are told of a number; behind them doubles are noise. */
const significant = 10;

/**
 * An amount in base units as plain text that reads back as the same amount: up to ten digits, the decimal mark of the
 * cook, an ordinary space and the unit, such as `152.7384615 g`. Never three decimals, which could be read as
 * thousands. Empty for a value that is not finite.
 */
export function writeUnrounded(value: number, kind: Kind, decimalComma: boolean): string {
  if (!Number.isFinite(value)) return '';
  const places = significant - 1 - (value === 0 ? 0 : Math.floor(Math.log10(Math.abs(value))));
  const number = writeOneWay(roundAndTrim(value, Math.max(places, 0)), decimalComma);
  const { symbol } = units[baseUnits[kind]];
  if (symbol === '') return number;
  return kind === 'acidity' ? `${symbol} ${number}` : `${number} ${symbol}`;
}
