import { convertNumber } from '../../measure/units';

/** What a household measure of a food record is: a volume of some form of it, or knowingly none. */
export type MeasureWords =
  | { readonly is: 'volume'; readonly millilitres: number; readonly form: string | null }
  | { readonly is: 'mass' | 'piece' | 'pack' };

const words =
  /^(?:(\d+) )?(?:serving |bottle )?(?:(\d+)(?:\/(\d+))? )?(cup|tbsp|tsp|fl oz|quart|liter|milliliter)(?![a-z])[, ]*(.*)$/;
const unitOf = {
  cup: 'cup',
  tbsp: 'tbsp',
  tsp: 'tsp',
  'fl oz': 'flOz',
  quart: 'qt',
  liter: 'L',
  milliliter: 'mL',
} as const;

const mass = /^oz(?![a-z])/;
const piece = /^(?:date, pitted|almond|kernel|nuts|medium)$/;
const pack = /^(?:piece \(|coconut yields|ice cube|serving$|serving packet|serving 1 cube|packet|package)/;

// In this order: "unpacked" holds "packed", and "whole or halves" means whole ones.
const forms: readonly (readonly [form: string, words: RegExp])[] = [
  ['in shell', /in shell|with hulls/],
  ['unpacked', /unpacked/],
  ['packed', /packed/],
  ['unsifted', /unsifted/],
  ['sifted', /sifted/],
  ['slivered', /slivered/],
  ['sliced', /sliced/],
  ['ground', /ground/],
  ['chopped', /chopped/],
  ['shredded', /shredded/],
  ['pieces', /pieces/],
  ['whole', /whole/],
  ['halves', /halves/],
  ['free-flowing', /free-flowing/],
];

function isUnit(word: string): word is keyof typeof unitOf {
  return Object.hasOwn(unitOf, word);
}

/**
 * Reads the wording of a household measure, such as "cup, sliced", "serving 1/4 cup" or "oz (14 halves)": a volume in
 * mL with the form of the food it is of, or what else it is. US customary cups and spoons. Null for wording that none
 * of the records read so far has.
 */
export function readMeasureWords(amount: number, unit: string): MeasureWords | null {
  if (mass.test(unit)) return { is: 'mass' };
  if (piece.test(unit)) return { is: 'piece' };
  if (pack.test(unit)) return { is: 'pack' };
  const found = words.exec(unit);
  const word = found?.[4] ?? '';
  if (found === null || !isUnit(word)) return null;
  const times = Number(found[1] ?? 1) * (Number(found[2] ?? 1) / Number(found[3] ?? 1));
  const millilitres = convertNumber(amount * times, unitOf[word], 'mL');
  return { is: 'volume', millilitres, form: readForm(found[5] ?? '') };
}

/** The form that words name, such as "packed" or "sliced"; null where they name none. */
export function readForm(text: string): string | null {
  return forms.find(([, pattern]) => pattern.test(text))?.[0] ?? null;
}
