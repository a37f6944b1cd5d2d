import { type Coefficient, commonPractice, judgement } from './origins';

const table = {
  usualDays: {
    value: 3,
    unit: 'days',
    origin: commonPractice('Some cartons take up to three days to turn.'),
  },
  mostDaysOffered: {
    value: 5,
    unit: 'days',
    origin: judgement(
      'A carton that has not turned acid in five days is given up: what spoils it had as long. No figure was found.',
    ),
  },
  shareWidth: {
    value: 1.28,
    unit: 'standard deviations',
    origin: judgement('How often a carton works is said as a range that holds four times in five.'),
  },
  sameCarton: {
    value: 24,
    unit: 'h',
    origin: judgement(
      'Over days of waiting the hours are noted more roughly still: two starts this near are one make.',
    ),
  },
} satisfies Record<string, Coefficient>;

/** How long a heat-treated carton, opened for its batch, is waited for, and how its looks are told apart. */
export const cartonWaiting: Readonly<Record<keyof typeof table, Coefficient>> = table;
