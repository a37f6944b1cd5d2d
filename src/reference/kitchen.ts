import { type Coefficient, commonPractice, fromMemory, judgement, published } from './origins';

const table = {
  headspaceDepth: {
    value: 2.5,
    unit: 'cm',
    low: 2.5,
    high: 5,
    origin: commonPractice('1 to 2 in for a ferment; where the share of the jar is deeper, that is kept.'),
  },
  headspaceShare: {
    value: 20,
    unit: '%',
    low: 10,
    high: 35,
    origin: judgement('What rises grows with what is in the jar, so the room for it is a share: about a fifth.'),
  },
  headspaceShareLeast: {
    value: 10,
    unit: '%',
    origin: judgement('So much at least stays free before a batch is shared out to one more jar.'),
  },
  jarSlack: {
    value: 5,
    unit: '%',
    origin: judgement(
      'A jar more is not worth it for less than this share of one: how much milk comes off differs by more.',
    ),
  },
  addedSugar: {
    value: 26.26,
    unit: 'g/L',
    low: 15,
    high: 40,
    origin: fromMemory('As hexose, 25 g/L of granulated sugar.'),
  },
  nativeSugarThreshold: {
    value: 10,
    unit: 'g/L',
    origin: judgement(
      'Native sugar above this feeds the grains as well as added sugar does, so the addition is lowered.',
    ),
  },
  servingSize: {
    value: 250,
    unit: 'mL',
    low: 150,
    high: 300,
    origin: judgement('A metric cup, the size of an ordinary glass.'),
  },
  roomTemperature: { value: 21, unit: '°C', low: 18, high: 24, origin: commonPractice() },
  blenderCapacity: {
    value: 1500,
    unit: 'mL',
    low: 1000,
    high: 2000,
    origin: judgement('What a household blender takes without spilling; read yours off its jug.'),
  },
  overnight: {
    value: 10,
    unit: 'h',
    low: 8,
    high: 12,
    origin: commonPractice('What recipes mean by it; the middle is taken.'),
  },
  acidityLine: {
    value: 4.6,
    unit: 'pH',
    origin: published(
      'cfr-21-114',
      '§ 114.3',
      'The line between acid and low-acid foods; a yardstick here, not a permission.',
    ),
  },
  agreement: {
    value: 0.005,
    unit: 'share',
    origin: judgement('Two figures this close are one: no kitchen measures finer.'),
  },
  scoopSlack: {
    value: 0.01,
    unit: 'share',
    origin: judgement('So close is not “about”.'),
  },
  scoopEnough: {
    value: 0.05,
    unit: 'share',
    origin: judgement('No level one repeats better.'),
  },
  scoopMost: {
    value: 0.15,
    unit: 'share',
    origin: judgement('Level ones differ no more.'),
  },
  acidityTime: {
    value: 24,
    unit: 'h',
    origin: judgement('In the usual room: a homemade milk still above the line after a day has stood too long.'),
  },
} satisfies Record<string, Coefficient>;

export type KitchenDefault = keyof typeof table;

/** What a sheet starts from before the cook types anything, and the limits that are the same for every source. */
export const kitchen: Readonly<Record<KitchenDefault, Coefficient>> = table;
