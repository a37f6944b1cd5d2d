import { writeUS } from '../measure/write-quantity';
import { bottles } from '../reference/bottles';
import type { Formulation } from './formulate';
import { labelOf } from './labels';
import { fermentableOf } from './models/blend';
import { roomForGas } from './models/fizz';
import type { NumericRowId } from './order';
import { inOtherDegrees } from './other-degrees';
import type { Problem } from './problem';
import { numericRows } from './sheet';
import { letGo, typedRows, type WayOut } from './way-out';

/** Typing a whole number into a row, in the unit it is held in. */
function typeIn(row: NumericRowId, amount: number, unit: string): WayOut['changes'][number] {
  return { do: 'type', row, text: `${amount} ${unit}`, kind: numericRows[row].kind, amount };
}

/** Sealing nothing at all. */
export const unsealed: readonly WayOut[] = [
  { label: 'Leave out the second ferment', changes: [typeIn('bottleTime', 0, 'h')] },
];

/** How a bottle that could go over its limit is kept under it: less added, less at the start, or more left empty. */
export function underLimit(formulation: Formulation): readonly WayOut[] {
  return [...lessAdded(formulation), ...lessAtStart(formulation), ...moreEmpty(formulation)];
}

function lessAdded({ of }: Formulation): readonly WayOut[] {
  const added = of('bottleSugar');
  if (!(added > 0)) return [];
  const allowed = Math.floor(of('bottleSugarMost') - (of('sugarForgotten') - added));
  const some: readonly WayOut[] =
    allowed > 0
      ? [{ label: `Add only ${allowed} g/L to the bottle`, changes: [typeIn('bottleSugar', allowed, 'g/L')] }]
      : [];
  return [...some, { label: 'Add nothing to the bottle', changes: [{ do: 'clear', row: 'bottleSugar' }] }];
}

/**
 * What the milk may start with, so that all of it would still be under the limit, the most that a table leaves open
 * counted. The liquid is never less than its milk, so that a figure per litre of milk keeps to it. It is said in the
 * row where the sugar is typed; a weight that is what there is sizes the batch, and stays. None where the milk alone
 * brings too much: unsweetened, it goes over as well; nor where it would be less than a gram.
 */
function lessAtStart(formulation: Formulation): readonly WayOut[] {
  const { of, evaluation } = formulation;
  if (evaluation.standing.values.has('sugarLeft')) return [];
  const typed = ratesOf(formulation);
  const [native, now] = [of('nativeSugar'), of('sugarRate')];
  const { low, value, high } = fermentableOf(formulation.choices.sweetener, formulation.choices.grain.takes);
  const open = value > 0 && high > low ? high / value : 1;
  const unsure = of('sugarUnsure') - now * (open - 1);
  const rate = (of('bottleSugarMost') - of('bottleSugar') - native - unsure) / open;
  if (!(rate >= 0) || rate >= now) return [];
  for (const row of ['sweetenerMass', 'caneEquivalent'] as const) {
    if (!typed.includes(row)) continue;
    const grams = Math.floor((of(row) * rate) / now);
    if (grams === 0) return [];
    return [{ label: `Use only ${grams} g for “${labelOf(row)}”`, changes: [typeIn(row, grams, 'g')] }];
  }
  if (!typed.includes('startingSugar') && typed.includes('sugarRate')) {
    const whole = Math.floor(rate);
    return [{ label: `Sweeten the milk with only ${whole} g/L`, changes: [typeIn('sugarRate', whole, 'g/L')] }];
  }
  const whole = Math.floor(native + rate);
  return whole > 0
    ? [{ label: `Start with only ${whole} g/L of sugar`, changes: [typeIn('startingSugar', whole, 'g/L')] }]
    : [];
}

/** The rows that are typed, without weights that are what there is: those say nothing of how sweet it is. */
function ratesOf({ recipe }: Formulation): readonly NumericRowId[] {
  return recipe.given.filter(({ use }) => use !== 'onHand').map(({ row }) => row);
}

/** The same gas with more room over it: closed form, offered up to half of the bottle. */
function moreEmpty({ of }: Formulation): readonly WayOut[] {
  const room = roomForGas(of('gasForgotten'), of('waterShare'), of('forgottenHeat'), of('limitCounted'));
  const share = room / (1 + room);
  if (!(share > 0) || share > bottles.mostHeadspace.value) return [];
  return emptierBottle(share * of('bottleVolume'));
}

/** Leaving at least so much of the bottle empty, in mL. */
export function emptierBottle(least: number): readonly WayOut[] {
  const slack = 1e-9; // tolerance
  const empty = Math.ceil(least - slack);
  return [{ label: `Leave ${empty} mL of the bottle empty`, changes: [typeIn('bottleHeadspace', empty, 'mL')] }];
}

/** The nearest temperature at which the models still hold, for the room or for a bottle with one of its own. */
export function roomWithinModels(
  { at, celsius, coolest, warmest }: Extract<Problem, { readonly code: 'outsideModels' }>,
  formulation: Formulation,
): readonly WayOut[] {
  const own = at === 'bottlePressureLikely' && typedRows(formulation).includes('bottleTemperature');
  const row = own ? 'bottleTemperature' : 'roomTemperature';
  const nearest = celsius < coolest ? coolest : warmest;
  const degrees = `${nearest} °C (${writeUS(nearest, 'temperature', false) ?? ''})`;
  const label = `I can keep the ${own ? 'bottle' : 'room'} at ${degrees}`;
  return [
    ...inOtherDegrees(row, celsius),
    { label, changes: [typeIn(row, nearest, '°C')] },
    ...letGo([row], formulation),
  ];
}
