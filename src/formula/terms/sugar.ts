import { sweeteners } from '../../reference/sweeteners';
import { fermentableOf, roomOf, weightOf } from '../models/blend';
import type { Ranged } from '../models/sugar';
import { nativeSugarRange } from '../native';
import type { Term } from '../row';

/** How much more there may be than the likely figure, as a share of it. */
function openShare({ value, high }: Ranged): number {
  return value > 0 ? high / value - 1 : 0;
}

const cane = [{ entry: sweeteners.caneWhite, share: 1 }];

/** What the source and the sweetener hold for the grains, and how the sweetener measures. */
export const sugarTerms = {
  nativeSugar: {
    label: 'Native fermentable sugar, as hexose',
    symbol: 's₀',
    kind: 'concentration',
    ways: {
      balance: {
        rule: (x) => nativeSugarRange(x).value,
      },
    },
  },
  fermentable: {
    label: 'Fermentable sugar in the sweetener, as hexose',
    symbol: 'f',
    kind: 'ratio',
    ways: {
      composition: {
        rule: (x) => fermentableOf(x.choices.sweetener, x.choices.grain.takes).value,
      },
    },
  },
  sugarUnsure: {
    label: 'Sugar that may be there besides',
    symbol: 's₊',
    kind: 'concentration',
    ways: {
      ranges: {
        rule: (x) => {
          const { value, high } = nativeSugarRange(x);
          return (
            high - value + x.of('sugarRate') * openShare(fermentableOf(x.choices.sweetener, x.choices.grain.takes))
          );
        },
      },
    },
  },
  caneFermentable: {
    label: 'Fermentable sugar in white cane sugar, as hexose',
    symbol: 'f_c',
    kind: 'ratio',
    ways: {
      composition: {
        rule: (x) => fermentableOf(cane, x.choices.grain.takes).value,
      },
    },
  },
  sweetenerRoom: {
    label: 'Room taken by a gram of sweetener',
    symbol: 'σ',
    kind: 'count',
    unit: 'mL/g',
    ways: {
      composition: {
        rule: (x) => roomOf(x.choices.sweetener, x.c('sugarRoom'), x.of('waterDensity')),
      },
    },
  },
  sweetenerWeight: {
    label: 'Weight of a mL of the sweetener',
    symbol: 'ρ_z',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      spoon: {
        rule: (x) => weightOf(x.choices.sweetener) ?? Number.NaN,
      },
    },
  },
  caneWeight: {
    label: 'Weight of a mL of white cane sugar',
    symbol: 'ρ_c',
    kind: 'count',
    unit: 'g/mL',
    ways: {
      spoon: {
        rule: () => weightOf(cane) ?? Number.NaN,
      },
    },
  },
} satisfies Record<string, Term>;
