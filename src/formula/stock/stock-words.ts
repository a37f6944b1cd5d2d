import { writeNumber, writeTrimmed } from '../../measure/write-quantity';
import { type GrainId, grains as kinds } from '../../reference/grains';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import { dayMinutes } from '../time/span';
import { leading } from '../words/leading';
import { lowerFirst } from '../words/lower-first';
import { describeOrigin } from '../words/origin-words';
import type { Kitchen } from '../words/write-row';
import { writeValue } from '../words/write-row';
import { carries, type Dose, type Until } from './carries';
import type { GrowsIn, Growth } from './growth';
import { doublingIn } from './growth';
import type { Entry, Medium, Place } from './ledger';
import { type RestLiquid, restLiquid } from './rest';

const hardSpace = '\u00A0';

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

/** Grams of grains as this cook reads a mass first. */
export function writeGrains(grams: number, kitchen: Kitchen): string {
  return leading(writeValue(Math.max(grams, 0), 'mass', null, kitchen), kitchen.leads).first;
}

/** A volume of milk as this cook reads one first; from a litre on in litres, since no dose is finer than a hundredth. */
export function writeMilk(millilitres: number, kitchen: Kitchen): string {
  if (kitchen.leads === 'metric' && millilitres >= 1000)
    return `${writeTrimmed(millilitres / 1000, 2, kitchen.decimalComma)}${hardSpace}L`;
  return leading(writeValue(millilitres, 'volume', null, kitchen), kitchen.leads).first;
}

/** What grains can carry: `62 g: 1.1 L of milk at 54 g to a litre, the usual`. */
export function describeCarries(grams: number, dose: Dose, kitchen: Kitchen): string {
  const rate = `${writeTrimmed(dose.rate, 1, kitchen.decimalComma)}${hardSpace}g to a litre`;
  return `${writeMilk(carries(grams, dose), kitchen)} of milk at ${rate}, ${dose.isBatch ? 'as in this batch' : 'the usual'}`;
}

/** A growth as a factor with its range: `×1.04 (0.98 to 1.10)`. */
export function writeGrowth({ low, likely, high }: Pick<Growth, 'low' | 'likely' | 'high'>, comma: boolean): string {
  const [from, about, to] = [low, likely, high].map((factor) => writeNumber(factor, 2, comma));
  return `×${about} (${from} to ${to})`;
}

/** What they are in, as it stands after “in”: `almonds`, `sugar water`. */
export function nameOf(where: GrowsIn): string {
  return 'source' in where ? `${sources[where.source].plural}` : mediumWords[where.medium];
}

/** How a growth came about, for who asks. */
export function describeGrowth(growth: Growth, comma: boolean): string {
  const { from, own, expected, weight, likely } = growth;
  const write = (value: number) => writeNumber(value, 2, comma);
  if (from === 0) return `None weighed yet: ×${write(expected.value)} is expected. ${describeOrigin(expected.origin)}`;
  const count = from === 1 ? 'one batch' : `${from} batches`;
  const worth = writeTrimmed(weight, 1, comma);
  return `${write(own ?? likely)} is the geometric mean of back ÷ out over ${count}. The expected ×${write(expected.value)} counts as ${worth} more, which gives ×${write(likely)}; the range is Student’s t over the logarithms, meant to hold four times in five. ${describeOrigin(expected.origin)}`;
}

/** When they weigh twice as much: `doubles in about 4 batches`; null where they hardly grow. */
export function describeDoubling({ low, likely }: Growth): string | null {
  const batches = doublingIn(likely);
  if (!(low > 1 && batches < mostDoubling)) return null;
  return `likely twice as many after ${writeNumber(batches, 0, false)} batches`;
}

const mostDoubling = 100;

/** After how many batches there is enough: `after 7 batches, 5 to 11`. */
export function describeUntil({ soonest, likely, latest }: Until): string {
  if (soonest === 0 && latest === 0) return 'There is enough now.';
  if (soonest === null) return 'Not in sight: they are not likely to grow so much here.';
  if (likely === null) return `Not in sight, at best after ${batches(soonest)}.`;
  if (latest === null) return `Likely after ${batches(likely)}, at best ${soonest}; it may also never be.`;
  return soonest === latest
    ? `Likely after ${batches(likely)}.`
    : `Likely after ${batches(likely)}: ${soonest} at best, ${latest} at worst.`;
}

function batches(count: number): string {
  return count === 1 ? '1 batch' : `${count} batches`;
}

/** How long so many batches take at this kitchen’s pace, min from one to the next: `about 23 days`. */
export function describePaceOf(count: number, pace: number): string {
  const days = Math.round((count * pace) / dayMinutes);
  return days <= 1 ? 'about a day' : `about ${days} days`;
}

/** The liquid to rest or wake grains in: `1.1 L water with 61 g (…) of sugar`, `620 mL dairy milk`. */
export function describeLiquid({ medium, volume, sugar }: RestLiquid, kitchen: Kitchen): string {
  const amount = writeMilk(volume, kitchen);
  if (medium === 'dairy') return `${amount} of dairy milk`;
  return `${amount} of water with ${writeSugar(sugar, kitchen)} of sugar`;
}

function writeSugar(grams: number, kitchen: Kitchen): string {
  const { spoon } = sweeteners.caneWhite;
  const { metric, spoons } = writeValue(
    grams,
    'mass',
    spoon === null ? null : spoon.grams / spoon.millilitres,
    kitchen,
  );
  if (spoons === null) return metric;
  return kitchen.leads === 'us' ? `${spoons} (${metric})` : `${metric} (${spoons})`;
}

/** How to feed them, as it stands in a calendar. */
export function describeFeeding(
  grains: GrainId,
  grams: number,
  strength: number | undefined,
  kitchen: Kitchen,
): string {
  return `Drain them and put them into ${describeLiquid(restLiquid(grains, grams, strength), kitchen)}. Weigh them while they are drained.`;
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

/** A kind of grains as it stands within a sentence. */
export function kindName(grains: GrainId): string {
  return lowerFirst(kinds[grains].name);
}
