import type { CautionId } from '../../reference/cautions';
import { families } from '../../reference/families';
import { isHeatTreated } from '../composition/heat-treated';
import type { Formulation } from '../engine/formulate';
import type { Choices } from '../recipe/coefficients';
import type { Recipe } from '../recipe/recipe';

/** What a caution is about, in the order in which the foot of the page speaks of them. */
export const cautionTopics = [
  'pressure',
  'spoilage',
  'cleanliness',
  'choice',
  'allergens',
  'infants',
  'alcohol',
  'people',
  'law',
] as const;
export type CautionTopic = (typeof cautionTopics)[number];

type Condition = (choices: Choices, recipe: Recipe, rows: Formulation['rows']) => boolean;
type Entry = readonly [topic: CautionTopic, condition: Condition];

const always: Condition = () => true;
// What its maker heated starts nearly clean; a can let down with tap water counts with what is made at home.
const isHomemade: Condition = (choices, _, rows) => !isFromItsMaker({ choices, rows });
const isRaw: Condition = ({ source }) => families[source.family].raw;
const isSoaked: Condition = ({ source }) => source.soak?.drained === true;
// Where it can't be told whether there is a bottle, there may be one.
const isBottled: Condition = (_, __, { bottleTime }) => bottleTime.value !== 0;
const isHeated = (_: Choices, { heat }: Recipe): boolean => heat !== undefined && heat !== null;

/** Whether the milk comes out of a carton or a can as its maker heated and sealed it. */
export function isFromItsMaker({ choices, rows }: Pick<Formulation, 'choices' | 'rows'>): boolean {
  return isHeatTreated(choices.source, rows.waterRatio.value);
}

/** Whether the milk is warm on the way, so that it has to cool before the grains go in. */
export function isWarm({ choices, recipe }: Pick<Formulation, 'choices' | 'recipe'>): boolean {
  return choices.source.blendWater?.words === 'warm' || choices.source.cook !== undefined || isHeated(choices, recipe);
}

const entries = {
  jarsUnrated: ['pressure', always],
  lidLoose: ['pressure', always],
  headspace: ['pressure', always],
  sealedGlass: ['pressure', isBottled],
  limitMeans: ['pressure', isBottled],
  yeastGoesOn: ['pressure', isBottled],
  testBottle: ['pressure', isBottled],
  openBottles: ['pressure', isBottled],
  forgottenBottles: ['pressure', isBottled],
  sugarReading: ['pressure', isBottled],
  throwOut: ['spoilage', always],
  acidityLine: ['spoilage', isHomemade],
  acidityLimits: ['spoilage', always],
  howToTest: ['spoilage', always],
  passedOnly: ['spoilage', isBottled],
  waitOnlyCartons: ['spoilage', (choices, recipe, rows) => !isHomemade(choices, recipe, rows)],
  readyIsARange: ['spoilage', always],
  keepCold: ['spoilage', always],
  timeOut: ['spoilage', always],
  dangerZone: ['spoilage', always],
  treatedNuts: ['cleanliness', isRaw],
  cultureIsNoCure: ['cleanliness', always],
  plantMilkFeeds: ['cleanliness', always],
  soakCold: ['cleanliness', isSoaked],
  soakWarmGrowth: ['cleanliness', isSoaked],
  soakWalnuts: ['cleanliness', (_, { source }) => source === 'walnut'],
  heatStep: ['cleanliness', isHeated],
  coolBeforeGrains: ['cleanliness', (choices, recipe) => isWarm({ choices, recipe })],
  bitterAlmonds: ['choice', ({ source }) => source.allergens.includes('almond')],
  allergenLists: ['allergens', always],
  milkProtein: ['allergens', ({ grain }) => grain.starter === undefined && grain.allergens.includes('milk')],
  starterMilk: ['allergens', ({ grain }) => grain.starter !== undefined],
  honeyInfants: ['infants', ({ sweetener }) => sweetener.some(({ entry }) => entry.honeyUnderOne === true)],
  traceAlcohol: ['alcohol', always],
  alcoholForSale: ['alcohol', always],
  higherRisk: ['people', always],
  notKefirByName: ['law', always],
  localLaw: ['law', always],
} satisfies Record<CautionId, Entry>;
const table: Readonly<Record<CautionId, Entry>> = entries;

/** Whether a caution holds for this batch. */
export function holdsFor(id: CautionId, { choices, recipe, rows }: Formulation): boolean {
  const [, condition] = table[id];
  return condition(choices, recipe, rows);
}

/** What a caution is about. */
export function topicOf(id: CautionId): CautionTopic {
  const [topic] = table[id];
  return topic;
}
