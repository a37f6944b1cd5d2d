import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { Fizz } from './Fizz';
import { SugarFate } from './SugarFate';
import '../time/time.css';
import './fizz.css';

/** What builds up in a sealed bottle, and where the sugar goes. */
export default function FizzPart({ batch, store }: PartProps) {
  return (
    <MayEdit store={store}>
      <Fizz key={batch.id} batch={batch} store={store} />
      <SugarFate key={`${batch.id} sugar`} batch={batch} store={store} />
    </MayEdit>
  );
}
