import { after, doublingIn, growthFrom, isGrowth } from '../../../src/formula/stock/growth';
import { expectedGrowth } from '../../../src/reference/stock-growth';
import type { Reference, Row } from '../outside';

/** Grams of drained grains after each of seven batches, 10 g at first. */
const cow = [11.17, 11.77, 12.84, 13.02, 13.47, 15.13, 15.76];
const soy = [12.47, 15.88, 18.55, 20.58, 23.91, 27.68, 31.53];

const citation =
  'Chemical, microbiological and functional characterization of kefir produced from cow’s milk and soy milk, Int. J. Microbiol. 2020: 7019286, table 1.';
const seen = 'table 1';

function roundsOf(grams: readonly number[]) {
  return grams.map((weight, batch) => ({ before: grams[batch - 1] ?? 10, after: weight }));
}

function grown(name: string, grams: readonly number[], expected: number): readonly Row[] {
  const rounds = roundsOf(grams);
  const { own } = growthFrom(rounds, expectedGrowth.inPlantMilk);
  const last = grams.at(-1) ?? 0;
  return [
    // The geometric mean of all single batches is the seventh root of the whole.
    { what: `${name}: mean a batch`, printed: (last / 10) ** (1 / 7), ours: own ?? 0, within: 1e-9 },
    { what: `${name}: after seven batches`, printed: last, ours: after(10, expected, 7), within: 0.01 },
    ...rounds.map((round, batch) => ({
      what: `${name}: batch ${batch + 1} is taken for growth`,
      printed: 1,
      ours: isGrowth(round) ? 1 : 0,
      within: 0,
    })),
  ];
}

export const grainGrowth: Reference = {
  citation,
  seen,
  kind: 'result',
  tolerance: 'The mean is kept to four decimals, which over seven batches comes to 0.01 g.',
  rows: [...grown('cow', cow, expectedGrowth.milkInDairy.value), ...grown('soy', soy, expectedGrowth.milkInSoy.value)],
};

export const grainGrowthRange: Reference = {
  citation: `${citation} The least and the best batch of each.`,
  seen,
  kind: 'carried over',
  tolerance: 'Kept to three decimals.',
  rows: [['cow', cow, expectedGrowth.milkInDairy] as const, ['soy', soy, expectedGrowth.milkInSoy] as const].flatMap(
    ([name, grams, { low = 0, high = 0 }]) => {
      const ratios = roundsOf(grams).map(({ before, after: weight }) => weight / before);
      return [
        { what: `${name}: least`, printed: Math.min(...ratios), ours: low, within: 0.0006 },
        { what: `${name}: best`, printed: Math.max(...ratios), ours: high, within: 0.0006 },
      ];
    },
  ),
};

export const grainStock: Reference = {
  citation: `${citation} Worked from its factors: 54 g over seven batches, and batches to twice the weight.`,
  seen: 'the factors of that table, worked by hand',
  kind: 'formula',
  tolerance: 'The last digit that was written down.',
  rows: [
    { what: 'cow: 54 g', printed: 85.1, ours: after(54, expectedGrowth.milkInDairy.value, 7), within: 0.05 },
    { what: 'soy: 54 g', printed: 170.3, ours: after(54, expectedGrowth.milkInSoy.value, 7), within: 0.05 },
    { what: 'cow: twice as much', printed: 10.7, ours: doublingIn(expectedGrowth.milkInDairy.value), within: 0.05 },
    { what: 'soy: twice as much', printed: 4.2, ours: doublingIn(expectedGrowth.milkInSoy.value), within: 0.05 },
  ],
};
