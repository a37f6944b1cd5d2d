import type { NumericRowId } from '../../formula/recipe/order';
import { numericRows } from '../../formula/rows/sheet';
import { exactly } from '../../measure/exact';
import { type Reading, type ReadResult, readQuantity } from '../../measure/read-quantity';
import { normaliseTyped } from '../../measure/typed-text';
import { baseUnits, cupStandards, type Kind, type UnitId } from '../../measure/units';
import { kitchen } from '../../reference/kitchen';
import { type Cell, longestText, type Settings } from '../document/document';

/**
 * What a text typed into a row says, by how this cook measures. The text is kept as typed; where it can't be read, the
 * amount is null. A text longer than a saved one may be is cut and ends in …, which no reading takes for an amount.
 */
export function readCell(row: NumericRowId, text: string, settings: Settings): Cell {
  const kept = text.length > longestText ? `${text.slice(0, longestText - 1)}…` : text;
  const result = readText(row, kept, settings);
  return result.ok
    ? { text: kept, amount: result.reading.amount, kind: result.reading.kind }
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
  return read(row, text, settings, settings.leads === 'us' ? unitsOf(row) : null);
}

/** The same without asking of which unit a bare number is: it is of the one that leads. */
export function readBare(row: NumericRowId, text: string, settings: Settings): ReadResult {
  return read(row, text, settings, null);
}

function read(row: NumericRowId, text: string, settings: Settings, askUnit: readonly string[] | null): ReadResult {
  const { kind, weighing, shareOf, ofMilk, inEach, weighed, range } = numericRows[row];
  const other = otherKinds[kind];
  // Of the source only: how much a can holds is for the sheet to say, by what is chosen.
  const counted = weighing === 'source' ? inCans : weighing === 'grains' ? inPackets : null;
  const isCounted = counted?.test(text) === true;
  if (kind === 'time' && overnight.test(normaliseTyped(text).text)) return { ok: true, reading: night };
  return readQuantity(isCounted ? text.replace(counted, 'pieces') : text, {
    kind,
    bareUnit: bareUnitOf(row, settings),
    also: [
      ...(weighing === undefined || other === undefined ? [] : [other]),
      ...(shareOf === undefined ? [] : ['share' as const]),
      ...(inEach === undefined ? [] : ['mass' as const]),
      ...(isCounted ? ['count' as const] : []),
      ...(ofMilk === undefined ? [] : ['share' as const]),
    ],
    cups: settings.cups,
    decimalComma: settings.decimalComma,
    ...(weighed === true ? { plainOunce: 'mass' } : {}),
    ...(askUnit === null ? {} : { askUnit }),
    // Beyond what a row takes, a weight or a volume may as well be a slip in its unit: 1,250 kg for 1,250 g.
    ...(other === undefined ? { within: range } : {}),
  });
}

/** The units between which a number without one leaves a choice where US measure leads: solids are spooned or weighed. */
function unitsOf(row: NumericRowId): readonly string[] | null {
  const { kind, weighing, weighed } = numericRows[row];
  if (weighed === true || (kind === 'mass' && weighing === 'source')) return ['cup', 'oz'];
  return kind === 'mass' && weighing !== undefined ? ['tbsp', 'cup', 'oz'] : null;
}

const inCans = /\b(?:cans?|tins?)\b\.?/i;
const inPackets = /\b(?:packets?|sachets?)\b/i;
const overnight = /^(?:about |~ ?)?over[ -]?night$/i;
const night: Reading = {
  kind: 'time',
  amount: kitchen.overnight.value,
  exact: exactly(kitchen.overnight.value),
  unit: 'h',
  assumed: 'overnight',
};

/**
 * The texts that a text may stand for, where it may be read in several ways; each can be read in one only. Empty where
 * there is nothing to ask.
 */
export function textsMeant(row: NumericRowId, text: string, settings: Settings): readonly string[] {
  const result = readText(row, text, settings);
  return !result.ok && 'readings' in result.problem ? result.problem.readings : [];
}

/** What a row may be typed in besides its own kind where the weight of what it measures is known. */
const otherKinds: { readonly [K in Kind]?: Kind } = { mass: 'volume', volume: 'mass' };
