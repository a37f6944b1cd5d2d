import { batch, type Signal, signal } from '@preact/signals';
import type { Store } from '../../batch/store/store';
import type { Chosen } from '../../interchange/recipe-batch';
import type { ByHand, RecipeText } from '../../interchange/recipe-text';
import type { SweetenerId } from '../../reference/sweeteners';

/** A recipe that was pasted, for as long as the page is open: what stands in the box, and what was read and told of it. */
export interface Pasted {
  readonly text: Signal<string>;
  /** Null before anything was read. */
  readonly read: Signal<RecipeText | null>;
  readonly readings: Signal<number>;
  readonly told: Signal<readonly ByHand[]>;
  readonly chosen: Signal<Chosen>;
  readonly swappedFor: Signal<SweetenerId | null>;
  /** Forgets all of it. */
  clear(): void;
}

const pastes = new WeakMap<Store, Pasted>();

/** The pasted recipe of a sheet: it is there when the cook comes back from another part. */
export function pastedOf(store: Store): Pasted {
  const known = pastes.get(store);
  if (known !== undefined) return known;
  const pasted: Pasted = {
    text: signal(''),
    read: signal(null),
    readings: signal(0),
    told: signal([]),
    chosen: signal({}),
    swappedFor: signal(null),
    clear() {
      batch(() => {
        pasted.text.value = '';
        pasted.read.value = null;
        pasted.told.value = [];
        pasted.chosen.value = {};
        pasted.swappedFor.value = null;
      });
    },
  };
  pastes.set(store, pasted);
  return pasted;
}
