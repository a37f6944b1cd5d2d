import { nearly } from '../../measure/nearly';
import { readQuantity } from '../../measure/read-quantity';
import { convertNumber, units } from '../../measure/units';
import { writeTrimmed } from '../../measure/write-quantity';
import { type Change, changeRecipe } from '../advice/typed-change';
import type { WayOut } from '../advice/ways-out';
import { type Formulation, formulate } from '../engine/formulate';
import type { NumericRowId } from '../recipe/order';
import { severities } from '../recipe/problem';
import { labelOf } from '../words/labels';
import type { Kitchen } from '../words/write-row';
import type { HasteRowId, ReadyIn } from './ready-in';

/** An offer as it would be typed: a button that types it, and nothing else than it says. */
export interface ReadyInWay extends WayOut {
  /** What is typed, such as `23.7 °C`, in the unit that leads. */
  readonly text: string;
  /** The batch once it is typed. */
  readonly after: Formulation;
}

/** Rows that settle what another row would say: where they are typed, it does not count beside them. */
const rivals: Readonly<Record<HasteRowId, readonly NumericRowId[]>> = {
  roomTemperature: [],
  grainRate: ['grainMass'],
  startingSugar: ['sugarRate', 'sweetenerMass', 'caneEquivalent'],
};

/**
 * Typing what an offer says, or the nearest end of the usual range where that is what it gets to. What was typed
 * against it is let go only where it must be, and the label says so. Each is tried before it is offered: after it the
 * row counts as typed, and nothing else breaks. No changes where it would be typed as it is; null where there is
 * nothing to type or no way to (what was measured stands).
 */
export function wayToBeReady(offer: ReadyIn, formulation: Formulation, kitchen: Kitchen): ReadyInWay | null {
  const { row, now } = offer;
  const value = offer.value ?? offer.nearest?.value;
  if (value === undefined) return null;
  const text = writeTyped(row, value, kitchen);
  const label = `Use ${text} for “${labelOf(row)}”`;
  if (text === writeTyped(row, now, kitchen)) return { label, text, changes: [], after: formulation };
  const typing = typed(row, text, kitchen);
  const inTheWay = rivals[row].filter((rival) => formulation.recipe.given.some((cell) => cell.row === rival));
  const letGo = inTheWay.map((rival): Change => ({ do: 'clear', row: rival }));
  const gone = inTheWay.map((rival) => `“${labelOf(rival)}”`).join(' and ');
  const ways = [
    { label, changes: [typing] },
    ...(letGo.length === 0 ? [] : [{ label: `${label} and clear ${gone}`, changes: [...letGo, typing] }]),
  ];
  for (const way of ways) {
    const after = formulate(changeRecipe(formulation.recipe, way.changes));
    if (takes(after, typing) && breaks(after) <= breaks(formulation)) return { ...way, text, after };
  }
  return null;
}

function unitOf(row: HasteRowId, { leads }: Kitchen) {
  if (row !== 'roomTemperature') return 'g/L';
  return leads === 'us' ? '°F' : '°C';
}

const fewGrams = 10; // geometry: below it a tenth would be more than 1 % of what is typed

/**
 * What an offer types, in the unit that leads: a tenth is finer than a kitchen measures but for a few grams, and neither
 * can be read as thousands.
 */
export function writeTyped(row: HasteRowId, value: number, kitchen: Kitchen): string {
  const unit = unitOf(row, kitchen);
  const number = unit === '°F' ? convertNumber(value, '°C', unit) : value;
  return `${writeTrimmed(number, number < fewGrams ? 2 : 1, kitchen.decimalComma)} ${units[unit].symbol}`;
}

type Typing = Extract<Change, { readonly do: 'type' }> & { readonly amount: number };

/** The text with the amount that it is read as when it is typed. */
function typed(row: HasteRowId, text: string, kitchen: Kitchen): Typing {
  const bareUnit = unitOf(row, kitchen);
  const { kind } = units[bareUnit];
  const read = readQuantity(text, { kind, bareUnit, cups: kitchen.cups, decimalComma: kitchen.decimalComma });
  return { do: 'type', row, text, kind, amount: read.ok ? read.reading.amount : Number.NaN };
}

function takes(after: Formulation, { row, amount }: Typing): boolean {
  const { value, status } = after.rows[row];
  const same = typeof value === 'number' && nearly(value, amount);
  return same && status === 'given' && typeof after.rows.readyTime.value === 'number';
}

/** A caution, or more than there is on hand, is for the sheet to say; what can't be worked out or joined is not offered. */
function breaks({ rows }: Formulation): number {
  const codes = Object.values(rows).flatMap(({ problems }) => problems.map(({ code }) => code));
  return codes.filter((code) => severities[code] === 'refusal' || code === 'conflict' || code === 'runsOver').length;
}
