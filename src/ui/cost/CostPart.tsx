import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { Prices } from './Prices';
import { Shopping } from './Shopping';
import './cost.css';
import './shopping.css';

/** What a batch costs, and what to buy for those that are planned. */
export default function CostPart({ batch, store, page }: PartProps) {
  return (
    <>
      <MayEdit store={store}>
        <Prices key={batch.id} batch={batch} store={store} />
      </MayEdit>
      <Shopping batch={batch} store={store} page={page} />
    </>
  );
}
