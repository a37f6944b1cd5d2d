import { alcoholLine, fermenting, sweetness } from '../reference/fermenting';
import { molarMasses } from '../reference/physics';
import { type CoefficientId, coefficientInEffect } from './coefficients';
import type { Formulation } from './formulate';
import { isWithinModels, usedAfter } from './models/ripening';

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
  readonly start: number;
  /** Of the start, what the milk brings of its own; the rest was added, to the jar or to the bottle. */
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

/** The first ferment until it is ready to taste; null where the batch can't be worked out. */
export function fateOfFirst(formulation: Formulation): SugarFate | null {
  const start = formulation.of('drinkSugar');
  const left = formulation.rows.sugarLeft;
  if (!Number.isFinite(start)) return null;
  if (left.status === 'measured' && typeof left.value === 'number') {
    return fate(formulation, start, exactly(Math.max(start - left.value, 0)));
  }
  const share = rangeOf(formulation, 'usedWhenReady');
  return fate(formulation, start, {
    low: start * share.low,
    likely: start * share.likely,
    high: start * share.high,
  });
}

/**
 * Both ferments together, with what is added to the bottle; null where there is no second, and where its room or its
 * bottle is outside the temperatures of the models. The range of the ready time is that of the first ferment.
 */
export function fateAfterBottle(formulation: Formulation): SugarFate | null {
  const first = fateOfFirst(formulation);
  const { bottleTime, bottleSugar, readyTime } = formulation.rows;
  if (!isWithinModels(formulation.of('bottleTemperature'))) return null;
  const ready = formulation.of('bottleReady');
  if (first === null || typeof bottleTime.value !== 'number' || bottleTime.value === 0) return null;
  if (typeof bottleSugar.value !== 'number' || !Number.isFinite(ready) || readyTime.range === null) return null;
  const [hours, added] = [bottleTime.value, bottleSugar.value];
  const pace = rangeOf(formulation, 'withoutGrains');
  const share = rangeOf(formulation, 'usedWhenReady');
  const [soonest, likely, latest] = [readyTime.range.low, formulation.of('readyTime'), readyTime.range.high];
  const inBottle = (end: keyof Estimate, time: number): number =>
    usedAfter((hours * pace[end]) / ((ready * time) / likely), share[end]);
  const all = first.start + added;
  const total = (used: number, more: number): number => used + (all - used) * more;
  return fate(formulation, all, {
    low: total(first.used.low, inBottle('low', latest)),
    likely: total(first.used.likely, inBottle('likely', likely)),
    high: total(first.used.high, inBottle('high', soonest)),
  });
}

function fate(formulation: Formulation, start: number, used: Estimate): SugarFate {
  const yeast = rangeOf(formulation, 'yeastShare');
  const least = productsOf(used.low, yeast.low);
  const likely = productsOf(used.likely, yeast.likely);
  const most = productsOf(used.high, yeast.high);
  // The more goes through yeast, the less is left for acid.
  const acid = { low: productsOf(used.low, yeast.high), high: productsOf(used.high, yeast.low) };
  const left = { low: start - used.high, likely: start - used.likely, high: start - used.low };
  const alcohol = {
    low: abv(least.ethanol),
    likely: abv(likely.ethanol),
    high: abv(most.ethanol),
  };
  const line = alcoholLine.value;
  return {
    start,
    native: (formulation.of('nativeSugar') * formulation.of('milkVolume')) / formulation.of('liquid'),
    used,
    left,
    lacticAcid: { low: acid.low.lacticAcid, likely: likely.lacticAcid, high: acid.high.lacticAcid },
    ethanol: { low: least.ethanol, likely: likely.ethanol, high: most.ethanol },
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
function abv(ethanol: number): number {
  return (100 * ethanol) / 1000 / fermenting.ethanolDensity.value;
}

function exactly(value: number): Estimate {
  return { low: value, likely: value, high: value };
}

/** A coefficient in effect with its range; one figure where it is the cook's own. */
function rangeOf({ recipe, choices }: Formulation, id: CoefficientId): Estimate {
  const { value, low = value, high = value } = coefficientInEffect(id, recipe, choices);
  return { low, likely: value, high };
}
