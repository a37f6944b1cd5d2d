import { type ReadonlySignal, signal } from '@preact/signals';
import { type Basket, readBasket, withFood } from '../../batch/keeping/kept-shopping';
import type { PageState } from '../page/page-state';

/** What is in the basket. Kept in this browser, apart from the sheet. */
export interface ShoppingTicks {
  readonly basket: ReadonlySignal<Basket>;
  tick(food: string, isIn: boolean): void;
  empty(): void;
}

const key = 'jarwright.shopping';
const opened = new WeakMap<PageState, ShoppingTicks>();

/** The one of this page, opened as it was kept. */
export function shoppingTicksOn(page: PageState): ShoppingTicks {
  const found = opened.get(page) ?? openTicks(page.storage);
  opened.set(page, found);
  return found;
}

function openTicks(storage: Storage | null): ShoppingTicks {
  const basket = signal(readBasket(read(storage)));
  const set = (next: Basket): void => {
    basket.value = next;
    keep(storage, JSON.stringify(next));
  };
  return {
    basket,
    tick: (food, isIn) => set(withFood(basket.value, food, isIn)),
    empty: () => set([]),
  };
}

function read(storage: Storage | null): string | null {
  try {
    return storage?.getItem(key) ?? null;
  } catch {
    return null;
  }
}

/** Where nothing can be kept, ticks last as long as the page. */
function keep(storage: Storage | null, text: string): void {
  try {
    storage?.setItem(key, text);
  } catch {}
}
