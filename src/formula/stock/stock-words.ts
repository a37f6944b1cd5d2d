import { convertNumber } from '../../measure/units';
import { writeNumber, writeTrimmed } from '../../measure/write-quantity';
import { type GrainKind, grains as kinds } from '../../reference/grains';
import { sources } from '../../reference/sources';
import { sweeteners } from '../../reference/sweeteners';
import type { Instant } from '../time/event';
import { dayMinutes } from '../time/span';
import { leading } from '../words/leading';
import { lowerFirst } from '../words/lower-first';
import { describeOrigin } from '../words/origin-words';
import type { Kitchen } from '../words/write-row';
import { writeValue } from '../words/write-row';
import { carries, type Dose, type Until } from './carries';
import { after, doublingIn, type GrowsIn, type Growth } from './growth';
import type { Away, Ledger } from './ledger';
import { mediumWords, placeWords, writeGrains } from './line-words';
import { plantBatchesLeft, type RestLiquid, restLiquid, runGrowth } from './rest';

const hardSpace = '\u00A0';

/** Grams to a litre: `52.8 g/L`. */
export function writePerLitre(rate: number, { decimalComma }: Pick<Kitchen, 'decimalComma'>): string {
  return `${writeTrimmed(rate, 1, decimalComma)}${hardSpace}g/L`;
}

/** A volume of milk as this cook reads one first; from a litre on in litres, since no dose is finer than a hundredth. */
export function writeMilk(millilitres: number, kitchen: Kitchen): string {
  if (kitchen.leads === 'metric' && millilitres >= 1000)
    return `${writeTrimmed(millilitres / 1000, 2, kitchen.decimalComma)}${hardSpace}L`;
  return leading(writeValue(millilitres, 'volume', null, kitchen), kitchen.leads).first;
}

/** What grains can carry: `62 g: 1.1 L of milk at 54 g to a litre, the usual`. */
export function describeCarries(grams: number, dose: Dose, kitchen: Kitchen): string {
  return `${writeMilk(carries(grams, dose), kitchen)} of milk at ${writeDose(dose.rate, kitchen)}, ${dose.isBatch ? 'as in this batch' : 'the usual'}`;
}

/** Grains to milk: `54 g to a litre`, or to a quart where US measure leads. */
function writeDose(rate: number, { leads, decimalComma }: Kitchen): string {
  if (leads === 'metric') return `${writeTrimmed(rate, 1, decimalComma)}${hardSpace}g to a litre`;
  const perQuart = (rate * convertNumber(1, 'qt', 'mL')) / 1000;
  return `${writeTrimmed(perQuart, 1, decimalComma)}${hardSpace}g to a quart`;
}

/** A growth as a factor with its range: `×1.04 (0.98 to 1.10)`. */
export function writeGrowth({ low, likely, high }: Pick<Growth, 'low' | 'likely' | 'high'>, comma: boolean): string {
  const [from, about, to] = [low, likely, high].map((factor) => writeNumber(factor, 2, comma));
  return `×${about} (${from} to ${to})`;
}

/** Where grains are: `8 g at rest in the fridge, in sugar water for 3 days`, and each batch that has some. */
export function describeWhere(ledger: Ledger, present: Instant, kitchen: Kitchen): readonly string[] {
  const { rest, place, medium, freshSince, away } = ledger;
  const since = freshSince === null ? '' : ` ${writeAge(present - freshSince)}`;
  const where = place === null ? '' : ` ${placeWords[place]}`;
  const liquid =
    medium === null || place === 'freezer' || place === 'dried' ? '' : `, in ${mediumWords[medium]}${since}`;
  const resting = rest > 0 ? [`${writeGrains(rest, kitchen)} at rest${where}${liquid}`] : [];
  return [...resting, ...away.map((one) => describeAway(one, present, kitchen))];
}

/** What a batch has: `54 g in Almond kefir for 20 h`. */
export function describeAway({ grams, out }: Away, present: Instant, kitchen: Kitchen): string {
  const weight = grams === null ? 'some' : writeGrains(grams, kitchen);
  return `${weight} in ${out.name ?? 'a batch'} ${writeAge(present - out.at)}`;
}

/** Since when, as roughly as anybody says it: `since just now`, `for 20 h`, `for 3 days`. */
function writeAge(minutes: number): string {
  const days = Math.floor(minutes / dayMinutes);
  if (days >= 2) return `for ${days}${hardSpace}days`;
  const hours = Math.max(Math.floor(convertNumber(minutes, 'min', 'h')), 0);
  return hours === 0 ? 'since just now' : `for ${hours}${hardSpace}h`;
}

/** What is over beside the open batch: `8 g`, or `12 g short`. */
export function describeSpare(grams: number, kitchen: Kitchen): string {
  return grams >= 0 ? writeGrains(grams, kitchen) : `${writeGrains(-grams, kitchen)} short`;
}

/** A whole line of weights in a sentence: from where to where, batches, what was given away. */
export function describeLine({ points, away, rounds }: Ledger, kitchen: Kitchen): string {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return 'Nothing is written down yet.';
  const given = points
    .filter(({ entry }) => entry.did === 'given')
    .reduce((sum, { entry }) => sum + (entry.grams ?? 0), 0);
  const outs = points.filter(({ entry }) => entry.did === 'out').length;
  return [
    `From ${writeGrains(first.total, kitchen)} to ${writeGrains(last.total, kitchen)}`,
    ...(outs === 0 ? [] : [`${countOf(outs, 'batch')} out`]),
    ...(rounds.length === 0 ? [] : [`${rounds.length} weighed before and after`]),
    ...(away.length === 0 ? [] : [`${away.length} not back yet`]),
    ...(given === 0 ? [] : [`${writeGrains(given, kitchen)} given away`]),
  ].join(', ');
}

/** What a run of plant milks may have cost: of what was weighed, else of what is expected. */
export function describeRun(ledger: Ledger, growth: Growth, kitchen: Kitchen): string {
  const { plantBatches } = ledger;
  const left = plantBatchesLeft(ledger);
  const count = countOf(plantBatches, 'batch');
  const due =
    left <= 0
      ? 'A day in dairy milk on the worktop is due now.'
      : `A day in dairy milk on the worktop is due after ${plantBatches === 0 ? `${countOf(left, 'batch')} of plant milk` : `${left} more`}.`;
  if (plantBatches === 0) return `No plant milk since the last day in dairy. ${due}`;
  const own = runGrowth(ledger);
  const factor = (value: number) => writeNumber(value, 2, kitchen.decimalComma);
  const cost =
    own === null
      ? ` A gram that went through all of them likely weighs ${factor(after(1, growth.likely, plantBatches))} g (${factor(after(1, growth.low, plantBatches))} to ${factor(after(1, growth.high, plantBatches))}).`
      : ` A gram that went through all of them weighs ${factor(own)} g, by your scale.`;
  return `${count} of plant milk since the last day in dairy.${cost} ${due}`;
}

/** What they are in, as it stands after “in”: `almonds`, `sugar water`. */
export function nameOf(where: GrowsIn): string {
  return 'source' in where ? `${sources[where.source].plural}` : mediumWords[where.medium];
}

/** What they are in, as it is called in a list: `Almonds, whole`, `sugar water`. */
export function listedNameOf(where: GrowsIn): string {
  return 'source' in where ? sources[where.source].name : mediumWords[where.medium];
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
  return `likely twice the weight after ${writeNumber(batches, 0, false)} batches`;
}

const mostDoubling = 100;

/** After how many batches, or rounds of feeding, there is enough: `Likely after 7 batches: 5 at best, 11 at worst.` */
export function describeUntil({ soonest, likely, latest }: Until, one: 'batch' | 'round' = 'batch'): string {
  const batches = (count: number) => countOf(count, one);
  if (soonest === 0 && latest === 0) return 'There is enough now.';
  if (soonest === null) return 'Not in sight: they are not likely to grow so much here.';
  if (likely === null) return `Not in sight, at best after ${batches(soonest)}.`;
  if (latest === null) return `Likely after ${batches(likely)}, at best ${soonest}; it may also never be.`;
  return soonest === latest
    ? `Likely after ${batches(likely)}.`
    : `Likely after ${batches(likely)}: ${soonest} at best, ${latest} at worst.`;
}

function countOf(count: number, one: 'batch' | 'round'): string {
  const many = one === 'batch' ? 'batches' : 'rounds';
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
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
  grains: GrainKind,
  grams: number,
  strength: number | undefined,
  kitchen: Kitchen,
): string {
  return `Drain them and put them into ${describeLiquid(restLiquid(grains, grams, strength), kitchen)}. Weigh them while they are drained.`;
}

/** A kind of grains as it stands within a sentence. */
export function kindName(grains: GrainKind): string {
  return lowerFirst(kinds[grains].name);
}
