import { weightOf } from '../../models/blend';
import { cane } from '../figure-values';
import type { Ways } from '../row';

/** What the source and the sweetener hold for the grains, and how the sweetener measures. */
export const sugarTerms = {
  nativeSugar: { balance: '1000 × {milkSugars} × {hexosePerSugar} ÷ {milkPerGram}' },
  fermentable: { composition: '{fermentableBlend}' },
  sugarUnsure: { ranges: '{nativeMost} − {nativeSugar} + {sugarRate} × {sweetenerOpen}' },
  caneFermentable: { composition: '{fermentableCane}' },
  sweetenerRoom: {
    composition: '(1 − {sweetenerWater}) × {sugarRoom} + {sweetenerWater} ÷ {waterDensity}',
  },
  sweetenerWeight: { spoon: (x) => weightOf(x.choices.sweetener) ?? Number.NaN },
  caneWeight: { spoon: () => weightOf(cane) ?? Number.NaN },
} satisfies Record<string, Ways>;
