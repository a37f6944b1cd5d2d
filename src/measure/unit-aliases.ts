import type { KitchenMeasure } from './cup-standards';
import type { UnitId } from './units';

/**
 * The words that name each unit where it is read. Cups, spoons and fluid ounces have no plain word of their own here:
 * what "cup" means is the cook's setting, in `cupStandards`.
 */
export const unitAliases: Readonly<Record<UnitId, readonly string[]>> = {
  g: ['g', 'gr', 'gm', 'gms', 'gram', 'grams', 'gramme', 'grammes'],
  kg: ['kg', 'kgs', 'kilo', 'kilos', 'kilogram', 'kilograms', 'kilogramme', 'kilogrammes'],
  mg: ['mg', 'milligram', 'milligrams'],
  lb: ['lb', 'lbs', 'pound', 'pounds'],
  oz: ['oz', 'ounce', 'ounces'],
  mL: ['mL', 'mls', 'cc', 'millilitre', 'millilitres', 'milliliter', 'milliliters'],
  cL: ['cL', 'centilitre', 'centilitres', 'centiliter', 'centiliters'],
  dL: ['dL', 'decilitre', 'decilitres', 'deciliter', 'deciliters'],
  L: ['L', 'lt', 'ltr', 'ltrs', 'litre', 'litres', 'liter', 'liters'],
  in3: ['in³', 'in3', 'cubic inch', 'cubic inches', 'cu in'],
  gal: ['gal', 'gals', 'gallon', 'gallons'],
  qt: ['qt', 'qts', 'quart', 'quarts'],
  pt: ['pt', 'pts', 'pint', 'pints'],
  cup: ['US cup', 'US cups'],
  flOz: ['US fl oz', 'US fluid ounce', 'US fluid ounces'],
  tbsp: ['US tbsp', 'US tablespoon', 'US tablespoons'],
  tsp: ['US tsp', 'US teaspoon', 'US teaspoons'],
  labelCup: ['label cup', 'label cups'],
  labelFlOz: ['label fl oz'],
  labelTbsp: ['label tbsp'],
  labelTsp: ['label tsp'],
  metricCup: ['metric cup', 'metric cups'],
  metricTbsp: ['metric tbsp', 'metric tablespoon', 'metric tablespoons'],
  metricTsp: ['metric tsp', 'metric teaspoon', 'metric teaspoons'],
  australianTbsp: ['Australian tbsp', 'Australian tablespoon', 'Australian tablespoons'],
  cm: ['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'],
  in: ['in', 'inch', 'inches', '"'],
  '°C': ['°C', 'C', 'Celsius', 'centigrade', 'deg C', 'degree C', 'degrees C', 'degree Celsius', 'degrees Celsius'],
  '°F': ['°F', 'F', 'Fahrenheit', 'deg F', 'degree F', 'degrees F', 'degree Fahrenheit', 'degrees Fahrenheit'],
  'Δ°C': ['°C', 'C', 'K', 'Celsius', 'deg C', 'degree C', 'degrees C', 'degrees Celsius'],
  'Δ°F': ['°F', 'F', 'Fahrenheit', 'deg F', 'degree F', 'degrees F', 'degrees Fahrenheit'],
  h: ['h', 'hr', 'hrs', 'hour', 'hours'],
  min: ['min', 'mins', 'm', 'minute', 'minutes'],
  s: ['s', 'sec', 'secs', 'second', 'seconds'],
  day: ['d', 'day', 'days'],
  bar: ['bar', 'bars'],
  kPa: ['kPa', 'kilopascal', 'kilopascals'],
  Pa: ['Pa', 'pascal', 'pascals'],
  atm: ['atm', 'atmosphere', 'atmospheres'],
  psi: ['psi', 'psig'],
  'g/g': ['g/g', 'g per g', 'grams per gram'],
  'g/L': ['g/L', 'g/litre', 'g/liter', 'g per L', 'g per litre', 'g per liter', 'grams per litre', 'grams per liter'],
  '%': ['%', 'per cent', 'pct'],
  '': [
    'jar',
    'jars',
    'bottle',
    'bottles',
    'glass',
    'glasses',
    'serving',
    'servings',
    'load',
    'loads',
    'piece',
    'pieces',
  ],
  pH: ['pH'],
};

/**
 * The plain words of each kitchen measure. Only single letters depend on their case: T is a tablespoon, t a teaspoon.
 * "oz" is here and among the masses on purpose: the row it is typed in decides.
 */
export const kitchenWords: Readonly<Record<KitchenMeasure, readonly string[]>> = {
  cup: ['cup', 'cups', 'cupful', 'cupfuls', 'c', 'C'],
  tbsp: ['tbsp', 'tbsps', 'tbs', 'tb', 'tbl', 'tbls', 'tblsp', 'T', 'tablespoon', 'tablespoons'],
  tsp: ['tsp', 'tsps', 'ts', 't', 'teaspoon', 'teaspoons'],
  flOz: ['fl oz', 'fluid oz', 'fluid ounce', 'fluid ounces', 'oz', 'ounce', 'ounces'],
};
