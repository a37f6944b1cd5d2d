import type { Kitchen } from '../batch/document/document';
import { keysOf } from '../batch/document/table-keys';
import { numericRows } from '../formula/rows/sheet';
import { readQuantity } from '../measure/read-quantity';
import { convertNumber } from '../measure/units';
import { type CultureId, grains } from '../reference/grains';
import { jarAliases } from '../reference/jar-aliases';
import { type JarId, jars } from '../reference/jars';
import { grainAliases, unclearGrains } from '../reference/other-aliases';
import { findJar } from './recipe-reading/jar-hint';

/** What is said of a kitchen beside its name. */
export type KitchenField = Exclude<keyof Kitchen, 'name'>;

/** What a cell says; or what is wrong with it, in a sentence that says what to do. */
export type CellRead =
  | { readonly field: 'vessel'; readonly value: JarId }
  | { readonly field: 'temperature'; readonly value: number | null }
  | { readonly field: 'leads'; readonly value: Kitchen['leads'] }
  | { readonly field: 'grains'; readonly value: CultureId }
  | { readonly problem: string };

/** What a cell can be read by. */
export interface Habits {
  readonly decimalComma: boolean;
  /** The unit of bare numbers in a column of room temperatures, where its heading names one. */
  readonly degrees?: '°C' | '°F';
}

// Judgement: of a number without a unit, degrees of a room in the one scale are none in the other, and a jar holds more.
const rooms = { '°C': { least: 10, most: 40 }, '°F': { least: 50, most: 104 } } as const;
const leastJar = 200;
const bare = /^\d+(?:[.,]\d+)?$/;

const unitWords: Readonly<Record<Kitchen['leads'], readonly string[]>> = {
  metric: ['metric', 'si', 'g', 'grams', 'gram', 'grammes', 'ml', 'weigh', 'weighs', 'scale'],
  us: [
    'us',
    'u.s.',
    'usa',
    'american',
    'us kitchen',
    'us units',
    'us measure',
    'cup',
    'cups',
    'spoons',
    'oz',
    'ounces',
  ],
};
const asRecipe = ['as the recipe', 'as recipe', 'recipe', 'same', '-', '–', '—', '?'];

/** What a cell of a column says. Blank is as the recipe; what can't be read gives a sentence. */
export function readField(field: KitchenField, text: string, habits: Habits): CellRead | null {
  const plain = plainOf(text);
  if (plain === '' || asRecipe.includes(plain)) return null;
  const read = readers[field](plain, habits);
  return read ?? { problem: `“${text.trim()}” ${unlike[field]}` };
}

/** What a cell says wherever it stands; null where it is nothing that a kitchen has. Blank is as the recipe. */
export function readAnywhere(text: string, habits: Habits): CellRead | 'blank' | null {
  const plain = plainOf(text);
  if (plain === '' || asRecipe.includes(plain)) return 'blank';
  if (unclearGrains.includes(plain)) return { problem: `“${text.trim()}” may be either: type ${cultureWords}.` };
  for (const field of ['temperature', 'leads', 'grains', 'vessel'] as const) {
    const read = readers[field](plain, habits);
    if (read !== null) return read;
  }
  return null;
}

function plainOf(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s\u00A0\u202F]+/g, ' ');
}

const cultureWords = keysOf(grains)
  .map((id) => grains[id].name.toLowerCase())
  .join(' or ');

/** What a cell is not, and what to type. */
const unlike: Readonly<Record<KitchenField, string>> = {
  vessel: 'is none of the jars here: type quart, litre, half gallon, 2 L or own.',
  temperature: 'is no room temperature: type one such as 24 °C or 75 °F.',
  leads: 'is neither: type metric or US.',
  grains: `is no culture here: type ${cultureWords}.`,
};

const readers: Readonly<Record<KitchenField, (plain: string, habits: Habits) => CellRead | null>> = {
  temperature: readRoom,
  leads: (plain) => {
    const words = plain.replace(/ (?:units?|measures?)$/, '');
    const leads = (['metric', 'us'] as const).find((one) => unitWords[one].includes(words));
    return leads === undefined ? null : { field: 'leads', value: leads };
  },
  grains: (plain) => {
    const id = keysOf(grains).find(
      (one) =>
        one.toLowerCase() === plain || grains[one].name.toLowerCase() === plain || grainAliases[one].includes(plain),
    );
    return id === undefined ? null : { field: 'grains', value: id };
  },
  vessel: readJar,
};

function readRoom(plain: string, { decimalComma, degrees }: Habits): CellRead | null {
  const text = plain
    .replace(/^(?:about|around|room|~) ?/, '')
    .replace(/ ?(?:degrees?|deg\.?) ?/, ' °')
    .replace(/(?<=[\d°] ?)[cf]$/, (one) => one.toUpperCase());
  const number = bare.test(text) ? Number(text.replace(',', '.')) : null;
  const scale = degrees ?? (['°C', '°F'] as const).find((one) => isRoom(number, rooms[one]));
  if (number !== null) return scale === undefined ? null : inRange(convertNumber(number, scale, '°C'), plain);
  const read = readQuantity(text, { kind: 'temperature', bareUnit: degrees ?? '°C', cups: 'us', decimalComma });
  return read.ok && (read.reading.unit !== null || degrees !== undefined) ? inRange(read.reading.amount, plain) : null;
}

function isRoom(number: number | null, { least, most }: { readonly least: number; readonly most: number }): boolean {
  return number !== null && number >= least && number <= most;
}

function inRange(value: number, plain: string): CellRead {
  const { least, most } = numericRows.roomTemperature.range;
  if (value >= least && value <= most) return { field: 'temperature', value };
  return { problem: `“${plain}” is no room that the sheet knows: it goes from ${least} to ${most} °C.` };
}

function readJar(plain: string, { decimalComma }: Habits): CellRead | null {
  const words = plain
    .replace(/^(?:an?|1(?= [a-z])) /, '')
    .replace(/ ?-?(?:glass |mason )?jars?$/, '')
    .replaceAll('-', ' ')
    .replaceAll(/ ?, ?/g, ' ')
    .trim();
  const id = keysOf(jars).find(
    (one) => one.toLowerCase() === plain || jars[one].name.toLowerCase() === plain || jarAliases[one].includes(words),
  );
  if (id !== undefined) return { field: 'vessel', value: id };
  const size = words.replace(/ ?(?:wide|regular) mouth ?/, '');
  const isSmallNumber = bare.test(size) && !(Number(size.replace(',', '.')) >= leastJar);
  const read = readQuantity(size, { kind: 'volume', bareUnit: 'mL', cups: 'us', decimalComma });
  if (!read.ok || isSmallNumber) return null;
  const found = findJar(read.reading.amount, words);
  return found === null ? { problem: `“${plain}” ${unlike.vessel}` } : { field: 'vessel', value: found };
}
