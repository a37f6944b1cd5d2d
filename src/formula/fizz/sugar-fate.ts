import { alcoholLine, sweetness } from '../../reference/finished';
import { molarMasses, physics } from '../../reference/physics';
import { nativeSugarRange } from '../composition/native';
import type { Formulation } from '../engine/formulate';
import { fermentableOf } from '../models/blend';
import { isWithinModels, usedAfter } from '../models/ripening';
import { type CoefficientId, coefficientInEffect } from '../recipe/coefficients';

export interface Products {
  readonly lacticAcid: number;
  readonly ethanol: number;
  readonly carbonDioxide: number;
}

/**
 * What so much hexose turns into, g per g or g/L alike, `throughYeast` of it (0 to 1) to ethanol and gas, the rest to
 * lactic acid. Bacteria that make all three are half of either, by their equation. Mass is conserved: printed molar
 * masses are rounded, and would add up to a hundred-thousandth too much, so they only share out what there is.
 */
export function productsOf(hexose: number, throughYeast: number): Products {
  const [ethanol, gas] = [molarMasses.ethanol.value, molarMasses.carbonDioxide.value];
  const yeast = hexose * throughYeast;
  return {
    lacticAcid: hexose - yeast,
    ethanol: (yeast * ethanol) / (ethanol + gas),
    carbonDioxide: (yeast * gas) / (ethanol + gas),
  };
}

/** A figure with the range it may lie in, all in the same unit. */
export interface Estimate {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** Where the sugar of a batch goes, g per litre of kefir as hexose, each an estimate. */
export interface SugarFate {
  readonly start: Estimate;
  /** Of the likely start, what the milk brings of its own; the rest was added, to the jar or to the bottle. */
  readonly native: number;
  readonly used: Estimate;
  readonly left: Estimate;
  readonly lacticAcid: Estimate;
  readonly ethanol: Estimate;
  /** % by volume at 20 °C. */
  readonly alcohol: Estimate;
  readonly carbonDioxide: Estimate;
  /** How sweet it likely tastes, in plain words. */
  readonly sweetness: string;
  /** The same with the least and the most sugar left. */
  readonly sweetnessEnds: { readonly least: string; readonly most: string };
  /** How the alcohol lies to the line where law draws one: all of its range under or over, or the line within it. */
  readonly line: 'under' | 'may reach' | 'over';
}

type End = keyof Estimate;

/** Sugar at the start, and of each of its ends what is used by each end of the shares; what is not used is left. */
interface Account {
  readonly start: Estimate;
  readonly used: (start: End, share: End) => number;
}

/** The first ferment until it is ready to taste; null where the batch can't be worked out. */
export function fateOfFirst(formulation: Formulation): SugarFate | null {
  const account = accountOfFirst(formulation);
  return account === null ? null : fate(formulation, account);
}

function accountOfFirst(formulation: Formulation): Account | null {
  const start = drinkSugarRange(formulation);
  if (!Number.isFinite(start.likely)) return null;
  const { status, value } = formulation.rows.sugarLeft;
  if (status === 'measured' && typeof value === 'number') {
    return { start, used: (end) => Math.max(start[end] - value, 0) };
  }
  const shares = rangeOf(formulation, 'usedWhenReady');
  return { start, used: (end, share) => start[end] * shares[share] };
}

/** Sugar at the start per litre of liquid, from the least to the most that tables and labels leave open. */
function drinkSugarRange(formulation: Formulation): Estimate {
  const { of, evaluation, choices } = formulation;
  const { low, value } = fermentableOf(choices.sweetener, choices.grain.takes);
  const added = of('sugarRate') * (value > 0 ? low / value : 1);
  const ofMilk = ((nativeSugarRange(evaluation).low + added) * of('milkVolume')) / of('liquid');
  const least = ofMilk + broughtBy(formulation, 'starterSugar').low;
  const likely = of('drinkSugar');
  // What was typed for the start can be less than what is believed at the least of the milk’s own.
  return { low: Math.min(least, likely), likely, high: Math.max(of('drinkSugarMost'), likely) };
}

/**
 * Both ferments together, with what is added to the bottle; null where there is no second, and where its room or its
 * bottle is outside the temperatures of the models. The range of the ready time is that of the first ferment.
 */
export function fateAfterBottle(formulation: Formulation): SugarFate | null {
  const first = accountOfFirst(formulation);
  const { bottleTime, bottleSugar, readyTime } = formulation.rows;
  if (!isWithinModels(formulation.of('bottleTemperature'))) return null;
  const ready = formulation.of('bottleReady');
  if (first === null || typeof bottleTime.value !== 'number' || bottleTime.value === 0) return null;
  if (typeof bottleSugar.value !== 'number' || !Number.isFinite(ready) || readyTime.range === null) return null;
  const [hours, added] = [bottleTime.value, bottleSugar.value];
  const pace = rangeOf(formulation, 'withoutGrains');
  const shares = rangeOf(formulation, 'usedWhenReady');
  const likely = formulation.of('readyTime');
  // The sooner it is ready, the more is used.
  const times = { low: readyTime.range.high, likely, high: readyTime.range.low };
  const inBottle = (end: End): number => usedAfter((hours * pace[end]) / ((ready * times[end]) / likely), shares[end]);
  const { low, high } = first.start;
  const start = { low: low + added, likely: first.start.likely + added, high: high + added };
  const used = (end: End, share: End): number => {
    const before = first.used(end, share);
    return before + (start[end] - before) * inBottle(share);
  };
  return fate(formulation, { start, used });
}

function fate(formulation: Formulation, { start, used: usedBy }: Account): SugarFate {
  const used = { low: usedBy('low', 'low'), likely: usedBy('likely', 'likely'), high: usedBy('high', 'high') };
  const left = {
    low: start.low - usedBy('low', 'high'),
    likely: start.likely - used.likely,
    high: start.high - usedBy('high', 'low'),
  };
  const yeast = rangeOf(formulation, 'yeastShare');
  const least = productsOf(used.low, yeast.low);
  const likely = productsOf(used.likely, yeast.likely);
  const most = productsOf(used.high, yeast.high);
  // The more goes through yeast, the less is left for acid.
  const acid = { low: productsOf(used.low, yeast.high), high: productsOf(used.high, yeast.low) };
  const [acidBrought, brought] = [broughtBy(formulation, 'starterAcid'), broughtBy(formulation, 'starterEthanol')];
  const ethanol = {
    low: least.ethanol + brought.low,
    likely: likely.ethanol + brought.likely,
    high: most.ethanol + brought.high,
  };
  const alcohol = {
    low: alcoholOf(ethanol.low),
    likely: alcoholOf(ethanol.likely),
    high: alcoholOf(ethanol.high),
  };
  const line = alcoholLine.value;
  return {
    start,
    native: (formulation.of('nativeSugar') * formulation.of('milkVolume')) / formulation.of('liquid'),
    used,
    left,
    lacticAcid: {
      low: acid.low.lacticAcid + acidBrought.low,
      likely: likely.lacticAcid + acidBrought.likely,
      high: acid.high.lacticAcid + acidBrought.high,
    },
    ethanol,
    alcohol,
    carbonDioxide: { low: least.carbonDioxide, likely: likely.carbonDioxide, high: most.carbonDioxide },
    sweetness: tasteOf(left.likely),
    sweetnessEnds: { least: tasteOf(left.low), most: tasteOf(left.high) },
    line: alcohol.low >= line ? 'over' : alcohol.high >= line ? 'may reach' : 'under',
  };
}

/** How sweet so much sugar tastes, g/L as hexose. */
function tasteOf(left: number): string {
  return sweetness.steps.find(({ most }) => left <= most)?.words ?? '';
}

/** Alcohol by volume, %, of so much ethanol in g/L, at 20 °C. */
export function alcoholOf(ethanol: number): number {
  return (100 * ethanol) / 1000 / physics.ethanolDensity.value;
}

/** What a starter brings into a litre of kefir, g; nothing where grains are strained out. */
function broughtBy(formulation: Formulation, what: 'starterSugar' | 'starterAcid' | 'starterEthanol'): Estimate {
  if (formulation.choices.grain.starter === undefined) return { low: 0, likely: 0, high: 0 };
  const perLitre = (1000 * formulation.of('grainMass')) / formulation.of('liquid');
  const { low, likely, high } = rangeOf(formulation, what);
  return { low: low * perLitre, likely: likely * perLitre, high: high * perLitre };
}

/** A coefficient in effect with its range; one figure where it is the cook's own. */
function rangeOf({ recipe, choices }: Formulation, id: CoefficientId): Estimate {
  const { value, low = value, high = value } = coefficientInEffect(id, recipe, choices);
  return { low, likely: value, high };
}
