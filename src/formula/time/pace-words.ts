import { type GrainKind, grains } from '../../reference/grains';
import { sources } from '../../reference/sources';
import { coefficients } from '../recipe/coefficients';
import { type Kitchen, writeValue } from '../words/write-row';
import type { LearnedPaces } from './learn-pace';
import type { PaceOf } from './pace-keys';

/** Why what was found at a carton says nothing of the kitchen. */
export const cartonTeachesNothing =
  'Teaches nothing about this kitchen: some cartons turn late or never, and that is the carton.';

/** What the log has taught of one kind of grains. */
export interface Taught {
  /** Which grains, or that nobody knows. */
  readonly what: string;
  /** The hours of a usual batch in this kitchen, with the range. */
  readonly words: string;
}

const isGrain = (id: string): id is GrainKind => id in grains;
const isSource = (id: string): id is keyof typeof sources => id in sources;

/**
 * What the log has taught, a line for each kind of grains: `Water kefir grains` and `From 4 batches: a batch that usually
 * takes 12 h takes about 11.6 h here, four times in five 10.1–13.3 h.`
 */
export function describeTaught(paces: LearnedPaces, kitchen: Kitchen): readonly Taught[] {
  const kinds = [...new Set(paces.makes.map(({ grains: id }) => id))].sort();
  return kinds.map((id) => {
    const count = paces.makes.filter((make) => make.grains === id).length;
    const known = id !== undefined && isGrain(id) ? grains[id] : null;
    const usual = (known ?? grains.water).readyTime.value;
    const { pace, low, high } = paces.of(id === undefined ? {} : { grains: id });
    const write = (hours: number): string => writeValue(hours, 'time', null, kitchen).metric;
    const from = count === 1 ? '1 batch' : `${count} batches`;
    const [soon, late] = [write(usual / high), write(usual / low)];
    return {
      what: known?.name ?? 'Other batches',
      words: `From ${from}: what usually takes ${write(usual)} takes about ${write(usual / pace)} here, four times in five ${soon} to ${late}.`,
    };
  });
}

/** How sources differ, such as `almonds 11.4 h, cashews 12.1 h`; null where fewer than two were logged. */
export function describeSources(paces: LearnedPaces, kitchen: Kitchen): string | null {
  const found = [...new Set(paces.makes.flatMap(({ source }) => source ?? []))].filter(isSource).sort();
  if (found.length < 2) return null;
  const most = mostLogged(paces.makes);
  const usual = grains[most ?? 'water'].readyTime.value;
  const told = found.map((source) => {
    const of: PaceOf = most === null ? { source } : { grains: most, source };
    return `${sources[source].plural} ${writeValue(usual / paces.of(of).pace, 'time', null, kitchen).metric}`;
  });
  return `By source, as far as they differ: ${told.join(', ')}.`;
}

/** The kind of grains of which there are most makes. */
function mostLogged(makes: readonly PaceOf[]): GrainKind | null {
  const counts = new Map<GrainKind, number>();
  for (const { grains: id } of makes) {
    if (id !== undefined && isGrain(id)) counts.set(id, (counts.get(id) ?? 0) + 1);
  }
  return [...counts].sort(([, one], [, other]) => other - one)[0]?.[0] ?? null;
}

/** What a pace of the cook’s own comes to, such as `what usually takes 12 h takes 8 h`. */
export function describeOwnPace(pace: number, kitchen: Kitchen): string {
  const usual = grains.water.readyTime.value;
  const write = (hours: number): string => writeValue(hours, 'time', null, kitchen).metric;
  const { least, most } = coefficients.pace;
  const end = pace >= most ? ', the fastest that the sheet takes' : pace <= least ? ', the slowest that it takes' : '';
  return `what usually takes ${write(usual)} takes ${write(usual / pace)}${end}`;
}

/** How far leaving an entry out would move the time of a batch like its own; null where not at all. */
export function describePull(expected: number, pace: number, without: number, kitchen: Kitchen): string | null {
  const write = (hours: number): string => writeValue(hours, 'time', null, kitchen).metric;
  const [now, then] = [write(expected / pace), write(expected / without)];
  return now === then ? null : `Without it: ${then}, not ${now}.`;
}
