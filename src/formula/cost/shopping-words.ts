import type { Kitchen } from '../words/write-row';
import { tellAmount } from './cost-words';
import { allot, type Currency, writeMoney } from './money';
import type { ShoppingItem, ShoppingList } from './shopping-list';

/** A line of the list as it is read in the shop. */
export interface ShoppingLine {
  readonly food: string;
  readonly name: string;
  /** What to put into the basket: `2 × 500 g`, or the weight where no package is known. */
  readonly take: string;
  /** How much the batches take of it, and what stays over or is in the house. */
  readonly aside: string;
  readonly cost: string | null;
}

export interface ShoppingTold {
  /** What is to be bought. */
  readonly lines: readonly ShoppingLine[];
  /** What is all in the house. */
  readonly inHouse: readonly ShoppingLine[];
  readonly total: string;
  /** Whether something to buy has no price, so that the total is only of the rest. */
  readonly isPart: boolean;
}

/** The shopping list in words and in the cook's own currency; its costs add up to the total to the coin. */
export function tellShopping(list: ShoppingList, currency: Currency, kitchen: Kitchen): ShoppingTold {
  const { total, lines } = allot(
    list.items.flatMap(({ packages }) => (packages === null ? [] : [packages.cost])),
    currency,
  );
  const write = (coins: bigint): string => writeMoney(coins, currency, kitchen.decimalComma);
  const costs = lines.values();
  const told = list.items.map((item) => {
    const coins = item.packages === null ? undefined : costs.next().value;
    return { item, line: lineOf(item, coins === undefined ? null : write(coins), kitchen) };
  });
  return {
    lines: told.filter(({ item }) => item.toBuy > 0).map(({ line }) => line),
    inHouse: told.filter(({ item }) => !(item.toBuy > 0)).map(({ line }) => line),
    total: write(total),
    isPart: list.unpriced > 0,
  };
}

function lineOf(item: ShoppingItem, cost: string | null, kitchen: Kitchen): ShoppingLine {
  const { food, name, grams, inHouse, toBuy, packages } = item;
  const say = (amount: number): string => tellAmount(item, amount, kitchen);
  const needed = `${say(grams)} needed`;
  const had = inHouse > 0 ? `, ${say(inHouse)} in the house` : '';
  if (packages === null) return { food, name, take: say(toBuy), aside: inHouse > 0 ? `${needed}${had}` : '', cost };
  const over = packages.over > grams * slack ? `, ${say(packages.over)} over` : '';
  const { text } = packages.entry.amount;
  const take = packages.count === 1 ? text : `${packages.count} × ${text}`;
  return { food, name, take: packages.count === 0 ? '0' : take, aside: `${needed}${had}${over}`, cost };
}

const slack = 1e-3; // tolerance: a gram of a kilogram is nothing to keep

/** The list as text to be sent or pasted, a line each. */
export function writeShoppingText({ lines, total, isPart }: ShoppingTold): string {
  const told = lines.map(({ name, take, aside, cost }) => {
    const rest = [aside, cost].filter((part) => part !== null && part !== '').join('; ');
    return rest === '' ? `${name}: ${take}` : `${name}: ${take} (${rest})`;
  });
  const hasCost = lines.some(({ cost }) => cost !== null);
  return [...told, ...(hasCost ? [`${isPart ? 'So far' : 'Together'}: ${total}`] : [])].join('\n');
}
