import { type Coefficient, fromMemory, judgement } from './origins';

const table = {
  kitchenSpread: {
    value: 0.4,
    unit: 'ln',
    origin: judgement(
      'How far kitchens differ before anything is known: two in three within 1.5 times as fast or as slow as usual. None was found.',
    ),
  },
  grainsSpread: {
    value: 0.25,
    unit: 'ln',
    origin: judgement(
      'How far one kind of grains may differ from the pace of its kitchen: less than kitchens do, as room and scale are the same. None was found.',
    ),
  },
  sourceSpread: {
    value: 0.15,
    unit: 'ln',
    origin: judgement(
      'How far one source may differ from others at the same sugar: less than a batch from the next, so that a few batches teach little of it. None was found.',
    ),
  },
  batchSpread: {
    value: 0.2,
    unit: 'ln',
    origin: judgement(
      'How far batches of one kitchen differ: two in three within about a fifth. Slips of the pen are more than the usual curve allows, so one with long ends is taken, the logistic, of this spread. None was found.',
    ),
  },
  ripeSpan: {
    value: 1.5,
    unit: 'times',
    low: 1.3,
    high: 2,
    origin: fromMemory('Ready after 12 h, it is too sour for most after some 18 h.'),
  },
  justSpan: {
    value: 1.1,
    unit: 'times',
    low: 1.05,
    high: 1.2,
    origin: judgement('Who says that it is ready just now has caught it within a tenth of its time.'),
  },
  likelyWidth: {
    value: 1.35,
    unit: 'standard deviations',
    origin: judgement(
      'The range said is meant to hold four times in five. By the normal curve that is 1.28; in simulated kitchens it is a little more, as what is known is lopsided.',
    ),
  },
  leastHours: {
    value: 0.1,
    unit: 'h',
    origin: judgement('A time shorter than this is a slip of the pen, and teaches nothing.'),
  },
  mostHours: {
    value: 10000,
    unit: 'h',
    origin: judgement('A time of more than a year is a slip of the pen, and teaches nothing.'),
  },
  sameMake: {
    value: 6,
    unit: 'h',
    origin: judgement(
      'Hours are noted roughly, and no batch is made and made again sooner: two starts this near are one.',
    ),
  },
  oneSitting: {
    value: 0.25,
    unit: 'h',
    origin: judgement('Looks written down within a quarter of an hour, with no time of their own, are of one make.'),
  },
} satisfies Record<string, Coefficient>;

/** What learning how fast a kitchen ferments rests on. Spreads are standard deviations of the logarithm of a time. */
export const learning: Readonly<Record<keyof typeof table, Coefficient>> = table;
