import type { GrainAdvice } from './grain-care';
import { commonPractice, fromMemory, judgement, published } from './origins';
import type { TroubleId } from './troubles';

/** What putting grains by in one way does to them. */
export interface PutBy extends GrainAdvice {
  readonly way: 'In the fridge' | 'Frozen' | 'Dried' | 'Freeze-dried';
}

const milk = [
  {
    way: 'In the fridge',
    text: 'At 4 °C milk grains live on, but they did not gain weight afterwards, and the drink was thin and mild. Good for a week or two, not for months.',
    origin: published('kefir-preservation-1997', 'abstract', 'That weeks do little harm is a judgement.'),
  },
  {
    way: 'Frozen',
    text: 'Drained and frozen at −20 °C they grew, soured and foamed afterwards like fresh ones. Thaw them in the fridge, then revive them.',
    origin: published(
      'kefir-preservation-1997',
      'abstract',
      'For how long is from memory: 120 days. How to thaw them is common practice.',
    ),
  },
  {
    way: 'Dried',
    text: 'Air-dried, milk grains start slowly and late. Freeze them instead.',
    origin: published('kefir-review', 'passage on grains kept for ten months'),
  },
  {
    way: 'Freeze-dried',
    text: 'Bought freeze-dried, sealed and kept at 4 °C, grains were active up to day 60 of 90. A kitchen can’t do it.',
    origin: published('kefir-freeze-dried-2015', 'abstract', 'The last sentence is a judgement.'),
  },
] as const satisfies readonly PutBy[];

const water = [
  {
    way: 'In the fridge',
    text: 'In fresh sugar water, renewed every one to three weeks.',
    origin: commonPractice(),
  },
  {
    way: 'Frozen',
    text: 'Nothing was found on freezing water grains. Dry some instead, or freeze only what you can spare.',
    origin: judgement('Only milk grains were studied.'),
  },
  {
    way: 'Dried',
    text: 'Rinse them, dry them on a cloth for three to five days below 29 °C (84 °F), and keep them cold in a closed bag, up to six months.',
    origin: commonPractice(),
  },
] as const satisfies readonly PutBy[];

/** Putting grains by for weeks and months. */
export const puttingBy = { water, milk } as const;

const reviveWater = {
  text: 'Use that liquid up for nothing: pour it away. One to three rounds more, and they are as they were.',
  origin: commonPractice(),
} as const satisfies GrainAdvice;

const reviveMilk = {
  text: 'Drain them each day into fresh milk. When it sets within a day and smells clean and sour, they are awake: use it from then on.',
  origin: commonPractice(),
} as const satisfies GrainAdvice;

/** When grains that are being woken are awake. */
export const reviving = { water: reviveWater, milk: reviveMilk } as const;

const plantRun = {
  text: 'No plant milk has the milk sugar they live on. In soy they went on growing over twenty batches, but became smaller, denser and yellowish.',
  origin: published('kefir-review', 'passage on grains grown in soy milk', 'Second hand.'),
} as const satisfies GrainAdvice;

const noCereal = {
  text: 'In quinoa milk grains lost their mass batch after batch and could not ferment it.',
  origin: published('kefir-quinoa-2023', 'abstract'),
} as const satisfies GrainAdvice;

const softWater = {
  text: 'In soft water they grow less from batch to batch: they need its calcium.',
  origin: published('water-kefir-buffer-2019', 'abstract', 'The least calcium was not seen.'),
} as const satisfies GrainAdvice;

const whichSugar = {
  text: 'Refined and unrefined sugar, honey and grape molasses made no difference to their weight in one study; in another they grew little, least in refined sugar.',
  origin: published(
    'water-kefir-kinds-of-sugar',
    'abstract',
    'The second: Lima and others (2024), Braz. J. Food Technol., abstract.',
  ),
} as const satisfies GrainAdvice;

const apart = {
  text: 'Keep each kind, and each friend’s grains, in a jar of its own.',
  origin: judgement('Grains that were mixed can’t be told apart, and one jar that goes bad then takes all.'),
} as const satisfies GrainAdvice;

const sharing = {
  text: 'Give them fresh, in a clean jar with a loose lid, and cold on a long way. They want food within three days.',
  origin: fromMemory('The three days are a judgement.'),
} as const satisfies GrainAdvice;

/** What a keeper of grains has to know besides. */
export const keepersNotes = { plantRun, noCereal, softWater, whichSugar, apart, sharing } as const;

/** What goes wrong with a batch that matters to its grains; what to do with them is told where troubles are. */
export const grainTroubles: readonly TroubleId[] = ['sweetAndFlat', 'mould', 'smell', 'slimy', 'film'];
