import { longestName } from '../batch/document/document-limits';
import type { OwnFood } from '../formula/foods/look-up';
import { describeReadProblem } from '../measure/read-problem-words';
import { readQuantity } from '../measure/read-quantity';
import type { Habits } from './recipe-reading/shape';

export type OwnFoodRead = { readonly ok: true; readonly food: OwnFood } | { readonly ok: false; readonly why: string };

/** A food weighed once, as typed: its name, the measure filled and what that weighs. Refused with what to do. */
export function readOwnFood(name: string, measure: string, weight: string, habits: Habits): OwnFoodRead {
  const { cups, decimalComma } = habits;
  const plain = name.trim();
  if (plain === '' || plain.length > longestName) return { ok: false, why: 'Give the food a short name.' };
  const volume = readQuantity(measure, { kind: 'volume', bareUnit: 'mL', cups, decimalComma });
  if (!volume.ok) return { ok: false, why: describeReadProblem(volume.problem) };
  const mass = readQuantity(weight, { kind: 'mass', bareUnit: 'g', cups, decimalComma });
  if (!mass.ok) return { ok: false, why: describeReadProblem(mass.problem) };
  const [millilitres, grams] = [volume.reading.amount, mass.reading.amount];
  if (!(millilitres > 0) || !(grams > 0))
    return { ok: false, why: 'Both the measure and the weight must be more than 0.' };
  return { ok: true, food: { name: plain, grams, millilitres } };
}
