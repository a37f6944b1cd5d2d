import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { RecipeOut } from './RecipeOut';
import { RecipePaste } from './RecipePaste';
import '../kitchen/kitchen.css';
import '../on-hand/on-hand.css';
import './recipe.css';

/** A recipe in, and this batch out as one. */
export default function RecipePart({ batch, store, state, page }: PartProps) {
  return (
    <>
      <MayEdit store={store}>
        <RecipePaste
          store={store}
          state={state}
          onMade={() => {
            page.shown.value = 'batch';
          }}
        />
      </MayEdit>
      <RecipeOut batch={batch} store={store} />
    </>
  );
}
