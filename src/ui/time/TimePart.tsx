import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { ReadyIn } from './ReadyIn';
import { Ripening } from './Ripening';
import './time.css';

/** When it is ready to taste, and what to change to have it ready sooner or later. */
export default function TimePart({ batch, store, page }: PartProps) {
  return (
    <MayEdit store={store}>
      <ReadyIn key={batch.id} batch={batch} store={store} onPlan={() => page.goTo('plan')} />
      <Ripening
        formulation={store.formulationOf(batch)}
        kitchen={store.settings.value}
        name={batch.name}
        isOpened={batch.opened !== undefined}
      />
    </MayEdit>
  );
}
