import type { Batch } from '../../batch/document';
import type { Store } from '../../batch/store';
import { Cautions } from '../care/Cautions';
import { Fizz } from '../fizz/Fizz';
import { SugarFate } from '../fizz/SugarFate';
import { Log } from '../log/Log';
import { OnHand } from '../on-hand/OnHand';
import { Files } from '../paper/Files';
import { Labels } from '../paper/Labels';
import { PrintCards, PrintTools } from '../paper/PrintCards';
import { Timeline } from '../plan/Timeline';
import { Recipes } from '../recipe/Recipes';
import type { SheetState } from '../sheet/sheet-state';
import { Flows } from '../steps/Flows';
import { Steps } from '../steps/Steps';
import { ReadyIn } from '../time/ReadyIn';
import { Ripening } from '../time/Ripening';
import { MayEdit } from './MayEdit';
import { Part } from './PageParts';
import { WhoseName } from './Whose';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
}

/** What stands under the sheet for the batch that is looked at, in the order of the work, and the cards for paper. */
export function Below({ store, state }: Props) {
  const { batches } = store.document.value;
  const current = batches.find(({ id }) => id === state.spot.value.batch) ?? batches[0];
  if (current === undefined) return null;
  return (
    <WhoseName.Provider value={batches.length > 1 ? current.name : null}>
      <MayEdit store={store}>
        <OfBatch key={current.id} batch={current} store={store} />
      </MayEdit>
      <Part id="plan">
        <Timeline store={store} state={state} />
      </Part>
      <MayEdit store={store}>
        <Part id="log">
          <Log key={current.id} batch={current} store={store} />
        </Part>
      </MayEdit>
      <Part id="share">
        <Recipes batch={current} store={store} state={state} />
        <Files batch={current} store={store} state={state} />
        <Labels batch={current} store={store} />
        <PrintTools store={store} />
      </Part>
      <Part id="care">
        <Cautions formulation={store.formulationOf(current)} name={current.name} />
      </Part>
      <PrintCards store={store} state={state} />
    </WhoseName.Provider>
  );
}

function OfBatch({ batch, store }: { batch: Batch; store: Store }) {
  const formulation = store.formulationOf(batch);
  const kitchen = store.settings.value;
  return (
    <>
      <div class="below">
        <Part id="steps">
          <Steps batch={batch} store={store} />
        </Part>
        <div class="beside-steps">
          <OnHand batch={batch} store={store} />
          <Part id="time">
            <div class="time-cards">
              <Ripening
                formulation={formulation}
                kitchen={kitchen}
                name={batch.name}
                isOpened={batch.opened !== undefined}
              />
              <ReadyIn batch={batch} store={store} />
            </div>
          </Part>
          <Flows formulation={formulation} kitchen={kitchen} name={batch.name} />
        </div>
      </div>
      <div class="below">
        <Part id="sugar">
          <SugarFate batch={batch} store={store} />
        </Part>
        <Part id="fizz">
          <Fizz batch={batch} store={store} />
        </Part>
      </div>
    </>
  );
}
