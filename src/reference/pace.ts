import { type Coefficient, fromMemory, judgement } from './origins';

const table = {
  kitchenSpread: {
    value: 0.4,
    unit: 'ln',
    origin: judgement(
      'How far kitchens differ before anything is known: two in three within 1.5 times as fast or as slow as usual. None was found.',
    ),
  },
  batchSpread: {
    value: 0.2,
    unit: 'ln',
    origin: judgement('How far batches of one kitchen differ: two in three within about a fifth. None was found.'),
  },
  ripeSpan: {
    value: 1.5,
    unit: 'times',
    low: 1.3,
    high: 2,
    origin: fromMemory('Ready after 12 h, it is too sour for most after some 18 h.'),
  },
  likelyWidth: {
    value: 1.28,
    unit: 'standard deviations',
    origin: judgement('The range said is meant to hold four times in five.'),
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
