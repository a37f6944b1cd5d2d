import { MayEdit } from '../page/MayEdit';
import type { PartProps } from '../page/part-props';
import { Settings } from './Settings';
import './kitchen.css';

/** How this kitchen measures. */
export default function KitchenPart({ store }: PartProps) {
  return (
    <MayEdit store={store}>
      <Settings store={store} />
    </MayEdit>
  );
}
