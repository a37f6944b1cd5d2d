import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { LookUp } from './LookUp';
import { Swap } from './Swap';
import { SwapAnswer } from './SwapAnswer';
import '../kitchen/kitchen.css';
import '../on-hand/on-hand.css';
import './recipe.css';

/** Another sweetener at equal fermentable sugar, and any food's cup in grams. */
export default function SwapPart({ batch, store }: PartProps) {
  return (
    <>
      <SwapAnswer store={store} />
      <MayEdit store={store}>
        <Swap key={batch.id} batch={batch} store={store} />
      </MayEdit>
      <LookUp store={store} />
    </>
  );
}
