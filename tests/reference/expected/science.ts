import { type Figures, listed, under } from './figures';

/**
 * Choi Y., Okos M.R. (1986), Effects of temperature and composition on the thermal properties of foods, Food Engineering
 * and Process Applications 1: 93–101. Seen: coefficients in a textbook and in copies that agree, ash in copies only. The
 * range, −40 to 150 °C and for water 0 to 150 °C, is from memory.
 */
export const componentDensityFigures: Figures = {
  ...listed('water.coefficients', [997.18, 3.1439e-3, -3.7574e-3]),
  ...listed('protein.coefficients', [1329.9, -0.5184]),
  ...listed('fat.coefficients', [925.59, -0.41757]),
  ...listed('carbohydrate.coefficients', [1599.1, -0.31046]),
  ...listed('fibre.coefficients', [1311.5, -0.36589]),
  ...listed('ash.coefficients', [2423.8, -0.28063]),
  ...{ 'water.from': 0, 'protein.from': -40, 'fat.from': -40 },
  ...{ 'carbohydrate.from': -40, 'fibre.from': -40, 'ash.from': -40 },
  ...{ 'water.to': 150, 'protein.to': 150, 'fat.to': 150 },
  ...{ 'carbohydrate.to': 150, 'fibre.to': 150, 'ash.to': 150 },
};

/**
 * Kell's formula put on ITS-90 by Bettin and Spieweck, IP Standard Methods 1998, Appendix G: a copy, and three copies of
 * the coefficients, as printed.
 */
export const waterDensityFigures: Figures = {
  ...listed('numerator', [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12]),
  ...{ denominator: 16.887236e-3, from: 0, to: 100 },
};

/** Standard atomic weights, from memory. */
export const molarMassFigures: Figures = {
  ...{ 'hexose, g/mol': [180.156], 'disaccharide, g/mol': [342.297], 'ethanol, g/mol': [46.069] },
  ...{ 'carbonDioxide, g/mol': [44.01], 'lacticAcid, g/mol': [90.078], 'aceticAcid, g/mol': [60.052] },
  'water, g/mol': [18.015],
};

export const physicsFigures: Figures = {
  // Ethanol at 20 °C, 789.24 kg/m³: from memory.
  'ethanolDensity, g/mL': [0.78924],
  // CODATA 2018, exact: Boltzmann 1.380649e-23 J/K times Avogadro 6.02214076e23 1/mol, cut after the tenth digit.
  'gasConstant, J/(mol·K)': [8.314462618],
  // NIST SP 811 (2008), Appendix B: the standard atmosphere is 101325 Pa, and 0 °C is 273.15 K.
  'atmosphere, Pa': [101325],
  'zeroCelsius, K': [273.15],
  // Bubník Z. and others (1995), Sugar Technologists Manual, p. 164: what a gram of sucrose adds, 5 to 50 % at 20 °C.
  'sugarDisplacement, mL/g': [0.62, 0.616, 0.625],
  // A judgement: tables of density are given there.
  'densityTemperature, °C': [20],
};

/**
 * Carroll J.J., Slupsky J.D., Mather A.E. (1991), J. Phys. Chem. Ref. Data 20: 1201–1209, abstract:
 * ln(H₂₁/MPa) = −6.8346 + 1.2817e4/T − 3.7668e6/T² + 2.997e8/T³, 273 to 433 K, to 1 MPa.
 */
export const carrollFigures: Figures = {
  ...listed('coefficients', [-6.8346, 1.2817e4, -3.7668e6, 2.997e8]),
  ...{ from: 273, to: 433, pressureTo: 10 },
};

export const cardinalFigures: Figures = {
  // Matejčeková Z. and others (2019), J. Food Nutr. Res. 58(2): 125–134, abstract: in lactose-free milk.
  ...under('plantarum', { 'minimum, °C': [5.4], 'optimum, °C': [34.2], 'maximum, °C': [41.4] }),
  // Medveďová A. and others (2019), Fermentation 5(1): 2, abstract.
  ...under('starter', { 'minimum, °C': [4], 'optimum, °C': [38.3], 'maximum, °C': [49.6] }),
  // Salvadó Z. and others (2011), Appl. Environ. Microbiol. 77: 2292–2302, abstract; the 2.8 is from memory, within the
  // range published for the genus.
  ...under('yeast', { 'minimum, °C': [2.8, 1.3, 4.3], 'optimum, °C': [32.3], 'maximum, °C': [45.4] }),
};

/** Medveďová A. and others (2019), Ital. J. Food Saf. 8: 8287, abstract. */
export const aureusFigures: Figures = {
  ...{ 'minimum, °C': [7.7], 'optimum, °C': [40.6], 'maximum, °C': [46.7] },
};

export const fermentingFigures: Figures = {
  // Zajšek K., Goršek A. (2010), ethanol in kefir, abstracts: 64.3 kJ/mol.
  'ethanolActivation, J/mol': [64300],
  // Judgements of ours.
  'leastHeadspace, share': [0.03],
  'forgottenTemperature, °C': [30],
  'ripeningCoolest, °C': [16],
  'ripeningWarmest, °C': [30],
  'pace, times as fast': [1, 0.2, 5],
  ...{ 'paceOfGrains, times as fast': [1, 0.2, 5], 'paceOfSource, times as fast': [1, 0.2, 5] },
  'carriedOver, share': [0.9, 0.5, 1],
  'bottleVolume, mL': [500, 330, 1000],
  'bottleRoom, share': [0.05, 0.03, 0.1],
  // From memory, low confidence: dose 0.5 to 1, sugar 0 to 0.3 and the shares.
  'doseMost, times the usual': [2, 1, 3],
  'doseExponent, power': [0.75, 0.5, 1],
  'sugarExponent, power': [0.15, 0, 0.3],
  // Common practice.
  'bottleTime, h': [8, 6, 10],
  'bottleTimeUsual, h': [0],
};

/** US Alcohol and Tobacco Tax and Trade Bureau, Kombucha: 0.5 % alcohol by volume. */
export const alcoholFigures: Figures = { ', % ABV': [0.5] };

/** A litre of carbon dioxide at 0 °C and 1 atm: 1.977 g of the real gas, from memory; the trade rounds to 1.96 or 2. */
export const gasVolumeFigures: Figures = { ', g/L': [1.977, 1.96, 2] };
