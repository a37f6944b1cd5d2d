import type { GrainKind } from './grains';
import { commonPractice, fromMemory, type Origin, published } from './origins';
import type { SourceId } from './sources';

export interface GrainAdvice {
  readonly text: string;
  readonly origin: Origin;
}

/** What holds for both kinds of grains. */
export const neverMixed: GrainAdvice = {
  text: 'Never put water grains and milk grains together, in a jar or at rest: they live on different sugars, and nobody can part them again. The finished drinks may be blended.',
  origin: commonPractice(),
};

const coconut: GrainAdvice = {
  text: 'Grains grow well in coconut. Weigh them, and share out what is more than the next batch needs.',
  origin: commonPractice('No figure was found for coconut milk.'),
};

const soyWithMilkGrains: GrainAdvice = {
  text: 'Milk grains grow in soy milk, about 18 % a batch over seven batches, slower towards the end.',
  origin: published(
    'soy-kefir-2020',
    'table 1',
    'At 25 °C with 10 % of grains; a kitchen log that was read shows none. Weigh yours.',
  ),
};

const little: GrainAdvice = {
  text: 'Grains grow little in this milk, if at all: count on the same weight, and weigh them now and then.',
  origin: fromMemory('No figure was found for nuts, seeds or cereals.'),
};

const wellIn: readonly SourceId[] = [
  ...(['coconutDried', 'coconutDriedSweetened', 'coconutFresh', 'coconutFreshWhole'] as const),
  ...(['coconutMilk', 'coconutCream', 'coconutWater'] as const),
];

/** How much grains grow in the milk of a source. */
export function growthIn(source: SourceId, grains: GrainKind): GrainAdvice {
  if (wellIn.includes(source)) return coconut;
  return source === 'soy' && grains === 'milk' ? soyWithMilkGrains : little;
}

/** All of it, as the checks of origins read it. */
export const grainGrowth = { coconut, soyWithMilkGrains, little } as const;
