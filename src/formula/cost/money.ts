import { countDecimals, Exact, exactly, powerOfTen } from '../../measure/exact';
import { writePlainDecimal } from '../../measure/write-quantity';
import { currencies } from '../../reference/currencies';

/** How this cook writes money. */
export interface Currency {
  /** What stands in front of the number and behind it, with its space. */
  readonly before: string;
  readonly after: string;
  /** Decimals of the smallest coin. */
  readonly places: number;
}

const hardSpace = '\u00A0';

/**
 * The currency by how one of it is written, such as "$1" or "1 €"; of a text without a number, a sign stands in front
 * and a word behind. Numbers stand alone where nothing was said.
 */
export function currencyOf(sample = ''): Currency {
  const plain = sample.trim().replaceAll(/\s/g, hardSpace);
  const places = placesOf(plain.replaceAll(/[\d\u00A0]/g, ''));
  const [, before = '', digits = '', after = ''] = /^(\D*)(\d*)(.*)$/.exec(plain) ?? [];
  if (digits !== '') return { before, after, places };
  if (plain === '') return { before: '', after: '', places };
  const isSign = /^\p{Sc}$/u.test(plain);
  return isSign ? { before: plain, after: '', places } : { before: '', after: `${hardSpace}${plain}`, places };
}

function placesOf(sign: string): number {
  const other = currencies.others.find(({ signs }) => signs.includes(sign.toUpperCase()));
  return other?.places ?? currencies.places;
}

/** So many of the smallest coin, as this cook writes money. */
export function writeMoney(coins: bigint, { before, after, places }: Currency, decimalComma: boolean): string {
  const digits = String(coins).padStart(places + 1, '0');
  const whole = digits.length - places;
  const plain = places > 0 ? `${digits.slice(0, whole)}.${digits.slice(whole)}` : digits;
  return `${before}${writePlainDecimal(plain, decimalComma)}${after}`;
}

/** An amount of money in the smallest coin, rounded once, a half up. */
export function inCoins(amount: Exact, { places }: Pick<Currency, 'places'>): bigint {
  return countDecimals(amount, places);
}

export interface Allotted {
  readonly total: bigint;
  /** The lines in their order; they add up to the total, each within one coin of what it is exactly. */
  readonly lines: readonly bigint[];
}

/**
 * Amounts of money of 0 or more as they are printed: their exact sum is rounded once, a half up, and shared out so that
 * no coin is lost: each line gets its whole coins, and what is left over goes to the largest remainders, of equal ones
 * to the first.
 */
export function allot(amounts: readonly Exact[], currency: Pick<Currency, 'places'>): Allotted {
  const total = inCoins(sumOf(amounts), currency);
  const perCoin = powerOfTen(currency.places);
  const parts = amounts.map(({ numerator, denominator }, at) => {
    const coins = (numerator * perCoin) / denominator;
    return { at, coins, rest: new Exact(numerator * perCoin - coins * denominator, denominator) };
  });
  const missing = Number(total - parts.reduce((sum, { coins }) => sum + coins, 0n));
  const largest = parts.toSorted((a, b) => b.rest.compare(a.rest)).slice(0, missing);
  const first = new Set(largest.map(({ at }) => at));
  return { total, lines: parts.map(({ at, coins }) => (first.has(at) ? coins + 1n : coins)) };
}

/** The exact sum. */
export function sumOf(amounts: readonly Exact[]): Exact {
  return amounts.reduce((sum, amount) => inLowestTerms(sum.plus(amount)), exactly(0));
}

/** The same number with the smallest numerator and denominator, which else grow with each step. */
function inLowestTerms({ numerator, denominator }: Exact): Exact {
  let [a, b] = [numerator < 0n ? -numerator : numerator, denominator];
  while (b > 0n) [a, b] = [b, a % b];
  return a > 1n ? new Exact(numerator / a, denominator / a) : new Exact(numerator, denominator);
}

/** A price as kept, as it can be typed: with the decimals of the coin at least, and no mark before just three. */
export function writePrice(price: string, { places }: Pick<Currency, 'places'>, decimalComma: boolean): string {
  const [whole = '', decimals = ''] = price.split('.');
  const padded = decimals.padEnd(decimals === '' ? 0 : places, '0').replace(/^\d{3}$/, '$&0');
  return padded === '' ? whole : `${whole}${decimalComma ? ',' : '.'}${padded}`;
}
