import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { Log } from './Log';
import '../time/time.css';
import './log.css';

/** What was found at the jars, and what it teaches. */
export default function LogPart({ batch, store, state, page }: PartProps) {
  return (
    <>
      <MayEdit store={store}>
        <Log key={batch.id} batch={batch} store={store} state={state} page={page} />
      </MayEdit>
      <button type="button" class="follow" onClick={() => page.goTo('trouble')}>
        What is wrong with it?
      </button>
    </>
  );
}
