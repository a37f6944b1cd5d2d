import { bottles } from '../../reference/bottles';
import { carrollHenry, fermenting } from '../../reference/fermenting';
import { gasVolume, leftTooLong } from '../../reference/finished';
import { kitchenLines } from '../../reference/kitchen-lines';
import { molarMasses } from '../../reference/physics';
import { changeRecipe } from '../advice/typed-change';
import { type Formulation, formulate } from '../engine/formulate';
import { gasFromSugar, pressureOf, type Sealed, shareGas } from '../models/fizz';
import { countedUnder } from '../rows/pressure-left-out';
import { numericRows } from '../rows/sheet';
import { alcoholOf, productsOf } from './sugar-fate';

/** A sealed vessel at one temperature. */
export interface SealedAt {
  /** °C. */
  readonly celsius: number;
  /** Gauge, bar. */
  readonly pressure: number;
  /** Volumes of carbon dioxide dissolved in the liquid, as bottlers state it. */
  readonly volumes: number;
}

/** The same bottle left sealed for longer than is meant. */
export interface Standing {
  /** Hours beyond those that are meant; 0 is as it is meant. */
  readonly longer: number;
  /** All its hours in the bottle. */
  readonly hours: number;
  readonly likely: SealedAt;
  /** Gauge, bar: what it may likely be at least and at most. */
  readonly least: number;
  readonly most: number;
}

/** The same bottle in one place: the gas is the same everywhere, and cold hides its pressure. */
export interface InPlace {
  readonly place: 'fridge' | 'bottle' | 'room' | 'warm';
  readonly celsius: number;
  /** Null where no model tells what the hours make. */
  readonly likely: SealedAt | null;
  readonly forgotten: SealedAt;
}

/**
 * `close`: so near under the limit that what the sums leave out could bring it over. `rough`: under it, but beyond the
 * pressures that the solubility is published for, or warmer than what they leave out was worked out for. The sheet’s own
 * problem `overLimit` stands at the bottle where this is `over` or `close`.
 */
export type Verdict = 'holds' | 'close' | 'rough' | 'over' | 'noLimit';

export interface Fizz {
  /** As it stands through the second ferment. */
  readonly likely: SealedAt | null;
  /** As it stands, and left too long; empty where no model tells what the hours make. */
  readonly standing: readonly Standing[];
  /** All its sugar through yeast, in a warm kitchen. */
  readonly forgotten: SealedAt;
  /** The alcohol of that, % by volume at 20 °C. */
  readonly alcoholMost: number;
  /** From cold to warm; places as warm as one another count once. */
  readonly warming: readonly InPlace[];
  /** Bar; null where none was typed. */
  readonly limit: number | null;
  /** What the pressures are held against, bar: that limit, else what glass of unknown rating should never see. */
  readonly line: number;
  /** The most sugar under that limit, g/L; null where none was typed. */
  readonly sugarMost: number | null;
  readonly verdict: Verdict;
}

/** What a sealed bottle of this batch holds and bears; null where there is none or it can't be worked out. */
export function fizzOf(formulation: Formulation): Fizz | null {
  const { of, rows } = formulation;
  const pressure = rows.bottlePressureForgotten.value;
  if (typeof pressure !== 'number') return null;
  const sealed: Sealed = { water: of('waterShare'), room: of('bottleRoom') };
  const knowsLikely = typeof rows.bottlePressureLikely.value === 'number';
  const at = (place: InPlace['place'], celsius: number): InPlace => ({
    place,
    celsius,
    likely: knowsLikely ? stateOf(of('gasLikely'), sealed, celsius) : null,
    forgotten: stateOf(of('gasForgotten'), sealed, celsius),
  });
  const bottle = at('bottle', of('bottleTemperature'));
  const warm = at('warm', of('forgottenHeat'));
  const places = [bottle, at('fridge', kitchenLines.refrigerator.value), at('room', of('roomTemperature')), warm];
  const limit = numberOrNull(rows.bottleLimit.value);
  return {
    likely: bottle.likely,
    standing: leftTooLong.flatMap((longer) => standingOf(formulation, longer) ?? []),
    alcoholMost: alcoholOf(productsOf(of('sugarForgotten'), 1).ethanol),
    forgotten: warm.forgotten,
    warming: fromColdToWarm(places),
    limit,
    line: limit ?? bottles.unknownGlass.value,
    sugarMost: limit === null ? null : numberOrNull(rows.bottleSugarMost.value),
    verdict: judge(pressure, limit, warm.celsius),
  };
}

/** The bottle after so many hours more; null where that can't be told. */
function standingOf({ recipe, rows }: Formulation, longer: number): Standing | null {
  const meant = rows.bottleTime.value;
  if (typeof meant !== 'number') return null;
  const hours = meant + longer;
  const { bottleTime } = numericRows;
  const amount = Math.min(hours, bottleTime.range.most);
  const left = formulate(
    changeRecipe(recipe, [{ do: 'type', row: 'bottleTime', text: `${amount} h`, kind: bottleTime.kind, amount }]),
  );
  const { value, range } = left.rows.bottlePressureLikely;
  if (typeof value !== 'number' || range === null) return null;
  const sealed: Sealed = { water: left.of('waterShare'), room: left.of('bottleRoom') };
  const likely = stateOf(left.of('gasLikely'), sealed, left.of('bottleTemperature'));
  return { longer, hours, likely, least: range.low, most: range.high };
}

function numberOrNull(value: number | string | null): number | null {
  return typeof value === 'number' ? value : null;
}

function judge(pressure: number, limit: number | null, celsius: number): Verdict {
  if (limit === null) return 'noLimit';
  if (pressure > limit) return 'over';
  if (pressure > countedUnder(limit)) return 'close';
  const isRough = pressure > carrollHenry.pressureTo || celsius > fermenting.forgottenTemperature.value;
  return isRough ? 'rough' : 'holds';
}

function fromColdToWarm(places: readonly InPlace[]): readonly InPlace[] {
  const known = places.filter(({ celsius }) => Number.isFinite(celsius));
  return known
    .filter(({ celsius }, at) => known.findIndex((other) => other.celsius === celsius) === at)
    .sort((one, other) => one.celsius - other.celsius);
}

/** A first ferment in a jar whose lid is tight. */
export interface TightLid {
  readonly likely: SealedAt | null;
  readonly forgotten: SealedAt;
  /** Whether less is left empty than a sealed vessel needs for the liquid alone. */
  readonly tooFull: boolean;
}

/**
 * What builds up under a tight lid: likely by the time it is ready to taste; if forgotten, all of its sugar through
 * yeast in a warm kitchen. Null where the batch can't be worked out.
 */
export function tightLidOf({ of, rows, evaluation }: Formulation): TightLid | null {
  const { headspaceVolume, fillVolume, vesselCount } = rows;
  if (typeof headspaceVolume.value !== 'number' || typeof fillVolume.value !== 'number') return null;
  if (typeof vesselCount.value !== 'number') return null;
  const liquid = of('liquid') / vesselCount.value;
  const sealed: Sealed = { water: of('waterShare'), room: headspaceVolume.value / liquid };
  const sugar = of('drinkSugar');
  const most = of('drinkSugarMost');
  if (!Number.isFinite(most) || !Number.isFinite(sealed.room) || sealed.room < 0) return null;
  const room = of('roomTemperature');
  const warm = Math.max(room, fermenting.forgottenTemperature.value);
  const used = evaluation.c('usedWhenReady') * evaluation.c('yeastShare') * sugar;
  const whole = headspaceVolume.value + fillVolume.value;
  const forgotten = stateOf(gasFromSugar(most), sealed, warm);
  if (!Number.isFinite(forgotten.pressure)) return null;
  return {
    likely: typeof rows.readyTime.value === 'number' ? stateOf(gasFromSugar(used), sealed, room) : null,
    forgotten,
    tooFull: headspaceVolume.value < fermenting.leastHeadspace.value * whole,
  };
}

function stateOf(gas: number, sealed: Sealed, celsius: number): SealedAt {
  const pressure = pressureOf(gas, sealed, celsius);
  const { dissolved } = shareGas(pressure, sealed, celsius);
  return { celsius, pressure, volumes: (dissolved * molarMasses.carbonDioxide.value) / 1000 / gasVolume.value };
}
