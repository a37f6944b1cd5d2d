import { roundAndTrim, roundNumber, roundRough, roundTo } from './rounding';
import { convertNumber, type Kind, type KindOf, type UnitId, type UnitOf, units } from './units';
import { writeFraction } from './vulgar-fractions';

const hardSpace = '\u00A0';
const groupSpace = '\u202F';
const minus = '−';
const notANumber = '–';

/**
 * A number to `places` decimals, rounded half away from zero on the exact decimal; five digits and more are grouped
 * by a narrow no-break space. Never "-0"; a value that is not finite is written as a dash.
 */
export function writeNumber(value: number, places: number, decimalComma: boolean): string {
  return writePlainDecimal(roundTo(value, places), decimalComma);
}

/** Like `writeNumber`, without zeros at the end: at most `places` decimals. */
export function writeTrimmed(value: number, places: number, decimalComma: boolean): string {
  return writePlainDecimal(roundAndTrim(value, places), decimalComma);
}

/** Plain digits such as "1234.50" or "-3" as a cook reads them; what is no such text is a dash. */
export function writePlainDecimal(plain: string, decimalComma: boolean): string {
  const match = /^(-?)(\d+)(?:\.(\d+))?$/.exec(plain);
  if (match === null) return notANumber;
  const [, sign, whole = '', decimals] = match;
  const grouped = whole.length < 5 ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, groupSpace);
  const tail = decimals === undefined ? '' : `${decimalComma ? ',' : '.'}${decimals}`;
  return `${sign === '-' ? minus : ''}${grouped}${tail}`;
}

function withUnit(number: string, unit: UnitId): string {
  return number === notANumber ? number : `${number}${hardSpace}${units[unit].symbol}`;
}

/** Says a value in another unit, rounded: in doubles where they can tell, from the exact number where they can't. */
function inUnit<U extends UnitId>(from: U, to: UnitOf<KindOf<U>>) {
  const zero = convertNumber(0, from, to);
  const slope = convertNumber(1, from, to) - zero;
  return (value: number, places: number, times = 1): number =>
    roundRough((zero + slope * value) * times, places) ?? roundNumber(convertNumber(value, from, to) * times, places);
}

const inMinutes = inUnit('h', 'min');
const inSeconds = inUnit('h', 's');
const inOunces = inUnit('g', 'oz');
const inInches = inUnit('cm', 'in');
const inFahrenheit = inUnit('°C', '°F');
const byFahrenheit = inUnit('Δ°C', 'Δ°F');
const inPsi = inUnit('bar', 'psi');

/** From which rounded size on a number is written in which unit with how many decimals; the last that fits counts. */
type Step = { readonly below: number; readonly unit: UnitId; readonly divisor: number; readonly places: number };

const massSteps: readonly Step[] = [
  { below: 1, unit: 'g', divisor: 1, places: 2 },
  { below: 10, unit: 'g', divisor: 1, places: 1 },
  { below: 10_000, unit: 'g', divisor: 1, places: 0 },
  { below: Number.POSITIVE_INFINITY, unit: 'kg', divisor: 1000, places: 2 },
];
const volumeSteps: readonly Step[] = [
  { below: 1, unit: 'mL', divisor: 1, places: 2 },
  { below: 10, unit: 'mL', divisor: 1, places: 1 },
  { below: 10_000, unit: 'mL', divisor: 1, places: 0 },
  { below: Number.POSITIVE_INFINITY, unit: 'L', divisor: 1000, places: 2 },
];

/** The step is chosen by the rounded size, so that 9.97 g is "10 g" and not "10.0 g". */
function writeBySize(value: number, steps: readonly Step[], decimalComma: boolean): string {
  const step = steps.find(({ below, places }) => Math.abs(roundNumber(value, places)) < below) ?? steps.at(-1);
  if (step === undefined) return notANumber;
  if (value === 0) return withUnit('0', step.unit);
  return withUnit(writeNumber(value / step.divisor, step.places, decimalComma), step.unit);
}

function writeTime(hours: number, decimalComma: boolean): string {
  const minutes = inMinutes(hours, 0);
  const size = Math.abs(minutes);
  if (size >= 60 || hours === 0) return withUnit(writeTrimmed(hours, 1, decimalComma), 'h');
  const seconds = inSeconds(hours, 0);
  // Half a minute more or less is much of so short a time.
  const isShort = Math.abs(seconds) < 120 && seconds % 60 !== 0;
  return isShort
    ? withUnit(writeNumber(seconds, 0, decimalComma), 's')
    : withUnit(writeNumber(minutes, 0, decimalComma), 'min');
}

function writeHalves(value: number, unit: UnitId, decimalComma: boolean): string {
  return withUnit(writeTrimmed(roundNumber(value * 2, 0) / 2, 1, decimalComma), unit);
}

/** How much of one thing goes to one of another, both by weight: "4.5 parts". */
function writeParts(value: number, decimalComma: boolean): string {
  const number = writeTrimmed(value, 2, decimalComma);
  return `${number}${hardSpace}${number === '1' ? 'part' : 'parts'}`;
}

/**
 * An amount in base units written in metric, as a cook reads it: number, no-break space, SI symbol.
 * The decimals follow the size and the kind; a value that is not finite is a dash. Rounds for print only.
 */
export function writeMetric(value: number, kind: Kind, decimalComma: boolean): string {
  if (!Number.isFinite(value)) return notANumber;
  switch (kind) {
    case 'mass':
      return writeBySize(value, massSteps, decimalComma);
    case 'volume':
      return writeBySize(value, volumeSteps, decimalComma);
    case 'length':
      return withUnit(writeNumber(value, 1, decimalComma), 'cm');
    case 'temperature':
      return writeHalves(value, '°C', decimalComma);
    case 'temperatureDifference':
      return writeHalves(value, 'Δ°C', decimalComma);
    case 'time':
      return writeTime(value, decimalComma);
    case 'pressure':
      return withUnit(writeNumber(value, Math.abs(roundNumber(value, 1)) < 10 ? 1 : 0, decimalComma), 'bar');
    case 'ratio':
      return writeParts(value, decimalComma);
    case 'concentration':
      return withUnit(writeNumber(value, 1, decimalComma), 'g/L');
    case 'share':
      return withUnit(writeNumber(value, 1, decimalComma), '%');
    case 'count':
      return writeTrimmed(value, 1, decimalComma);
    case 'acidity':
      return `pH${hardSpace}${writeNumber(value, 2, decimalComma)}`;
  }
}

/** Ounces below a pound, then pounds and ounces; a tenth of an ounce is 2.8 g, so less than one shows hundredths. */
function writePoundsAndOunces(grams: number, decimalComma: boolean): string {
  const size = Math.abs(grams);
  const sign = grams < 0 ? minus : '';
  if (inOunces(size, 2) < 1) return withUnit(writeTrimmed(inOunces(grams, 2), 2, decimalComma), 'oz');
  const rounded = inOunces(size, 1);
  if (rounded < 16) return `${sign}${withUnit(writeTrimmed(rounded, 1, decimalComma), 'oz')}`;
  const pounds = Math.floor(rounded / 16);
  const rest = roundNumber(rounded - pounds * 16, 1);
  const whole = `${sign}${withUnit(writeNumber(pounds, 0, decimalComma), 'lb')}`;
  return rest === 0 ? whole : `${whole}${hardSpace}${withUnit(writeTrimmed(rest, 1, decimalComma), 'oz')}`;
}

function writeInches(centimetres: number): string {
  const eighths = inInches(Math.abs(centimetres), 0, 8);
  const sign = centimetres < 0 && eighths > 0 ? minus : '';
  return withUnit(`${sign}${writeFraction(eighths, 8)}`, 'in');
}

/**
 * An amount in base units written in US units, or null for the kinds that have none of their own: time, ratio,
 * count, share, concentration, acidity, and volume, which `writeScoops` writes. A value that is not finite is a dash.
 */
export function writeUS(value: number, kind: Kind, decimalComma: boolean): string | null {
  const write = usWriters[kind];
  if (write === null) return null;
  return Number.isFinite(value) ? write(value, decimalComma) : notANumber;
}

const usWriters: { readonly [K in Kind]: ((value: number, decimalComma: boolean) => string) | null } = {
  mass: writePoundsAndOunces,
  length: writeInches,
  temperature: (value, comma) => withUnit(writeNumber(inFahrenheit(value, 0), 0, comma), '°F'),
  temperatureDifference: (value, comma) => withUnit(writeNumber(byFahrenheit(value, 0), 0, comma), 'Δ°F'),
  pressure: (value, comma) => withUnit(writeNumber(inPsi(value, 0), 0, comma), 'psi'),
  volume: null,
  time: null,
  ratio: null,
  concentration: null,
  share: null,
  count: null,
  acidity: null,
};
