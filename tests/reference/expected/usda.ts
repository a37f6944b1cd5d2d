// US Department of Agriculture, Agricultural Research Service, Nutrient Data Laboratory. USDA National Nutrient Database
// for Standard Reference, Releases 24 (2011), 26 (2013), 28 (September 2015) and Legacy (April 2018); what was seen of
// each stands beside the copy, in fixtures/README.md.
import copied from '../fixtures/usda-sr.json';
import copied26 from '../fixtures/usda-sr26.json';
import { type Figures, under } from './figures';

const fields = [
  ...['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'sugars', 'ash'],
  ...['sucrose', 'glucose', 'fructose', 'maltose', 'lactose', 'galactose'],
] as const;

type Field = (typeof fields)[number];

interface Printed {
  readonly ndb: string;
  readonly name: string;
  readonly per100g: Readonly<Record<string, number | null>>;
  readonly measures: readonly { readonly amount: number; readonly unit: string; readonly grams: number }[];
  readonly otherReleases?: unknown;
}

/** Every record of the copy. */
export const printed: readonly Printed[] = [...copied, ...copied26];

const byNumber = new Map(printed.map((record) => [record.ndb, record]));

function findRecord(ndb: string): Printed {
  const record = byNumber.get(ndb);
  if (record === undefined) throw new Error(`The copy has no record ${ndb}`);
  return record;
}

/** One figure of a record, g per 100 g. */
export function printedOf(ndb: string, field: Field | 'starch'): number | null {
  const figure = findRecord(ndb).per100g[field];
  if (figure === undefined) throw new Error(`The copy has no ${field} of ${ndb}`);
  return figure;
}

/** What a measure of a record weighs, g. */
export function measureOf(ndb: string, unit: string): number {
  const measure = findRecord(ndb).measures.find((each) => each.unit === unit);
  if (measure === undefined) throw new Error(`The copy has no ${unit} of ${ndb}`);
  return measure.grams / measure.amount;
}

/** Water, protein, fat, carbohydrate, fibre, sugars, ash and the six sugars. */
export function compositionOf(ndb: string): Figures {
  return Object.fromEntries(fields.map((field) => [field, printedOf(ndb, field)]));
}

/** The six sugars alone. */
export function sugarsOf(ndb: string): Figures {
  return Object.fromEntries(fields.slice(7).map((field) => [field, printedOf(ndb, field)]));
}

/** Composition of every record, starch included, under its number. */
export const compositions: Figures = Object.assign(
  {},
  ...printed.map(({ ndb }) => under(ndb, { ...compositionOf(ndb), starch: printedOf(ndb, 'starch') })),
);

/** Household measures of every record, in the order of the release. */
export const householdMeasures: Figures = Object.assign(
  {},
  ...printed.map(({ ndb, measures }) =>
    under(
      `${ndb}.measures`,
      Object.fromEntries(
        measures.flatMap(({ amount, grams }, index) => [
          [`${index}.amount`, amount],
          [`${index}.grams`, grams],
        ]),
      ),
    ),
  ),
);
