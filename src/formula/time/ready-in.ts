import { rounding } from '../../measure/nearly';
import { kitchen } from '../../reference/kitchen';
import type { Formulation } from '../engine/formulate';
import { timesAsLong } from '../models/ripening';
import type { NumericRowId } from '../recipe/order';
import { numericRows } from '../rows/sheet';
import { hoursInUsualRoom } from './ripening-chart';

/** A row that moves the ready time when it is typed. */
export type HasteRowId = Extract<NumericRowId, 'roomTemperature' | 'grainRate' | 'startingSugar'>;

/** One thing to change so that the batch is likely ready in so many hours, all else as it is. */
export interface ReadyIn {
  /** The row to type it in. */
  readonly row: HasteRowId;
  /** What it is now, in the unit of that row. */
  readonly now: number;
  /** What would do it; null where nothing within the usual range does. */
  readonly value: number | null;
  /** What is usual for it, in that unit. */
  readonly usual: Usual;
  /**
   * The end of the usual range that gets nearer to what was asked than it is now, and the hours it comes to; null where
   * the range does it, and where it gets no nearer.
   */
  readonly nearest: { readonly value: number; readonly hours: number } | null;
}

interface Usual {
  readonly low: number;
  readonly high: number;
}

/**
 * What temperature, dose or sugar would have the batch likely ready in so many hours: first those of which the usual
 * range does it, and among them the room first, since it costs nothing and does most, then the grains, the sugar last,
 * since it does least and is tasted. Where the room is outside the models there is no time to change the others from.
 * Null where the batch has no time. Only what is usual is offered.
 */
export function readyIn(formulation: Formulation, hours: number): readonly ReadyIn[] | null {
  const { readyTime, grainRate, startingSugar, roomTemperature } = formulation.rows;
  const atUsual = hoursInUsualRoom(formulation);
  if (atUsual === null || !(hours > 0 && Number.isFinite(hours))) return null;
  if (typeof roomTemperature.value !== 'number') return null;
  const now = typeof readyTime.value === 'number' ? readyTime.value : null;
  const offers = [byRoom(formulation, atUsual, { hours, now })];
  if (now !== null && typeof grainRate.value === 'number') {
    const { evaluation } = formulation;
    const power = evaluation.c('doseExponent');
    const counted = Math.min(grainRate.value, evaluation.c('doseMost') * evaluation.c('usualDose'));
    offers.push(byPower('grainRate', counted, power, usualDose(formulation), { hours, now }));
  }
  if (now !== null && typeof startingSugar.value === 'number' && formulation.of('fermentable') > 0) {
    const power = formulation.evaluation.c('sugarExponent');
    offers.push(byPower('startingSugar', startingSugar.value, power, usualSugar(formulation), { hours, now }));
  }
  return [...offers.filter(({ value }) => value !== null), ...offers.filter(({ value }) => value === null)];
}

interface Haste {
  readonly hours: number;
  /** The hours it takes now; null where that can't be told. */
  readonly now: number | null;
}

function usualRoom({ evaluation }: Formulation): Usual {
  const { value, low = value, high = value } = kitchen.roomTemperature;
  return numericRows.roomTemperature.usual?.(evaluation) ?? { low, high };
}

function usualDose({ choices, evaluation }: Formulation): Usual {
  const { value, low = value, high = value } = choices.grain.dose;
  const usual = numericRows.grainRate.usual?.(evaluation) ?? { low, high };
  // More than counts as faster is no way to be faster.
  const most = evaluation.c('doseMost') * evaluation.c('usualDose');
  return { low: Math.min(usual.low, most), high: Math.min(usual.high, most) };
}

/** The usual addition on top of what is native, lowered by native sugar as the addition itself is. */
function usualSugar({ of, evaluation }: Formulation): Usual {
  const { value, low = value, high = value } = kitchen.addedSugar;
  const native = of('nativeSugar');
  const counted = Math.max(native - evaluation.c('nativeThreshold'), 0);
  return { low: native + Math.max(low - counted, 0), high: native + Math.max(high - counted, 0) };
}

/** More of it is faster, as a power: hours go as (now ÷ then)^power. */
function byPower(
  row: HasteRowId,
  now: number,
  power: number,
  usual: Usual,
  haste: Haste & { readonly now: number },
): ReadyIn {
  const value = power > 0 ? now * (haste.now / haste.hours) ** (1 / power) : Number.NaN;
  if (value >= usual.low && value <= usual.high) return { row, now, value, usual, nearest: null };
  const end = haste.hours < haste.now ? usual.high : usual.low;
  return nearestAt({ row, now, usual }, end, haste.now * (now / end) ** power, haste);
}

/** The models fall with warmth throughout the usual rooms, so halving finds the one temperature. */
function byRoom(formulation: Formulation, atUsual: number, haste: Haste): ReadyIn {
  const usual = usualRoom(formulation);
  const room = { row: 'roomTemperature', now: formulation.of('roomTemperature'), usual } as const;
  const at = (celsius: number): number =>
    atUsual * timesAsLong(celsius, formulation.choices.grain.readyTemperature.value).likely;
  if (haste.hours > at(usual.low)) return nearestAt(room, usual.low, at(usual.low), haste);
  if (haste.hours < at(usual.high)) return nearestAt(room, usual.high, at(usual.high), haste);
  let [cool, warm] = [usual.low, usual.high];
  const near = 1e-6; // tolerance: °C
  while (warm - cool > near) {
    const middle = (cool + warm) / 2;
    if (at(middle) > haste.hours) cool = middle;
    else warm = middle;
  }
  return { ...room, value: (cool + warm) / 2, nearest: null };
}

/** What an end of the usual range comes to, if that is nearer to what was asked, in proportion, than it is now. */
function nearestAt(
  offer: Pick<ReadyIn, 'row' | 'now' | 'usual'>,
  value: number,
  hours: number,
  { hours: asked, now }: Haste,
): ReadyIn {
  const off = (time: number): number => Math.abs(Math.log(time / asked));
  const isNearer = now === null || off(hours) < off(now) - rounding;
  return { ...offer, value: null, nearest: isNearer ? { value, hours } : null };
}
