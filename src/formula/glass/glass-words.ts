import { roundTo } from '../../measure/rounding';
import { writeNumber } from '../../measure/write-quantity';
import { alcoholOf, type Estimate } from '../fizz/sugar-fate';
import type { Kitchen } from '../words/write-row';
import { inKilojoules } from './energy';
import { type ContentId, type Contents, type InKefir, inSoMuch } from './in-a-glass';

/** An amount as it is read, with its range where it is no single figure. */
export interface Told {
  readonly likely: string;
  readonly range: string | null;
}

export interface GlassLine {
  readonly id: ContentId;
  readonly label: string;
  /** Whether it is a part of the line above. */
  readonly isPart: boolean;
  readonly glass: Told;
  readonly hundred: Told;
}

const hardSpace = '\u00A0';

const labels: Readonly<Record<ContentId, string>> = {
  energy: 'Energy',
  fat: 'Fat',
  protein: 'Protein',
  carbohydrate: 'Carbohydrate',
  sugars: 'of it sugars',
  fibre: 'of it fibre',
  alcohol: 'Alcohol',
  acid: 'Acid, as lactic',
};

const order: readonly ContentId[] = [
  ...(['energy', 'fat', 'protein', 'carbohydrate', 'sugars', 'fibre', 'alcohol', 'acid'] as const),
];

/** What is in a glass of so many mL and in 100 mL, line by line: g, and kcal. */
export function glassLines(kefir: InKefir, glass: number, { decimalComma }: Kitchen): readonly GlassLine[] {
  const [inGlass, inHundred] = [inSoMuch(kefir, glass), inSoMuch(kefir, 100)];
  return order.map((id) => ({
    id,
    label: labels[id],
    isPart: id === 'sugars' || id === 'fibre',
    glass: tell(id, inGlass, decimalComma),
    hundred: tell(id, inHundred, decimalComma),
  }));
}

function tell(id: ContentId, contents: Contents, decimalComma: boolean): Told {
  const { low, likely, high } = contents[id];
  const unit = id === 'energy' ? 'kcal' : 'g';
  const places = placesFor(id, likely);
  const write = (value: number): string => writeNumber(value, places, decimalComma);
  const [from, to] = [write(low), write(high)];
  return {
    likely: `${write(likely)}${hardSpace}${unit}`,
    range: from === to ? null : `${from} to ${to}`,
  };
}

/** An estimate is told no finer than it is good for: whole grams from ten on, tenths below. */
function placesFor(id: ContentId, likely: number): number {
  return id === 'energy' || roundTo(likely, 0).length > 1 ? 0 : 1;
}

/** The energy of a glass in kJ, as labels have it. */
export function tellKilojoules({ likely }: Estimate, { decimalComma }: Kitchen): string {
  return `${writeNumber(inKilojoules(likely), 0, decimalComma)}${hardSpace}kJ`;
}

/** Which share of the kefir is alcohol, % by volume, from where to where. */
export function tellAlcohol({ fate }: InKefir, { decimalComma }: Kitchen): string {
  const write = ({ low, high }: Estimate): string =>
    `${writeNumber(low, 1, decimalComma)} to ${writeNumber(high, 1, decimalComma)}`;
  const { low, likely, high } = fate.ethanol;
  const byVolume = { low: alcoholOf(low), likely: alcoholOf(likely), high: alcoholOf(high) };
  return `${write(byVolume)}${hardSpace}% by volume`;
}

/** What the account is, and what it is not. */
export const glassCaution =
  'An estimate from food tables, not a label. The minerals and vitamins are those of the nut or seed: no calcium was added, as there is to many cartons.';

/** The same of a carton, of which only the usual is known. */
export const cartonCaution =
  'An estimate by a usual carton. What yours says of fat and protein on its label is nearer.';
