import { densityOf, waterDensityAt } from '../../../src/formula/models/density';
import { componentDensities, physics } from '../../../src/reference/physics';
import { kept, type Reference, withinShare } from '../outside';

const printed = {
  water: [997.18, 3.1439e-3, -3.7574e-3],
  protein: [1329.9, -0.5184],
  fat: [925.59, -0.41757],
  carbohydrate: [1599.1, -0.31046],
  fibre: [1311.5, -0.36589],
  ash: [2423.8, -0.28063],
} as const;

export const componentDensity: Reference = {
  citation:
    'Choi Y., Okos M.R. (1986), Effects of temperature and composition on the thermal properties of foods, Food Engineering and Process Applications 1: 93–101.',
  seen: 'coefficients in a textbook and in copies that agree; those of ash in copies only',
  kind: 'carried over',
  tolerance: 'As printed.',
  rows: ([['water'], ['protein'], ['fat'], ['carbohydrate'], ['fibre'], ['ash']] as const).flatMap(([part]) =>
    printed[part].map((each, at) =>
      kept(`${part}, power ${at}`, each, componentDensities[part].coefficients[at] ?? Number.NaN),
    ),
  ),
};

/** Water on ITS-90 after Kell, kg/m³. */
function waterOn90(t: number): number {
  const coefficients = [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12];
  return coefficients.reduceRight((sum, each) => sum * t + each, 0) / (1 + 16.887236e-3 * t);
}

export const waterOnIts90: Reference = {
  citation: 'Bettin and Spieweck after Kell, in IP Standard Methods 1998, Appendix G: density of water on ITS-90.',
  seen: 'a copy of the formula, and three copies in code',
  kind: 'formula',
  tolerance: 'Temperature scales differ: 0.005 kg/m³ to 40 °C.',
  rows: [0, 4, 10, 15, 20, 25, 30, 40].map((celsius) => ({
    what: `kg/m³ at ${celsius} °C`,
    printed: waterOn90(celsius),
    ours: waterDensityAt(celsius),
    within: 0.005,
  })),
};

/** Sucrose in water at 20 °C, kg/m³, by its share of the mass. */
function sucroseAt(share: number): number {
  const coefficients = [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289];
  return waterOn90(20) + share * coefficients.reduceRight((sum, each) => sum * share + each, 0);
}

const percents = [5, 10, 12, 15, 20, 30, 40, 50, 60];

export const sucroseSolutions: Reference = {
  citation: 'Bubník Z., Kadlec P., Urban D., Bruhns M. (1995), Sugar Technologists Manual, p. 164: density at 20 °C.',
  seen: 'coefficients, in two copies in code',
  kind: 'formula',
  tolerance:
    'Component densities are up to 0.5 % low in sugar solutions, as the page says; 0.62 mL/g, meant for 5 to 50 %, is good to 0.4 %.',
  rows: [
    ...percents.map((percent) =>
      withinShare(
        `kg/m³ of ${percent} %, by components`,
        sucroseAt(percent / 100),
        1000 * densityOf({ carbohydrate: percent, water: 100 - percent }),
        0.005,
      ),
    ),
    ...percents
      .filter((percent) => percent <= 50)
      .map((percent) => {
        const litres =
          (percent * physics.sugarDisplacement.value + ((100 - percent) * 1000) / waterDensityAt(20)) / 100;
        return withinShare(
          `kg/m³ of ${percent} %, by the room sugar takes`,
          sucroseAt(percent / 100),
          1000 / litres,
          0.004,
        );
      }),
  ],
};
