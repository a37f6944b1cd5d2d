import { useEffect, useMemo, useRef } from 'preact/hooks';
import type { PlannedBatch } from '../../batch/edits/add-planned';
import type { Store } from '../../batch/store/store';
import { listFoods } from '../../formula/foods/look-up';
import { planFromRecipe } from '../../interchange/recipe-batch';
import { type Habits, isMeaning, rewriteLine, takeByHand, tell } from '../../interchange/recipe-text';
import { weighIngredients } from '../../interchange/recipe-weigh';
import { foodMenu } from './food-menu';
import type { Pasted } from './pasted';
import { RecipeLines } from './RecipeLines';
import { RecipePlan } from './RecipePlan';

interface Props {
  readonly store: Store;
  readonly pasted: Pasted;
  readonly habits: Habits;
  readonly onRead: (text: string) => void;
  readonly onMake: (planned: PlannedBatch) => void;
}

/** What was read of a recipe, line by line, and the batch it makes; nothing before anything was read. */
export function RecipeResult({ store, pasted, habits, onRead, onMake }: Props) {
  const settings = store.settings.value;
  const { ownFoods = [], yours } = store.document.value;
  const foods = useMemo(() => foodMenu(listFoods(ownFoods)), [ownFoods]);
  const read = pasted.read.value;
  const told = pasted.told.value;
  const readings = pasted.readings.value;
  const result = useRef<HTMLDivElement>(null);
  // What was read before the cook went elsewhere does not take the focus.
  const seen = useRef(readings);
  useEffect(() => {
    if (readings > seen.current) result.current?.focus();
    seen.current = readings;
  }, [readings]);
  if (read === null) return null;
  const settled = takeByHand(read, told, habits);
  const meaningIn = (value: string) => {
    if (value === '') return { meaning: null };
    return isMeaning(value, ownFoods) ? { meaning: value } : null;
  };
  return (
    <div class="recipe-result" ref={result} tabIndex={-1}>
      <RecipeLines
        read={settled}
        weighed={weighIngredients(settled, habits)}
        foods={foods}
        kitchen={settings}
        told={told}
        onRewrite={(line, old, now) => onRead(rewriteLine(pasted.text.peek(), line, old, now))}
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
        onMake={onMake}
      />
    </div>
  );
}
