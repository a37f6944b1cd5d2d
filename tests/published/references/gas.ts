import { waterDensityAt } from '../../../src/formula/models/density';
import { henryAt } from '../../../src/formula/models/solubility';
import { physics } from '../../../src/reference/physics';
import { inRange, type Reference, withinShare } from '../outside';

const celsiusOf = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;
const pascalPerPsi = 6894.757293168;

/** Volumes of gas, at 0 °C and 1 atm as an ideal gas, that water holds under so much gas. */
function volumesAt(celsius: number, pascal: number): number {
  const molarVolume = (physics.gasConstant.value * physics.zeroCelsius.value) / physics.atmosphere.value;
  return henryAt(celsius) * pascal * molarVolume;
}

const underPsi = (fahrenheit: number, psi: number): number =>
  volumesAt(celsiusOf(fahrenheit), psi * pascalPerPsi + physics.atmosphere.value);

const chart = [
  [32, [3.5, 8.2, 12.9]],
  [40, [6.8, 12.3, 17.7]],
  [50, [11.3, 17.6, 23.8]],
  [60, [15.9, 23.1, 30.2]],
  [68, [19.8, 27.6, 35.5]],
  [80, [25.9, 34.8, 43.7]],
] as const;

const beer = 'Beer holds up to 8 % less gas than water, for its sugar and alcohol.';

export const kegChart: Reference = {
  citation: 'Keg carbonation chart, in a brewing archive: psi on the gauge for volumes of gas in beer, by °F.',
  seen: 'the whole chart, 25 temperatures by 11 columns; 18 cells of it were kept',
  kind: 'result',
  tolerance: beer,
  rows: chart.flatMap(([fahrenheit, pressures]) =>
    pressures.map((psi, at) => {
      const volumes = 2 + at / 2;
      return withinShare(`volumes at ${fahrenheit} °F, ${psi} psi`, volumes, underPsi(fahrenheit, psi), 0.08);
    }),
  ),
};

export const olderTable: Reference = {
  citation:
    'Carbonation table I, BrewingTechniques 2(1): volumes of gas in beer by °F and psi. Independent of the chart.',
  seen: 'most of it; the row at 30 °F lies under the range of the solubility used and is left out',
  kind: 'result',
  tolerance: `${beer} The table's own steps are 0.01 to 0.03 volumes.`,
  rows: (
    [
      [32, 10, 2.7],
      [34, 12, 2.79],
      [38, 10, 2.38],
      [40, 12, 2.47],
      [40, 15, 2.75],
      [42, 20, 3.09],
      [45, 14, 2.42],
    ] as const
  ).map(([fahrenheit, psi, volumes]) =>
    withinShare(`volumes at ${fahrenheit} °F, ${psi} psi`, volumes, underPsi(fahrenheit, psi), 0.09),
  ),
};

export const tradeTable: Reference = {
  citation:
    'A Treatise on Beverages (1888, believed of Sulz): volumes of carbonic acid gas absorbed by water at 1 atm.',
  seen: 'the page; author and year from memory',
  kind: 'result',
  tolerance: 'Measurements of the 19th century: 6 % from modern ones at 0 °C, under 3 % from 4 °C on.',
  rows: (
    [
      [0, 1.7967, 0.06],
      [4, 1.5126, 0.03],
      [8, 1.2809, 0.03],
      [10, 1.1847, 0.03],
      [12, 1.1018, 0.03],
      [16, 0.9753, 0.03],
      [20, 0.9014, 0.03],
    ] as const
  ).map(([celsius, printed, share]) =>
    withinShare(`volumes at ${celsius} °C`, printed, volumesAt(celsius, physics.atmosphere.value), share),
  ),
};

export const collegeTable: Reference = {
  citation: 'Frey P.R. (1958), College Chemistry: solubility of carbon dioxide, g per 100 g of water at 1 atm in all.',
  seen: 'through a question page; vapour pressures of water are from memory',
  kind: 'result',
  tolerance: 'The table differs from modern ones by up to 3 %, most where it is warm.',
  rows: (
    [
      [10, 0.232, 1228],
      [20, 0.169, 2339],
      [30, 0.126, 4246],
      [40, 0.097, 7384],
    ] as const
  ).map(([celsius, printed, vapour]) => {
    const perCubicMetre = henryAt(celsius) * (physics.atmosphere.value - vapour);
    const grams = (100 * perCubicMetre * 44.01) / 1000 / waterDensityAt(celsius);
    return withinShare(`g in 100 g at ${celsius} °C`, printed, grams, 0.035);
  }),
};

export const henryCompilation: Reference = {
  citation:
    "Sander R. (2023), Compilation of Henry's law constants, version 5.0.0, Atmos. Chem. Phys. 23: 10901–12440.",
  seen: 'the page of carbon dioxide',
  kind: 'result',
  tolerance: 'Its literature evaluations lie between these two, and ours a little above.',
  rows: [
    withinShare('mol/(m³·Pa) at 25 °C, evaluations', 3.3e-4, henryAt(25), 0.04),
    withinShare('mol/(m³·Pa) at 25 °C, evaluations', 3.4e-4, henryAt(25), 0.01),
    inRange('K, d ln H/d(1/T) about 25 °C', 2300, 2400, slopeAt(25)),
  ],
};

function slopeAt(celsius: number): number {
  const kelvin = (t: number): number => t + physics.zeroCelsius.value;
  const [low, high] = [celsius - 1, celsius + 1];
  return Math.log(henryAt(low) / henryAt(high)) / (1 / kelvin(low) - 1 / kelvin(high));
}
