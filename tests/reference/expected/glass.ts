import type { Figures } from './figures';

/** From memory: the general factors of food tables, which USDA's printed energies of drinks agree with; alcohol 7, acids about 3. */
export const energyFigures: Figures = {
  'proteinEnergy, kcal/g': [4, 3.5, 4.4],
  'fatEnergy, kcal/g': [9, 8.4, 9],
  'carbohydrateEnergy, kcal/g': [4, 3.5, 4.2],
  'alcoholEnergy, kcal/g': [7, 6.9, 7.1],
  'acidEnergy, kcal/g': [3, 2.4, 3.7],
  'kilojoules, kJ/kcal': [4.184, 4.18, 4.19],
};

/** Common practice: two or three days in the fridge, some months in the freezer. */
export const pulpKeepingFigures: Figures = {
  'pulpInFridge, days': [2, 2, 3],
  'pulpInFreezer, months': [3, 2, 6],
};

/** Almond okara in biscuits (2022), abstract, % of dry pulp: protein 14.01, lipid 42.12, dietary fibre 40.79. */
export const almondPulpFigures: Figures = {
  'protein, g in 100 g': [14.01],
  'fat, g in 100 g': [42.12],
  'fibre, g in 100 g': [40.79],
};

/** From memory, ISO 4217: cents but for those without a smaller coin, and thousandths of a dinar. */
export const currencyFigures: Figures = { places: 2, 'others.0.places': 0, 'others.1.places': 3 };
