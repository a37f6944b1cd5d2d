import { type Figures, under, underEach } from './figures';
import { measureOf, printedOf, sugarsOf } from './usda';

// NIST Handbook 44, Appendix C: a gallon is 231 cubic inches; a tablespoon is a 256th, a teaspoon a 768th of it.
const gallon = 231 * 2.54 ** 3;
const tablespoon = gallon / 256;
const teaspoon = gallon / 768;

type Spoon = readonly [grams: number, millilitres: number];

function spoonful([grams, millilitres]: Spoon): Figures {
  return { 'spoon.grams': grams, 'spoon.millilitres': millilitres };
}

function ofRecord(record: string, spoon: Spoon): Figures {
  return { ...under('sugars', sugarsOf(record)), water: printedOf(record, 'water'), ...spoonful(spoon) };
}

const tablespoonOf = (record: string, unit = 'tbsp'): Spoon => [measureOf(record, unit), tablespoon];
const teaspoonOf = (record: string, unit = 'tsp'): Spoon => [measureOf(record, unit), teaspoon];

function allSugars(low: number | null, high: number | null): Figures {
  return { 'total.low': low, 'total.high': high };
}

const kinds = ['sucrose', 'glucose', 'fructose', 'maltose', 'lactose', 'galactose'];

function sugars(figure: number | null): Figures {
  return under('sugars', Object.fromEntries(kinds.map((kind) => [kind, figure])));
}

const ofNoRecord: Figures = { food: null };

/** Figures of the sweeteners. */
export const sweetenerFigures: Figures = {
  // A teaspoon of 4.2 g, three of which make a tablespoon.
  ...under('caneWhite', ofRecord('19335', [3 * measureOf('19335', 'tsp'), tablespoon])),
  ...under('caneRaw', ofRecord('19908', teaspoonOf('19908'))),
  ...under('brown', ofRecord('19334', teaspoonOf('19334', 'tsp packed'))),
  ...under('mapleSyrup', ofRecord('19353', tablespoonOf('19353'))),
  ...under('mapleSugar', {
    ...ofRecord('19340', teaspoonOf('19340')),
    ...allSugars(printedOf('19340', 'sugars'), printedOf('19340', 'sugars')),
  }),
  ...under('honey', { ...ofRecord('19296', tablespoonOf('19296')), honeyUnderOne: true }),
  ...under('molasses', ofRecord('19304', tablespoonOf('19304', 'serving 1 tbsp'))),
  ...under('agave', { ...ofRecord('19912', teaspoonOf('19912')), mostlyFructose: true }),
  ...under('dates', {
    ...under('sugars', sugarsOf('09421')),
    ...{ water: printedOf('09421', 'water'), spoon: null, 'piece.grams': measureOf('09421', 'date, pitted') },
  }),
  ...under('cornSyrup', {
    ...ofRecord('19350', tablespoonOf('19350')),
    // Release 24 prints 26.77 of total sugars.
    ...allSugars(26.77, printedOf('19350', 'sugars')),
  }),
  // The lower ends of the next two are from memory.
  ...under('sorghumSyrup', {
    ...ofRecord('19355', tablespoonOf('19355')),
    ...allSugars(60, printedOf('19355', 'sugars')),
  }),
  ...under('caneSyrup', {
    // A serving of no volume in its own record; the tablespoon is sorghum syrup's.
    ...ofRecord('90480', tablespoonOf('19355')),
    ...allSugars(60, printedOf('90480', 'sugars')),
  }),
  // From memory: coconut sugar of 75 to 92 % sugars and 1 to 3 % water, date syrup of 60 to 75 % and 20 to 30 %.
  ...under('coconutSugar', {
    ...sugars(null),
    ...allSugars(75, 92),
    ...{ ...ofNoRecord, water: 2 },
    ...spoonful([12, tablespoon]),
  }),
  ...under('dateSyrup', {
    ...sugars(null),
    ...allSugars(60, 75),
    ...{ ...ofNoRecord, water: 25 },
    ...spoonful([20.5, tablespoon]),
  }),
  // From molar masses: 180.156 of the 198.171 g/mol of the monohydrate are glucose; a tablespoon of 8 to 12 g is from memory.
  ...under('dextrose', {
    ...sugars(0),
    'sugars.glucose': Number(((100 * 180.156) / 198.171).toFixed(2)),
    water: Number((100 - (100 * 180.156) / 198.171).toFixed(2)),
    ...ofNoRecord,
    ...spoonful([10, tablespoon]),
  }),
  ...underEach(['stevia', 'erythritol', 'xylitol', 'monkFruit', 'sucralose', 'allulose', 'none'], {
    ...sugars(0),
    ...ofNoRecord,
    ...{ water: 0, spoon: null },
  }),
};
