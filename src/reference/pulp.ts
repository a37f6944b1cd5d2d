import type { FamilyId } from './families';
import { type Coefficient, commonPractice, judgement, type Origin, published } from './origins';

/** How long wet pulp keeps. */
export const pulpKeeping = {
  pulpInFridge: { value: 2, unit: 'days', low: 2, high: 3, origin: commonPractice('Covered, at once, and cold.') },
  pulpInFreezer: {
    ...{ value: 3, unit: 'months', low: 2, high: 6 },
    origin: commonPractice('Pressed flat, it thaws in minutes; for how long it stays good is a matter of taste.'),
  },
} as const satisfies Record<string, Coefficient>;

const pulpRead = published('almond-pulp-2022', 'abstract, % of dry pulp', 'Ratio and press are not in it.');

/** What was found in the pulp of almonds, g in 100 g of it dry. */
export const almondPulp = {
  protein: { value: 14.01, unit: 'g in 100 g', origin: pulpRead },
  fat: { value: 42.12, unit: 'g in 100 g', origin: pulpRead },
  fibre: { value: 40.79, unit: 'g in 100 g', origin: pulpRead },
} as const satisfies Record<string, Coefficient>;

export interface PulpUse {
  readonly text: string;
  readonly origin: Origin;
}

function use(text: string): PulpUse {
  return { text, origin: commonPractice() };
}

const dryIt = use(
  'Dry it: spread thin, in an oven at about 90 °C (200 °F), stirred now and then, until it is crumbly all through. Ground, it stands in for some of the flour in a cake or in biscuits.',
);
const bake = use('Bake it wet: a few spoons in bread, pancakes or porridge; take less water there.');
const spread = use('Season it with salt, lemon and herbs for a spread, and eat it the same day.');
const toast = use('Toast it with oats and a little syrup for the breakfast bowl.');
const cookFirst = use('Cook it through before anyone eats it: in patties, a stew or bread. Raw beans are not food.');
const macaroons = use('Mix it with egg white and sugar and bake small heaps of it.');
const scrub = use('Thicken a soup or a curry with it, towards the end.');

const likeNuts = [dryIt, bake, spread, toast];

/** What the pulp of each kind of source is good for, the likeliest first. */
export const pulpUses: Readonly<Record<FamilyId, readonly PulpUse[]>> = {
  nut: likeNuts,
  ground: likeNuts,
  butter: likeNuts,
  own: [dryIt, bake],
  seed: [dryIt, bake, toast],
  cereal: [bake, toast],
  legume: [cookFirst, bake],
  coconut: [dryIt, macaroons, scrub, bake],
  carton: [],
};

/** What is never to be done with it. */
export const pulpCare = {
  soon: {
    text: 'It spoils sooner than the milk: into the cold within an hour or two, or onto the compost.',
    origin: judgement('It is warm from the blender, wet and full of food for germs.'),
  },
  animals: {
    text: 'Ask before it feeds animals: some nuts, such as macadamias, are poison to dogs.',
    origin: commonPractice(),
  },
} as const satisfies Record<string, PulpUse>;
