import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { Flows } from './Flows';
import { Steps } from './Steps';
import './steps.css';

/** The batch step by step, and where everything in it goes. */
export default function StepsPart({ batch, store }: PartProps) {
  return (
    <>
      <MayEdit store={store}>
        <Steps key={batch.id} batch={batch} store={store} />
      </MayEdit>
      <Flows formulation={store.formulationOf(batch)} kitchen={store.settings.value} name={batch.name} />
    </>
  );
}
