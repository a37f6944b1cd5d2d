import { wholeAbove } from '../../measure/nearly';
import { convertNumber, units } from '../../measure/units';
import { writeUS } from '../../measure/write-quantity';
import { bottles } from '../../reference/bottles';
import type { Formulation } from '../engine/formulate';
import { fermentableOf } from '../models/blend';
import { fillAtPressure, gasFromSugar } from '../models/fizz';
import type { NumericRowId } from '../recipe/order';
import type { Problem } from '../recipe/problem';
import { labelOf } from '../words/labels';
import { lowerFirst } from '../words/lower-first';
import { inOtherDegrees } from './other-degrees';
import { letGo, typedRows, type WayOut } from './way-out';

/** Typing a whole number into a row, in a unit whose amount is that number. */
function typeIn(row: NumericRowId, amount: number, unit: 'g' | 'g/L' | 'mL' | 'h' | '°C'): WayOut['changes'][number] {
  return { do: 'type', row, text: `${amount} ${unit}`, kind: units[unit].kind, amount };
}

/** Sealing nothing at all. */
export const unsealed: readonly WayOut[] = [
  { label: 'Leave out the second ferment', changes: [typeIn('bottleTime', 0, 'h')] },
];

/** How a bottle that could go over its limit is kept under it: less added, less at the start, or more left empty. */
export function underLimit(formulation: Formulation): readonly WayOut[] {
  const added = formulation.of('bottleSugar');
  return [
    ...lessAdded(formulation),
    ...lessAtStart(formulation, added),
    ...(added > 0 ? lessAtStart(formulation, 0).map(withNothingAdded) : []),
    ...moreEmpty(formulation),
  ];
}

/** Less of what is added, in the words it was typed in: by the litre, or into each bottle. */
function lessAdded(formulation: Formulation): readonly WayOut[] {
  const { of } = formulation;
  const added = of('bottleSugar');
  if (!(added > 0)) return [];
  const allowed = of('bottleSugarMost') - (of('sugarForgotten') - added);
  const grams = Math.floor(convertNumber(allowed * fillOf(formulation), 'mL', 'L'));
  const perLitre = Math.floor(allowed);
  const some = isAddedToEach(formulation)
    ? { amount: grams, label: `Add only ${grams} g of sugar to each bottle`, unit: 'g' as const }
    : { amount: perLitre, label: `Add only ${perLitre} g/L to the bottle`, unit: 'g/L' as const };
  return [
    ...(some.amount > 0 ? [{ label: some.label, changes: [typeIn('bottleSugar', some.amount, some.unit)] }] : []),
    { label: 'Add nothing to the bottle', changes: [nothingAdded] },
  ];
}

const nothingAdded = { do: 'clear', row: 'bottleSugar' } as const;

/** What fills a bottle, mL. */
function fillOf({ of }: Formulation): number {
  return of('bottleVolume') - of('bottleHeadspace');
}

/** Whether what is added was typed as what goes into each bottle: less in the bottle is then no less sugar. */
function isAddedToEach({ recipe }: Formulation): boolean {
  return recipe.given.some(({ row, kind }) => row === 'bottleSugar' && kind === 'mass');
}

/**
 * What the milk may start with, so that all of it would still be under the limit, the most that a table leaves open
 * counted. The liquid is never less than its milk, so that a figure per litre of milk keeps to it. It is said in the
 * row where the sugar is typed; a weight that is what there is sizes the batch, and stays. None where the milk alone
 * brings too much: unsweetened, it goes over as well; nor where it would be less than a gram.
 */
function lessAtStart(formulation: Formulation, added: number): readonly WayOut[] {
  const { of, evaluation } = formulation;
  if (evaluation.standing.values.has('sugarLeft')) return [];
  const typed = ratesOf(formulation);
  const [native, now] = [of('nativeSugar'), of('sugarRate')];
  const { low, value, high } = fermentableOf(formulation.choices.sweetener, formulation.choices.grain.takes);
  const open = value > 0 && high > low ? high / value : 1;
  const unsure = of('sugarUnsure') - now * (open - 1);
  const rate = (of('bottleSugarMost') - added - native - unsure) / open;
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

/** Both at once, where neither is enough. */
function withNothingAdded({ label, changes }: WayOut): WayOut {
  return { label: `Add nothing to the bottle, and ${lowerFirst(label)}`, changes: [nothingAdded, ...changes] };
}

/** The same sugar with more room over it: closed form, offered up to half of the bottle. */
function moreEmpty(formulation: Formulation): readonly WayOut[] {
  const { of } = formulation;
  const volume = of('bottleVolume');
  const each = isAddedToEach(formulation) ? gasFromSugar(of('bottleSugar')) : 0;
  const gas = { gas: of('gasForgotten') - each, added: each * fillOf(formulation), volume };
  const fill = fillAtPressure(gas, of('waterShare'), of('forgottenHeat'), of('limitCounted'));
  const empty = volume - fill;
  if (!(empty > 0) || empty > bottles.mostHeadspace.value * volume) return [];
  return emptierBottle(empty);
}

/** Leaving at least so much of the bottle empty, in mL. */
export function emptierBottle(least: number): readonly WayOut[] {
  const empty = wholeAbove(least);
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
