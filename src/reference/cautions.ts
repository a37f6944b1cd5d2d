import { commonPractice, fromMemory, judgement, type Origin, published } from './origins';

/** A row of the sheet by its id, the written steps, or the foot of the page. */
export type CautionPlace =
  | 'vessel'
  | 'headspaceDepth'
  | 'source'
  | 'soakTime'
  | 'blendWater'
  | 'sweetener'
  | 'grains'
  | 'readyTime'
  | 'finalPH'
  | 'sugarLeft'
  | 'bottleTime'
  | 'bottlePressureForgotten'
  | 'bottleLimit'
  | 'keepDays'
  | 'steps'
  | 'foot';

export interface Caution {
  readonly id: string;
  readonly at: CautionPlace;
  readonly text: string;
  readonly origin: Origin;
}

const table = [
  {
    id: 'treatedNuts',
    at: 'source',
    text: 'Buy nuts treated against Salmonella where you can. Wash your hands, and use clean water and clean tools.',
    origin: published('almond-soak-2020', 'summary'),
  },
  {
    id: 'cultureIsNoCure',
    at: 'source',
    text: 'A live culture slows harmful germs down and does not make a dirty start safe. In fermenting cashews Salmonella still grew with a culture in them.',
    origin: published('cashew-ferment-2024', 'abstract', '+0.5 to +1.7 log in 24 h at 24 °C with a culture.'),
  },
  {
    id: 'bitterAlmonds',
    at: 'source',
    text: 'Never use bitter almonds or apricot kernels: they release cyanide.',
    origin: published(
      'flax-cyanide',
      'Austrian agency’s page, which names them',
      'The instruction not to use them is common practice.',
    ),
  },
  {
    id: 'allergenLists',
    at: 'source',
    text: 'The US and EU allergen lists differ. Say which you follow, and read the packet: nuts and seeds are often packed in one place.',
    origin: judgement('Only the lists themselves are published; cross-contact is a matter of the packer.'),
  },
  {
    id: 'soakCold',
    at: 'soakTime',
    text: 'Soak in the refrigerator. At room temperature (18 °C / 64 °F or above) soak 8 h at most.',
    origin: published('almond-soak-2020', 'abstract', 'Found for almonds; taken for the others too.'),
  },
  {
    id: 'soakWarmGrowth',
    at: 'soakTime',
    text: 'On almonds soaked for 24 h, germs did not grow at 15 °C and grew more than a thousandfold at 23 °C.',
    origin: published('almond-soak-2020', 'abstract', '+3.2 to +3.9 log.'),
  },
  {
    id: 'soakWalnuts',
    at: 'soakTime',
    text: 'On soaked walnuts there was no notable growth in 12 h at 22 °C, and up to a thousandfold in 24 h.',
    origin: published('walnut-soak', 'abstract', '+1.2 to +3.0 log in 24 h.'),
  },
  {
    id: 'coolBeforeGrains',
    at: 'blendWater',
    text: 'After warm water or a heat step, cool the milk to 30 °C (86 °F) or less before grains or starter go in.',
    origin: commonPractice(),
  },
  {
    id: 'heatStep',
    at: 'steps',
    text: 'You may blanch the source or heat the milk. No time and temperature for home nut milk was found that can be called safe, so none is claimed here.',
    origin: judgement('Nothing citable was found.'),
  },
  {
    id: 'dangerZone',
    at: 'steps',
    text: 'Until grains or starter are in, milk at 4–60 °C (40–140 °F) stands for 2 h at most, or for 1 h in a room above 32 °C (90 °F).',
    origin: published(
      'fsis-danger-zone',
      'page, the two-hour rule',
      'That it ends when grains or starter go in is a judgement.',
    ),
  },
  {
    id: 'plantMilkFeeds',
    at: 'steps',
    text: 'Plant milks feed Listeria and Salmonella as well as dairy milk does. Start clean and start at once.',
    origin: published('plant-drink-pathogens', 'abstracts'),
  },
  {
    id: 'acidityLine',
    at: 'finalPH',
    text: 'A homemade milk still above pH 4.6 by strip or meter when its time is over is thrown out: 24 h at 21 °C (70 °F), less where it is warmer, longer only once it reads 5.0 or less and falls, and never over 36 h. Taste is no test. Without strips or a meter nobody can tell: buy some first.',
    origin: published(
      'cfr-21-114',
      '§ 114.3',
      'The line is published; the hours are a judgement, and follow the room by the published growth of Staphylococcus aureus.',
    ),
  },
  {
    id: 'acidityLimits',
    at: 'finalPH',
    text: 'Reaching pH 4.6 stops the botulism germ. It does not kill Salmonella or Listeria.',
    origin: fromMemory(),
  },
  {
    id: 'howToTest',
    at: 'finalPH',
    text: 'Test a spoonful taken out with a clean spoon; dip no strip and no meter in the jar. Buy strips for about pH 3.6 to 6 in steps of 0.3 or finer; those for 1 to 14 tell nothing here. White milk hides the colour: wet the strip, blot the milk off at once, and compare in daylight. Count it only when it is clearly past the line. Check a meter with its buffers first.',
    origin: fromMemory(
      'Which strips, and to blot them. Food inspectors test a part taken out, too; no household instruction was looked up.',
    ),
  },
  {
    id: 'waitOnlyCartons',
    at: 'readyTime',
    text: 'Waiting for days is only for a heat-treated carton or can, neat, opened for this batch, never for a homemade milk.',
    origin: judgement(
      'A sealed heat-treated carton or can starts nearly free of germs; a homemade milk, and one let down with tap water, does not.',
    ),
  },
  {
    id: 'readyIsARange',
    at: 'readyTime',
    text: 'The time is a range and not a promise. Look, smell and measure. Your own log moves the times and never a line of safety.',
    origin: judgement('Grains, milk and kitchen differ more than any model knows.'),
  },
  {
    id: 'honeyInfants',
    at: 'sweetener',
    text: 'Never give honey to a child under 12 months, not even in a ferment.',
    origin: published('infant-honey', 'both pages'),
  },
  {
    id: 'milkProtein',
    at: 'grains',
    text: 'Milk kefir grains carry milk protein into the drink. Tell anyone with a milk allergy.',
    origin: commonPractice(),
  },
  {
    id: 'starterMilk',
    at: 'grains',
    text: 'A starter may bring milk protein into the drink: powder by its carrier, finished kefir by what it was made of and with. Read the packet, and tell anyone with an allergy.',
    origin: commonPractice(),
  },
  {
    id: 'jarsUnrated',
    at: 'vessel',
    text: 'Treat a jar as rated for no pressure, and loosen the lid. No rating is published for ordinary preserving jars.',
    origin: commonPractice(),
  },
  {
    id: 'lidLoose',
    at: 'steps',
    text: 'In the first ferment gas must escape: use a cloth, an airlock, or a lid that is not tightened.',
    origin: commonPractice(),
  },
  {
    id: 'headspace',
    at: 'headspaceDepth',
    text: 'Plant milk rises as gas forms. A jar filled higher can push out at the lid.',
    origin: commonPractice(),
  },
  {
    id: 'sealedGlass',
    at: 'bottleTime',
    text: 'Sealed glass can burst and throw splinters. Use bottles made for fizz, keep them behind a closed door, and chill them in time.',
    origin: commonPractice(),
  },
  {
    id: 'passedOnly',
    at: 'bottleTime',
    text: 'Bottle only kefir that has passed its first ferment: at pH 4.6 or less by strip or meter, with nothing odd to see or smell. A bottle mends nothing.',
    origin: judgement('What was not acid enough in the jar only stands at room temperature longer in a bottle.'),
  },
  {
    id: 'testBottle',
    at: 'bottleTime',
    text: 'Fill one plastic drinks bottle along with the glass: when it is hard to squeeze, chill them all. It shows that there is pressure and not how much.',
    origin: commonPractice(),
  },
  {
    id: 'openBottles',
    at: 'bottleTime',
    text: 'Chill a bottle before you open it. Hold it in a towel over the sink, away from your face, and let the gas out slowly.',
    origin: commonPractice(),
  },
  {
    id: 'yeastGoesOn',
    at: 'bottlePressureForgotten',
    text: 'Yeast does not stop at a bottle’s limit. Cold hides pressure, which comes back on warming.',
    origin: fromMemory('That cold hides pressure follows from the solubility of carbon dioxide.'),
  },
  {
    id: 'forgottenBottles',
    at: 'bottlePressureForgotten',
    text: 'A bottle forgotten in the warmth can burst when it is touched. Protect eyes and hands, lay a thick towel over it, chill it for a day, and open it only cold.',
    origin: commonPractice('The day in the cold is a judgement.'),
  },
  {
    id: 'limitMeans',
    at: 'bottleLimit',
    text: 'A limit holds for new, sound bottles used as their maker says. A test pressure of new glass is no working pressure, and scuffed or much used glass is weaker. Without a figure from the maker, count a bottle as rated for none.',
    origin: fromMemory('No standard that gives a working pressure was found.'),
  },
  {
    id: 'sugarReading',
    at: 'sugarLeft',
    text: 'A figure measured too low makes a forgotten bottle look too mild. A strip for glucose misses other sugars, and what floats or refracts is misled by alcohol, acid and solids. Where in doubt, measure nothing here.',
    origin: fromMemory(),
  },
  {
    id: 'throwOut',
    at: 'keepDays',
    text: 'Throw it out if you see mould, pink or slime, or if it smells rotten.',
    origin: commonPractice(),
  },
  {
    id: 'keepCold',
    at: 'keepDays',
    text: 'Keep it at 5 °C (41 °F) or less.',
    origin: published('food-code', '§ 3-501.16'),
  },
  {
    id: 'timeOut',
    at: 'keepDays',
    text: 'Out of the refrigerator it goes on fermenting and turns sourer, and a sealed bottle gains pressure. Put it back soon.',
    origin: commonPractice(),
  },
  {
    id: 'higherRisk',
    at: 'foot',
    text: 'People who are pregnant, under 5, older, or have weakened immunity are told to avoid unpasteurised drinks. No source names home kefir; it is one.',
    origin: published('higher-risk', 'both pages', 'That it applies to home kefir is a judgement.'),
  },
  {
    id: 'traceAlcohol',
    at: 'foot',
    text: 'Any kefir holds some alcohol, more after a second ferment or a longer wait.',
    origin: published('water-kefir-2014', 'abstract', 'Ethanol is a main product; the second clause is from memory.'),
  },
  {
    id: 'alcoholForSale',
    at: 'foot',
    text: 'In the US a drink that reaches 0.5 % alcohol by volume at any time, also later in the bottle, is an alcohol beverage when sold.',
    origin: published('ttb-kombucha', 'information pages', 'The bureau’s words are about kombucha.'),
  },
  {
    id: 'notKefirByName',
    at: 'foot',
    text: 'Under the Codex standard kefir is made of milk, so call this plant-milk kefir.',
    origin: published('codex-243', '§ 2.1'),
  },
  {
    id: 'localLaw',
    at: 'foot',
    text: 'If you sell it, follow your local food law and the practice you are licensed for.',
    origin: judgement('Rules differ by place and are not given here.'),
  },
] as const satisfies readonly Caution[];

export type CautionId = (typeof table)[number]['id'];

/** Warnings that hold for the work as a whole; those of one source stand with that source. */
export const cautions: readonly (Caution & { readonly id: CautionId })[] = table;
