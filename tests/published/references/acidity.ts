import { formulate } from '../../../src/formula/engine/formulate';
import { growthAt } from '../../../src/formula/models/ripening';
import { expectedAcidityOf } from '../../../src/formula/time/expected-acidity';
import { aureusGrowth } from '../../../src/reference/growth-limit';
import type { SourceId } from '../../../src/reference/sources';
import { recipeOf, typed } from '../../batches';
import { kept, type Reference, type Row } from '../outside';

/** A pH that was measured must lie in the range that the page expects of that batch. */
function expected(what: string, printed: number, source: SourceId, celsius: number, hours: number, dose?: number): Row {
  const given = [typed('roomTemperature', celsius), ...(dose === undefined ? [] : [typed('grainRate', dose)])];
  const batch = formulate(recipeOf({ source, grains: 'milk', given }));
  const { low, high } = expectedAcidityOf(batch, hours) ?? { low: Number.NaN, high: Number.NaN };
  return { what, printed, ours: (low + high) / 2, within: (high - low) / 2 };
}

export const soyKefirAcidity: Reference = {
  citation: 'Int. J. Microbiol. (2020) 7019286, table 1: kefir of soy milk, 10 % milk grains, 25 °C, 24 h.',
  seen: 'the table',
  kind: 'result',
  tolerance:
    'The page gives a range. It is reckoned at the usual dose, as at 10 % the page expects far more acid than soy showed.',
  rows: [4.4, 4.35, 4.48].map((pH) => expected('pH of soy after 24 h', pH, 'soy', 25, 24)),
};

export const cashewAcidity: Reference = {
  citation: 'Louvau H.S. and others (2024), J. Food Prot. 87(8): 100311: cashews with a culture, 24 °C, 24 h.',
  seen: 'abstract only',
  kind: 'result',
  tolerance: 'The page gives a range.',
  rows: [expected('pH of cashew after 24 h, the middle of 4.5 to 5.0', 4.75, 'cashew', 24, 24)],
};

export const coconutAcidity: Reference = {
  citation: 'Taleb Abadl M.M. and others (2022), kefir of coconut milk, Universiti Putra Malaysia: pH after 24 h.',
  seen: 'abstract only; the room was not seen, and is taken as one that the page’s range is for',
  kind: 'result',
  tolerance: 'The page gives a range.',
  rows: [3.77, 3.84].map((pH) => expected('pH of coconut milk after 24 h', pH, 'coconutMilk', 23.5, 24)),
};

export const aureusTemperatures: Reference = {
  citation: 'Medveďová A. and others (2019), Ital. J. Food Saf. 8: 8287, Staphylococcus aureus in broth.',
  seen: 'abstract only',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: [
    kept('least, °C', 7.7, aureusGrowth.minimum.value),
    kept('best, °C', 40.6, aureusGrowth.optimum.value),
    kept('most, °C', 46.7, aureusGrowth.maximum.value),
  ],
};

/** ln per hour at the best temperature, from the same abstract. */
const fastest = 1.97;

export const aureusInMilk: Reference = {
  citation: 'Valík Ľ. (2008), J. Food Nutr. Res. 47: 18–22: fifteen strains of Staphylococcus aureus in milk at 15 °C.',
  seen: 'abstract only; its doubling times would fit half of the rate it prints',
  kind: 'result',
  tolerance: 'Another medium and other strains: an eighth.',
  rows: [
    {
      what: 'log per hour at 15 °C',
      printed: 0.067,
      ours: (fastest * growthAt(15, aureusGrowth)) / Math.LN10,
      within: 0.067 / 8,
    },
  ],
};

export const aureusGrowthTable: Reference = {
  citation:
    'Medveďová A. and others (2019), as above: share of growth, and hours for a thousandfold, by the cardinal temperature model.',
  seen: 'the parameters; the table was worked out from them apart from the page',
  kind: 'formula',
  tolerance: 'Half of the last digit.',
  rows: (
    [
      [16, 0.0906, 38.7],
      [18, 0.1384, 25.3],
      [20, 0.1958, 17.9],
      [22, 0.2621, 13.4],
      [24, 0.3368, 10.4],
      [26, 0.419, 8.4],
      [28, 0.5075, 6.9],
      [30, 0.6009, 5.8],
    ] as const
  ).flatMap(([celsius, share, hours]): Row[] => {
    const growth = growthAt(celsius, aureusGrowth);
    return [
      { what: `share at ${celsius} °C`, printed: share, ours: growth, within: 0.00006 },
      {
        what: `hours for 3 log at ${celsius} °C`,
        printed: hours,
        ours: (3 * Math.LN10) / (fastest * growth),
        within: 0.06,
      },
    ];
  }),
};
