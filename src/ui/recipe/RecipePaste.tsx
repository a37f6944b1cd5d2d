import { batch } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import { addPlanned, type PlannedBatch } from '../../batch/edits/add-planned';
import type { Store } from '../../batch/store/store';
import { keepByHand, readRecipe } from '../../interchange/recipe-text';
import type { SheetState } from '../sheet/sheet-state';
import { pastedOf } from './pasted';
import { RecipeResult } from './RecipeResult';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  /** Called once a batch is made of it. */
  readonly onMade: () => void;
}

// Browsers take many seconds to put thousands of lines into a text box by themselves; set at once, they take none.
const longPaste = 20_000;

/** A pasted recipe: read line by line, open to correction, and shown as a batch before one is made of it. */
export function RecipePaste({ store, state, onMade }: Props) {
  const pasted = pastedOf(store);
  const text = pasted.text.value;
  const { cups, decimalComma } = store.settings.value;
  const { ownFoods } = store.document.value;
  const box = useRef<HTMLTextAreaElement>(null);
  const habits = useMemo(() => ({ cups, decimalComma, ownFoods: ownFoods ?? [] }), [cups, decimalComma, ownFoods]);
  const readIt = (written: string) => {
    const before = pasted.read.peek();
    const now = readRecipe(written, habits);
    batch(() => {
      pasted.text.value = written;
      pasted.told.value = before === null ? [] : keepByHand(pasted.told.peek(), before, now);
      pasted.read.value = now;
      pasted.readings.value += 1;
      pasted.swappedFor.value = null;
    });
  };
  const make = (planned: PlannedBatch) => {
    const next = addPlanned(store.document.value, planned, state.spot.value.batch);
    const added = next.batches.find(({ id }) => !store.document.value.batches.some((one) => one.id === id));
    store.takeEdit(next, `Make a batch of ${planned.name}`);
    if (added === undefined) return;
    onMade();
    state.landOn(added.id, `“${planned.name}” is added, from a recipe.`);
  };
  // Thousands of lines are not weighed anew at each letter that is typed above them.
  const result = useMemo(
    () => <RecipeResult store={store} pasted={pasted} habits={habits} onRead={readIt} onMake={make} />,
    [habits],
  );
  return (
    <section class="panel" aria-label="Paste a recipe">
      <h2>Paste a recipe</h2>
      <p>Paste ingredient lines as they are written, in cups or grams. Nothing is changed before you have seen it.</p>
      <textarea
        ref={box}
        class="recipe-box"
        aria-label="Recipe text"
        rows={8}
        value={text}
        placeholder={'1 ½ cups hazelnuts\n4 cups water\n1 ½ tbsp sugar\n3 tbsp water kefir grains'}
        onInput={(event) => {
          pasted.text.value = event.currentTarget.value;
        }}
        onPaste={(event) => {
          const added = event.clipboardData?.getData('text/plain') ?? '';
          if (added.length < longPaste) return;
          const { currentTarget: into } = event;
          event.preventDefault();
          into.setRangeText(added, into.selectionStart, into.selectionEnd, 'end');
          pasted.text.value = into.value;
        }}
      />
      <p class="correct">
        <button
          type="button"
          class={pasted.read.value === null ? 'button next' : 'button'}
          onClick={() => readIt(pasted.text.peek())}
        >
          Read it
        </button>
        {text !== '' && (
          <button
            type="button"
            class="button"
            onClick={() => {
              pasted.clear();
              box.current?.focus();
            }}
          >
            Clear
          </button>
        )}
      </p>
      {result}
    </section>
  );
}
