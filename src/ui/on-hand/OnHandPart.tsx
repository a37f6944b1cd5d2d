import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { OnHand } from './OnHand';
import './on-hand.css';

/** The largest batch that can be made from what there is. */
export default function OnHandPart({ batch, store, state, page }: PartProps) {
  return (
    <MayEdit store={store}>
      <OnHand
        key={batch.id}
        batch={batch}
        store={store}
        state={state}
        onMade={() => {
          page.shown.value = 'batch';
        }}
      />
    </MayEdit>
  );
}
