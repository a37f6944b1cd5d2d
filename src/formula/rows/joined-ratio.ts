import { rounding } from '../../measure/nearly';
import { nativeRange } from '../composition/native';
import { combine, freeWaterAt, type Linear, ratiosFor, valueAt } from '../models/milk';
import type { Access } from './row';

/** One reading of the fill or drink, as a·milk + b·native sugar + constant, per what the sugar rule in force adds. */
interface Reading {
  readonly milk: number;
  readonly native: number;
  /** Whether the sugar this reading assumes is the sugar that the ratio found really gets. */
  readonly holds: (nativePerLitre: number) => boolean;
}

/**
 * The water ratio (g/g) at which a typed amount of source or of water gives a typed amount of milk, fill or drink.
 * Closed form: milk and native sugar are both linear in W′ and 1/W′ (see `models/milk.ts`), and so is what the grains
 * and the dissolved sweetener add. The usual sugar has three regimes (native sugar not counted, counted, enough by
 * itself), of which just one holds at a ratio. Of two ratios that do it, the one nearer to the usual. Where none does:
 * a problem naming both rows.
 */
export function joinedRatio(x: Access): number {
  const { target, fixed, kept } = wanted(x);
  const reduced = x.reduced();
  const native = scale(reduced.sugars, nativeRange(x, reduced).value);
  const ratios = readings(x).flatMap((reading) => {
    const sugarRoom =
      x.plan.sweetenerFixed || x.plan.sugarBy === 'none' ? 0 : x.of('sweetenerRoom') / x.of('fermentable');
    const figure = combine(reduced.volume, 1 + kept + reading.milk * sugarRoom, native, reading.native * sugarRoom);
    return ratiosFor(reduced, figure, perSource(x, target - fixed)).filter((ratio) => {
      const water = freeWaterAt(reduced, ratio);
      return reading.holds((1000 * valueAt(native, water)) / valueAt(reduced.volume, water));
    });
  });
  const least = x.c('ownWater');
  // A poured source joined to its own volume needs no water.
  const possible = ratios
    .filter((ratio) => ratio >= least - rounding)
    .map((ratio) => (ratio > least + rounding ? ratio : least));
  const off = (ratio: number): number => Math.abs(ratio - x.c('usualRatio'));
  if (possible.length > 0) return possible.reduce((best, ratio) => (off(ratio) < off(best) ? ratio : best));
  return Number.isNaN(target) || Number.isNaN(fixed) || Number.isNaN(x.of(anchor(x))) ? Number.NaN : refuse(x);
}

function refuse(x: Access): number {
  const other = { milk: 'milkVolume', drink: 'drinkVolume', fill: 'fillVolume' } as const;
  return x.fail({ code: 'noRatio', at: 'waterRatio', rows: [anchor(x), other[x.plan.joinedBy ?? 'fill']] });
}

/** The typed row on the source's side. */
function anchor(x: Access): 'sourceMass' | 'blendWater' {
  return x.plan.accepted.has('sourceMass') ? 'sourceMass' : 'blendWater';
}

/** What is wanted in all, mL; the part of it that does not grow with the milk; and what the grains add per mL of milk. */
function wanted(x: Access): { target: number; fixed: number; kept: number } {
  const perMilk = (): number => (x.plan.grainsFixed ? 0 : x.of('grainRate') / 1000);
  switch (x.plan.joinedBy) {
    case 'milk':
      return { target: x.of('milkVolume'), fixed: 0, kept: 0 };
    case 'drink':
      return {
        target: x.of('drinkVolume'),
        fixed: x.of('drinkFixed'),
        kept: x.plan.stays ? perMilk() / x.c('grainDensity') : -perMilk() * x.c('cling'),
      };
    default: {
      const target = x.of('vesselCount') * x.of('fillVolume');
      return { target, fixed: x.of('fixedRoom'), kept: perMilk() / x.c('grainDensity') };
    }
  }
}

/** Hexose added per mL of milk as a·1 + b·(native hexose per mL), for the sugar rule in force. */
function readings(x: Access): readonly Reading[] {
  const always = () => true;
  if (x.plan.joinedBy === 'milk') return [{ milk: 0, native: 0, holds: always }];
  switch (x.plan.sugarBy) {
    case 'rate':
      return [{ milk: x.of('sugarRate') / 1000, native: 0, holds: always }];
    case 'start':
      return [{ milk: x.of('startingSugar') / 1000, native: -1, holds: always }];
    case 'usual': {
      const usual = x.c('sugarUsual');
      const free = x.c('nativeThreshold');
      return [
        { milk: usual / 1000, native: 0, holds: (native) => native <= free },
        { milk: (usual + free) / 1000, native: -1, holds: (native) => native >= free && native <= usual + free },
        { milk: 0, native: 0, holds: (native) => native >= usual + free },
      ];
    }
    default:
      return [{ milk: 0, native: 0, holds: always }];
  }
}

/** The right side per gram of source: a constant where the source is typed, growing with the water where that is. */
function perSource(x: Access, target: number): { still: number; rising: number } {
  if (anchor(x) === 'sourceMass') return { still: target / x.of('sourceMass'), rising: 0 };
  const perWater = target / (x.of('blendWater') * x.of('waterDensity'));
  return { still: -perWater * freeWaterAt(x.reduced(), x.c('ownWater')), rising: perWater };
}

function scale(linear: Linear, by: number): Linear {
  return { still: linear.still * by, rising: linear.rising * by, falling: linear.falling * by };
}
