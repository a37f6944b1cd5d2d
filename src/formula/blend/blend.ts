import { kitchen } from '../../reference/kitchen';
import type { Formulation } from '../engine/formulate';
import { alcoholOf, type Estimate } from '../fizz/sugar-fate';
import { inKefir, inSoMuch } from '../glass/in-a-glass';
import { labelDaysOf } from '../steps/label-text';

/** So much of a finished batch, mL. */
export interface Poured {
  readonly name: string;
  readonly formulation: Formulation;
  readonly volume: number;
}

/** What finished drinks come to that are poured together. */
export interface Blended {
  /** mL. */
  readonly volume: number;
  /** In all of it, g. */
  readonly sugars: Estimate;
  /** g per litre. */
  readonly sugarRate: Estimate;
  /** % by volume at 20 °C. */
  readonly alcohol: Estimate;
  /** Those whose bottle stands outside the temperatures of the models, so that they may hold more alcohol than counted. */
  readonly uncounted: readonly string[];
  /** Between which measured values the pH lies; null where not all were measured. */
  readonly acidity: { readonly low: number; readonly high: number } | null;
  /** Those that were measured to be not sour enough to be finished. */
  readonly notSour: readonly string[];
  /** Whole days from straining by what keeps least, and which that is; null where it isn't known of all. */
  readonly keeps: { readonly best: number; readonly last: number; readonly name: string } | null;
}

/** How much of a batch there is to drink, mL; null where that can't be worked out. */
export function toPour({ rows }: Formulation): number | null {
  const { value } = rows.drinkVolume;
  return typeof value === 'number' && value > 0 ? value : null;
}

/** Half a glass of a batch, mL, or all there is where that is less; null where that can't be worked out. */
export function halfGlass(formulation: Formulation): number | null {
  const [most, { value }] = [toPour(formulation), formulation.rows.servingSize];
  return most === null || typeof value !== 'number' ? null : Math.min(value / 2, most);
}

/**
 * What so much of each comes to together. Sugar and alcohol add up; their ranges add up too, as if all were at the same
 * end, which is the widest they can be. Null where one of them can't be worked out, or nothing is poured.
 */
export function blend(poured: readonly Poured[]): Blended | null {
  const shares = poured.map(({ formulation, volume }) => {
    const kefir = volume > 0 ? inKefir(formulation) : null;
    return kefir === null ? null : { contents: inSoMuch(kefir, volume), isBottled: kefir.isBottled };
  });
  const known = shares.filter((one) => one !== null);
  if (known.length === 0 || known.length < poured.length) return null;
  const volume = poured.reduce((sum, one) => sum + one.volume, 0);
  const sugars = sum(known.map(({ contents }) => contents.sugars));
  const alcohol = sum(known.map(({ contents }) => contents.alcohol));
  const perLitre = 1000 / volume;
  const isOutside = (formulation: Formulation, at: number): boolean =>
    formulation.rows.bottleTime.value !== 0 && shares[at]?.isBottled !== true;
  const line = kitchen.acidityLine.value;
  return {
    volume,
    sugars,
    sugarRate: each(sugars, (grams) => grams * perLitre),
    alcohol: each(alcohol, (grams) => alcoholOf(grams * perLitre)),
    uncounted: poured.filter(({ formulation }, at) => isOutside(formulation, at)).map(({ name }) => name),
    acidity: acidityOf(poured),
    notSour: poured.filter(({ formulation }) => (measuredPH(formulation) ?? 0) > line).map(({ name }) => name),
    keeps: keepsLeast(poured),
  };
}

function each({ low, likely, high }: Estimate, change: (value: number) => number): Estimate {
  return { low: change(low), likely: change(likely), high: change(high) };
}

function sum(estimates: readonly Estimate[]): Estimate {
  const of = (end: keyof Estimate): number => estimates.reduce((all, one) => all + one[end], 0);
  return { low: of('low'), likely: of('likely'), high: of('high') };
}

function measuredPH({ rows }: Formulation): number | null {
  const { status, value } = rows.finalPH;
  return status === 'measured' && typeof value === 'number' ? value : null;
}

/** A pH does not add up, and what holds it steady differs from milk to milk: it lies between those of the parts. */
function acidityOf(poured: readonly Poured[]): Blended['acidity'] {
  const measured = poured.map(({ formulation }) => measuredPH(formulation)).filter((one) => one !== null);
  if (measured.length < poured.length) return null;
  return { low: Math.min(...measured), high: Math.max(...measured) };
}

function keepsLeast(poured: readonly Poured[]): Blended['keeps'] {
  const all = poured.map(({ name, formulation }) => {
    const days = labelDaysOf(formulation);
    return days === null ? null : { ...days, name };
  });
  const known = all.filter((one) => one !== null);
  if (known.length < all.length) return null;
  const best = Math.min(...known.map((one) => one.best));
  return known.reduce<Blended['keeps']>(
    (least, { last, name }) => (least === null || last < least.last ? { best, last, name } : least),
    null,
  );
}
