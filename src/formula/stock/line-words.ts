import { type Kitchen, writeValue } from '../words/write-row';
import type { Entry, Medium, Place } from './ledger';

export const placeWords: Readonly<Record<Place, string>> = {
  room: 'on the worktop',
  fridge: 'in the fridge',
  freezer: 'in the freezer',
  dried: 'dried',
};

export const mediumWords: Readonly<Record<Medium, string>> = {
  sugarWater: 'sugar water',
  dairy: 'dairy milk',
  plantMilk: 'plant milk',
};

/** The weight of grains, in grams for every cook: an ounce is too coarse to see them grow by. */
export function writeGrains(grams: number, kitchen: Kitchen): string {
  return writeValue(Math.max(grams, 0), 'mass', null, kitchen).metric;
}

/** What was done, in one line: `Out 54 g for Almond kefir`. */
export function describeEntry(entry: Omit<Entry, 'at'>, kitchen: Kitchen): string {
  const { did, grams, name, place, medium } = entry;
  const weight = grams === null ? null : writeGrains(grams, kitchen);
  const whom = name === undefined ? '' : name;
  const into = medium === undefined ? null : `into ${mediumWords[medium]}`;
  const where = place === undefined ? null : placeWords[place];
  const tail = [into, where]
    .filter((part) => part !== null)
    .map((part) => `, ${part}`)
    .join('');
  const amount = weight === null ? '' : ` ${weight}`;
  switch (did) {
    case 'out':
      return `Out${amount}${whom === '' ? '' : ` for ${whom}`}`;
    case 'back':
      return `Back${amount}${whom === '' ? '' : ` from ${whom}`}${tail}`;
    case 'given':
      return `Gave away${amount}`;
    case 'failed':
      return `Threw out ${weight ?? 'them all'}${whom === '' ? '' : ` with ${whom}`}`;
    default:
      return `${didWords[did]}${amount}${tail}`;
  }
}

/** What can be written down, as the keeper chooses it. */
export const didWords: Readonly<Record<Entry['did'], string>> = {
  weighed: 'Weighed',
  out: 'Out',
  back: 'Back',
  given: 'Gave away',
  got: 'Got',
  fed: 'Fed',
  moved: 'Moved',
  failed: 'Threw out',
};
