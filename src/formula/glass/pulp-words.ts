import { writeMetric, writeNumber } from '../../measure/write-quantity';
import { allergens } from '../../reference/allergens';
import { almondPulp, pulpCare, pulpKeeping, pulpUses } from '../../reference/pulp';
import type { Formulation } from '../engine/formulate';
import { lowerFirst } from '../words/lower-first';
import { describeCoefficient, describeOrigin } from '../words/origin-words';
import type { Kitchen } from '../words/write-row';
import type { Pulp } from './in-the-bag';

const hardSpace = '\u00A0';

/** What is in the pulp: `45 g of it dry: fat 17 g, protein 7 g, fibre 19 g.` */
export function describePulp({ dry, parts }: Pulp, { decimalComma }: Kitchen): string {
  const grams = (value: number): string => `${writeNumber(value, 0, decimalComma)}${hardSpace}g`;
  return `${writeMetric(dry, 'mass', decimalComma)} of it dry: fat ${grams(parts.fat)}, protein ${grams(parts.protein)}, fibre ${grams(parts.fibre)}.`;
}

/** How much of the source's dry weight stays in the bag, with its range. */
export function describeShare(
  { share, shareLeast, shareMost }: Pulp,
  { choices: { source } }: Formulation,
  { decimalComma }: Kitchen,
): string {
  const percent = (value: number): string => writeNumber(100 * value, 0, decimalComma);
  return `About ${percent(share)}${hardSpace}% of what is dry in the ${source.plural} stays in the bag; by bag and hand ${percent(shareLeast)} to ${percent(shareMost)}${hardSpace}%.`;
}

/** What was measured in the pulp of almonds, held beside ours; null for all else, of which nothing was found. */
export function besideMeasured({ recipe }: Formulation, { dry, parts }: Pulp, { decimalComma }: Kitchen) {
  if (!almonds.some((id) => id === recipe.source)) return null;
  const percent = (value: number): string => writeNumber(value, 0, decimalComma);
  const ours = (part: 'protein' | 'fat' | 'fibre'): string => percent((100 * parts[part]) / dry);
  const theirs = (part: 'protein' | 'fat' | 'fibre'): string => percent(almondPulp[part].value);
  return {
    text: `Of it dry, in per cent: fat ${ours('fat')}, protein ${ours('protein')}, fibre ${ours('fibre')}. Measured in almond pulp: ${theirs('fat')}, ${theirs('protein')} and ${theirs('fibre')}.`,
    origin: describeOrigin(almondPulp.fat.origin),
  };
}

const almonds = ['almond', 'almondBlanched', 'almondGround'] as const;

/** How long the pulp keeps. */
export function describeKeeping({ decimalComma }: Kitchen): string {
  const { pulpInFridge, pulpInFreezer } = pulpKeeping;
  const write = (value: number | undefined): string => writeNumber(value ?? 0, 0, decimalComma);
  return `${write(pulpInFridge.low)} to ${write(pulpInFridge.high)} days in the fridge, covered; about ${write(pulpInFreezer.value)} months in the freezer.`;
}

/** That the allergens stay in it; of a source without any on the lists, to read the packet. */
export function describePulpAllergens({ choices: { source } }: Formulation): string {
  const names = source.allergens.map((id) => lowerFirst(allergens[id].name));
  if (names.length === 0) return `Whoever can’t have ${source.plural} can’t have the pulp either.`;
  return `The allergen stays in it: ${names.join(', ')}. Say so on whatever you bake of it.`;
}

/** What the pulp is good for, with where that is from. */
export function usesOfPulp({ choices: { source } }: Formulation) {
  return pulpUses[source.family].map(({ text, origin }) => ({ text, origin: describeOrigin(origin) }));
}

/** Where it is from how long pulp keeps. */
export function keepingOrigin({ decimalComma }: Kitchen): string {
  const { pulpInFridge, pulpInFreezer } = pulpKeeping;
  return [pulpInFridge, pulpInFreezer].map((each) => describeCoefficient(each, decimalComma)).join(' ');
}

/** What to mind with any pulp. */
export const pulpCautions: readonly string[] = [pulpCare.soon.text, pulpCare.animals.text];
