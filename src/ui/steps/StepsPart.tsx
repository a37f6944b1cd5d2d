import type { PartProps } from '../page/part-props';
import { Flows } from './Flows';
import { Steps } from './Steps';
import './steps.css';

/** The batch step by step, and where everything in it goes. */
export default function StepsPart({ batch, store, page }: PartProps) {
  return (
    <>
      <Steps key={batch.id} batch={batch} store={store} page={page} />
      <Flows formulation={store.formulationOf(batch)} kitchen={store.settings.value} name={batch.name} />
    </>
  );
}
