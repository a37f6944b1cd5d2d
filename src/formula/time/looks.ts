import { learning } from '../../reference/pace';

/** What was found at a jar once. */
export interface Look {
  /** The column of the sheet it was made in; made again in it, another start tells the makes apart. */
  readonly batch: string;
  readonly found: 'flat' | 'ready' | 'sour' | 'looked';
  /** When it was looked at, in hours on any clock that all looks share. */
  readonly at: number;
  /** Hours since the grains went in; null where nobody said. */
  readonly hours: number | null;
  /** The likely hours of the sheet then, for the usual pace; null where it had none. */
  readonly expected: number | null;
  /** pH by strip or meter. */
  readonly acidity: number | null;
  /** Of one that is ready: whether just now, or for a while already. */
  readonly holds?: 'just' | 'while';
  /** With which grains and of which source it was made; left out where nobody knows. */
  readonly grains?: string;
  readonly source?: string;
}

/** A look of which it is known how long the grains had been in. */
export type TimedLook = Look & { readonly hours: number };

/**
 * The looks with their hours, those at one make together: the same batch, and starts within `slack` hours of the
 * earliest, or written down in one sitting: nobody finds one jar after 6 h and after 12 h within a few minutes, so
 * those were noted later. Makes are in the order of their start, looks in the order of their hours, whatever order they
 * come in.
 */
export function makesOf(looks: readonly Look[], slack: number): readonly (readonly TimedLook[])[] {
  const timed = looks.filter(isTimed).sort((one, other) => startOf(one) - startOf(other));
  const makes: TimedLook[][] = [];
  const latest = new Map<string, TimedLook[]>();
  for (const look of timed) {
    const make = latest.get(look.batch);
    if (make !== undefined && isOfMake(look, make, slack)) make.push(look);
    else {
      const begun = [look];
      makes.push(begun);
      latest.set(look.batch, begun);
    }
  }
  return makes.map((make) => make.sort((one, other) => one.hours - other.hours));
}

function isOfMake(look: TimedLook, make: readonly TimedLook[], slack: number): boolean {
  const [first] = make;
  const sitting = learning.oneSitting.value;
  const isNear = first !== undefined && startOf(look) - startOf(first) <= slack;
  return isNear || make.some(({ at }) => Math.abs(at - look.at) <= sitting);
}

/** When the grains went in, on the clock of the looks. */
export function startOf({ at, hours }: TimedLook): number {
  return at - hours;
}

function isTimed(look: Look): look is TimedLook {
  return look.hours !== null && Number.isFinite(look.hours) && Number.isFinite(look.at);
}
