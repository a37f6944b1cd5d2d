import { type Coefficient, fromMemory, judgement, type Origin, published } from './origins';

/** Density in kg/m³ as a polynomial in the temperature in °C, lowest power first. */
export interface DensityPolynomial {
  readonly coefficients: readonly number[];
  readonly unit: 'kg/m³';
  /** °C; the range in which the polynomial holds. */
  readonly from: number;
  readonly to: number;
  readonly origin: Origin;
}

const choiOkos = published(
  'choi-okos-1986',
  'table of component densities',
  'Read in a textbook and in copies. The temperature range is from memory.',
);
const choiOkosAsh = published('choi-okos-1986', 'table of component densities', 'Ash was seen in copies only.');

const components = {
  water: { coefficients: [997.18, 3.1439e-3, -3.7574e-3], unit: 'kg/m³', from: 0, to: 150, origin: choiOkos },
  protein: { coefficients: [1329.9, -0.5184], unit: 'kg/m³', from: -40, to: 150, origin: choiOkos },
  fat: { coefficients: [925.59, -0.41757], unit: 'kg/m³', from: -40, to: 150, origin: choiOkos },
  carbohydrate: { coefficients: [1599.1, -0.31046], unit: 'kg/m³', from: -40, to: 150, origin: choiOkos },
  fibre: { coefficients: [1311.5, -0.36589], unit: 'kg/m³', from: -40, to: 150, origin: choiOkos },
  ash: { coefficients: [2423.8, -0.28063], unit: 'kg/m³', from: -40, to: 150, origin: choiOkosAsh },
} satisfies Record<string, DensityPolynomial>;

export type Component = keyof typeof components;

/**
 * Densities of the components of food, for 1/ρ = Σ xᵢ/ρᵢ. Carbohydrate is without fibre.
 * The water term is 0.25 % low at 20 °C, and sugar solutions come out 0.34 to 0.46 % low.
 */
export const componentDensities: Readonly<Record<Component, DensityPolynomial>> = components;

/**
 * Density of pure water in kg/m³ at 1 atm, t in °C on ITS-90 from 0 to 100: the numerator's polynomial over
 * 1 + denominator·t. Wherever plain water is turned from a weight into a volume or back, at `densityTemperature`.
 */
export const waterDensity = {
  numerator: [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12],
  denominator: 16.887236e-3,
  unit: 'kg/m³',
  from: 0,
  to: 100,
  origin: published('kell-its-90', 'Appendix G', 'Within 5 mg/L of the other formulas in use.'),
} as const;

const standardMasses = fromMemory('Standard atomic weights.');

const masses = {
  hexose: { value: 180.156, unit: 'g/mol', origin: standardMasses },
  disaccharide: { value: 342.297, unit: 'g/mol', origin: standardMasses },
  ethanol: { value: 46.069, unit: 'g/mol', origin: standardMasses },
  carbonDioxide: { value: 44.01, unit: 'g/mol', origin: standardMasses },
  lacticAcid: { value: 90.078, unit: 'g/mol', origin: standardMasses },
  aceticAcid: { value: 60.052, unit: 'g/mol', origin: standardMasses },
  water: { value: 18.015, unit: 'g/mol', origin: standardMasses },
} satisfies Record<string, Coefficient>;

/** Molar masses, g/mol. Sucrose, maltose and lactose share one; two hexoses are 360.312. */
export const molarMasses: Readonly<Record<keyof typeof masses, Coefficient>> = masses;

const figures = {
  ethanolDensity: { value: 0.78924, unit: 'g/mL', origin: fromMemory('At 20 °C.') },
  gasConstant: {
    value: 8.314462618,
    unit: 'J/(mol·K)',
    origin: published(
      'codata-2018',
      'Boltzmann and Avogadro constants, exact',
      'Computed, their product: 1.380649 × 10⁻²³ × 6.02214076 × 10²³.',
    ),
  },
  atmosphere: { value: 101325, unit: 'Pa', origin: published('nist-sp811', 'standard atmosphere', 'Exact.') },
  zeroCelsius: { value: 273.15, unit: 'K', origin: published('nist-sp811', 'degree Celsius', 'Exact.') },
  sugarDisplacement: {
    value: 0.62,
    unit: 'mL/g',
    low: 0.616,
    high: 0.625,
    origin: published(
      'sugar-manual-1995',
      'p. 164, density of sucrose solutions',
      'Computed: what a gram adds to water at 20 °C is 0.616 mL in a solution of 5 % and 0.625 mL in one of 50 %.',
    ),
  },
  densityTemperature: {
    value: 20,
    unit: '°C',
    origin: judgement('Volumes are read in the kitchen, and tables of density are given at 20 °C.'),
  },
} satisfies Record<string, Coefficient>;

export type PhysicalFigure = keyof typeof figures;

/** Single physical figures. */
export const physics: Readonly<Record<PhysicalFigure, Coefficient>> = figures;
