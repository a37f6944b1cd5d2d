import type { CultureId } from './grains';
import { commonPractice, fromMemory, judgement, type Origin, published } from './origins';
import { type SourceId, sugarsByCarbohydrate } from './sources';

/** A warning or a hint of one source's own, at the step it belongs to. */
export interface Note {
  readonly step: 'choose' | 'soak' | 'drain' | 'blend' | 'strain' | 'sweeten' | 'culture' | 'ferment' | 'keep';
  readonly text: string;
  readonly origin: Origin;
  readonly caution?: boolean;
  /** Where it holds for one kind of grains only. */
  readonly grains?: CultureId;
}

const skinsStay: Note = { step: 'strain', text: 'The skins stay in the bag.', origin: fromMemory() };

const driedCoconutNotes: readonly Note[] = [
  {
    step: 'blend',
    text: 'Cover with the warm blending water, wait ten minutes, then blend it all together. Pour nothing away.',
    origin: fromMemory('The time and the warmth.'),
  },
  {
    step: 'culture',
    grains: 'milk',
    text: 'Coconut fat sets when cold and clings to milk kefir grains. Culture it at room temperature, and rinse it off with lukewarm water if the grains clump: the fat melts near 24 °C (75 °F).',
    origin: fromMemory(),
  },
  {
    step: 'strain',
    text: 'Pour the milk back over the pulp, blend and press once more: the second round takes out what the first left.',
    origin: commonPractice(),
  },
  { step: 'keep', text: 'A firm white layer in the refrigerator is coconut fat; stir it in.', origin: fromMemory() },
];

const flaxNotes: readonly Note[] = [
  {
    step: 'blend',
    text: 'It gels. Use cool water, blend briefly and strain at once.',
    origin: fromMemory('That it gels is published for flax: the gum is 3.6 to 9.4 % of the seed.'),
  },
];

const cartonNotes: readonly Note[] = [
  {
    step: 'choose',
    text: 'Choose a carton of the plant and water with few additions. Some cartons never ferment, whatever you do.',
    origin: commonPractice(),
  },
  {
    step: 'ferment',
    text: 'A carton is ready after 12 to 72 h, and some never are. Without a sign of souring after three days or so, give it up.',
    origin: commonPractice(),
  },
  {
    step: 'choose',
    text: 'The allergens are those printed on the carton.',
    origin: judgement('A carton can be of almond, soy, oat or another plant, so none can be named here.'),
    caution: true,
  },
  {
    step: 'sweeten',
    text: 'Put the serving and its sugar from the label in the working of “Nut, seed or coconut”.',
    origin: judgement('Cartons differ more from one another than any table could say.'),
  },
];

const butterNotes: readonly Note[] = [
  {
    step: 'choose',
    text: 'Choose one of nothing but the nut or seed: no salt, no sugar, no oil. Read the label.',
    origin: commonPractice(),
  },
  {
    step: 'blend',
    text: 'Nothing is strained. Blend until no lump is left; what settles in the jar is stirred in.',
    origin: commonPractice(),
  },
];

const groundNotes: readonly Note[] = [
  {
    step: 'choose',
    text: 'Ground nuts go rancid and stale sooner than whole ones: smell them, and use a fresh packet.',
    origin: commonPractice(),
  },
  {
    step: 'strain',
    text: 'Finely ground, more of it passes the bag. Some people do not strain it at all: then set what passes to 100 % in the working of the milk.',
    origin: commonPractice(),
  },
];

const none: readonly Note[] = [];

const table: Readonly<Partial<Record<SourceId, readonly Note[]>>> = {
  almond: [
    {
      step: 'choose',
      text: 'Sweet almonds only. Never use bitter almonds: they release cyanide.',
      origin: published(
        'flax-cyanide',
        'Austrian agency’s page, which names them',
        'The instruction is common practice.',
      ),
      caution: true,
    },
    skinsStay,
  ],
  almondBlanched: [
    {
      step: 'choose',
      text: 'Sweet almonds only. Never use bitter almonds: they release cyanide.',
      origin: published(
        'flax-cyanide',
        'Austrian agency’s page, which names them',
        'The instruction is common practice.',
      ),
      caution: true,
    },
  ],
  cashew: [
    { step: 'soak', text: 'Past 6 h cashews turn slimy.', origin: fromMemory() },
    {
      step: 'strain',
      text: 'Little stays in the bag; some people do not strain it at all.',
      origin: commonPractice(),
    },
  ],
  hazelnut: [skinsStay],
  walnut: [
    {
      step: 'drain',
      text: 'Rinse until the water runs clear; the brown of the skins is bitter.',
      origin: commonPractice(),
    },
  ],
  pecan: [{ step: 'drain', text: 'Rinse until the water runs clear.', origin: commonPractice() }],
  macadamia: [{ step: 'ferment', text: 'Very fatty: expect a thick head of cream. Stir it in.', origin: fromMemory() }],
  brazilNut: [
    {
      step: 'choose',
      text: 'Brazil nuts are very rich in selenium. Drink this milk now and then, not every day.',
      origin: fromMemory(),
      caution: true,
    },
  ],
  pistachio: [{ step: 'choose', text: 'Weigh them out of the shell, raw and without salt.', origin: commonPractice() }],
  peanut: [
    {
      step: 'choose',
      text: 'The peanut is a legume: raw ones are not drunk uncooked, and their milk is boiled.',
      origin: fromMemory(),
    },
    { step: 'choose', text: 'Throw out any that are mouldy or shrivelled.', origin: commonPractice(), caution: true },
  ],
  pineNut: [{ step: 'soak', text: 'They are soft and need no soaking.', origin: commonPractice() }],
  almondGround: groundNotes,
  hazelnutGround: groundNotes,
  almondButter: butterNotes,
  peanutButter: [
    ...butterNotes,
    {
      step: 'sweeten',
      text: 'Sugar is often added to it; the native sugar shown is of a kind without salt, with whatever its makers added.',
      origin: published('usda-sr', 'record 16398, sugars 9.22 g'),
    },
  ],
  tahini: butterNotes,
  soy: [
    {
      step: 'choose',
      text: 'Raw soy milk is not drunk: it upsets the stomach and hinders digestion. Boil it, whatever you make of it.',
      origin: commonPractice(),
      caution: true,
    },
    {
      step: 'strain',
      text: 'The pulp, okara, is raw too: cook it before you eat any.',
      origin: commonPractice(),
    },
    {
      step: 'ferment',
      text: 'Soy milk sets like a soft curd as it turns sour. That is its protein, and not a fault.',
      origin: commonPractice(),
    },
  ],
  tigerNut: [
    {
      step: 'choose',
      text: 'A tuber and no nut. Wash off the earth that sits in its wrinkles, and pick out any that float or are mouldy.',
      origin: commonPractice(),
    },
    {
      step: 'strain',
      text: 'Its starch sinks in the jar. Stir it in; heated over about 70 °C (160 °F) it sets like custard.',
      origin: fromMemory(),
    },
  ],
  oats: [
    {
      step: 'blend',
      text: 'Oats turn slimy with warm water, long blending and squeezing: use cold water, blend briefly, and let it run through without pressing.',
      origin: commonPractice(),
    },
    {
      step: 'sweeten',
      text: 'Its starch is no sugar: the grains can’t ferment it. Cartons of oat milk are sweet because enzymes have split theirs.',
      origin: fromMemory(),
    },
  ],
  rice: [
    {
      step: 'choose',
      text: 'Use the rice as soon as it is cooked, or cool it within the hour and keep it cold: spores live through cooking, and grow in warm rice to what makes people sick.',
      origin: published(
        'cereal-cereus-1998',
        'abstract',
        'In rice cereal mixed with milk, from under one to 133 spores a gram to over a thousand in 24 to 6 h at 21 °C. The instruction is common practice.',
      ),
      caution: true,
    },
    {
      step: 'sweeten',
      text: 'Its starch is no sugar: the grains can’t ferment it.',
      origin: fromMemory(),
    },
  ],
  hemp: [{ step: 'soak', text: 'Hulled seeds need no soaking.', origin: commonPractice() }],
  sunflower: [
    {
      step: 'soak',
      text: 'No soak is needed. If you like, soak 2 to 4 h in the refrigerator and drain: they then hold about 0.55 g of water a gram, so weigh them.',
      origin: fromMemory('Published figures for uptake were not found; 0.45 to 0.70 is believed.'),
    },
    {
      step: 'blend',
      text: 'The milk is naturally greyish, and can turn green in alkaline water. That is the seed’s own pigment, not mould.',
      origin: fromMemory(),
    },
  ],
  pumpkin: [{ step: 'blend', text: 'The milk is pale green; that is the kernel’s own colour.', origin: fromMemory() }],
  sesame: [{ step: 'choose', text: 'With its hull sesame is bitter; hulled seed is milder.', origin: fromMemory() }],
  sesameHulled: [
    {
      step: 'blend',
      text: 'The seeds are small and slip past the blades: stop, scrape down and blend again.',
      origin: commonPractice(),
    },
  ],
  flax: [
    ...flaxNotes,
    {
      step: 'strain',
      text: 'Its gum is up to a tenth of the seed, more of it in hot water, and can bind 16 to 30 times its own weight of water.',
      origin: published('flax-mucilage-1994', 'abstract', '3.6 to 9.4 % of the seed.'),
    },
    {
      step: 'choose',
      text: 'Whole flax seed is no concern; ground, it can release a little cyanide, and the blender grinds it. The Austrian agency sees no concern from age 13 in up to 30 g of ground seed a meal, and does not rule one out for children.',
      origin: published('flax-cyanide', 'Austrian agency’s page', 'That blending counts as grinding is a judgement.'),
      caution: true,
    },
  ],
  chia: [
    {
      step: 'blend',
      text: 'It gels even more than flax. Use cool water, blend briefly and strain at once.',
      origin: fromMemory(),
    },
    {
      step: 'sweeten',
      text: 'Its sugars are in no table that was read, so the native sugar shown is an estimate.',
      origin: sugarsByCarbohydrate,
    },
  ],
  coconutDried: driedCoconutNotes,
  coconutDriedSweetened: [
    ...driedCoconutNotes,
    {
      step: 'sweeten',
      text: 'More than 40 % of it is sugar already, so little or none need be added.',
      origin: published('usda-sr', 'record 12179, sugars 43.17 g'),
    },
  ],
  coconutFresh: [
    {
      step: 'blend',
      text: 'Count the nut’s own water first, then make up the rest with plain water.',
      origin: commonPractice(),
    },
    {
      step: 'choose',
      text: 'A medium nut gives about 350 to 400 g of flesh. Taste its water: if sour or fizzy, throw the nut out.',
      origin: fromMemory('The 397 g of one medium nut is published, record 12104.'),
    },
    {
      step: 'blend',
      text: 'Hot water gave no more milk than cold.',
      origin: published('coconut-extraction', 'abstract'),
    },
    {
      step: 'culture',
      grains: 'milk',
      text: 'Coconut fat sets when cold and clings to milk kefir grains. Culture it at room temperature.',
      origin: fromMemory(),
    },
  ],
  coconutFreshWhole: [
    {
      step: 'blend',
      text: 'Count the nut’s own water first. Blend it long and fine, as all of the flesh stays in the jar.',
      origin: commonPractice(),
    },
    {
      step: 'choose',
      text: 'A medium nut gives about 350 to 400 g of flesh. Taste its water: if sour or fizzy, throw the nut out.',
      origin: fromMemory('The 397 g of one medium nut is published, record 12104.'),
    },
    {
      step: 'culture',
      text: 'Put the grains in a bag of coarse cloth, or they are hard to find again in the flesh.',
      origin: commonPractice(),
    },
  ],
  coconutCream: [
    {
      step: 'sweeten',
      text: 'Its sugars are in no table that was read, so the native sugar shown is an estimate.',
      origin: sugarsByCarbohydrate,
    },
    {
      step: 'choose',
      text: 'Coconut cream is thick and unsweetened. Sweetened cream of coconut is another thing: half of it is sugar.',
      origin: published('usda-sr', 'record 12116, sugars 51.5 g'),
    },
    {
      step: 'blend',
      text: 'Stir it smooth, warming the can in warm water if the fat has set, then let it down with water.',
      origin: commonPractice(),
    },
  ],
  coconutMilk: [
    {
      step: 'sweeten',
      text: 'Its sugars are in no table that was read, so the native sugar shown is an estimate. The label of the can may say them.',
      origin: sugarsByCarbohydrate,
    },
    {
      step: 'choose',
      text: 'Read the can: coconut and water only is best. Gums and stabilisers can slow the grains and thicken the drink.',
      origin: commonPractice(),
    },
    {
      step: 'blend',
      text: 'Stir it smooth, warming the can in warm water if the fat has set, then let it down with water.',
      origin: commonPractice(),
    },
    {
      step: 'culture',
      grains: 'milk',
      text: 'Coconut fat sets when cold and clings to milk kefir grains. Culture it at room temperature.',
      origin: fromMemory(),
    },
  ],
  coconutWater: [
    {
      step: 'choose',
      text: 'Choose one without preservative, which can stop the grains.',
      origin: commonPractice(),
    },
  ],
  own: [
    {
      step: 'choose',
      text: 'The sheet can’t know what is in a source of your own: name its allergens, and ask before using what is not eaten raw, such as beans.',
      origin: judgement('Only the packet and who knows the food can say.'),
      caution: true,
    },
  ],
  cartonPlain: cartonNotes,
  cartonSweetened: cartonNotes,
};

/** What is to be said of a source with these grains that no figure says; most have little. */
export function notesOf(source: SourceId, grains: CultureId): readonly Note[] {
  return (table[source] ?? none).filter((note) => note.grains === undefined || note.grains === grains);
}
