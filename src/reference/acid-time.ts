import { type Coefficient, judgement } from './origins';

const table = {
  longest: {
    value: 36,
    unit: 'h',
    origin: judgement('However cold the room: what grows in the cold, Listeria above all, has had a day and a half.'),
  },
  halfAgain: {
    value: 1.5,
    unit: 'times',
    origin: judgement(
      'In a warm room, as 36 h is of 24: what is sour already and turning sourer is held back. A day at most.',
    ),
  },
  onItsWay: {
    value: 5,
    unit: 'pH',
    origin: judgement('Two steps of a fine strip above the line: so far down, and still falling, it is turning.'),
  },
} satisfies Record<string, Coefficient>;

/** For how long a homemade milk that is seen to fall may stand past its time. */
export const acidTime: Readonly<Record<keyof typeof table, Coefficient>> = table;
