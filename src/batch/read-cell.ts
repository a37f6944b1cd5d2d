import type { NumericRowId } from '../formula/order';
import { numericRows } from '../formula/sheet';
import { type ReadResult, readQuantity } from '../measure/read-quantity';
import { normaliseTyped } from '../measure/typed-text';
import { baseUnits, cupStandards, type Kind, type UnitId } from '../measure/units';
import { type Cell, longestText, type Settings } from './document';

/**
 * What a text typed into a row says, by how this cook measures. The text is kept as typed; where it can't be read, the
 * amount is null. A text longer than a saved one may be is cut and ends in …, which no reading takes for an amount.
 */
export function readCell(row: NumericRowId, text: string, settings: Settings): Cell {
  const kept = text.length > longestText ? `${text.slice(0, longestText - 1)}…` : text;
  const read = readText(row, kept, settings);
  return read.ok
    ? { text: kept, amount: read.reading.amount, kind: read.reading.kind }
    : { text: kept, amount: null, kind: numericRows[row].kind };
}

/** Whether there is nothing to see in a text, which clears the cell it is typed into. */
export function isBlank(text: string): boolean {
  return normaliseTyped(text).text === '';
}

/**
 * The unit that a number typed without one has in this row. Where US measure leads: cups (of the cook's own standard),
 * ounces, inches, °F; else, and for kinds that have no US unit, the unit the row is held in: mL, g, cm, °C, h …
 */
export function bareUnitOf(row: NumericRowId, settings: Settings): UnitId {
  const { kind } = numericRows[row];
  if (settings.leads === 'us')
    return kind === 'volume' ? cupStandards[settings.cups].cup : (usUnits[kind] ?? baseUnits[kind]);
  return baseUnits[kind];
}

const usUnits: { readonly [K in Kind]?: UnitId } = {
  mass: 'oz',
  length: 'in',
  temperature: '°F',
  temperatureDifference: 'Δ°F',
  pressure: 'psi',
};

/** A text typed into a row, read by how this cook measures. */
export function readText(row: NumericRowId, text: string, settings: Settings): ReadResult {
  const { kind, weighing, shareOf, inEach } = numericRows[row];
  const other = otherKinds[kind];
  return readQuantity(text, {
    kind,
    bareUnit: bareUnitOf(row, settings),
    also: [
      ...(weighing === undefined || other === undefined ? [] : [other]),
      ...(shareOf === undefined ? [] : ['share' as const]),
      ...(inEach === undefined ? [] : ['mass' as const]),
    ],
    cups: settings.cups,
    decimalComma: settings.decimalComma,
  });
}

/** What a row may be typed in besides its own kind where the weight of what it measures is known. */
const otherKinds: { readonly [K in Kind]?: Kind } = { mass: 'volume', volume: 'mass' };
