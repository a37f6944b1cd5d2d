import type { Formulation } from '../formula/engine/formulate';
import {
  type AdditionId,
  additionWeight,
  addToBottle,
  type BottleAddition,
  pieceOf,
} from '../formula/fizz/bottle-additions';
import { numericRows } from '../formula/rows/sheet';
import { describeReadProblem } from '../measure/read-problem-words';
import { readQuantity } from '../measure/read-quantity';
import type { CupStandardId } from '../measure/units';
import { writeTrimmed } from '../measure/write-quantity';

export type ReadAddition =
  | {
      readonly ok: true;
      readonly grams: number;
      readonly added: BottleAddition;
      /** What to type as the sugar in each bottle: the high end, since a bottle must bear it. */
      readonly text: string;
    }
  | { readonly ok: false; readonly why: string };

interface Habits {
  readonly cups: CupStandardId;
  readonly decimalComma: boolean;
}

interface Asked {
  readonly id: AdditionId;
  /** How much of it goes into each bottle, as typed; a bare number is grams. */
  readonly amount: string;
  /** Sugars in 100 g by the label, as typed; read only for what is known by its label. */
  readonly labelSugar: string;
}

/** What an amount put in each bottle comes to, from texts a cook types; why not, in words, where it can’t be had. */
export function readAddition(formulation: Formulation, asked: Asked, { cups, decimalComma }: Habits): ReadAddition {
  const habits = { cups, decimalComma };
  if (asked.id === 'byLabel' && asked.labelSugar.trim() === '')
    return { ok: false, why: 'Type its sugars in 100 g, from a label or a food table.' };
  const read = readQuantity(asked.amount, { kind: 'mass', bareUnit: 'g', also: ['volume', 'count'], ...habits });
  if (!read.ok) return { ok: false, why: describeReadProblem(read.problem) };
  const { amount, kind } = read.reading;
  if (amount < 0) return { ok: false, why: 'An amount can’t be less than 0. Leave out the minus sign.' };
  const weight = kind === 'volume' ? additionWeight(asked.id) : kind === 'count' ? pieceOf(asked.id) : 1;
  if (weight === null && kind === 'count')
    return { ok: false, why: 'No piece of this is weighed in any table. Type its weight, such as 20 g.' };
  if (weight === null) return { ok: false, why: 'No spoon of this is published. Type its weight, such as 20 g.' };
  const label = asked.id === 'byLabel' ? readLabel(asked.labelSugar, habits) : null;
  if (label === false) return { ok: false, why: 'Type the sugars in 100 g: a number from 0 to 100.' };
  const grams = amount * weight;
  const added = addToBottle(formulation, asked.id, grams, label);
  if (added === null) return { ok: false, why: 'The bottle has no size to fill yet: mend its rows first.' };
  if (added.crowds) return { ok: false, why: 'That leaves the kefir too little room in the bottle. Use less of it.' };
  const { most } = numericRows.bottleSugar.range;
  if (added.perLitre.high > most) return { ok: false, why: `That is over ${most} g/L, a syrup. Check the amount.` };
  return { ok: true, grams, added, text: `${writeTrimmed(added.hexose.high, 2, decimalComma)} g` };
}

function readLabel(text: string, habits: Habits): number | false {
  const read = readQuantity(text, { kind: 'mass', bareUnit: 'g', ...habits });
  if (!read.ok || !(read.reading.amount >= 0 && read.reading.amount <= 100)) return false;
  return read.reading.amount;
}
