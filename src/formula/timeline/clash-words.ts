import { withoutTurns } from '../../measure/without-turns';
import type { Formulation } from '../formulate';
import { type Kitchen, writeNumeric } from '../write-row';
import type { Clash } from './clashes';
import type { Instant } from './event';
import { titleOf } from './events';

/** A clash in a sentence or two. Times are written by `time`, grams by the `kitchen` of a batch worked out. */
export function describeClash(
  clash: Clash,
  time: (at: Instant) => string,
  formulation: Formulation,
  kitchen: Kitchen,
): string {
  const names = clash.names.map((name) => `“${withoutTurns(name)}”`);
  const all = `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  if (clash.kind === 'hands') {
    const [one, other] = clash.steps.map((step) => `“${titleOf(step, false)}”`);
    return `${all} need hands at the same time, ${time(clash.from)}: ${one} and ${other}.`;
  }
  const row = clash.kind === 'grains' ? 'grainMass' : 'vesselCount';
  const write = (value: number): string => writeNumeric(formulation, row, value, kitchen).metric;
  const things =
    clash.kind === 'grains'
      ? `${write(clash.need)} of ${nameIn(clash.thing)}`
      : `${write(clash.need)} jars (${clash.thing})`;
  const have = clash.have === null ? '' : `; ${write(clash.have)} on hand`;
  return `${all} need ${things} in all at the same time, ${time(clash.from)} to ${time(clash.to)}${have}.`;
}

function nameIn(thing: string): string {
  return thing.charAt(0).toLowerCase() + thing.slice(1);
}
