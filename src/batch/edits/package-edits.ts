import { foodOfKey } from '../../formula/cost/food-of-key';
import { currencyOf } from '../../formula/cost/money';
import { lowerFirst } from '../../formula/words/lower-first';
import type { Cell, Packaged, SheetDocument } from '../document/document';
import { longestCurrency, mostPackages } from '../document/document-limits';
import { cutText } from '../document/plain-text';
import { isSameData } from '../document/same-data';
import { readPackage } from '../reading/read-package';
import { readPrice } from '../reading/read-price';

/** What is typed of a package: what it holds, and what it costs as a decimal number. */
export interface TypedPackage {
  readonly amount: Cell;
  readonly price: string;
}

/**
 * Keeps what a package of a food holds and costs; it takes the place of the one before. The same again, or one package
 * more than a sheet holds, changes nothing.
 */
export function setPackage(document: SheetDocument, food: string, { amount, price }: TypedPackage): SheetDocument {
  const { packages = [] } = document;
  const place = packages.findIndex((one) => one.food === food);
  const old = packages[place];
  const entry: Packaged = { ...(old ?? { food }), amount, price };
  if (old === undefined)
    return packages.length < mostPackages ? { ...document, packages: [...packages, entry] } : document;
  return isSameData(old, entry) ? document : { ...document, packages: packages.with(place, entry) };
}

export type PriceTyped =
  | { readonly ok: true; readonly document: SheetDocument; readonly step: string }
  | { readonly ok: false; readonly why: string };

/**
 * A price as typed for a package that holds `held`: kept, or forgotten by a blank text. The first one that is typed with
 * a currency says how money is written; one in another currency than that is refused.
 */
export function typePrice(document: SheetDocument, food: string, held: string, text: string): PriceTyped {
  const { settings } = document;
  if (text.trim() === '') return { ok: true, document: forgetPackage(document, food), step: packageSteps.forget(food) };
  const read = readPrice(text, settings.decimalComma);
  if (!read.ok) return read;
  const { price, currency } = read;
  const now = settings.currency;
  if (currency !== null && now !== undefined && !isSameCurrency(currency, now))
    return { ok: false, why: `Money is written as ${now} here. Type the number alone, or change that in Cost.` };
  const typed = { amount: readPackage(held, settings), price };
  const priced = setPackage(document, food, typed);
  const isFull = priced === document && document.packages?.some((one) => one.food === food) !== true;
  if (isFull) return { ok: false, why: 'The sheet is full of prices. Forget one first.' };
  const isFirst = currency !== null && now === undefined;
  return { ok: true, document: isFirst ? setCurrency(priced, currency) : priced, step: packageSteps.set(food, typed) };
}

/** Forgets the package of a food. */
export function forgetPackage(document: SheetDocument, food: string): SheetDocument {
  const { packages = [] } = document;
  const left = packages.filter((one) => one.food !== food);
  return left.length === packages.length ? document : { ...document, packages: left };
}

/** How one of the currency is written, such as "$1" or "1 €"; a blank text forgets it. */
export function setCurrency(document: SheetDocument, text: string): SheetDocument {
  const sample = text.trim().replaceAll(/\s+/g, ' ').slice(0, longestCurrency);
  const { currency = '', ...others } = document.settings;
  if (sample === currency) return document;
  return { ...document, settings: sample === '' ? others : { ...others, currency: sample } };
}

/** Whether two samples are of one currency, wherever it stands. */
export function isSameCurrency(one: string, other: string): boolean {
  const signOf = (sample: string): string => {
    const { before, after } = currencyOf(sample);
    return (before + after).trim().toUpperCase();
  };
  return signOf(one) === signOf(other);
}

/** The names of these steps for undo and redo. */
export const packageSteps = {
  set: (food: string, { amount, price }: TypedPackage) =>
    `Price ${nameOf(food)}: ${price} for ${cutText(amount.text, longestTold)}`,
  forget: (food: string) => `Forget the price of ${nameOf(food)}`,
  currency: (sample: string) =>
    sample.trim() === '' ? 'Write money without a currency' : `Write money as ${sample.trim()}`,
};

const longestTold = 40;

function nameOf(food: string): string {
  return cutText(lowerFirst(foodOfKey(food).name), longestTold);
}
