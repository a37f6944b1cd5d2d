import { type LookedUp, measureMass, type OwnFood, weighVolume } from '../formula/foods/look-up';
import { describeReadProblem } from '../measure/read-problem-words';
import { readQuantity } from '../measure/read-quantity';
import type { Habits } from './recipe-reading/shape';

/** An amount of a food both ways; one of them is as typed, the other looked up with its range. */
export type LookUpResult =
  | {
      readonly ok: true;
      readonly typed: { readonly kind: 'mass' | 'volume'; readonly amount: number };
      /** g where a volume was typed, mL where a mass was. */
      readonly other: LookedUp;
    }
  | { readonly ok: false; readonly why: string };

/** What a typed amount of a food is the other way: a volume in grams, a mass in mL. A bare number is grams. */
export function lookUpAmount(text: string, food: string, form: string | null, habits: Habits): LookUpResult {
  const { cups, decimalComma } = habits;
  const read = readQuantity(text, { kind: 'mass', bareUnit: 'g', also: ['volume'], cups, decimalComma });
  if (!read.ok) return { ok: false, why: describeReadProblem(read.problem) };
  const { amount } = read.reading;
  const kind = read.reading.kind === 'volume' ? 'volume' : 'mass';
  const own: readonly OwnFood[] = habits.ownFoods ?? [];
  const other = kind === 'volume' ? weighVolume(food, form, amount, own) : measureMass(food, form, amount, own);
  if (amount < 0) return { ok: false, why: 'An amount can’t be less than 0. Leave out the minus sign.' };
  if (other === null) {
    return { ok: false, why: 'No cup of this food is published. Weigh a cup of it once and keep it below.' };
  }
  return { ok: true, typed: { kind, amount }, other };
}
