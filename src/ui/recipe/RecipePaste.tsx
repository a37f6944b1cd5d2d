import { batch } from '@preact/signals';
import { useEffect, useMemo, useRef } from 'preact/hooks';
import { addPlanned } from '../../batch/add-planned';
import type { Store } from '../../batch/store';
import { listFoods } from '../../formula/look-up';
import { planFromRecipe } from '../../interchange/recipe-batch';
import { isMeaning, keepByHand, readRecipe, rewriteLine, takeByHand, tell } from '../../interchange/recipe-text';
import { weighIngredients } from '../../interchange/recipe-weigh';
import type { SheetState } from '../sheet/sheet-state';
import { foodMenu } from './food-menu';
import { pastedOf } from './pasted';
import { RecipeLines } from './RecipeLines';
import { RecipePlan } from './RecipePlan';

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
  const read = pasted.read.value;
  const told = pasted.told.value;
  const readings = pasted.readings.value;
  const settings = store.settings.value;
  const { ownFoods = [], yours } = store.document.value;
  const habits = { cups: settings.cups, decimalComma: settings.decimalComma, ownFoods };
  const foods = useMemo(() => foodMenu(listFoods(ownFoods)), [ownFoods]);
  const box = useRef<HTMLTextAreaElement>(null);
  const result = useRef<HTMLDivElement>(null);
  // What was read before the cook went elsewhere does not take the focus.
  const seen = useRef(readings);
  useEffect(() => {
    if (readings > seen.current) result.current?.focus();
    seen.current = readings;
  }, [readings]);
  const readIt = (written = text) => {
    const now = readRecipe(written, habits);
    batch(() => {
      pasted.told.value = read === null ? [] : keepByHand(told, read, now);
      pasted.read.value = now;
      pasted.readings.value = readings + 1;
      pasted.swappedFor.value = null;
    });
  };
  const settled = read === null ? null : takeByHand(read, told, habits);
  const meaningIn = (value: string) => {
    if (value === '') return { meaning: null };
    return isMeaning(value, ownFoods) ? { meaning: value } : null;
  };
  const make = (planned: Parameters<typeof addPlanned>[1]) => {
    const next = addPlanned(store.document.value, planned, state.spot.value.batch);
    const added = next.batches.find(({ id }) => !store.document.value.batches.some((batch) => batch.id === id));
    store.takeEdit(next, `Make a batch of ${planned.name}`);
    if (added === undefined) return;
    onMade();
    state.landOn(added.id, `“${planned.name}” is added, from a recipe.`);
  };
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
        placeholder={'1 ¼ cups almonds\n3 ¼ cups water\n1 tbsp sugar\n2 tbsp water kefir grains'}
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
        <button type="button" class={read === null ? 'button next' : 'button'} onClick={() => readIt()}>
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
      {read !== null && settled !== null && (
        <div class="recipe-result" ref={result} tabIndex={-1}>
          <RecipeLines
            read={settled}
            weighed={weighIngredients(settled, habits)}
            foods={foods}
            kitchen={settings}
            told={told}
            onRewrite={(line, old, now) => {
              const written = rewriteLine(text, line, old, now);
              pasted.text.value = written;
              readIt(written);
            }}
            onTell={(line, at, change) => {
              const said = 'amount' in change ? change : meaningIn(change.meaning);
              if (said !== null) pasted.told.value = tell(told, line, at, said);
            }}
          />
          <RecipePlan
            key={readings}
            plan={planFromRecipe(settled, habits, yours, pasted.chosen.value)}
            swappedFor={pasted.swappedFor}
            store={store}
            onChoose={(choice) => {
              pasted.chosen.value = { ...pasted.chosen.value, ...choice };
            }}
            onMake={make}
          />
        </div>
      )}
    </section>
  );
}
