import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';
import type { Store } from '../../batch/store/store';
import type { SheetState } from '../sheet/sheet-state';
import { PartNames } from './PartNames';
import { PartPane } from './PartPane';
import type { PageState } from './page-state';

interface Props {
  readonly store: Store;
  readonly state: SheetState;
  readonly page: PageState;
  /** What the batches leave of the window, for one part or two. */
  readonly within: RefObject<HTMLElement | null>;
}

/** What two parts are wide at the least, px: lines of text of a good length in each, and the names of all parts in two rows. */
const twoWide = 1240;

/** A second part, chosen by its name, for as long as the batches leave room for it. */
export default function SecondPart({ store, state, page, within }: Props) {
  const { hasRoom } = page;
  useLayoutEffect(() => {
    const measure = () => {
      hasRoom.value = (within.current?.clientWidth ?? 0) >= twoWide;
    };
    const watch = new ResizeObserver(measure);
    if (within.current !== null) watch.observe(within.current);
    return () => {
      watch.disconnect();
      hasRoom.value = false;
    };
  }, []);
  if (!hasRoom.value) return null;
  return (
    <div class="beside">
      <PartNames page={page} side="second" />
      <PartPane store={store} state={state} page={page} side="second" />
    </div>
  );
}
