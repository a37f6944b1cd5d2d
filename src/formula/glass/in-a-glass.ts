import type { Formulation } from '../engine/formulate';
import { type Estimate, fateAfterBottle, fateOfFirst, type SugarFate } from '../fizz/sugar-fate';
import { inBottles, inSweetener, together } from './brought';
import { energyOf } from './energy';
import { inMilk, type Parts } from './in-the-bag';

/** What is in so much kefir, g, and its energy in kcal; each an estimate with its range. */
export interface Contents {
  readonly energy: Estimate;
  readonly fat: Estimate;
  readonly protein: Estimate;
  /** Sugars and fibre included. */
  readonly carbohydrate: Estimate;
  readonly sugars: Estimate;
  readonly fibre: Estimate;
  readonly alcohol: Estimate;
  /** Counted as lactic acid. */
  readonly acid: Estimate;
}

export type ContentId = keyof Contents;

/** What an account of the kefir rests on, for its working. */
export interface InKefir {
  /** Of all the liquid of the batch, the milk with what was dissolved in it, mL. */
  readonly liquid: number;
  readonly milk: Parts;
  readonly sweetener: Parts;
  readonly bottle: Parts;
  readonly fate: SugarFate;
  readonly isBottled: boolean;
  /** In all the liquid. */
  readonly all: Contents;
}

const ends = ['low', 'likely', 'high'] as const;

/**
 * What is in the kefir of a batch: what passes the bag, the sweetener and what goes into bottles, less the sugar that
 * the grains use, with the alcohol and acid that they make of it. Null where the batch can't be worked out.
 */
export function inKefir(formulation: Formulation): InKefir | null {
  const { of } = formulation;
  const [least, milk, most] = (['least', 'likely', 'most'] as const).map((end) => inMilk(formulation, end));
  const bottled = fateAfterBottle(formulation);
  const fate = bottled ?? fateOfFirst(formulation);
  const liquid = of('liquid');
  if (!least || !milk || !most || fate === null || !(liquid > 0)) return null;
  const sweetener = inSweetener(formulation);
  const bottle = bottled === null ? together([]) : inBottles(formulation);
  const brought = { low: least, likely: milk, high: most };
  const made = (end: (typeof ends)[number]) => {
    const parts = together([brought[end], sweetener, bottle]);
    return { parts, ...fermented(fate, parts.sugars, fate.left[end], liquid) };
  };
  const at = { low: made('low'), likely: made('likely'), high: made('high') };
  const estimate = (read: (end: (typeof at)['likely']) => number): Estimate =>
    ordered(ends.map((end) => read(at[end])));
  const litres = liquid / 1000;
  const likely = energyAt(at.likely.parts, at.likely);
  // The most sugar may be left of the leanest milk, and the least of the richest.
  const energies = ends.flatMap((bag) => ends.map((end) => energyAt(at[bag].parts, at[end])));
  return {
    ...{ liquid, milk, sweetener, bottle, fate, isBottled: bottled !== null },
    all: {
      energy: { low: Math.min(...energies), likely, high: Math.max(...energies) },
      fat: estimate(({ parts }) => parts.fat),
      protein: estimate(({ parts }) => parts.protein),
      carbohydrate: estimate(({ parts, sugars }) => parts.carbohydrate + parts.fibre + sugars),
      sugars: estimate(({ sugars }) => sugars),
      fibre: estimate(({ parts }) => parts.fibre),
      alcohol: scaled(fate.ethanol, litres),
      acid: scaled(fate.lacticAcid, litres),
    },
  };
}

interface Fermented {
  /** g in all of the liquid. */
  readonly sugars: number;
  readonly alcohol: number;
  readonly acid: number;
}

/** What is left of the sugars where so much of their hexose is left, g/L, and what became of the rest. */
function fermented(fate: SugarFate, sugars: number, left: number, liquid: number): Fermented {
  const start = fate.start.likely;
  const litres = liquid / 1000;
  const used = Math.max(start - left, 0) * litres;
  const made = (product: Estimate): number => (fate.used.likely > 0 ? (product.likely / fate.used.likely) * used : 0);
  return {
    sugars: start > 0 ? (sugars * left) / start : sugars,
    alcohol: made(fate.ethanol),
    acid: made(fate.lacticAcid),
  };
}

function energyAt(parts: Parts, { sugars, alcohol, acid }: Fermented): number {
  const { protein, fat, carbohydrate, fibre } = parts;
  return energyOf({ protein, fat, carbohydrate: carbohydrate + fibre + sugars, alcohol, acid });
}

function ordered([low = 0, likely = 0, high = 0]: readonly number[]): Estimate {
  return { low: Math.min(low, likely, high), likely, high: Math.max(low, likely, high) };
}

function scaled({ low, likely, high }: Estimate, by: number): Estimate {
  return { low: low * by, likely: likely * by, high: high * by };
}

/** The same in so many mL of it. */
export function inSoMuch({ all, liquid }: InKefir, millilitres: number): Contents {
  const by = millilitres / liquid;
  return {
    energy: scaled(all.energy, by),
    fat: scaled(all.fat, by),
    protein: scaled(all.protein, by),
    carbohydrate: scaled(all.carbohydrate, by),
    sugars: scaled(all.sugars, by),
    fibre: scaled(all.fibre, by),
    alcohol: scaled(all.alcohol, by),
    acid: scaled(all.acid, by),
  };
}
