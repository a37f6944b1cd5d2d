import { useEffect, useRef, useState } from 'preact/hooks';
import { addPlanned } from '../../batch/add-planned';
import type { Store } from '../../batch/store';
import { listFoods } from '../../formula/look-up';
import { type Chosen, planFromRecipe } from '../../interchange/recipe-batch';
import {
  type ByHand,
  isMeaning,
  keepByHand,
  type RecipeText,
  readRecipe,
  rewriteLine,
  takeByHand,
  tell,
} from '../../interchange/recipe-text';
import { weighIngredients } from '../../interchange/recipe-weigh';
import type { SheetState } from '../sheet/sheet-state';
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
  const [text, setText] = useState('');
  const [read, setRead] = useState<RecipeText | null>(null);
  const [readings, setReadings] = useState(0);
  const [told, setTold] = useState<readonly ByHand[]>([]);
  const [chosen, setChosen] = useState<Chosen>({});
  const settings = store.settings.value;
  const { ownFoods = [], yours } = store.document.value;
  const habits = { cups: settings.cups, decimalComma: settings.decimalComma, ownFoods };
  const result = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (readings > 0) result.current?.focus();
  }, [readings]);
  const readIt = (written = text) => {
    const now = readRecipe(written, habits);
    setTold(read === null ? [] : keepByHand(told, read, now));
    setRead(now);
    setReadings(readings + 1);
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
        class="recipe-box"
        aria-label="Recipe text"
        rows={8}
        value={text}
        placeholder={'1 ¼ cups almonds\n3 ¼ cups water\n1 tbsp sugar\n2 tbsp water kefir grains'}
        onInput={(event) => setText(event.currentTarget.value)}
        onPaste={(event) => {
          const pasted = event.clipboardData?.getData('text/plain') ?? '';
          if (pasted.length < longPaste) return;
          const { currentTarget: box } = event;
          event.preventDefault();
          box.setRangeText(pasted, box.selectionStart, box.selectionEnd, 'end');
          setText(box.value);
        }}
      />
      <p>
        <button type="button" class="button" onClick={() => readIt()}>
          Read it
        </button>
      </p>
      {read !== null && settled !== null && (
        <div class="recipe-result" ref={result} tabIndex={-1}>
          <RecipeLines
            read={settled}
            weighed={weighIngredients(settled, habits)}
            foods={listFoods(ownFoods)}
            kitchen={settings}
            told={told}
            onRewrite={(line, old, now) => {
              const written = rewriteLine(text, line, old, now);
              setText(written);
              readIt(written);
            }}
            onTell={(line, at, change) => {
              const said = 'amount' in change ? change : meaningIn(change.meaning);
              if (said !== null) setTold(tell(told, line, at, said));
            }}
          />
          <RecipePlan
            key={readings}
            plan={planFromRecipe(settled, habits, yours, chosen)}
            store={store}
            onChoose={(choice) => setChosen({ ...chosen, ...choice })}
            onMake={make}
          />
        </div>
      )}
    </section>
  );
}
