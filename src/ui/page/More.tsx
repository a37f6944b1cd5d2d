import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import { Leads, Redo } from './Masthead';
import type { PageState } from './page-state';
import { atThumb, batchParts, kitchenParts, type PartId } from './part-ids';
import { partList } from './part-list';
import { Starts } from './Starts';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
}

const thumbs: readonly PartId[] = atThumb;
const behindMore = batchParts.filter((id) => !thumbs.includes(id));

/** All that a phone has no room for at the thumb: the other parts, the ways to start, which units lead. */
export function More({ store, state, page }: Props) {
  return (
    <section class="more" aria-label="More">
      {[behindMore, kitchenParts].map((group) => (
        <ul key={group[0]}>
          {group.map((id) => (
            <li key={id}>
              <button type="button" onClick={() => page.goTo(id)}>
                <b>{partList[id].name}</b> <span>{partList[id].about}</span>
              </button>
            </li>
          ))}
        </ul>
      ))}
      <div class="more-tools">
        <Starts store={store} state={state} page={page} />
        <Leads store={store} />
        <Redo store={store} state={state} />
      </div>
    </section>
  );
}
