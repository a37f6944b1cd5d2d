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

const cupOf = (record: string, unit = 'cup'): Spoon => [measureOf(record, unit), gallon / 16];
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
  // By the cup where the record has one: of its level measures the largest is rounded least.
  ...under('caneWhite', ofRecord('19335', cupOf('19335'))),
  ...under('caneRaw', ofRecord('19908', cupOf('19908'))),
  ...under('brown', ofRecord('19334', cupOf('19334', 'cup packed'))),
  ...under('mapleSyrup', ofRecord('19353', cupOf('19353'))),
  ...under('mapleSugar', {
    ...ofRecord('19340', teaspoonOf('19340')),
    ...allSugars(printedOf('19340', 'sugars'), printedOf('19340', 'sugars')),
  }),
  ...under('honey', { ...ofRecord('19296', cupOf('19296')), honeyUnderOne: true }),
  ...under('molasses', ofRecord('19304', cupOf('19304'))),
  ...under('agave', { ...ofRecord('19912', teaspoonOf('19912')), mostlyFructose: true }),
  ...under('dates', {
    ...under('sugars', sugarsOf('09421')),
    ...{ water: printedOf('09421', 'water'), spoon: null, 'piece.grams': measureOf('09421', 'date, pitted') },
  }),
  ...under('cornSyrup', {
    ...ofRecord('19350', cupOf('19350')),
    // Release 24 prints 26.77 of total sugars.
    ...allSugars(26.77, printedOf('19350', 'sugars')),
  }),
  // The lower ends of the next two are from memory.
  ...under('sorghumSyrup', {
    ...ofRecord('19355', cupOf('19355')),
    ...allSugars(60, printedOf('19355', 'sugars')),
  }),
  ...under('caneSyrup', {
    // A serving of no volume in its own record; the tablespoon is sorghum syrup's.
    ...ofRecord('90480', cupOf('19355')),
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
