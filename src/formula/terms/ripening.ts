import type { Coefficient } from '../../reference/origins';
import { type Spread, timesAsLong } from '../models/ripening';
import type { Access, Term } from '../row';

function spreadAt(x: Access): Spread {
  return timesAsLong(x.of('roomTemperature'), x.choices.grain.readyTemperature.value);
}

/** An end of the range of a time as a share of its middle. */
function share({ value, low = value, high = value }: Coefficient, end: 'low' | 'high'): number {
  return (end === 'low' ? low : high) / value;
}

/** What the ready time comes from. */
export const ripeningTerms = {
  usualStart: {
    label: 'Usual sugar at the start, native included',
    symbol: 's_u',
    kind: 'concentration',
    ways: {
      usual: {
        rule: (x) => {
          const native = x.of('nativeSugar');
          return native + Math.max(x.c('sugarUsual') - Math.max(native - x.c('nativeThreshold'), 0), 0);
        },
      },
    },
  },
  asLong: {
    label: 'Times as long as in the usual room',
    symbol: 'θ',
    kind: 'count',
    ways: {
      cardinal: {
        rule: (x) => spreadAt(x).likely,
      },
    },
  },
  readySoonest: {
    label: 'Ready to taste at the soonest',
    symbol: 't₋',
    kind: 'time',
    ways: {
      least: {
        rule: (x) => (x.of('readyTime') * share(x.choices.grain.readyTime, 'low') * spreadAt(x).least) / x.of('asLong'),
      },
    },
  },
  readyLatest: {
    label: 'Ready to taste at the latest',
    symbol: 't₊',
    kind: 'time',
    ways: {
      most: {
        rule: (x) => (x.of('readyTime') * share(x.choices.grain.readyTime, 'high') * spreadAt(x).most) / x.of('asLong'),
      },
    },
  },
} satisfies Record<string, Term>;
