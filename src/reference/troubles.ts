import type { GrainKind } from './grains';
import { commonPractice, fromMemory, type Origin } from './origins';

/** Something that goes wrong: what is found, what to look at, what to do with the milk and with the grains. */
export interface Trouble {
  readonly id: string;
  /** What one sees, smells or tastes. */
  readonly found: string;
  readonly look: string;
  /** The milk: to be drunk, waited for, or thrown out. */
  readonly milk: string;
  readonly grains: string | Readonly<Record<GrainKind, string>>;
  /** The same for a batch of a starter, where `starterAfter` does not hold. */
  readonly starter?: string;
  readonly origin: Origin;
  /** Whether only grains have it: with a starter there is no such thing to see. */
  readonly ofGrains?: true;
  /** Whether milk and grains go into the bin: such a one is marked, so that it is not overlooked. */
  readonly throwOut?: true;
}

const rest = {
  water: 'Rest them in fresh sugar water for a day before the next batch.',
  milk: 'Rest them in fresh dairy milk for a day before the next batch.',
} as const;

/** What becomes of a starter where a batch is not as it should be. */
export const starterAfter =
  'Start no other batch with this one: take a fresh packet, or kefir of a batch that went well.';

const allWell = 'It may start the next batch.';

const inBin =
  'Throw them out too. What you see has threads or germs all through them, and rinsing takes away only what shows.';

const table = [
  {
    id: 'sweetAndFlat',
    found: 'Still sweet, not sour yet',
    look: 'How warm is the place, by a thermometer beside the jar? Were the grains weighed, and awake: did their last batch turn? Was the milk cool when they went in?',
    milk: 'Measure its pH. Falling, it may stand as long as “How long to wait” in the part Log says. Where it is not at 4.6 by then, throw it out: sweet and warm is what germs like.',
    grains: rest,
    origin: commonPractice('That it may only stand so long is a judgement.'),
  },
  {
    id: 'tooSour',
    found: 'Too sour, sharp',
    look: 'How long did it stand, and how warm? How many grains to a litre?',
    milk: 'It is fine to drink. Sweeten the glass or mix it with fruit. Next time strain it sooner, put it somewhere cooler or take fewer grains: one change at a time.',
    grains: 'They are well. Let them rest, or go on.',
    starter: allWell,
    origin: commonPractice(),
  },
  {
    id: 'split',
    found: 'A clear layer under a thick head',
    look: 'Plant milk parts when it turns sour: fat and solids rise, water stands below. Cartons part less, as they are made not to; flax and chia hardly, as they are slimy by nature.',
    milk: 'It is normal. Stir it, or close the jar and turn it over. A thick layer of clear water says that it is well past ready.',
    starter: allWell,
    grains: 'Nothing is wrong with them. In a thick head they hide: look there first.',
    origin: commonPractice('What cartons, flax and chia do is from memory.'),
  },
  {
    id: 'curds',
    found: 'Curds or lumps',
    look: 'Acid makes the protein of soy, cashew, peanut and hemp clot. Lumps also come from milk that was warm.',
    milk: 'It is normal where it smells clean. Whisk or blend it after the grains are out.',
    starter: allWell,
    grains: 'Lumps cling to them. Shake them in a sieve with a little of the strained kefir; what is springy is grain.',
    origin: fromMemory('Which proteins clot.'),
  },
  {
    id: 'floating',
    found: 'Grains that float or sink',
    look: 'Gas lifts grains; fat and foam hold milk grains at the top. Water grains mostly lie at the bottom and rise when they work hard: there is less fizz in their first ferment.',
    milk: 'Both are normal.',
    grains: 'Stir once with a clean spoon, so that those on top do not dry.',
    origin: commonPractice(),
    ofGrains: true,
  },
  {
    id: 'slimy',
    found: 'Slimy, or draws threads',
    look: 'Flax and chia are slimy by nature, and a strained milk of them stays a little so. In any other milk slime is not as it should be.',
    milk: 'Of flax and chia it may be drunk. Any other that draws threads: throw it out.',
    grains: {
      water:
        'Rinse them in cool boiled water and rest them in fresh sugar water. Slimy again after two rounds: get new ones.',
      milk: 'Rinse them in dairy milk and give them two rounds of it. Slimy again after that: get new ones.',
    },
    origin: commonPractice('Two rounds is a judgement.'),
  },
  {
    id: 'film',
    found: 'A thin, flat, white skin',
    look: 'Yeast film is white, flat or finely wrinkled, and smells of yeast or bread. Mould is raised, dry, furry, and mostly has a colour. By eye the two are not always told apart.',
    milk: 'Where it is surely yeast film: lift it off and drink the rest soon. Where you doubt, it is mould.',
    grains: rest,
    origin: commonPractice(),
  },
  {
    id: 'mould',
    found: 'Fur, or spots of green, blue, black, pink or orange',
    look: 'From the side and from above, in daylight. One spot is enough.',
    milk: 'Throw all of it out. Do not lift it off, smell it closely or taste it.',
    grains: `${inBin} Boil the jar and the tools, or wash them as hot as they bear.`,
    origin: commonPractice(),
    throwOut: true,
  },
  {
    id: 'smell',
    found: 'Smells rotten, of cheese gone off or of vomit',
    look: 'Sour, yeasty, a little like bread or wine is as it should be. Rancid, like old oil, is the nut: taste one from the bag.',
    milk: 'Rotten: throw it out, whatever the pH. Rancid does no harm and will not get better.',
    grains: {
      water: 'Rinse them and rest them in fresh sugar water, twice. If they still smell rotten, throw them out.',
      milk: 'Rinse them and rest them in fresh dairy milk, twice. If they still smell rotten, throw them out.',
    },
    origin: commonPractice(),
    throwOut: true,
  },
  {
    id: 'eggs',
    found: 'Smells of eggs or struck matches',
    look: 'Yeast that goes hungry smells of sulphur. Were the grains left long in the same water, or crowded?',
    milk: 'Where it is faint and goes away as it stands open, it may be drunk. Where it stays, throw it out.',
    grains: rest,
    origin: fromMemory(),
  },
  {
    id: 'shrinking',
    found: 'Grains that shrink, soften or do not grow',
    look: 'Weigh them, drained, before and after. Plant milk grows them little, and some of them not at all. Chlorinated water, sweeteners they cannot eat and rinsing in hot water hurt them.',
    milk: 'What has turned sour in time may be drunk.',
    grains: {
      water: 'Give them some rounds of sugar water of unchlorinated water, white or brown sugar, between batches.',
      milk: 'Give them some rounds of dairy milk. No plant milk has the milk sugar they live on.',
    },
    origin: commonPractice('How much they grow in which milk was found for soy and coconut only.'),
    ofGrains: true,
  },
  {
    id: 'hardBottle',
    found: 'A bottle hard to squeeze, or bulging',
    look: 'How long has it been warm, and how much sugar went in? The part Fizz says what it can have reached.',
    milk: 'Do not open it warm, shake it or carry it in your hand. Lay a thick towel over it, chill it for a day, then open it in a towel over the sink, away from your face.',
    starter: allWell,
    grains: 'They are in no danger: they were out before it was bottled.',
    origin: commonPractice('The day in the cold is a judgement.'),
  },
  {
    id: 'noFizz',
    found: 'No fizz in the bottle',
    look: 'Does the lid seal? Was there sugar left, or fruit put in? How warm did it stand?',
    milk: 'It may be drunk flat. Or leave it longer at the same warmth, beside a plastic bottle of the same filling, and squeeze that one each few hours.',
    grains: 'Nothing is wrong with them.',
    starter: allWell,
    origin: commonPractice(),
  },
  {
    id: 'separateFat',
    found: 'A firm white layer in the cold',
    look: 'Coconut fat sets in the cold. It is smooth, even and smells of coconut; mould is furry and has spots.',
    milk: 'Let it stand warm for a while and stir it in.',
    starter: allWell,
    grains:
      'Of dried coconut, rinse the fat off with lukewarm water, as cold water sets it. Other milks need no warm rinse.',
    origin: commonPractice('At what warmth it melts, near 24 °C, is from memory.'),
  },
] as const satisfies readonly Trouble[];

export type TroubleId = (typeof table)[number]['id'];

/** What can go wrong, what is most often met first. */
export const troubles: readonly (Trouble & { readonly id: TroubleId })[] = table;

/** What the list is not: a test of safety. */
export const troublesAbout =
  'What is seen, smelled and tasted is no test: only a pH of 4.6 or less by strip or meter says that a milk turned acid in time. In doubt, throw it out.';
