import { withoutTurns } from '../../measure/without-turns';
import type { Formulation } from '../engine/formulate';
import type { Instant } from '../time/event';
import { type Kitchen, writeNumeric } from '../words/write-row';
import type { Clash } from './clashes';
import { titleOf } from './events';
import type { Remedy } from './remedy';

/** How a plan writes a time: with its date, and shorter where the date is near another that is told. */
export interface TimeWords {
  readonly full: (at: Instant) => string;
  readonly short: (at: Instant) => string;
}

const mostNamed = 3; // geometry: names that fit in a line of a phone

/** A clash in a sentence. Grams are written by the `kitchen` of a batch worked out. */
export function describeClash(
  clash: Clash,
  { full }: Pick<TimeWords, 'full'>,
  formulation: Formulation,
  kitchen: Kitchen,
): string {
  const all = writeNames(clash.names);
  if (clash.kind === 'hands') {
    if (clash.times > 1) return `${all} need hands at the same time: ${clash.times} times, first ${full(clash.from)}.`;
    const [one, other] = clash.steps.map((step) => `“${titleOf(step, false, true)}”`);
    const what = one === other ? `both ${one}` : `${one} and ${other}`;
    return `${all} need hands at the same time, ${full(clash.from)}: ${what}.`;
  }
  const row = clash.kind === 'grains' ? 'grainMass' : 'vesselCount';
  const write = (value: number): string => writeNumeric(formulation, row, value, kitchen).metric;
  const things =
    clash.kind === 'grains'
      ? `${write(clash.need)} of ${nameIn(clash.thing)}`
      : `${write(clash.need)} jars (${clash.thing})`;
  const have = clash.have === null ? '' : `; ${write(clash.have)} on hand`;
  return `${all} need ${things} in all at the same time, ${full(clash.from)} to ${full(clash.to)}${have}.`;
}

/** What comes of another start, behind its time: nothing is given up without being said. Empty where nothing is. */
export function describeOutcome({ glass, wish }: Pick<Remedy, 'glass' | 'wish'>, { full, short }: TimeWords): string {
  if (wish === null) return '';
  if (wish.isKept) return `, still ready for ${short(wish.at)}`;
  return glass === null
    ? `, and no glass by ${short(wish.at)}`
    : `, first glass ${full(glass)} instead of ${short(wish.at)}`;
}

function writeNames(names: readonly string[]): string {
  const named = names.slice(0, mostNamed + 1 === names.length ? names.length : mostNamed);
  const quoted = named.map((name) => `“${withoutTurns(name)}”`);
  const others = names.slice(named.length).length;
  const last = others > 0 ? `${others} more` : (quoted.pop() ?? '');
  return `${quoted.join(', ')} and ${last}`;
}

function nameIn(thing: string): string {
  return thing.charAt(0).toLowerCase() + thing.slice(1);
}
