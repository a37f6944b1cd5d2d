import type { Coefficient } from '../../reference/origins';
import type { Formulation } from '../engine/formulate';
import { fermentableOfOne } from '../models/blend';
import {
  type CoefficientId,
  coefficientIds,
  coefficientInEffect,
  coefficientKey,
  coefficients,
} from '../recipe/coefficients';
import { coefficientNames } from '../words/coefficient-names';

/** One coefficient of a choice, in effect, with the key a correction of it is kept under. */
export interface OwnedCoefficient {
  readonly id: CoefficientId;
  readonly key: string;
  readonly label: string;
  readonly symbol: string;
  readonly coefficient: Coefficient;
  readonly corrected: boolean;
}

/** The coefficients that belong to the chosen jar, source or grains, leaving out those it does not use. */
export function coefficientsOf(
  owner: 'vessel' | 'source' | 'grains',
  formulation: Formulation,
): readonly OwnedCoefficient[] {
  const { recipe, choices } = formulation;
  return coefficientIds
    .filter((id) => coefficients[id].owner === owner && isUsed(id, formulation))
    .map((id) => {
      const key = coefficientKey(id, recipe);
      const { label, symbol } = coefficientNames[id];
      const coefficient = coefficientInEffect(id, recipe, choices);
      return { id, key, label, symbol, coefficient, corrected: coefficient.origin.kind === 'yours' };
    });
}

function isUsed(id: CoefficientId, { choices }: Formulation): boolean {
  const { source, grain } = choices;
  switch (id) {
    case 'labelServing':
    case 'labelSugar':
      return source.label !== null;
    case 'packet':
      return grain.starter?.packet !== undefined;
    case 'starterSugar':
    case 'starterAcid':
    case 'starterEthanol':
      return grain.starter !== undefined;
    case 'cling':
      return grain.starter === undefined;
    case 'canSize':
      return source.can !== undefined;
    case 'slower':
      return source.slower !== undefined;
    case 'byFat':
    case 'byProtein':
    case 'byStarch':
    case 'bySugars':
    case 'byFibre':
    case 'byAsh':
      return source.ownLabel !== undefined;
    case 'ownWater':
      return source.ownWater !== null;
    case 'soakHours':
    case 'soakWaterPerGram':
    case 'uptake':
    case 'leaching':
      return source.soak?.drained === true;
    case 'passing':
    case 'pulpMoisture':
      return source.form === 'solid';
    default:
      return true;
  }
}

/** A figure of a food's composition, g per 100 g; null where no table has it. */
export interface Fact {
  readonly label: string;
  readonly value: number | null;
}

/** What is in 100 g of the source, as its table gives it. */
export function compositionOf({ choices }: Formulation): readonly Fact[] {
  const { water, fat, protein, carbohydrate, fibre, sugars, ash } = choices.source.composition;
  return [
    { label: 'Water', value: water },
    { label: 'Fat', value: fat },
    { label: 'Protein', value: protein },
    { label: 'Carbohydrate, fibre included', value: carbohydrate },
    { label: 'Fibre', value: fibre },
    { label: 'Sugars', value: sugars },
    { label: 'Ash', value: ash },
  ];
}

/** The sugars in 100 g of each sweetener of a batch, g, and what they make as hexose for these grains. */
export function sugarFacts({
  choices,
}: Formulation): readonly { readonly name: string; readonly facts: readonly Fact[] }[] {
  return choices.sweetener.map(({ entry }) => {
    const { sucrose, glucose, fructose, maltose, lactose, galactose } = entry.sugars;
    const total =
      entry.total === undefined
        ? []
        : [
            { label: 'All sugars, at least', value: entry.total.low },
            { label: 'All sugars, at most', value: entry.total.high },
          ];
    return {
      name: entry.name,
      facts: [
        { label: 'Sucrose', value: sucrose },
        { label: 'Glucose', value: glucose },
        { label: 'Fructose', value: fructose },
        { label: 'Maltose', value: maltose },
        { label: 'Lactose', value: lactose },
        { label: 'Galactose', value: galactose },
        ...total,
        { label: 'Water', value: entry.water },
        { label: 'Fermentable, as hexose', value: 100 * fermentableOfOne(entry, choices.grain.takes).value },
      ],
    };
  });
}
