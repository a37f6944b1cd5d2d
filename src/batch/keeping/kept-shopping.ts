/** The foods ticked off a shopping list, by key. */
export type Basket = readonly string[];

const most = 500;

/** The ticks in a kept text, which anything may have written: what is none is left out. */
export function readBasket(text: string | null): Basket {
  try {
    const found: unknown = text === null ? null : JSON.parse(text);
    return Array.isArray(found) ? found.filter((one) => typeof one === 'string').slice(0, most) : [];
  } catch {
    return [];
  }
}

/** With a food ticked off, or no longer. */
export function withFood(basket: Basket, food: string, isIn: boolean): Basket {
  const others = basket.filter((one) => one !== food);
  return isIn ? [...others, food].slice(-most) : others;
}
